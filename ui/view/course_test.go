package view_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/domain/strength"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// onCard is a tall window on the card of a nuc.
func onCard(s state.State, n *state.Nuc) state.State {
	s.Room, s.Height = state.Yard, 3000
	s.Selection = state.Select(n.Nuc.Nuc.Subject())
	return s
}

// TestOneVoice: on every day the card, the work of the day and the course tell the
// same days of a look.
func TestOneVoice(t *testing.T) {
	s := open(t)
	looks := 0
	for on := range calendar.Day(14) {
		s.Day = today - 3 + on
		r := s.Reading()
		tasks := map[string]rules.Finding{}
		for _, stop := range r.Plan().Stops {
			for _, task := range stop.Tasks {
				for _, f := range task.Findings {
					tasks[f.Of.UUID.String()+f.Act.String()] = f
				}
			}
		}
		for _, n := range r.Nucs {
			if n.Due == nil || n.Due.Act != rules.ActLookForEggs || n.PastDue() > 0 {
				continue
			}
			p := r.Course.Of(n.Nuc)
			if f := n.Due; f.Then == rules.ActGiveCell && f.Hard { // the hour is the cell's, which is to spare
				if f.By.After(p.LookBy) {
					t.Errorf("%v %s: a look by %v for a cell to spare, by the course %v", s.Day, n.Name, f.By, p.LookBy)
				}
				continue
			}
			looks++
			if f := n.Due; !f.From.Equal(p.LookFrom) || !f.Best.Equal(p.LookBest) || !f.By.Equal(p.LookBy) {
				t.Errorf("%v %s: the finding says %v, %v, %v, the course %v, %v, %v", s.Day, n.Name, f.From, f.Best, f.By, p.LookFrom, p.LookBest, p.LookBy)
			}
			if f, ok := tasks[n.Nuc.Nuc.Subject().UUID.String()+n.Due.Act.String()]; ok && !f.Best.Equal(p.LookBest) {
				t.Errorf("%v %s: the work of the day says %v, the course %v", s.Day, n.Name, f.Best, p.LookBest)
			}
			if on%5 != 0 {
				continue
			}
			said := strings.Join(cardTexts(t, onCard(s, n)), "\n")
			for _, want := range []string{r.DayOf(p.LookBest).Short(), shortOf(r.DayOf(p.LookFrom)) + "\nworth a look"} {
				if !strings.Contains(said, want) {
					t.Errorf("%v %s: the card does not say %q:\n%s", s.Day, n.Name, want, said)
				}
			}
		}
	}
	if looks < 100 {
		t.Fatalf("only %d looks are due", looks)
	}
}

// shortOf is a day as cards write it in their rows.
func shortOf(d calendar.Day) string {
	_, m, number := d.Date()
	return fmt.Sprintf("%d %s", number, m.String()[:3])
}

// TestTheChartOfACourse: the bands of every nuc fill the chart on every day, each
// day and each look says what it is, and the parts on the card are the course's.
func TestTheChartOfACourse(t *testing.T) {
	s := open(t)
	charts, looks := 0, 0
	for i, n := range s.Reading().Nucs {
		c := s.Reading().CourseOf(n.Nuc.Nuc)
		if len(c.Days) == 0 {
			continue
		}
		for _, d := range append(c.Days, state.CourseDay{CourseParts: c.Now}) {
			sum := 0.0
			for _, p := range d.CourseParts {
				sum += p
			}
			if math.Abs(sum-1) > 1e-9 {
				t.Errorf("%s: the parts of %v sum to %v", n.Name, d.Day, sum)
			}
		}
		if i%8 != 0 {
			continue
		}
		charts++
		one := onCard(s, n)
		card := one.Layout().Card
		said := map[scene.Ref]string{}
		for _, p := range walk(t, window(one), one.Size()) {
			switch m := p.mark.(type) {
			case scene.Rect:
				if m.Ref.Part == "course" {
					said[m.Ref] += m.Reason + "\n"
				}
			case scene.Poly:
				for _, o := range m.Points {
					if card.Contains(p.clip.Centre()) && (o.X < card.X || o.X > card.Right()) {
						t.Errorf("%s: a band reaches to %v", n.Name, o)
					}
				}
			}
		}
		for _, d := range c.Days {
			ref := scene.Ref{Kind: state.DayRef, ID: d.Day.String(), Part: "course"}
			if !strings.Contains(said[ref], d.Says()) || !strings.Contains(said[ref], "h fit to fly") {
				t.Errorf("%s: on %v it says %q", n.Name, d.Day, said[ref])
			}
		}
		for _, l := range c.Looks {
			looks++
			ref := scene.Ref{Kind: state.DayRef, ID: l.Day.String(), Part: "course"}
			if l.Day >= c.Days[0].Day && !strings.Contains(said[ref], l.Words) {
				t.Errorf("%s: the look of %v says %q", n.Name, l.Day, said[ref])
			}
		}
		all := cardTexts(t, one)
		for _, part := range c.Now.Order() {
			at := slices.Index(all, part.String())
			if want := fmt.Sprintf("%d %%", c.Now.Percent(part)); at < 1 || all[at-1] != want {
				t.Errorf("%s: %s is not said with %s", n.Name, part, want)
			}
		}
	}
	if charts < 8 || looks < 8 {
		t.Fatalf("%d charts with %d looks", charts, looks)
	}
}

