package view_test

import (
	"strings"
	"testing"

	"lidmark/domain/bee"
	"lidmark/ui/scene"
	"lidmark/ui/state"
	"lidmark/ui/view"

	"pgregory.net/rapid"
)

// filled is the demo season with something that fills a room.
func filled(t testing.TB, command string) state.State {
	s := open(t)
	for _, b := range s.Reading().Batches() {
		if command == "batch room" && len(s.Reading().NucsOf(b.Batch)) > 0 {
			s.Selection = state.Select(b.Batch.Subject())
		}
	}
	if command == "course room" {
		s.Selection = state.Select(nucNamed(t, s, "D2").Nuc.Nuc.Subject())
	}
	s, _ = state.Update(s, state.Ran{Command: command})
	if s.Fill == state.NoFill {
		t.Fatalf("%s fills no room", command)
	}
	return s
}

// anySize draws a size of the window.
func anySize(t *rapid.T, s state.State) state.State {
	size := rapid.SampledFrom([][3]float64{{800, 560, 1}, {1280, 800, 1}, {1280, 800, 1.5}, {1440, 900, 1}, {1920, 1080, 1}, {1920, 1080, 1.5}}).Draw(t, "size")
	s.Width, s.Height, s.Text = size[0], size[1], size[2]
	s.Dark = rapid.Bool().Draw(t, "dark")
	l := s.Layout()
	all, shown := s.FillHeight(l)
	s.Scroll = map[state.Place]float64{state.FillPlace: rapid.Float64Range(0, 1).Draw(t, "scroll") * max(0, all-shown)}
	return s
}

// TestFilledRoomsAreReadable: neither on the late day nor in the room of a batch do
// words overlap, and what stands there is in its pane.
func TestFilledRoomsAreReadable(t *testing.T) {
	for _, command := range []string{"late day", "batch room", "course room"} {
		base := filled(t, command)
		rapid.Check(t, func(rt *rapid.T) {
			s := anySize(rt, base)
			l := s.Layout()
			all := texts(t, window(s), s.Size())
			for i, a := range all {
				if a.Text.Text == "" || a.box.Y < l.Main.Y || a.box.Bottom() > l.Foot.Y {
					continue
				}
				for _, b := range all[i+1:] {
					if cut := a.box.Intersect(b.box).Intersect(a.clip).Intersect(b.clip); b.Text.Text != "" && cut.W > 0.5 && cut.H > 3 {
						rt.Fatalf("%s: %q %v and %q %v overlap", command, a.Text.Text, a.box, b.Text.Text, b.box)
					}
				}
			}
		})
	}
}

// TestTheCurvesBeginWithAllCells: every way out starts with what is together now.
func TestTheCurvesBeginWithAllCells(t *testing.T) {
	s := filled(t, "late day")
	late, ok := s.FilledLate()
	if !ok || len(late.Curves) != len(late.Ways) || len(late.Curves) < 4 {
		t.Fatalf("%d curves of %d ways", len(late.Curves), len(late.Ways))
	}
	for _, c := range late.Curves {
		if first := c.Kept[0]; first < float64(late.Cells)-1e-6 {
			t.Errorf("%s begins with %v of %d", c.Way, first, late.Cells)
		}
	}
	all := 0
	for _, f := range state.FateOf(s.Reading().View.Batch(late.Batch)) {
		all += f.N
	}
	if capped := s.Reading().View.Batch(late.Batch).Capped.N; all != capped {
		t.Errorf("the boxes count %d cells, %d were capped", all, capped)
	}
}

// TestEveryButtonOfAFilledRoomRuns: what a late day or a batch offers exists, and
// what cannot be done now says why.
func TestEveryButtonOfAFilledRoomRuns(t *testing.T) {
	for _, command := range []string{"late day", "batch room"} {
		s := filled(t, command)
		ran := 0
		for _, p := range walk(t, window(s), s.Size()) {
			r, ok := p.mark.(scene.Rect)
			if !ok || r.Ref.Kind != state.CommandRef || r.Y < s.Layout().Ribbon.Bottom() || r.Y >= s.Layout().Foot.Y {
				continue
			}
			c, known := state.CommandNamed(r.Ref.ID)
			if !known {
				t.Errorf("%s: a button runs %q, which is no command", command, r.Ref.ID)
				continue
			}
			if why := c.Reason(s); why != "" {
				if !strings.Contains(r.Reason, why) {
					t.Errorf("%s: %s says %q, want %q", command, c.Name, r.Reason, why)
				}
				continue
			}
			next, effects := state.Update(s, state.Ran{Command: c.Name})
			if next.Form == nil && next.Fill == s.Fill && len(effects) == 0 && c.Name != "keys" {
				t.Errorf("%s: %s does nothing", command, c.Name)
			}
			if next.Form != nil && next.Layout().Card.Empty() && !next.Layout().Over {
				t.Errorf("%s: the form of %s has no room", command, c.Name)
			}
			ran++
		}
		if ran < 3 {
			t.Errorf("%s: only %d buttons run", command, ran)
		}
	}
}

