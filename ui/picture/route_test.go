package picture_test

import (
	"strings"
	"testing"

	"lidmark/ui/paint"
	"lidmark/ui/picture"
	"lidmark/ui/scene"
	"lidmark/ui/view"
)

// TestNoReasonIsCut: in the typeface of the window, at any size of window and text,
// each task of the day says what to do and why in full.
func TestNoReasonIsCut(t *testing.T) {
	p, err := paint.New()
	if err != nil {
		t.Fatal(err)
	}
	for _, size := range [][3]float64{{800, 560, 1}, {800, 560, 1.5}, {800, 560, 2}, {1280, 800, 1}, {1280, 800, 1.5}, {1440, 900, 1}, {1440, 900, 1.15}, {1920, 1080, 1}, {1920, 1080, 1.5}} {
		s, err := picture.Enter(demoState(t), "today")
		if err != nil {
			t.Fatal(err)
		}
		s.Width, s.Height, s.Text = size[0], 9000, size[2]
		var b strings.Builder
		var into func(marks []scene.Mark)
		into = func(marks []scene.Mark) {
			for _, m := range marks {
				switch m := m.(type) {
				case scene.Pane:
					into(m.Marks)
				case scene.Text:
					b.WriteString(m.Text + " ")
				}
			}
		}
		into(view.Window(s, p).Marks)
		tasks := s.Reading().Tasks()
		for _, task := range tasks {
			if !strings.Contains(b.String(), task.Title) || !strings.Contains(b.String(), s.Units.Say(task.Why)) {
				t.Errorf("%g wide, text %g: not said in full: %q, %q", size[0], size[2], task.Title, task.Why)
			}
		}
		if len(tasks) == 0 {
			t.Fatal("there is nothing to do")
		}
	}
}
