package state_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/state"
)

// layingToo is the yard of the evening in which some more nucs have laying queens.
func layingToo(names ...string) *booktest.Pen {
	pen := yardOfTheEvening()
	pen.At("2027-05-14 12:00")
	for _, name := range names {
		pen.Write(book.Looked{Nuc: booktest.Nuc(name), Queen: book.QueenSeen, Eggs: book.SingleEggs})
	}
	return pen
}

// TestEachNucOfARowAsks: wherever in a row the nuc stands that does not fit the
// book, the row asks, and of several each is asked about.
func TestEachNucOfARowAsks(t *testing.T) {
	for _, c := range []struct{ laying, names string }{
		{"D1", "D1-D3"}, {"D2", "D1-D3"}, {"D3", "D1-D3"}, {"D2", "D2,D1"},
	} {
		w := inTheEvening(t, layingToo(c.laying)).types(c.names + " c4")
		if w.Asked == nil || !strings.Contains(w.Asked.Asks, c.laying) {
			t.Fatalf("%s with a queen in %s: asked is %+v", c.names, c.laying, w.Asked)
		}
		w.press("Return").save()
		i := slices.IndexFunc(w.Walk.Rows, func(r state.WalkRow) bool { return r.Many() && !r.Open() })
		if i < 0 || !w.Walk.Rows[i].Asks || !strings.Contains(w.Walk.Rows[i].Passed.Asks, c.laying) {
			t.Errorf("%s with a queen in %s: passed, its row asks nothing", c.names, c.laying)
		}
	}
	w := inTheEvening(t, layingToo("D1", "D3", "D4")).types("D1-D4 c4")
	var asked []string
	for w.Asked != nil && len(asked) < 9 {
		name, _, _ := strings.Cut(w.Asked.Asks, " ")
		asked = append(asked, name)
		w.press("1").save()
	}
	if want := []string{"D1", "D3", "D4"}; !slices.Equal(asked, want) {
		t.Fatalf("asked about %v, want %v", asked, want)
	}
	row := w.row("D1–D4")
	if row.Asks || !strings.HasSuffix(row.Back, "given, old queen gone, not known when (D1, D3, D4)") {
		t.Errorf("answered, the row asks %v, and says %q", row.Asks, row.Back)
	}
	for _, name := range asked {
		n := w.Book.Season.At(w.Now).Nuc(booktest.Nuc(name))
		if n.Holds.Condition != book.Cell {
			t.Errorf("%s holds %v, want a cell", name, n.Holds.Condition)
		}
	}
}

// TestDoneReadsBackWhatWasPlanned, of one nuc as of several, whatever stands beside
// it.
func TestDoneReadsBackWhatWasPlanned(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).types("done", "done s4", "A3 done; A4 n")
	for _, name := range []string{"A1", "A2", "A3"} {
		if back := w.row(name).Back; !strings.Contains(back, "cell from batch 4 given") {
			t.Errorf("%s reads back %q", name, back)
		}
	}
	if back := w.row("A2").Back; !strings.Contains(back, "4 sides") {
		t.Errorf("A2 reads back %q", back)
	}
}

// TestDoneOfARowThatCannotBeTicked names every nuc of which nothing is written that
// can be ticked off, with and without others, and not those that are left out.
func TestDoneOfARowThatCannotBeTicked(t *testing.T) {
	for _, c := range []struct {
		line, wrong, back string
	}{
		{"C7-C8 done as written", "C7", ""},
		{"C7-C8 done as written, except C7", "", "cell from batch 4 given"},
		{"D1-D4 done as written, except D2", "D1 and D4", ""},
		{"D1-D4 done as written, except D1 D4", "", "2 nucs: cell from batch 4 given"},
		{"D1,D4 done as written", "D1 and D4", ""},
	} {
		w := inTheEvening(t, layingToo("D1", "D4")).write(c.line)
		says := w.Walk.Says
		want := "nothing that can be ticked off is written for " + c.wrong + ":"
		if wrong := says.Line.Wrong(); c.wrong == "" && wrong != "" || c.wrong != "" && !strings.Contains(wrong+":", want[:len(want)-1]) {
			t.Errorf("%s is wrong because %q, want %q", c.line, wrong, want)
		}
		if c.wrong == "" && !strings.Contains(says.Of+": "+says.Back, c.back) {
			t.Errorf("%s reads back %q of %q, want %q", c.line, says.Back, says.Of, c.back)
		}
		before := len(w.Pen.Done)
		w.press("Return").save()
		if written := len(w.Pen.Done) > before; written != (c.wrong == "") {
			t.Errorf("%s: written %v", c.line, written)
		}
	}
}

// TestNoPlanOfNothing: where the sheet leaves open how much is fed, no amount is
// planned.
func TestNoPlanOfNothing(t *testing.T) {
	w := (&window{t: t, State: open(t)}).run("type it in")
	for _, r := range w.Walk.Rows {
		if strings.Contains(r.Planned, " 0 ") {
			t.Errorf("%s: planned is %q", r.Title, r.Planned)
		}
	}
}
