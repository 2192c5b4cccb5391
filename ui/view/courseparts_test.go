package view_test

import (
	"testing"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestStripsAreSolidAndSeen: no strip of the table or of a card is hatched, since a
// hatch says "not seen yet", and no part of one is so narrow that it is all outline.
func TestStripsAreSolidAndSeen(t *testing.T) {
	s := open(t)
	s.Room, s.Pane = state.Yard, state.Table
	for _, width := range []float64{1440, 1920} {
		s.Width, s.Height = width, 4000
		parts := 0
		for _, p := range walk(t, window(s), s.Size()) {
			r, ok := p.mark.(scene.Rect)
			if !ok || r.Area.H != 14 || r.Stroke.Role != scene.Ink || p.clip.X > s.Layout().Card.X {
				continue
			}
			parts++
			if r.Hatch.Role != scene.None {
				t.Errorf("at %v a strip is hatched at %v", width, r.Area)
			}
			if r.Area.W < 4.5 {
				t.Errorf("at %v a part is %v wide at %v", width, r.Area.W, r.Area)
			}
		}
		if parts < 100 {
			t.Errorf("at %v there are %d parts of strips", width, parts)
		}
	}
}

// TestPartsLookUnlike: on a card no two parts of a nuc have the same fill.
func TestPartsLookUnlike(t *testing.T) {
	s := open(t)
	most := 0
	for _, n := range s.Reading().Nucs {
		one := onCard(s, n)
		fills, swatches := map[scene.Role]int{}, 0
		for _, p := range walk(t, window(one), one.Size()) {
			if r, ok := p.mark.(scene.Rect); ok && r.Area.W == 15 && r.Area.H == 15 {
				fills[r.Fill]++
				swatches++
			}
		}
		if len(fills) != swatches {
			t.Errorf("%s: %d parts look like %d", n.Name, swatches, len(fills))
		}
		most = max(most, swatches)
	}
	if most < 4 {
		t.Fatalf("at most %d parts on a card", most)
	}
}
