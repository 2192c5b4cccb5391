package state_test

import (
	"strings"
	"testing"

	"lidmark/ui/state"
)

// With the tools of the ground out what is drawn is in the book, and undo strikes that;
// with those of the stands it takes back a step of the try-out.
func TestUndoWithTheToolsOfTheGround(t *testing.T) {
	w := layingOut(t)
	w.tap(state.TriedStand(w.standOf("A").Stand), 0).press("]").press("T")
	were := len(w.features())
	w.run("draw tree").onGround(20, 20).press("Enter").settle()
	if words, ok := w.UndoWords(); !ok || !strings.Contains(words, "tree") {
		t.Errorf("undo says %q", words)
	}
	if w.press("Z", state.Ctrl).settle(); len(w.features()) != were {
		t.Errorf("undone, and %d features are there, were %d: %s", len(w.features()), were, w.Note.Text)
	}
	w.press("T")
	if words, ok := w.UndoWords(); !ok || !strings.Contains(words, "in the try-out") {
		t.Errorf("undo says %q", words)
	}
	if w.press("Z", state.Ctrl); len(w.LayoutSheet().Changes) != 0 {
		t.Error("the step of the try-out is not taken back")
	}
}

func TestWhatTheGroundAsks(t *testing.T) {
	w := layingOut(t).press("T")
	fields := func() (all []string) {
		for _, a := range w.GroundAsks() {
			all = append(all, a.Field)
		}
		return all
	}
	if got := fields(); len(got) != 1 || got[0] != state.DrawWind {
		t.Errorf("asked at first: %v", got)
	}
	w.run("draw hedge")
	if got := fields(); len(got) != 4 || w.DrawWord() != "hedge" || !w.ToolOn("draw hedge") || w.ToolOn("draw wall") {
		t.Errorf("asked of a hedge: %v", got)
	}
	w.press("T")
	if w.Laying.Ground || w.DrawWord() != "" {
		t.Error("the tool is still taken up")
	}
	if w.GroundChosen() != "" {
		t.Error("something is chosen on the ground")
	}
	w.Selection = state.Select(w.features()[0].Feature.Subject())
	if w.GroundChosen() == "" {
		t.Error("what is chosen has no name")
	}
}
