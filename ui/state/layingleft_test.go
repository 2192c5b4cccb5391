package state_test

import (
	"strings"
	"testing"

	"lidmark/ui/state"
)

// TestAnUnkeptTryOutIsNotLost: another one that was kept is taken up over it; the foot says
// so, undo takes it up again, and with the other it is in the draft.
func TestAnUnkeptTryOutIsNotLost(t *testing.T) {
	w := layingOut(t)
	w.Book, w.Pen.Writer = &state.Book{Season: w.Book.Season, Name: w.Book.Name, Path: "/books/hill.lidmark"}, "Ida"
	turn := func(letter string) { w.tap(state.TriedStand(w.standOf(letter).Stand), 0).press("]") }
	turn("A")
	w.run("keep layout").settle().run("new layout")
	kept := w.TriesLines()[0]
	turn("B")
	name, stood := w.Laying.Name, w.standOf("B")
	if w.tap(kept.Ref, 0); w.Laying.Name != kept.Name || !strings.Contains(w.Note.Text, name) {
		t.Fatalf("taken up %q, the foot says %q", w.Laying.Name, w.Note.Text)
	}
	if got := w.Draft().Tries; len(got) != 1 || got[0].Name != name {
		t.Errorf("in the draft: %+v", got)
	}
	turn("A")
	got := w.back(w.Draft()).press("Z", state.Alt)
	if got.Laying.Name != kept.Name {
		t.Errorf("here again first: %q", got.Laying.Name)
	}
	for _, one := range []*window{got.press("Z", state.Ctrl), w.press("Z", state.Ctrl).press("Z", state.Ctrl)} {
		if one.Laying.Name != name || one.standOf("B") != stood {
			t.Errorf("undo leads to %q", one.Laying.Name)
		}
	}
}
