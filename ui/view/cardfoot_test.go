package view_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestTheFootOfACardKeepsItsPlace: whatever day is looked at, its buttons begin at the
// same height.
func TestTheFootOfACardKeepsItsPlace(t *testing.T) {
	base := open(t)
	base.Room, base.Width, base.Height = state.Yard, 1280, 800
	colony := book.Subject{}
	for c := range base.Reading().View.Colonies() {
		colony = c.Colony.Subject()
	}
	for name, of := range map[string][]book.Subject{
		"a nuc": {nucNamed(t, base, "F3").Nuc.Nuc.Subject()}, "a batch": {batchNumbered(t, base, 4)}, "a colony": {colony},
		"two nucs": {nucNamed(t, base, "A1").Nuc.Nuc.Subject(), nucNamed(t, base, "A2").Nuc.Nuc.Subject()}, "nothing": nil,
	} {
		stands := map[float64]calendar.Day{}
		for by := calendar.Day(-4); by <= 9; by++ {
			s := base
			s.Day, s.Selection = today+by, state.Select(of...)
			if by == 0 {
				s.Day = 0
			}
			stands[firstButton(t, s)] = by
		}
		if len(stands) != 1 {
			t.Errorf("the buttons of %s stand at different heights, by days from today: %v", name, stands)
		}
	}
}

// firstButton is how high the upmost button of the card stands.
func firstButton(t *testing.T, s state.State) float64 {
	t.Helper()
	y, card := s.Size().H, s.Layout().Card
	for _, p := range walk(t, window(s), s.Size()) {
		if r, ok := p.mark.(scene.Rect); ok && r.Ref.Kind == state.CommandRef && r.Radius > 0 && card.Contains(r.Centre()) {
			y = min(y, r.Y)
		}
	}
	return y
}

// TestALookIsSaidWhole: nothing of what was seen last is left out.
func TestALookIsSaidWhole(t *testing.T) {
	s := open(t)
	s.Room, s.Width, s.Height = state.Yard, 1280, 800
	looks := 0
	for _, n := range s.Reading().Nucs[:40] {
		s.Selection = state.Select(n.Nuc.Nuc.Subject())
		all := cardTexts(t, s)
		for i, text := range all {
			if text != "Last seen" {
				continue
			}
			looks++
			for _, line := range all[i+1 : min(i+9, len(all))] {
				if line == "Due" {
					break
				}
				if strings.HasSuffix(line, "…") {
					t.Errorf("%s: %q is cut", n.Name, line)
				}
			}
		}
	}
	if looks == 0 {
		t.Error("no card says what was seen")
	}
}

// TestTheFrameOfTheDayCutsNoTitle: what the title of a batch says stands on paper of
// its own over the frame, and so does the way back to the yard.
func TestTheFrameOfTheDayCutsNoTitle(t *testing.T) {
	s := filled(t, "batch room")
	s.Width, s.Height = 1280, 800
	late := s
	late.Day, late.Text = today+21, 1.5
	for _, one := range []state.State{s, late} {
		framed(t, one)
	}
}

func framed(t *testing.T, s state.State) {
	t.Helper()
	said, frame := 0, 0
	for _, p := range walk(t, window(s), s.Size()) {
		switch m := p.mark.(type) {
		case scene.Text:
			if strings.Contains(m.Text, "grafted, now") || strings.HasPrefix(m.Text, "Batch ") || m.Text == "back to the yard" {
				said++
			}
		case scene.Rect:
			if m.Fill == scene.None && m.Stroke.Width == 2 && m.H > 100 {
				if frame++; said > 0 {
					t.Error("the frame of the day is drawn over the title")
				}
			}
		}
	}
	if said < 2 || frame == 0 {
		t.Errorf("the title says %d of its texts, with %d frames", said, frame)
	}
}
