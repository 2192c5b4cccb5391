package main

import (
	"bytes"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"lidmark/ui/state"
)

// TestPapersAreShown: whatever is printed becomes a PDF file that is shown, and
// the window says so.
func TestPapersAreShown(t *testing.T) {
	t.Setenv("TMPDIR", t.TempDir())
	w := newWorld(t, t.TempDir())
	w.do(state.OpenDemo{})
	w.settle()
	batches := w.state.Reading().Batches()
	if len(batches) == 0 {
		t.Fatal("the demo season has no batch")
	}
	w.state.Selection = state.Select(batches[0].Batch.Subject())
	for _, command := range []string{"print route", "print dense", "print labels", "print batch", "print wallet"} {
		before := len(w.told)
		w.send(state.Ran{Command: command})
		if w.state.Busy == nil {
			t.Fatalf("%s: nothing is under way", command)
		}
		w.desk.works.wait(func() {})
		shown := ""
		for _, m := range w.told[before:] {
			if worked, ok := m.(state.Worked); ok && !worked.Note.Bad {
				shown = worked.Show
			}
		}
		w.settle()
		text, err := os.ReadFile(shown)
		if err != nil || !bytes.HasPrefix(text, []byte("%PDF-")) || filepath.Ext(shown) != ".pdf" {
			t.Errorf("%s: shown is %q: %v", command, shown, err)
		}
		if w.state.Busy != nil || !strings.Contains(w.state.Note.Text, "page") {
			t.Errorf("%s: busy %v, the foot says %q", command, w.state.Busy, w.state.Note.Text)
		}
	}
}

// TestAPaperThatCannotBeWrittenIsTold: without a folder for it there is a
// sentence, and no half of a file.
func TestAPaperThatCannotBeWrittenIsTold(t *testing.T) {
	t.Setenv("TMPDIR", filepath.Join(t.TempDir(), "none"))
	w := newWorld(t, t.TempDir())
	w.do(state.OpenDemo{})
	w.settle()
	w.send(state.Ran{Command: "print route"})
	w.settle()
	if !w.state.Note.Bad || !strings.HasPrefix(w.state.Note.Text, "not printed: ") || w.state.Busy != nil {
		t.Errorf("the foot says %+v, busy %v", w.state.Note, w.state.Busy)
	}
	if slices.ContainsFunc(w.told, func(m state.Msg) bool { k, ok := m.(state.Worked); return ok && k.Show != "" }) {
		t.Error("something is shown")
	}
}
