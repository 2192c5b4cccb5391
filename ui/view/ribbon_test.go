package view_test

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"

	"pgregory.net/rapid"
)

// days draws the ribbon over any room, moved anywhere.
func days(t *rapid.T, base state.State) state.State {
	s := base
	s.Width = rapid.Float64Range(state.LeastWidth, 2000).Draw(t, "width")
	s.Text = rapid.SampledFrom([]float64{1, 1.5, 2}).Draw(t, "text")
	s.Room = state.Yard
	s.Day = today + calendar.Day(rapid.IntRange(-60, 60).Draw(t, "day"))
	s.Shift = rapid.IntRange(-60, 60).Draw(t, "shift")
	return s
}

// TestTheFlagCoversNoWord: months, "now" and the flag keep apart and stay in
// the ribbon, wherever the day looked at lies.
func TestTheFlagCoversNoWord(t *testing.T) {
	base := open(t)
	rapid.Check(t, func(t2 *rapid.T) {
		s := days(t2, base)
		r := s.Layout().Ribbon
		var words []written
		for _, w := range texts(t, window(s), s.Size()) {
			if r.Contains(w.At) && w.At.Y < r.Y+20 && strings.Trim(w.Text.Text, "0123456789") != "" {
				words = append(words, w)
			}
		}
		flag := 0
		for i, a := range words {
			if a.box.X < 0 || a.box.Right() > r.W {
				t2.Fatalf("%q %v reaches beyond the ribbon", a.Text.Text, a.box)
			}
			if strings.Contains(a.Text.Text, s.Looked().Short()) {
				flag++
			}
			for _, b := range words[i+1:] {
				if a.box.Overlaps(b.box) {
					t2.Fatalf("%q %v and %q %v overlap", a.Text.Text, a.box, b.Text.Text, b.box)
				}
			}
		}
		if flag != 1 {
			t2.Fatalf("the day looked at is flagged %d times", flag)
		}
	})
}

// TestTheFlagStandsBesideTheMonths: whatever day is looked at, the months in sight are named, but for days
// that the flag reaches only where the name itself stands, of which it names the month.
func TestTheFlagStandsBesideTheMonths(t *testing.T) {
	s := open(t)
	s.Room, s.Width = state.Yard, 1280
	for _, s.Text = range []float64{1, 1.5} {
		r := s.Layout().Ribbon
		for s.Day = r.First; s.Day < r.Last(); s.Day++ {
			var said []string
			for _, w := range texts(t, window(s), s.Size()) {
				if r.Contains(w.At) && w.At.Y < r.Y+20 && !strings.ContainsAny(w.Text.Text, "0123456789") {
					said = append(said, w.Text.Text)
				}
			}
			for _, first := range []calendar.Day{r.First, calendar.Date(2027, time.May, 1), calendar.Date(2027, time.June, 1)} {
				_, m, _ := first.Date()
				near := first-2 < s.Day && s.Day < first+4
				if first >= r.First && !near && !slices.Contains(said, m.String()) && !slices.Contains(said, m.String()[:3]) {
					t.Errorf("at %.0f %%, on %s: %q does not name %s", 100*s.Text, s.Day.Short(), said, m)
				}
			}
		}
	}
}

// TestTheHandleCutsNoLabelOfALane: where a side of the handle runs through a label, the
// label lies over it on a ground of its own.
func TestTheHandleCutsNoLabelOfALane(t *testing.T) {
	base, seen := open(t), 0
	rapid.Check(t, func(t2 *rapid.T) {
		s := days(t2, base)
		l := s.Layout()
		left := l.Ribbon.Left(s.Looked())
		sides := []float64{left, left + l.Ribbon.Column}
		crossed := func(a scene.Area) bool {
			return slices.ContainsFunc(sides, func(x float64) bool { return a.X < x && x < a.Right() })
		}
		var ground scene.Area // the last one laid
		for _, p := range walk(t, window(s), s.Size()) {
			switch m := p.mark.(type) {
			case scene.Rect:
				if m.Stroke.Width == 0 && (m.Fill == scene.Ground || m.Fill == scene.PenTint) {
					ground = m.Area
				}
			case scene.Text:
				b := box(m)
				if !l.Lanes.Contains(m.At) || b.X < l.Ribbon.X || l.Lanes.H <= state.LaneHeight/2 || !crossed(b) {
					continue
				}
				seen++
				if ground.X > b.X || ground.Right() < b.Right() || ground.Y > b.Y+2 || ground.Bottom() < b.Bottom()-2 || ground.H > 20 {
					t2.Fatalf("%q %v is cut by the handle at %v; the ground is %v", m.Text, b, sides, ground)
				}
			}
		}
	})
	if seen == 0 {
		t.Fatal("no label is crossed")
	}
}

