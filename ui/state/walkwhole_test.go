package state_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// TestAnEntranceIsSaidWhole: no row of the walk says "entrance" without what is done with
// it, whatever the rows above say.
func TestAnEntranceIsSaidWhole(t *testing.T) {
	w, like, said := start(t).run("type it in"), 0, ""
	for _, row := range w.Walk.Rows {
		for part := range strings.SplitSeq(row.Planned, ", ") {
			if part == "entrance" {
				t.Errorf("%s says %q", row.Title, row.Planned)
			}
			if strings.HasPrefix(part, "entrance to ") {
				if part == said {
					like++
				}
				said = part
			}
		}
	}
	if like < 3 {
		t.Errorf("%d rows have the width of the row above", like)
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
