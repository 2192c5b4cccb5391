package state_test

import (
	"strings"
	"testing"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestAMessageGoesWithTheNextThing: that a walk is closed is said until the keeper goes on
// to something else, by key or pointer.
func TestAMessageGoesWithTheNextThing(t *testing.T) {
	for name, then := range map[string]func(*window){
		"a room by key":     func(w *window) { w.press("Y", state.Alt) },
		"a room by pointer": func(w *window) { w.run("plan") },
		"a day":             func(w *window) { w.press(".", 0) },
		"a line":            func(w *window) { w.press("Down", 0) },
	} {
		w := inTheEvening(t, yardOfTheEvening())
		if w.press("K", state.Alt).press("K", state.Alt); w.Walk != nil && w.Form != nil {
			w.press("Return", state.Ctrl)
		}
		if !strings.Contains(w.Note.Text, "is closed") {
			t.Fatalf("%s: the foot says %q", name, w.Note.Text)
		}
		if then(w); strings.Contains(w.Note.Text, "is closed") {
			t.Errorf("after %s the foot says %q", name, w.Note.Text)
		}
	}
}

// TestAReasonGoesWithWhatItToldOf: the wheel, a key, a letter and a command take down what
// was said beside the pointer.
func TestAReasonGoesWithWhatItToldOf(t *testing.T) {
	for name, m := range map[string]state.Msg{
		"the wheel": state.Wheeled{At: scene.Point{X: 700, Y: 500}, DY: 40},
		"a key":     state.Keyed{Key: "Down"},
		"a letter":  state.Wrote{Rune: 'q'},
		"a room":    state.Ran{Command: "plan"},
	} {
		w := start(t)
		w.send(state.Moved{At: scene.Point{X: 700, Y: 500}, Tag: scene.Tag{Reason: "its card beside"}})
		if w.send(m); w.Hover.Reason != "" {
			t.Errorf("after %s it says %q", name, w.Hover.Reason)
		}
	}
}

// TestANewYardIsShown: once it is in the book, the room shows it and its card.
func TestANewYardIsShown(t *testing.T) {
	w := start(t)
	for y := range w.view().Yards() {
		w.Yards[w.Room] = y.Yard // any
	}
	w.take().fill("new yard", "name=Far Hill", "drive=25").kept()
	shown := w.view().Yard(w.Filled())
	if shown.Name != "Far Hill" || w.Selection.Last() != shown.Yard.Subject() {
		t.Errorf("%q is shown, selected is %v", shown.Name, w.Selection.Last())
	}
	home := w.view().HomeYard().Yard
	w.Yards[w.Room] = home
	if w.take(shown.Yard.Subject()).fill("change yard", "name=Farther Hill").kept(); w.Filled() != home {
		t.Errorf("a yard described anew is shown: %q", w.view().Yard(w.Filled()).Name)
	}
}
