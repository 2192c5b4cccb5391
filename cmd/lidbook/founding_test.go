package main

import (
	"io"
	"os"
	"path/filepath"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// A book whose first entries are refused leaves nothing behind.
func TestUnmade(t *testing.T) {
	folder := t.TempDir()
	a := &app{now: morning, out: io.Discard, errs: io.Discard}
	g := newIDs(a.now, nil)
	nonsense := book.YardDescribed{Yard: book.YardID(g.Next())} // without a name
	if err := a.found(filepath.Join(folder, "hill.lidmark"), g.Entries(calendar.Instantly(morning), morning, "", nonsense)); err == nil {
		t.Fatal("a yard without a name was written")
	}
	left, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	if len(left) > 0 {
		t.Errorf("left behind: %v", left)
	}
}

func TestFileName(t *testing.T) {
	for yard, want := range map[string]string{
		"Hill": "hill", "Far Hill": "far-hill", "Åre / Øst": "åre-øst", "../../x": "x", "..": "book", "a\x00b": "a-b", " North 2 ": "north-2",
	} {
		if got := fileName(yard); got != want {
			t.Errorf("fileName(%q) = %q, want %q", yard, got, want)
		}
	}
}

func TestBookFile(t *testing.T) {
	folder := t.TempDir()
	for path, want := range map[string]string{
		"hill": "hill.lidmark", "hill.lidmark": "hill.lidmark", filepath.Join(folder, "a"): filepath.Join(folder, "a.lidmark"),
		folder: "", folder + string(filepath.Separator): "", "..": "", "nosuch" + string(filepath.Separator): "",
	} {
		if got, err := bookFile(path); got != want || (err == nil) != (want != "") {
			t.Errorf("bookFile(%q) = %q, %v, want %q", path, got, err, want)
		}
	}
}