// TestOnlyTheCalendarSpeaks: where nobody looked and nobody told the weather the
// card says that it is the calendar alone.
func TestOnlyTheCalendarSpeaks(t *testing.T) {
	s := big(t, 4)
	s.Now = s.Now.AddDate(0, 0, -20)
	n := s.Reading().Nucs[0]
	c := s.Reading().CourseOf(n.Nuc.Nuc)
	if len(c.Looks) > 0 && c.Grounds() != "" {
		t.Errorf("with looks it says %q", c.Grounds())
	}
	c = &state.NucCourse{}
	if !strings.HasPrefix(c.Grounds(), "By the calendar alone") {
		t.Errorf("without looks and weather it says %q", c.Grounds())
	}
	c.WeatherIsKnown = true
	if strings.Contains(c.Grounds(), "alone") || c.Grounds() == "" {
		t.Errorf("with weather it says %q", c.Grounds())
	}
}

// TestALayerSaysHowSure: the figure on the map is the chance of what the lid shows,
// the line beside the pointer says what else it may be, and lids nobody saw are
// hatched by it, on map, lids and wall alike.
func TestALayerSaysHowSure(t *testing.T) {
	s := open(t)
	s.Room, s.Layer, s.Width, s.Height = state.Yard, state.BySureness, 2600, 1600
	s.Day = today - 3 // cells given lately are sure
	for _, pane := range []state.Pane{state.Map, state.Lids, state.Wall} {
		s.Pane = pane
		hatched := map[uint8]int{}
		for name, all := range lids(t, s, s.Size()) {
			for _, l := range all {
				n := nucNamed(t, s, name)
				if l.Size < 20 || s.Layout().Card.Contains(l.At) {
					continue
				}
				sure := n.Sureness()
				if sure.Known && l.Doubt != uint8(sure.Doubt())+1 || !strings.HasPrefix(l.Reason, name+"  ") {
					t.Errorf("pane %d, %s: doubt %d, chance %.2f, says %q", pane, name, l.Doubt, sure.Chance, l.Reason)
				}
				if !l.Seen {
					hatched[l.Doubt]++
				}
			}
		}
		if len(hatched) < 3 {
			t.Errorf("pane %d: doubts %v", pane, hatched)
		}
	}
}

// TestALayerSaysWhoIsRobbed: chevrons and shades follow the reckoned level, and
// the line beside the pointer names the heaviest reason.
func TestALayerSaysWhoIsRobbed(t *testing.T) {
	s := open(t)
	s.Room, s.Pane, s.Layer = state.Yard, state.Map, state.ByRobbing
	levels := map[strength.Level]int{}
	for _, n := range s.Reading().Nucs {
		e := n.Robbing()
		levels[e.Level]++
		if says := n.RobbingSays(); e.Level > strength.Quiet && !strings.Contains(says, e.Reason) && !strings.Contains(says, "robb") {
			t.Errorf("%s: %q does not say %q", n.Name, says, e.Reason)
		}
	}
	if len(levels) < 2 {
		t.Fatalf("levels %v", levels)
	}
	marked := 0
	for _, p := range walk(t, window(s), s.Size()) {
		if l, ok := p.mark.(scene.Lid); ok && l.Robbing && !s.Layout().Card.Contains(l.At) {
			marked++
		}
	}
	if marked == 0 {
		t.Error("no lid shows robbers")
	}
}

// TestAllocationsOfACourse: drawing a card with its chart again allocates no more
// than its marks and words.
func TestAllocationsOfACourse(t *testing.T) {
	s := open(t)
	s = onCard(s, nucNamed(t, s, "D2"))
	s.Pane = state.Wall
	window(s)
	without := s
	without.Selection = state.Selection{}
	const most = 3200
	got := testing.AllocsPerRun(5, func() { window(s) }) - testing.AllocsPerRun(5, func() { window(without) })
	if got > most {
		t.Errorf("%.0f allocations more than without a nuc, at most %d", got, most)
	}
}

// TestTheCourseFillsTheRoom of one nuc after the other, names its parts in words,
// and gives the room back.
func TestTheCourseFillsTheRoom(t *testing.T) {
	s := filled(t, "course room")
	if s.Fill != state.CourseFill || s.Layout().Card.Empty() {
		t.Fatalf("it is filled with %v, the card %v", s.Fill, s.Layout().Card)
	}
	var said []string
	for _, w := range texts(t, window(s), s.Size()) {
		if s.Layout().Main.Contains(w.At) {
			said = append(said, w.Text.Text)
		}
	}
	for _, want := range []string{"D2", "laying", "no queen", "▼ Mon 3 May"} {
		if !slices.Contains(said, want) {
			t.Errorf("it does not say %q: %q", want, said)
		}
	}
	s, _ = state.Update(s, state.Keyed{Key: "PageDown"})
	if n := s.CourseNuc(); s.Fill != state.CourseFill || n == nil || n.Name != "D3" {
		t.Errorf("the next nuc is %v", n)
	}
	s, _ = state.Update(s, state.Keyed{Key: "Escape"})
	if s.Fill != state.NoFill {
		t.Error("Esc does not give the room back")
	}
}