// TestNothingMovesWithTheDay: labels of lanes and names of months keep their places on
// whatever day is looked at; only under the flag there is no month.
func TestNothingMovesWithTheDay(t *testing.T) {
	month := func(place string) bool {
		name, _, _ := strings.Cut(place, " at ")
		return slices.Contains([]string{"April", "May", "June"}, name)
	}
	for _, size := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1920, 1080, 1}} {
		base := open(t)
		base.Room, base.Text = state.Yard, size[2]
		base, _ = state.Update(base, state.Resized{Width: size[0], Height: size[1]})
		stand := map[string]bool{}
		for d := range calendar.Day(40) {
			s := base
			s.Day = today - 15 + d
			l := s.Layout()
			labels, months := map[string]bool{}, 0
			for _, w := range texts(t, window(s), s.Size()) {
				place := fmt.Sprintf("%s at %.1f, %.1f", w.Text.Text, w.At.X, w.At.Y)
				switch {
				case l.Lanes.Contains(w.At):
					labels[place] = true
				case l.Ribbon.Contains(w.At) && slices.Contains([]string{"April", "May", "June"}, w.Text.Text):
					labels[place], months = true, months+1
				}
			}
			if d == 0 {
				stand = labels
			}
			for place := range labels {
				if !stand[place] && !month(place) {
					t.Fatalf("%v: on %v %s is new", size, s.Day, place)
				}
				stand[place] = true
			}
			for place := range stand {
				if !labels[place] && !month(place) {
					t.Fatalf("%v: on %v there is no %s", size, s.Day, place)
				}
			}
			if months == 0 {
				t.Errorf("%v: on %v no month is named", size, s.Day)
			}
		}
		places := map[string]int{}
		for place := range stand {
			name, _, _ := strings.Cut(place, " at ")
			places[name]++
		}
		for _, month := range []string{"April", "May", "June"} {
			if places[month] > 1 {
				t.Errorf("%v: %s has %d places", size, month, places[month])
			}
		}
		if size[2] == 1 && len(places) < 12 {
			t.Fatalf("%v: only %v are written", size, places)
		}
	}
}

// TestTheTimeThereIsStandsOnEveryDay: each day from today on that anybody is free on has
// the line of the time there is, and none lies above its row.
func TestTheTimeThereIsStandsOnEveryDay(t *testing.T) {
	s := open(t)
	r, present := s.Layout().Ribbon, s.Present()
	lines := map[calendar.Day]bool{}
	for _, p := range walk(t, window(s), s.Size()) {
		m, ok := p.mark.(scene.Line)
		if !ok || m.Stroke.Role != scene.Ink3 || m.From.Y != m.To.Y || !r.Contains(m.From) {
			continue
		}
		lines[r.Day((m.From.X+m.To.X)/2)] = m.From.Y > r.Y+36
	}
	days := 0
	for d := today; d <= r.Last(); d++ {
		if free := present.WorkOn(d).Free > 0; free != lines[d] {
			t.Errorf("%v: free %v, line %v", d, present.WorkOn(d).Free, lines[d])
		} else if free {
			days++
		}
	}
	if days < 10 {
		t.Fatalf("only %d days have time", days)
	}
}

// TestTheWorkOfTodayFillsItsRow: what a day long past held does not make
// today's work small.
func TestTheWorkOfTodayFillsItsRow(t *testing.T) {
	s := open(t)
	r := s.Layout().Ribbon
	high := 0.0
	for _, p := range walk(t, window(s), s.Size()) {
		m, ok := p.mark.(scene.Rect)
		if ok && m.Fill == scene.Ink2 && r.Contains(m.Centre()) && m.X > r.Left(today) && m.Right() < r.Left(today+1) {
			high = max(high, m.H)
		}
	}
	if high < 12 {
		t.Errorf("the work of today is %.0f dp high", high)
	}
}

