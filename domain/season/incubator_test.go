package season_test

import (
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// By hand: of 60 larvae 0.80 are accepted, 0.95 of those capped, where the graft does not
// fail: 46 cells of each of two batches, of which the incubator holds 60. The cells of the
// first are capped five days after its graft and given nine days after it, on the last morning before the first may be out.
func TestTheIncubatorIsFull(t *testing.T) {
	d := day(t, "2027-05-01")
	with := func(places int) []season.Clash {
		return season.Clashes(plannerOf(planned(world{nucs: 80, places: places}.pen(), d, d+3)))
	}
	for _, places := range []int{0, 92} {
		if all := ofKind(with(places), season.IncubatorShort); len(all) > 0 {
			t.Errorf("%v places: %s", places, all[0].Why)
		}
	}
	c := clash(t, with(60), season.IncubatorShort)
	if c.Want != 92 || c.Have != 60 || c.From != d+8 || c.To != d+8 || len(c.Batches) != 2 {
		t.Errorf("%v of %v by %d batches from %s to %s: %s", c.Want, c.Have, len(c.Batches), c.From, c.To, c.Why)
	}
	if says := "The incubator holds 60; Rook, graft of Sat 1 May and Plover, graft of Tue 4 May want places for 92 capped cells on Sun 9 May."; c.Why != says {
		t.Errorf("says %q", c.Why)
	}
	if c.Ways[0].What != "leave 32 capped cells in their finishers until they are given" || c.Ways[len(c.Ways)-1].What != "32 more places in the incubator, there by Sun 9 May" {
		t.Errorf("ways out: %+v", c.Ways)
	}
	for _, w := range c.Ways {
		if w.Plan.Larvae > 0 && w.Days == 0 && w.What != "Rook, graft of Sat 1 May: 18 larvae instead of 60" && w.What != "Plover, graft of Tue 4 May: 18 larvae instead of 60" {
			t.Errorf("%s", w.What)
		}
	}
}

// By hand: 32 cells want two finishers on 9 May. Those of the second batch hold its own then,
// and a third one has three: of four one is free, of five two are.
func TestCellsCanBeLeftWhereFinishersAreFree(t *testing.T) {
	d := day(t, "2027-05-01")
	for finishers, free := range map[int]bool{4: false, 5: true} {
		c := clash(t, season.Clashes(plannerOf(planned(world{nucs: 120, finishers: finishers, places: 60}.pen(), d, d+3, d+6))), season.IncubatorShort)
		is := slices.ContainsFunc(c.Ways, func(w season.Way) bool {
			return w.What == "leave 32 capped cells in their finishers until they are given"
		})
		if is != free || c.From != d+8 {
			t.Errorf("%d finishers: cells can be left there: %v", finishers, is)
		}
	}
}

// A grafted batch takes up the places that its counted cells have.
func TestALiveBatchIsInTheIncubator(t *testing.T) {
	d := day(t, "2027-04-02")
	pen := planned(world{nucs: 80, places: 60}.pen(), d)
	pen.At("2027-03-31 12:00").Write(book.Grafted{Batch: booktest.Batch("live"), Number: 7, Larvae: 60})
	pen.At("2027-04-01 07:00").Write(book.TakeCounted{Batch: booktest.Batch("live"), Accepted: 30})
	p := plannerOf(pen)
	c := clash(t, season.Clashes(p), season.IncubatorShort)
	b := p.View().Batch(booktest.Batch("live"))
	was, _ := p.View().BatchPlan(booktest.Batch("0"))
	l := p.Ladder(b.At.Instant, b.Cells(), booktest.Yard("home"))
	if last := l.Rung(plan.GiveCells).Best - 1; len(c.Batches) != 2 || c.To != last || c.From != d+5 || c.Want != 30+float64(p.SizeOf(was).Incubated) {
		t.Errorf("%v of %v from %s to %s, given on %s: %s", c.Want, c.Have, c.From, c.To, last+1, c.Why)
	}
}