// TestTheStepsOfTheEmergencyAreWhole: in every size each step is said in full and can
// be scrolled to, and the counts stand above the buttons.
func TestTheStepsOfTheEmergencyAreWhole(t *testing.T) {
	s := filled(t, "late day")
	for _, size := range [][3]float64{{800, 560, 1}, {1280, 800, 1}, {1280, 800, 1.5}, {1440, 900, 1}, {1920, 1080, 1.5}} {
		s.Width, s.Height, s.Text = size[0], size[1], size[2]
		var seen strings.Builder
		most := view.CardMost(s, typewriter{})
		for _, scroll := range []float64{0, most / 4, most / 2, 3 * most / 4, most} {
			s.Scroll = map[state.Place]float64{state.CardPlace: scroll}
			count, button := 0.0, 0.0
			for _, a := range texts(t, window(s), s.Size()) {
				switch {
				case a.box.X < s.Layout().Card.X || a.box.Y >= s.Layout().Foot.Y:
					continue
				case a.Text.Text == "A virgin walked":
					button = a.box.Y
				case strings.HasPrefix(a.Text.Text, "Count as you go"):
					count = a.box.Bottom()
				}
				if a.box.Y >= a.clip.Y && a.box.Bottom() <= a.clip.Bottom() {
					seen.WriteString(a.Text.Text + " ")
				}
			}
			if count == 0 || button < count {
				t.Errorf("%v: the counts end at %v, the buttons begin at %v", size, count, button)
			}
		}
		for _, step := range bee.Triage() {
			for word := range strings.FieldsSeq(step.Means + " " + step.Do) {
				if !strings.Contains(seen.String(), word) {
					t.Errorf("%v: %q of %q is never whole in sight", size, word, step.Do)
				}
			}
		}
	}
}

// TestBothHoursOfTheLateDayAreNamed: the curves say until when they reach, the table
// by when it counts, and no line of an hour runs through words; all in every size.
func TestBothHoursOfTheLateDayAreNamed(t *testing.T) {
	s := filled(t, "late day")
	late, _ := s.FilledLate()
	zone := s.Reading().View.Zone()
	ends, next := late.Ends().In(zone).Format("Mon 15:04"), late.Next.In(zone).Format("Mon 15:04")
	for _, size := range [][3]float64{{800, 560, 1}, {1280, 800, 1}, {1280, 800, 1.5}, {1440, 900, 1}, {1920, 1080, 1}, {1920, 1080, 1.5}} {
		s.Width, s.Height, s.Text = size[0], size[1], size[2]
		main := s.Layout().Main
		var words []written
		var lines []scene.Line
		var said strings.Builder
		for _, w := range texts(t, window(s), s.Size()) {
			if main.Contains(w.At) {
				said.WriteString(w.Text.Text + "\n")
				words = append(words, w)
			}
		}
		for _, p := range walk(t, window(s), s.Size()) {
			if l, ok := p.mark.(scene.Line); ok && l.From.X == l.To.X && l.Stroke.Width == 2 && main.Contains(l.From) {
				lines = append(lines, l)
			}
		}
		if !strings.Contains(said.String(), "until "+ends) || !strings.Contains(said.String(), "kept of 25 by "+next) || strings.Contains(said.String(), "…") && size[0] > 1000*size[2] {
			t.Errorf("%v: it does not name %s and %s, or cuts words:\n%s", size, ends, next, said.String())
		}
		if len(lines) < 3 {
			t.Fatalf("%v: %d hours are marked", size, len(lines))
		}
		for _, l := range lines {
			for _, w := range words {
				if l.From.X > w.box.X && l.From.X < w.box.Right() && w.box.Bottom() > l.From.Y+2 && w.box.Y < l.To.Y {
					t.Errorf("%v: a line at %v runs through %q", size, l.From, w.Text.Text)
				}
			}
		}
	}
}

// TestPaleBandsHaveAnEdge: what only a pale fill shows on a late day has an edge or a bar
// in a colour that stands out from the panel, as the tests of the theme hold it.
func TestPaleBandsHaveAnEdge(t *testing.T) {
	s := filled(t, "late day")
	main, bands, nights, bars := s.Layout().Main, 0, 0, 0
	for _, p := range walk(t, window(s), s.Size()) {
		switch m := p.mark.(type) {
		case scene.Poly:
			if m.Fill == scene.Sunk {
				bands++
				if m.Stroke.Role != scene.Bar || m.Stroke.Width < 1 {
					t.Errorf("the band has the edge %+v", m.Stroke)
				}
			}
		case scene.Rect:
			if m.Fill == scene.Sunk && m.Clear > 0 && main.Contains(m.Centre()) {
				nights++
			}
			if m.Fill == scene.Bar && m.H == 4 && main.Contains(m.Centre()) {
				bars++
			}
		}
	}
	if bands != 1 || nights == 0 || bars != nights {
		t.Errorf("%d bands, %d nights with %d bars", bands, nights, bars)
	}
}