// TestDeadlinesNeverGiveWay: in the low ribbon of a narrow window every day that
// has a deadline has its stroke, below the line on which the bars stand.
func TestDeadlinesNeverGiveWay(t *testing.T) {
	for _, size := range [][3]float64{{1440, 900, 1}, {1280, 800, 1.5}} {
		s := open(t)
		s.Width, s.Height, s.Text = size[0], size[1], size[2]
		s, _ = state.Update(s, state.Resized{Width: s.Width, Height: s.Height})
		r, present, days := s.Layout().Ribbon, s.Present(), 0
		marks := walk(t, window(s), s.Size())
		for d := today; d <= r.Last(); d++ {
			if present.WorkOn(d).Deadlines == 0 {
				continue
			}
			days++
			drawn := false
			for _, p := range marks {
				m, ok := p.mark.(scene.Line)
				down := ok && m.From.X == m.To.X && m.To.Y-m.From.Y >= 5 && m.To.Y <= r.Bottom() && m.From.Y > r.Bottom()-30 && m.Stroke.Width >= 1.5
				drawn = drawn || down && r.Left(d) < m.From.X && m.From.X < r.Left(d+1)
			}
			if !drawn {
				t.Errorf("%v: the deadlines of %v have no stroke", size, d)
			}
		}
		if days == 0 {
			t.Fatal("no day has a deadline")
		}
	}
}

// TestTheFocusRingLiesBelowWhatLiesOver: the sheet of keys and menus cover the
// ring of what has the focus below them.
func TestTheFocusRingLiesBelowWhatLiesOver(t *testing.T) {
	s := open(t)
	s.Room = state.Yard
	s.Focus = state.CommandOf("today")
	ringed := func(s state.State) (ring, over int) {
		ring, over = -1, -1
		for i, p := range walk(t, window(s), s.Size()) {
			m, ok := p.mark.(scene.Rect)
			switch {
			case !ok:
			case m.Fill == scene.None && m.Stroke.Role == scene.Pen && m.Stroke.Width == 2 && m.Radius == 5:
				ring = i
			case m.Area == s.KeySheet().Area:
				over = i
			}
		}
		return ring, over
	}
	if ring, _ := ringed(s); ring < 0 {
		t.Fatal("nothing has a ring")
	}
	s.Keys = true
	if ring, over := ringed(s); ring > over || over < 0 {
		t.Errorf("the ring is mark %d, the sheet of keys %d", ring, over)
	}
}

// TestLittleWorkStandsOnItsLine: also a day of few minutes has a bar that is seen, above
// the line and not below it.
func TestLittleWorkStandsOnItsLine(t *testing.T) {
	for _, size := range [][3]float64{{1280, 800, 1}, {1920, 1080, 1.5}, {1440, 900, 1}, {1920, 1080, 1}} {
		s := open(t)
		s.Width, s.Height, s.Text = size[0], size[1], size[2]
		g, bars, little, lines := s.Layout().Ribbon, []scene.Area{}, 0, map[float64]bool{}
		for _, p := range walk(t, window(s), s.Size()) {
			switch m := p.mark.(type) {
			case scene.Rect:
				if g.Contains(m.Centre()) && (m.Fill == scene.Rule || m.Fill == scene.Ink2) && math.Abs(m.W-g.Column*0.56) < 0.01 && m.H > 0 {
					bars = append(bars, m.Area)
				}
			case scene.Line:
				if m.From.Y == m.To.Y && m.Stroke.Role == scene.Rule {
					lines[m.From.Y] = true
				}
			}
		}
		for _, bar := range bars {
			if bar.H < 2 || bar.Bottom() != math.Floor(bar.Bottom()) || !lines[bar.Bottom()] {
				t.Errorf("%v: the bar %v does not stand on its line", size, bar)
			}
			if bar.H == 2 {
				little++
			}
		}
		if len(bars) < 10 || little == 0 {
			t.Errorf("%v: %d bars, %d of them of little work", size, len(bars), little)
		}
	}
}

// TestFiguresOfDaysStandApart: however long the season and slender its days, the figures over two
// days never touch.
func TestFiguresOfDaysStandApart(t *testing.T) {
	slender := 0
	for _, days := range []int{20, 45, 60, 90, 120, 170} {
		s := inPlan(t)
		s.Width, s.Height = 1280, 800
		s = wished(s, state.WishDay, "+"+strconv.Itoa(days))
		r := s.Layout().Ribbon
		if r.Column < 12 {
			slender++
		}
		last := math.Inf(-1)
		for _, w := range texts(t, window(s), s.Size()) {
			if w.At.Y != r.Y+30 || w.At.X < r.X {
				continue
			}
			if w.box.X < last+4 {
				t.Errorf("%d days: %q begins %.1f behind the figure before it", days, w.Text.Text, w.box.X-last)
			}
			last = w.box.Right()
		}
	}
	if slender == 0 {
		t.Error("no day is slender")
	}
}
