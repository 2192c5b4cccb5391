package view_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"

	"pgregory.net/rapid"
)

// todayIn is the room Today of the demo season in a window.
func todayIn(t testing.TB, width, height float64) state.State {
	s := open(t)
	s.Room = state.Today
	s, _ = state.Update(s, state.Resized{Width: width, Height: height})
	return s
}

// TestWindowsOfTasksAreDrawn: also in a window of 1280 by 800 each task that has a
// beginning has its words and its window; only the desk knows work without.
func TestWindowsOfTasksAreDrawn(t *testing.T) {
	for _, size := range [][3]float64{{1280, 4000, 1}, {1440, 4000, 1}, {1920, 4000, 1}, {1280, 6000, 1.5}} {
		s := open(t)
		s.Room, s.Text = state.Today, size[2]
		s, _ = state.Update(s, state.Resized{Width: size[0], Height: size[1]})
		r := s.Route(s.Layout())
		if !r.Axis {
			t.Fatalf("%.0f wide: no axis", size[0])
		}
		top := s.Layout().Main.Y + r.Hard + r.Head
		said, bars := map[float64]bool{}, map[float64]bool{}
		for _, p := range walk(t, window(s), s.Size()) {
			switch m := p.mark.(type) {
			case scene.Text:
				if strings.HasPrefix(m.Text, "by ") || strings.HasPrefix(m.Text, "past ") || strings.HasPrefix(m.Text, "since ") || strings.HasPrefix(m.Text, "from ") {
					said[m.At.Y-5] = true
				}
			case scene.Line:
				if m.From.Y == m.To.Y && m.Stroke.Width == 2 && m.To.X-m.From.X > 0 {
					bars[m.From.Y] = true
				}
			case scene.Poly: // all of it lies beyond the axis
				if len(m.Points) == 3 && m.Fill != scene.Panel {
					bars[m.Points[1].Y] = true
				}
			}
		}
		tasks := 0
		for i, stop := range s.Page() {
			for j, l := range stop.Lines {
				y := top + r.Stops[i].Tasks[j].Y + 15
				if l.From.IsZero() {
					continue
				}
				tasks++
				if !said[y] || !bars[y] {
					t.Errorf("%.0f wide: %q says when: %v, has a window: %v", size[0], l.Title, said[y], bars[y])
				}
			}
		}
		if tasks < 10 {
			t.Errorf("%d tasks begin on a day", tasks)
		}
	}
}

// TestWhatLiesBeyondTheAxisPointsThere: the best day of a task is a ring on its day, and
// where that lies beyond the axis a tip at the end of it that points there, never a ring.
func TestWhatLiesBeyondTheAxisPointsThere(t *testing.T) {
	rings, tips := 0, 0
	for d := range 12 {
		s := todayIn(t, 1440, 4000)
		s.Day = today - 3 + calendar.Day(d)
		r, rt := s.Reading(), s.Route(s.Layout())
		top := s.Layout().Main.Y + rt.Hard + rt.Head
		ring, hollow := map[float64]bool{}, map[float64]bool{}
		for _, p := range walk(t, window(s), s.Size()) {
			switch m := p.mark.(type) {
			case scene.Circle:
				ring[m.At.Y] = ring[m.At.Y] || m.Radius == 4.2
			case scene.Poly:
				if len(m.Points) == 3 && m.Fill == scene.Panel && m.Stroke.Width == 1.6 {
					hollow[m.Points[1].Y] = true
				}
			}
		}
		for i, stop := range s.Page() {
			for j, l := range stop.Lines {
				if l.Done || l.Best.IsZero() || l.By.IsZero() {
					continue
				}
				y := top + rt.Stops[i].Tasks[j].Y + 15
				day, first := r.DayOf(l.Best), r.Day-3
				switch beyond := day < first || day >= first+10; {
				case beyond && ring[y]:
					t.Errorf("%v: %q has a ring for %v", s.Day, l.Title, day)
				case !beyond && hollow[y]:
					t.Errorf("%v: %q points beyond the axis to %v", s.Day, l.Title, day)
				case hollow[y]:
					tips++
				case ring[y]:
					rings++
				}
			}
		}
	}
	if rings < 20 || tips < 3 {
		t.Errorf("%d rings and %d tips are drawn", rings, tips)
	}
}

