package state_test

import (
	"testing"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestTheTryOutIsPrinted: the layout that is worked at is what is printed, with the day
// from which it is the plan; Ctrl+P prints it too, and elsewhere it is said how to get
// one.
func TestTheTryOutIsPrinted(t *testing.T) {
	w := keeper(t).run("print layout")
	if w.Busy != nil || w.Note.Text != "Print the layout: lay a yard out first with Alt+Z" {
		t.Fatalf("printed without a layout: %q", w.Note.Text)
	}
	w = layingOut(t)
	w.dragStand("A", scene.Point{X: 30, Y: 20})
	w.run("plan layout").settle()
	w.run("print layout")
	var prints []state.Print
	for _, e := range w.effects {
		if p, ok := e.(state.Print); ok {
			prints = append(prints, p)
		}
	}
	if len(prints) != 1 || w.Busy == nil {
		t.Fatalf("printed %d times: %q", len(prints), w.Note.Text)
	}
	p := prints[0]
	if p.Paper != state.LayoutPaper || p.Layout.Name != w.Laying.Name || p.Layout.From.IsZero() || p.Layout.Yard != w.Laying.Yard {
		t.Errorf("printed is %q from %v as paper %d", p.Layout.Name, p.Layout.From, p.Paper)
	}
	if got, want := p.Layout.Try.Stands[0].At, w.Laying.Try.Stands[0].At; got != want {
		t.Errorf("A is printed at %v, stands at %v", got, want)
	}
	w.send(state.Worked{})
	if w.press("P", state.Ctrl); w.Busy == nil {
		t.Errorf("Ctrl+P prints nothing: %q", w.Note.Text)
	}
}
