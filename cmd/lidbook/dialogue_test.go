package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// A book is begun in a short dialogue, and a line that does not fit it asks one
// question, answered with one key.
func TestDialogue(t *testing.T) {
	path := filepath.Join(t.TempDir(), "hill.lidmark")
	out, errs, code := call(t, "Home Yard\nEurope/Berlin\nA1-A3, B1\nhuge\n6 2\nIda Mon-Fri 18:30-20:30\n", true, "new", path)
	if code != 0 || !strings.Contains(out, "yard Home Yard, 4 nucs, 1 person") {
		t.Fatalf("new = %d\n%s%s", code, out, errs)
	}
	does := func(in string, want string, args ...string) {
		t.Helper()
		out, errs, code := call(t, in, true, append([]string{"--book", path}, args...)...)
		if code != 0 || !strings.Contains(out, want) {
			t.Errorf("lidbook %s = %d, want %q in\n%s%s", strings.Join(args, " "), code, want, out, errs)
		}
	}
	does("", "batch 1 grafted", "graft", "--larvae", "10", "--on", "2027-04-30 18:00")
	does("", "A1 made up", "makeup", "A1-A3", "--cups", "3", "--on", "2027-05-01")
	does("", "written: 3 entries", "write", "--yes", "--on", "2027-05-09", "A1 q e", "A2 q e", "A3 q e")

	// Read back, Enter, and the question: taken out before.
	does("A1 c1\n\n2\n", "The old queen?", "write")
	does("", "queen caught", "nuc", "A1")
	// A wrong answer is asked again; 3 leaves the line.
	does("A2 c1\n\n7\n3\n", "wrong nuc, leave this line", "write")
	does("", "E  laying", "nuc", "A2")
	// 1: gone, not known when.
	does("A3 c1\ny\n1\n", "written: 2 entries", "write")
	does("", "old queen gone, not known when", "nuc", "A3")
	// n leaves a line, and the same line again asks whether it was typed twice.
	does("B1 s3\nn\nB1 s4\n\nB1 s4\nn\n", "Typed twice?", "write")
	does("", "bees: on 4 sides", "nuc", "B1")
	does("", "nothing is wrong", "check")
}

// Who leaves the dialogue half way has begun no book.
func TestDialogueLeft(t *testing.T) {
	path := filepath.Join(t.TempDir(), "hill.lidmark")
	_, errs, code := call(t, "Home Yard\n", true, "new", path)
	if code != exitRefused || !strings.Contains(errs, "no book was begun") {
		t.Errorf("new, left half way = %d, %s", code, errs)
	}
	if _, err := os.Stat(path); err == nil {
		t.Error("there is a book all the same")
	}
}
