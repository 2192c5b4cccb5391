package view_test

import (
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
	"lidmark/ui/view"
)

// TestTheLegendExplainsEverySignOnLids: whatever stands on a lid in sight, the legend
// below says what it means, in small windows too.
func TestTheLegendExplainsEverySignOnLids(t *testing.T) {
	for _, pane := range []state.Pane{state.Wall, state.Lids, state.Split} {
		for _, size := range [][3]float64{{800, 560, 1}, {1100, 700, 1}, {1280, 800, 1}, {1280, 800, 1.5}, {1920, 1080, 1}} {
			s := open(t)
			s.Room, s.Pane, s.Text = state.Yard, pane, size[2]
			s, _ = state.Update(s, state.Resized{Width: size[0], Height: size[1]})
			l := s.Layout()
			said, wanted := map[string]bool{}, map[string]bool{}
			for _, p := range walk(t, view.Window(s, state.Reckoner{}), s.Size()) {
				switch m := p.mark.(type) {
				case scene.Text:
					said[m.Text] = said[m.Text] || l.Main.Contains(m.At)
				case scene.Lid:
					if !l.Main.Contains(m.At) || !p.clip.Contains(m.At) || m.Blank {
						continue
					}
					wanted[book.Condition(m.Condition).String()] = true
					wanted["not seen yet"] = wanted["not seen yet"] || !m.Seen
					wanted["need you"] = wanted["need you"] || m.NeedsYou
					wanted["caught, brood left"] = wanted["caught, brood left"] || m.Caught
					for stroke, word := range []string{book.Settled: "settled", book.Watch: "watch", book.Act: "act"} {
						wanted[word] = wanted[word] || word != "" && m.Paint == scene.Paint(stroke)
					}
				}
			}
			if len(wanted) < 8 {
				t.Fatalf("%v: only %v stands on lids", size, wanted)
			}
			for word, stands := range wanted {
				if stands && word != "" && !said[word] {
					t.Errorf("form %d, %v: the legend does not say %q", pane, size, word)
				}
			}
		}
	}
}

// TestTroublesComeFirstInALineOfTheLegend: below a map that fills the room not all has
// room; what is wrong stands before what is well.
func TestTroublesComeFirstInALineOfTheLegend(t *testing.T) {
	s := open(t)
	s.Room, s.Pane = state.Yard, state.Map
	s, _ = state.Update(s, state.Resized{Width: 1280, Height: 800})
	var words []string
	for _, w := range texts(t, window(s), s.Size()) {
		if s.Layout().Map.Contains(w.At) && w.Size == 13 {
			words = append(words, w.Text.Text)
		}
	}
	for _, c := range book.Conditions() {
		if i := slices.Index(words, c.String()); c.Trouble() && i >= 0 && i > slices.Index(words, book.NoQueen.String()) {
			t.Errorf("%q stands behind the conditions that are well: %q", c, words)
		}
	}
	if !slices.Contains(words, book.DroneLayer.String()) {
		t.Errorf("the drone layer is left out: %q", words)
	}
}

// TestWordsOfTheWallDoNotOverlap: names and counts before the lids may take two lines
// each; sections are as high as these need.
func TestWordsOfTheWallDoNotOverlap(t *testing.T) {
	for heads := range 4 {
		for _, size := range [][2]float64{{800, 560}, {1280, 800}} {
			s := open(t)
			s.Room, s.Pane, s.Heads = state.Yard, state.Wall, state.Heads(heads)
			s, _ = state.Update(s, state.Resized{Width: size[0], Height: size[1]})
			l := s.Layout()
			var all []written
			for _, w := range texts(t, window(s), s.Size()) {
				if l.Main.Contains(w.At) && w.At.X < l.Main.X+state.WallNames-10 && w.At.Y < l.Main.Bottom()-s.Wall(l).Legend {
					all = append(all, w)
				}
			}
			for i, a := range all {
				for _, b := range all[:i] {
					if a.box.Inset(1).Overlaps(b.box.Inset(1)) {
						t.Errorf("%v: %q and %q overlap", size, a.Text.Text, b.Text.Text)
					}
				}
			}
		}
	}
}
