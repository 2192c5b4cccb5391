package main

import (
	"bytes"
	"io"
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
	for _, command := range []string{"print route", "print dense", "print labels", "print batch", "print wallet", "print week", "print cages", "print crew", "print layout"} {
		if command == "print layout" {
			w.run("layout")
			w.settle()
		}
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

// TestPapersLieBesideTheBook: one of the same name gives way, those of other days
// are kept, and the foot names the file whole. The demo's are gone with it.
func TestPapersLieBesideTheBook(t *testing.T) {
	path := aBook(t)
	w := newWorld(t, t.TempDir())
	w.opens(path)
	folder := strings.TrimSuffix(path, ".lidmark") + ".sheets"
	check(t, os.MkdirAll(folder, 0o777))
	check(t, os.WriteFile(filepath.Join(folder, "Route Mon 10 May.pdf"), []byte("of yesterday"), 0o666))
	for range 2 {
		w.run("print route")
		w.settle()
	}
	all, err := os.ReadDir(folder)
	check(t, err)
	made := ""
	for _, f := range all {
		if f.Name() != "Route Mon 10 May.pdf" {
			made = filepath.Join(folder, f.Name())
		}
	}
	if len(all) != 2 || made == "" || !strings.HasSuffix(w.state.Note.Text, made) {
		t.Errorf("beside the book lie %v, the foot says %q", all, w.state.Note.Text)
	}
	t.Setenv("TMPDIR", t.TempDir())
	w.do(state.OpenDemo{})
	w.settle()
	w.run("print route")
	w.settle()
	if left, _ := os.ReadDir(os.Getenv("TMPDIR")); len(left) != 1 {
		t.Fatalf("of the demo lie there %v", left)
	}
	w.desk.Close(io.Discard)
	if left, _ := os.ReadDir(os.Getenv("TMPDIR")); len(left) != 0 {
		t.Errorf("left behind: %v", left)
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
