package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"lidmark/ui/state"
)

// TestNastyFilesAreRefusedInWords: a book that is a folder, a cut workbook or a
// list with zero bytes crashes nothing, opens nothing and says what to do.
func TestNastyFilesAreRefusedInWords(t *testing.T) {
	dir := t.TempDir()
	write := func(name, text string) string {
		path := filepath.Join(dir, name)
		check(t, os.WriteFile(path, []byte(text), 0o600))
		return path
	}
	folder := filepath.Join(dir, "folder.lidmark")
	check(t, os.Mkdir(folder, 0o700))
	lists := filepath.Join(dir, "folder.csv")
	check(t, os.Mkdir(lists, 0o700))
	for _, e := range []state.Effect{
		state.OpenBook{Path: folder},
		state.OpenBook{Path: write("empty.lidmark", "")},
		state.OpenBook{Path: write("text.lidmark", "SQLite format 3\x00")},
		state.OpenBook{Path: filepath.Join(dir, strings.Repeat("long", 1<<10)+".lidmark")},
		state.OpenBook{Path: "a\x00b.lidmark"},
		state.ReadList{Path: lists},
		state.ReadList{Path: write("cut.xlsx", "PK\x03\x04\x14\x00cut")},
		state.ReadList{Path: write("nothing.xlsx", "")},
		state.ReadList{Path: filepath.Join(dir, "none.csv")},
	} {
		w := newWorld(t, t.TempDir())
		w.do(e)
		w.settle()
		note := w.state.Note
		if !note.Bad || w.state.Book != nil || w.state.Bring != nil || strings.Contains(note.Text, dir) {
			t.Errorf("%.60v: the window says %.200q, book %v", e, note.Text, w.state.Book != nil)
		}
	}
	for _, text := range []string{"Nuc,State\x00\nA1,vir\x00gin\n", "", "\"", "\xff\xfe", strings.Repeat("\"A1\n", 100)} {
		w := newWorld(t, t.TempDir())
		w.do(state.ReadList{Path: write("list.csv", text)})
		w.settle()
		if w.state.Book != nil || w.state.Bring == nil && !w.state.Note.Bad {
			t.Errorf("%.40q is neither shown nor refused", text)
		}
	}
}
