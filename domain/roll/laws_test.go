package roll_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/roll"
)

// drawn are lists good and bad: each column has cells that fit and some that do
// not.
var drawn = []struct {
	column roll.Column
	cells  []string
}{
	{roll.NucName, []string{"A1", "A2", "A3", "B1", "b-2", "7", "O1", ""}},
	{roll.Yard, []string{"", "Home", "Far Wood"}},
	{roll.Stand, []string{"", "A", "C"}},
	{roll.BoxNumber, []string{"", "1", "2"}},
	{roll.Holds, []string{"", "E", "C", "V", "no queen", "empty", "R", "B", "D", "W", "?", "what"}},
	{roll.BatchNumber, []string{"", "4", "5", "x"}},
	{roll.GraftedOn, []string{"", "20.4.2027", "21.4.2027", "bad"}},
	{roll.CellGivenOn, []string{"", "1.5.2027", "1.1.2027"}},
	{roll.VirginPutInOn, []string{"", "", "3.5.2027"}},
	{roll.EmergedOn, []string{"", "2.5.2027"}},
	{roll.EggsSeenOn, []string{"", "20.5.2027", "1/2/2027", "13/5/2027"}},
	{roll.LastLookOn, []string{"", "22.5.2027", "18.5.2027"}},
	{roll.QueenSeen, []string{"", "yes", "no"}},
	{roll.Bees, []string{"", "4", "9"}},
	{roll.MarkColour, []string{"", "red"}},
	{roll.DiscNumber, []string{"", "7", "8"}},
	{roll.Line, []string{"", "Rook", "Wren"}},
	{roll.Note, []string{"", "calm"}},
}

func drawList(t *rapid.T) (roll.Sheet, roll.Options) {
	o := roll.Options{Sides: 6, Skip: map[int]bool{}}
	for _, d := range drawn {
		o.Columns = append(o.Columns, d.column)
	}
	var s roll.Sheet
	for i := range rapid.IntRange(1, 8).Draw(t, "rows") {
		row := roll.Row{Number: i + 1}
		for _, d := range drawn {
			row.Cells = append(row.Cells, roll.Cell{Text: rapid.SampledFrom(d.cells).Draw(t, d.column.String())})
		}
		s.Rows = append(s.Rows, row)
	}
	return s, o
}

// told is all that a result says, without ids.
func told(r roll.Result) string {
	var out strings.Builder
	for _, d := range r.Ground {
		fmt.Fprintln(&out, d.Words)
	}
	for _, row := range r.Rows {
		if len(row.Facts) > 0 {
			fmt.Fprintln(&out, row.Row.Number, row.Words)
		}
		for _, d := range row.Facts {
			fmt.Fprintln(&out, " ", d.Words, book.KindOfFact(d.Fact))
		}
	}
	return out.String()
}

func TestTheOrderOfColumnsDoesNotMatter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, o := drawList(t)
		was := roll.Read(s, o, context(nil))
		perm := rapid.Permutation(slices.Collect(indices(len(o.Columns)))).Draw(t, "order")
		for i, row := range s.Rows {
			cells := make([]roll.Cell, len(perm))
			for to, from := range perm {
				cells[to] = row.Cells[from]
			}
			s.Rows[i].Cells = cells
		}
		columns := make([]roll.Column, len(perm))
		for to, from := range perm {
			columns[to] = o.Columns[from]
		}
		o.Columns = columns
		if diff := cmp.Diff(told(was), told(roll.Read(s, o, context(nil)))); diff != "" {
			t.Fatal(diff)
		}
	})
}

func indices(n int) func(yield func(int) bool) {
	return func(yield func(int) bool) {
		for i := range n {
			if !yield(i) {
				return
			}
		}
	}
}

func TestSkippingMistakesLeavesTheOthers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, o := drawList(t)
		was := roll.Read(s, o, context(nil))
		for _, row := range was.Rows {
			if len(row.Mistakes) > 0 {
				o.Skip[row.Row.Number] = true
			}
		}
		now := roll.Read(s, o, context(nil))
		if diff := cmp.Diff(told(was), told(now)); diff != "" {
			t.Fatal(diff)
		}
		if len(now.Mistakes()) > 0 || now.Ready() != (len(now.Facts()) > 0) || now.Counts.Skipped != was.Counts.Mistaken {
			t.Fatalf("ready: %v, skipped %d of %d, mistakes: %v", now.Ready(), now.Counts.Skipped, was.Counts.Mistaken, now.Mistakes())
		}
	})
}

// Every row is understood or has a mistake, facts rise in time and none lies
// ahead, and reading the list again into the book that it made changes nothing.
func TestWhatIsKeptIsKeptOnce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, o := drawList(t)
		r := roll.Read(s, o, context(nil))
		for _, row := range r.Rows {
			if (len(row.Mistakes) > 0) == (row.Words != "") {
				t.Fatalf("row %d says %q and has mistakes %v", row.Row.Number, row.Words, row.Mistakes)
			}
		}
		facts := r.Facts()
		for i, d := range facts {
			if d.At.Instant.After(context(nil).Now) || i > 0 && d.At.Before(facts[i-1].At) {
				t.Fatalf("%s lies ahead, or before what stands before it", d.Words)
			}
		}
		for _, row := range r.Rows {
			o.Skip[row.Row.Number] = len(row.Mistakes) > 0
		}
		again := roll.Read(s, o, context(season(r, nil).At(context(nil).Now)))
		for _, d := range again.Facts() {
			t.Errorf("written again: %s", d.Words)
		}
		if all := again.Mistakes(); len(all) > 0 {
			t.Fatalf("mistakes at the second reading: %v", all)
		}
	})
}
