package view_test

import (
	"testing"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestAQuestionStaysInItsBox: however long a question and its answers are, at any
// size of the window and its text.
func TestAQuestionStaysInItsBox(t *testing.T) {
	asked := &state.Asked{
		Asks: "A1 was given a cell; the book has a laying queen there since Sat 15 May. The old queen?",
		Answers: []state.Option{
			{Value: "1", Word: "gone, not known when"}, {Value: "2", Word: "taken out before, not written"}, {Value: "3", Word: "wrong nuc, leave this line"},
		},
	}
	for _, size := range [][2]float64{{800, 560}, {1280, 800}, {1920, 1080}} {
		for _, text := range []float64{1, 1.5} {
			s := open(t)
			s, _ = state.Update(s, state.Resized{Width: size[0], Height: size[1]})
			s.Text, s.Asked = text, asked
			var sheet scene.Area
			for _, p := range walk(t, window(s), s.Size()) {
				if r, ok := p.mark.(scene.Rect); ok && r.Fill == scene.ActTint && r.Stroke.Role == scene.Act {
					sheet = r.Area // the one drawn last
				}
			}
			said := 0
			all := texts(t, window(s), s.Size())
			for _, w := range all[len(all)-8:] {
				if !sheet.Contains(w.At) {
					continue
				}
				said++
				if w.box.X < sheet.X || w.box.Right() > sheet.Right() || w.box.Y < sheet.Y || w.box.Bottom() > sheet.Bottom() {
					t.Errorf("at %v, text %g: %q runs out of its box", size, text, w.Text.Text)
				}
			}
			if least := 1 + 2*len(asked.Answers) + 1; said < least {
				t.Errorf("at %v, text %g: %d texts in the box, want %d", size, text, said, least)
			}
		}
	}
}
