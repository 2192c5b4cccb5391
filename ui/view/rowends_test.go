package view_test

import (
	"strings"
	"testing"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestTheEndsOfARowHaveTheirNames: in a small window with large text both ends of each row
// of single boxes have their names, on the map and in a try-out, each nearest its own lid.
func TestTheEndsOfARowHaveTheirNames(t *testing.T) {
	laid := filled(t, "layout")
	laid.Width, laid.Height, laid.Text = 1280, 800, 1.5
	turned := turnedMap(t, state.ByCondition)
	for room, s := range map[string]state.State{"layout": laid, "map": turned} {
		frame := s.LayingAreas().Try
		if room == "map" {
			frame = s.Layout().MapFrame()
		}
		lids := map[string]scene.Area{} // by what they say
		for _, p := range walk(t, window(s), s.Size()) {
			if m, ok := p.mark.(scene.Lid); ok && p.clip == frame {
				lids[m.Reason] = scene.Around(m.At, m.Size)
			}
		}
		named := map[string]bool{}
		for _, w := range texts(t, window(s), s.Size()) {
			if w.clip != frame || !strings.Contains(" N1 N16 P1 P12 ", " "+w.Text.Text+" ") {
				continue
			}
			near, says := 1e9, ""
			for reason, lid := range lids {
				if d := nearestOf(w.box, []scene.Area{lid}); d < near {
					near, says = d, reason
				}
			}
			if named[w.Text.Text] = true; !strings.HasPrefix(says, w.Text.Text+" ") {
				t.Errorf("%s: %s lies nearest %q", room, w.Text.Text, says)
			}
		}
		if len(named) != 4 {
			t.Errorf("%s: only %v have their names", room, named)
		}
	}
}
