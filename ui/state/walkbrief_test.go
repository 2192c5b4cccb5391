package state_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// TestAnEntranceIsSaidOnceInTheWalk: rows below one that says how wide say no more than
// the word; one that is shut, or of another width, is said in full.
func TestAnEntranceIsSaidOnceInTheWalk(t *testing.T) {
	w := start(t).run("type it in")
	said, brief, full := "", 0, 0
	for _, row := range w.Walk.Rows {
		for part := range strings.SplitSeq(row.Planned, ", ") {
			switch {
			case part == "shut the entrance":
				said = ""
			case strings.HasPrefix(part, "entrance to "):
				has := strings.Contains(row.Brief, part)
				if want := part != said; has != want {
					t.Errorf("%s says %q, above it stood %q", row.Title, row.Brief, said)
				}
				if has {
					full++
				} else {
					brief++
				}
				said = part
			case !strings.Contains(row.Brief, part):
				t.Errorf("%s says %q, of %q", row.Title, row.Brief, row.Planned)
			}
		}
	}
	if brief < 10 || full == 0 { // each entrance has the width of its own nuc
		t.Errorf("said in full %d times, briefly %d times", full, brief)
	}
}

// TestAnEntranceHasOneWidth: what the sheet of the day says of a nuc's entrance is what is
// said of the nuc by itself.
func TestAnEntranceHasOneWidth(t *testing.T) {
	v := start(t).Present().View
	sheet, both := line.Sheet(rules.Day(v, v.Today())), 0
	for _, f := range rules.Findings(v) {
		id, ok := f.Of.Nuc()
		if !ok || f.Rule != rules.Robbers || f.Amount == 0 {
			continue
		}
		for _, fact := range sheet(id) {
			if set, is := fact.(book.EntranceSet); is && set.Area != 0 {
				if both++; set.Area != f.Amount {
					t.Errorf("%s: by itself to %.1f cm², on the sheet to %.1f cm²", v.Nuc(id).Name, f.Amount, set.Area)
				}
			}
		}
	}
	if both < 2 {
		t.Errorf("%d nucs are said to be narrowed by both, want more", both)
	}
}

// TestAPlanIsSaidInTheOrderOfWork: own cells are broken down before a cell is given, and
// the entrance is set last.
func TestAPlanIsSaidInTheOrderOfWork(t *testing.T) {
	w := start(t).run("type it in")
	both := 0
	for _, row := range w.Walk.Rows {
		down, cell, entrance := strings.Index(row.Planned, "break down own cells"), strings.Index(row.Planned, "cell from batch"), strings.Index(row.Planned, "entrance to")
		if cell >= 0 && (down >= 0 && down > cell || entrance >= 0 && entrance < cell) {
			t.Errorf("%s: %q", row.Title, row.Planned)
		}
		if down >= 0 && cell >= 0 {
			both++
		}
	}
	if both == 0 {
		t.Error("nowhere are own cells broken down before a cell")
	}
}