// TestNoTextOfTheRouteIsCut: wherever it is scrolled, a line of text stands whole or
// not at all, and no lid or box of a line without its text.
func TestNoTextOfTheRouteIsCut(t *testing.T) {
	base := worked(t)
	rapid.Check(t, func(t2 *rapid.T) {
		s := routes(t2, base)
		main := s.Layout().Main
		if r := s.Route(s.Layout()); r.Pane < 3*state.RouteLine {
			return // a single line is better cut than gone
		}
		for _, p := range walk(t, window(s), s.Size()) {
			var b scene.Area
			switch m := p.mark.(type) {
			case scene.Text:
				b = scene.Area{X: m.At.X, Y: m.At.Y - 0.75*m.Size, W: 1, H: 0.95 * m.Size}
			case scene.Lid:
				b = scene.Around(m.At, m.Size)
			default:
				continue
			}
			if main.Empty() || !main.Contains(b.Centre()) || p.clip.Intersect(main) != p.clip {
				continue
			}
			seen := p.clip.Y < b.Bottom() && p.clip.Bottom() > b.Y
			if cut := b.Y < p.clip.Y-0.01 || b.Bottom() > p.clip.Bottom()+0.01; seen && cut {
				t2.Fatalf("%+v is cut by %v", p.mark, p.clip)
			}
		}
	})
}

// TestTheDaysPaneKeepsItsPlaces: whatever day is looked at, what stands in the pane
// of the day stands at the same place of it, whatever it says.
func TestTheDaysPaneKeepsItsPlaces(t *testing.T) {
	for _, size := range [][2]float64{{1280, 800}, {1440, 900}, {1920, 1080}} {
		places, days := map[string]float64{}, map[string]int{}
		for d := range 25 {
			s := todayIn(t, size[0], size[1])
			s.Day = today - 12 + calendar.Day(d)
			l := s.Layout()
			for _, w := range texts(t, window(s), s.Size()) {
				said := w.Text.Text
				if said == "Nobody comes on "+s.Day.Short() {
					said = "Nobody comes today"
				}
				if !l.Side.Contains(w.At) || !slices.Contains([]string{"I have only two hours", "Nobody comes today", "Kit to pack"}, said) {
					continue
				}
				y := w.At.Y - l.Side.Y
				if was, known := places[said]; known && was != y {
					t.Errorf("%v: %q stands at %.1f on %s, before at %.1f", size, said, y, s.Day.Short(), was)
				}
				places[said] = y
				days[said]++
			}
		}
		if days["Kit to pack"] < 5 || days["Nobody comes today"] < 5 {
			t.Errorf("%v: seen on %v days", size, days)
		}
	}
}

// TestTheFlagSaysTheDayWhileItIsDragged: nothing lies over the room then.
func TestTheFlagSaysTheDayWhileItIsDragged(t *testing.T) {
	s := todayIn(t, 1280, 800)
	r := s.Layout().Ribbon
	s, _ = state.Update(s, state.Pressed{At: scene.Point{X: r.At(s.Today()), Y: r.Y + 50}})
	s, _ = state.Update(s, state.Moved{At: scene.Point{X: r.At(s.Today() + 3), Y: r.Y + 50}})
	l, flag := s.Layout(), false
	for _, w := range texts(t, window(s), s.Size()) {
		flag = flag || r.Contains(w.At) && strings.HasSuffix(w.Text.Text, "3 days ahead")
		if l.Main.Contains(w.At) && strings.HasPrefix(w.Text.Text, "You are looking at") {
			t.Error("the band lies over the room")
		}
	}
	if !flag {
		t.Error("the flag does not say how far ahead the day lies")
	}
}

// TestTheKitIsWholeWhereItHasRoom: in the pane of the day the lines of the kit stand
// whole, all of them where they have room, and no two texts of the pane overlap.
func TestTheKitIsWholeWhereItHasRoom(t *testing.T) {
	for _, size := range [][2]float64{{1280, 800}, {1440, 900}, {1920, 1080}} {
		whole := 0
		for d := range 12 {
			s := todayIn(t, size[0], size[1])
			s.Day = today - 3 + calendar.Day(d)
			side := s.Layout().Side
			var all []written
			more := false
			for _, w := range texts(t, window(s), s.Size()) {
				if !side.Contains(w.At) || w.Text.Text == "" {
					continue
				}
				all = append(all, w)
				more = more || strings.HasPrefix(w.Text.Text, "and ") && strings.HasSuffix(w.Text.Text, " more")
			}
			for i, a := range all {
				for _, b := range all[i+1:] {
					if cut := a.box.Intersect(b.box); cut.W > 0.01 && cut.H > 0.01 {
						t.Errorf("%v, %v: %q and %q overlap", size, s.Day, a.Text.Text, b.Text.Text)
					}
				}
			}
			if !more {
				whole++
			}
			if !slices.ContainsFunc(all, func(w written) bool { return strings.HasPrefix(w.Text.Text, "Stings can kill") }) {
				t.Errorf("%v, %v: nothing says that stings can kill", size, s.Day)
			}
		}
		if size[1] > 1000 && whole < 12 {
			t.Errorf("%v: the kit is whole on %d of 12 days", size, whole)
		}
	}
}
