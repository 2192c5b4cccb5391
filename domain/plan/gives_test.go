package plan_test

import (
	"fmt"
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/plan"
)

// Giving cells teaches nobody anything: a batch is as sure after it as before, with the luck that all
// its cells share, as the keeper's rates have so many placed ones. A culled queen is no more
// of it, and one that was seen to fail takes her chance with her.
func TestGivingCellsMakesNothingSurer(t *testing.T) {
	b, by := booktest.Batch("b"), day(t, "2027-07-20")
	pen := yardOf(60)
	pen.At("2027-04-20 08:00").Write(book.BatchPlanned{Batch: b, Day: day(t, "2027-05-03"), Larvae: 60, Nucs: 36, Queens: 22, By: by, Yard: booktest.Yard("home")})
	pen.At("2027-05-03 12:00").Write(book.Grafted{Batch: b, Number: 7, Line: "Rook", Larvae: 60})
	pen.At("2027-05-11 12:00").Write(book.CappedCounted{Batch: b, Capped: 42})
	pen.At("2027-05-13 11:00").Write(book.RipeCounted{Batch: b, Ripe: 36})
	gives := func(on string) plan.Chances {
		p := plannerOf(pen, on)
		return p.Gives(p.View().Batch(b), by, false)
	}
	alike := func(what string, c, want plan.Chances) {
		t.Helper()
		for n := range 37 {
			if math.Abs(c.AtLeast(n)-want.AtLeast(n)) > 1e-9 {
				t.Errorf("%s: %.6f of %d or more, want %.6f", what, c.AtLeast(n), n, want.AtLeast(n))
			}
		}
	}
	before := gives("2027-05-13 11:30")
	give := func(from, to int) {
		for i := from; i < to; i++ {
			pen.At("2027-05-13 12:00").Write(book.CellGiven{Nuc: booktest.Nuc(fmt.Sprint(i)), Batch: b})
		}
	}
	give(0, 20)
	alike("20 of 36 given", gives("2027-05-13 12:30"), before)
	give(20, 36)
	after := gives("2027-05-13 12:30")
	alike("all given", after, before)
	placed := plan.RatesOf(pen.View("2027-05-13 12:30"))
	for _, l := range []plan.Link{plan.GraftWorks, plan.Taken, plan.RipeOfTaken} {
		placed.Link[l] = plan.Rate{Default: 1, Weight: math.Inf(1)}
	}
	near(t, "queens of 36 placed", after.Mean(), placed.Queens(plan.Graft{Larvae: 36, Nucs: 36}).Mean(), 0.1)

	pen.At("2027-05-28 12:00").Write(book.QueenGone{Nuc: booktest.Nuc("0")})
	if one := gives("2027-05-28 12:30"); one.Most() != 35 || one.Mean() >= after.Mean() {
		t.Errorf("one is gone: %d at most, %.2f on the mean, before it %.2f", one.Most(), one.Mean(), after.Mean())
	}
}

// One graft for an order of which some queens have gone is wished those that are still open,
// as two would be.
func TestAPartServedOrderWishesTheRest(t *testing.T) {
	pen, two := ordered(t)
	pen.At("2027-03-15 20:30").Write(book.BatchDropped{Batch: two[1].Batch})
	for i := range 8 {
		pen.At("2027-03-15 21:00").Write(book.QueenHandedOver{Queen: booktest.Queen(fmt.Sprint("q", i)), Order: booktest.Order("1")})
	}
	w, ok := plannerOf(pen, "2027-03-16 08:00").Wished(book.BatchPlan{BatchPlanned: two[0]})
	alone := plannerOf(pen, "2027-03-16 08:00").Joint([]book.BatchPlan{{BatchPlanned: two[0]}}, two[0].By)
	if !ok || w.All != 4 || math.Abs(w.Chance-alone.AtLeast(4)) > 1e-12 {
		t.Errorf("told %v, %d queens, %.3f, want 4 and %.3f", ok, w.All, w.Chance, alone.AtLeast(4))
	}
}

// A graft that is being written down is one graft of its wish, not the planned and the done one.
func TestAGraftJustDoneIsCountedOnce(t *testing.T) {
	pen, two := ordered(t)
	pen.At("2027-03-15 20:30").Write(book.BatchDropped{Batch: two[1].Batch})
	told := func(on string) plan.Wished {
		w, _ := plannerOf(pen, on).Wished(book.BatchPlan{BatchPlanned: two[0]})
		return w
	}
	planned := told("2027-04-27 08:00")
	pen.At(fmt.Sprintf("%s 14:00", two[0].Day)).Write(book.Grafted{Batch: two[0].Batch, Number: 7, Larvae: two[0].Larvae})
	if done := told(fmt.Sprintf("%s 14:00", two[0].Day)); math.Abs(done.Chance-planned.Chance) > 1e-9 || done.Together() != "" {
		t.Errorf("planned: %s; done: %s", planned.Said(), done.Said())
	}
}
