package state_test

import (
	"reflect"
	"strings"
	"testing"

	"lidmark/domain/book"
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

// What is chosen on the ground gets other measures, another place, or one of its points set
// elsewhere, and undo takes that back; an outline stays closed.
func TestWhatIsDrawnIsChanged(t *testing.T) {
	w := layingOut(t).press("T").run("draw boundary")
	for _, p := range [][2]float64{{0, 0}, {10, 0}, {10, 8}} {
		w.onGround(p[0], p[1])
	}
	w.press("Enter").run("draw tree").onGround(20, 20).press("Enter").settle().run("draw tree")
	all := w.features()
	outline, tree := all[len(all)-2], all[len(all)-1]
	now := func(f book.FeatureDrawn) book.FeatureDrawn {
		for _, g := range w.features() {
			if g.Feature == f.Feature {
				return g
			}
		}
		t.Fatalf("%v is gone", f.What)
		return f
	}
	change := func(f book.FeatureDrawn, field, typed string) {
		w.Selection = state.Select(f.Feature.Subject())
		w.tap(state.FieldNamed(field), 0).write(typed).press("Enter").settle()
	}
	change(tree, state.DrawHeight, "9")
	change(tree, state.FeatureMove, "2 -1.5")
	want := tree
	want.Height, want.Points = 9, []book.Point{{X: tree.Points[0].X + 2, Y: tree.Points[0].Y - 1.5}}
	if got := now(tree); !reflect.DeepEqual(got, want) {
		t.Errorf("the tree is %+v, want %+v: %s", got, want, w.Note.Text)
	}
	change(outline, state.FeaturePoint, "1: 1 2")
	if got := now(outline).Points; len(got) != 4 || got[0] != (book.Point{X: 1, Y: 2}) || got[3] != got[0] || got[1] != outline.Points[1] {
		t.Errorf("the boundary runs %v", got)
	}
	if words, _ := w.UndoWords(); words != "boundary changed on the ground" {
		t.Errorf("undo says %q", words)
	}
	if w.press("Z", state.Ctrl).settle(); now(outline).Points[0] != outline.Points[0] {
		t.Errorf("undone, the boundary runs %v", now(outline).Points)
	}
}
