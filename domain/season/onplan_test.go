package season_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"lidmark/domain/book/booktest"
	"lidmark/domain/season"
)

// One graft of twelve fails, so 15 queens 97 times in a hundred want two. Put on the plan each
// has its share of them, and they are told as sure as they were found; and the ways out of a
// clash of theirs begin with that chance.
func TestWhatWasFoundIsToldAsSureOnThePlan(t *testing.T) {
	var w season.Wanted
	w.Seed, w.Promises = 1, []season.Promise{{Queens: 15, By: day(t, "2027-07-20"), Sure: 0.95}}
	pen := world{nucs: 120, starters: 2, finishers: 4}.pen()
	f := season.Search(plannerOf(pen), w, nil)
	if len(f.Kept) != 1 || len(f.Batches) != 2 {
		t.Fatalf("%d grafts: %+v %+v", len(f.Batches), f.Kept, f.Short)
	}
	queens := 0
	for i := range f.Batches {
		b := f.Plan(i, booktest.Batch(fmt.Sprint(i)))
		queens += b.Queens
		pen.Write(b)
	}
	p := plannerOf(pen)
	told := p.Unordered()
	if queens != 15 || len(told) != 1 || told[0].All != 15 || math.Abs(told[0].Chance-f.Kept[0].Chance) > 0.005 || told[0].Unsure() {
		t.Fatalf("found %.3f sure, %d queens planned, told: %+v", f.Kept[0].Chance, queens, told)
	}
	if said := told[0].Said(); !strings.Contains(said, "together give their 15 queens") {
		t.Error(said)
	}
	pen.Write(f.Plan(0, booktest.Batch("0"))) // as it is
	third := f.Plan(0, booktest.Batch("third"))
	third.Queens, third.Larvae, third.Nucs = 0, 100, 120
	p = plannerOf(pen.Write(third))
	told = p.Unordered() // with what the third takes of their nucs
	ways := 0
	for _, c := range season.Clashes(p) {
		for _, way := range c.Ways {
			if way.Wished {
				ways++
				if math.Abs(way.Before-told[0].Chance) > 1e-9 {
					t.Errorf("%s: %.3f before, told %.3f", way.What, way.Before, told[0].Chance)
				}
			}
		}
	}
	if ways == 0 {
		t.Error("no way out is told")
	}
}
