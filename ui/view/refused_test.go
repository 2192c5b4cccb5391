package view_test

import (
	"math"
	"strings"
	"testing"

	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// daysAhead are windows of a size on today and on days to come.
func daysAhead(base state.State, size [3]float64) (all []state.State) {
	for _, by := range []calendar.Day{0, 9, 21} {
		s := base
		s.Width, s.Height, s.Text = size[0], size[1], size[2]
		if by > 0 {
			s.Day = today + by
		}
		all = append(all, s)
	}
	return all
}

// TestARefusedButtonSaysWhy in words near it, in Today, Plan and Review and in what fills
// a room, on today and on days ahead: not only beside the pointer.
func TestARefusedButtonSaysWhy(t *testing.T) {
	base := map[string]state.State{"batch": filled(t, "batch room"), "late": filled(t, "late day")}
	base["today"], _ = state.Update(open(t), state.Ran{Command: "today"})
	base["plan"], base["review"] = planning(open(t), state.Ran{Command: "plan"}), reviewing(open(t), state.Ran{Command: "review"})
	refused := 0
	for name, s := range base {
		for _, size := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1920, 1080, 1}} {
			for _, one := range daysAhead(s, size) {
				for _, part := range []state.Part{state.MainPart, state.SidePart} {
					one.Part = part
					refused += refusedIn(t, name, one)
				}
			}
		}
	}
	if refused == 0 {
		t.Error("no button is refused anywhere")
	}
}

// refusedIn counts the dashed buttons of a window, and holds that each says why.
func refusedIn(t *testing.T, name string, s state.State) (n int) {
	t.Helper()
	const near = 150.0 // two rows of buttons, and the reason above or below them
	words := texts(t, window(s), s.Size())
	for _, p := range walk(t, window(s), s.Size()) {
		r, ok := p.mark.(scene.Rect)
		if !ok || r.Ref.Kind != state.CommandRef || r.Stroke.Dash[0] != 3 || !p.clip.Contains(r.Centre()) {
			continue
		}
		n++
		why, _, _ := strings.Cut(r.Reason, ": ")
		said := false
		for _, w := range words {
			said = said || strings.Contains(strings.ToLower(w.Text.Text), strings.ToLower(why)) && math.Abs(w.box.Centre().Y-r.Centre().Y) < near && math.Abs(w.box.Centre().X-r.Centre().X) < state.CardWidth
		}
		if !said {
			t.Errorf("%s at %.0fx%.0f, %.0f %%, day %v: %s is dashed, and nothing near it says %q", name, s.Width, s.Height, 100*s.Text, s.Day, r.Ref.ID, why)
		}
	}
	return n
}

// TestTheBatchOfTheCardFillsTheRoom: with nothing chosen the card of Today is that of the
// batch whose hard hour comes first, and its button leads to it.
func TestTheBatchOfTheCardFillsTheRoom(t *testing.T) {
	s := open(t)
	s.Room, s.Width, s.Height = state.Today, 1280, 800
	want := s.CardBatch()
	if want.IsZero() {
		t.Fatal("no batch has a hard hour")
	}
	s, _ = state.Update(s, state.Ran{Command: "batch room"})
	if s.Fill != state.BatchFill || s.FillOf != want.Subject() {
		t.Errorf("%v fills the room, want %v: %s", s.FillOf, want.Subject(), s.Note.Text)
	}
}
