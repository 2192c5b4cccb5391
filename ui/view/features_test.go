package view_test

import (
	"testing"

	"lidmark/ui/scene"
)

// A brook and a track that end at the edge of what is drawn go on beyond it, out of the
// frame; one that ends amid the ground ends there.
func TestABrookGoesOnBeyondTheGround(t *testing.T) {
	s := filled(t, "layout")
	frame := s.LayingAreas().Try
	out := func(p scene.Point) bool { return !frame.Contains(p) }
	water, tracks := 0, 0
	for _, p := range walk(t, window(s), s.Size()) {
		m, ok := p.mark.(scene.Poly)
		if !ok || p.clip != frame || len(m.Points) == 0 {
			continue
		}
		switch first, last := m.Points[0], m.Points[len(m.Points)-1]; m.Stroke.Role {
		case scene.Water:
			if water++; !out(first) || !out(last) {
				t.Errorf("the brook runs from %v to %v in %v", first, last, frame)
			}
		case scene.Track:
			if tracks++; !out(first) || out(last) {
				t.Errorf("the track runs from %v to %v in %v", first, last, frame)
			}
		}
	}
	if water != 1 || tracks != 2 {
		t.Errorf("%d brooks, %d lines of tracks", water, tracks)
	}
}
