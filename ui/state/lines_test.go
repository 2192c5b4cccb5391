package state_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// A line typed for one nuc stays with it: another nuc that is selected takes
// neither its text nor the caret, and Enter there writes nothing of it.
func TestALineStaysWithItsNuc(t *testing.T) {
	w := onFile(t).run("yard")
	w.tap(w.ref("C3"), 0).write("s4 h2")
	w.tap(w.ref("A1"), 0)
	if typed := w.Typed(w.CardField()); typed != "" || w.Focus != (scene.Ref{}) {
		t.Fatalf("A1 has the line %q, and the keys go to %v", typed, w.Focus)
	}
	w.press("Enter")
	if len(w.Pen.Sent) != 0 {
		t.Fatalf("Enter at A1 wrote %q", w.Pen.Sent[0].Words)
	}
	w.press("Escape").tap(w.ref("C3"), 0)
	if typed := w.Typed(w.CardField()); typed != "s4 h2" {
		t.Fatalf("C3 has kept %q", typed)
	}
	w.send(state.Released{}).tap(state.FieldNamed(w.CardField()), 0).press("Enter")
	if len(w.Pen.Sent) != 1 {
		t.Fatalf("%d deeds are sent from C3", len(w.Pen.Sent))
	}
	look, ok := w.Pen.Sent[0].Entries[0].Fact.(book.Looked)
	if !ok || look.Nuc != w.nuc("C3").Nuc.Nuc {
		t.Errorf("written is %+v", w.Pen.Sent[0].Entries[0].Fact)
	}
}

// What waits in the lines of several nucs is there again after the program was
// begun anew, each with its nuc; a letter goes on where a line was left.
func TestLinesWaitOverARestart(t *testing.T) {
	w := onFile(t).run("yard")
	w.tap(w.ref("C3"), 0).write("s4 h2")
	w.tap(w.ref("A1"), 0).write("v")
	all := w.drafts()
	got := w.back(all[len(all)-1]).run("yard")
	for name, want := range map[string]string{"C3": "s4 h2", "A1": "v", "A2": ""} {
		got.tap(got.ref(name), 0)
		if typed := got.Typed(got.CardField()); typed != want {
			t.Errorf("%s has %q, want %q", name, typed, want)
		}
	}
	got.tap(got.ref("C3"), 0).write("f1")
	if typed := got.Typed(got.CardField()); typed != "s4 h2 f1" {
		t.Errorf("a letter makes of the line that waits %q", typed)
	}
}
