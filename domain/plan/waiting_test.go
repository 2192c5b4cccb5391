package plan_test

import (
	"fmt"
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// graftedYard is a book with forty nucs and a hundred colonies that give, and 60 larvae
// grafted on 30 March, of which the plan, where there is one, wants so many nucs.
func graftedYard(t *testing.T, nucs int) *booktest.Pen {
	p := yardOf(40)
	for i := range 100 {
		name := fmt.Sprint("S", i)
		p.Write(book.ColonyDescribed{Colony: booktest.Colony(name), Name: name, Yard: booktest.Yard("home"), Roles: []book.Role{book.BroodSource}})
	}
	if nucs > 0 {
		p.Write(book.BatchPlanned{Batch: booktest.Batch("b"), Day: day(t, "2027-03-30"), Larvae: 60, Nucs: nucs, Yard: booktest.Yard("home")})
	}
	return p.At("2027-03-30 15:00").Write(book.Grafted{Batch: booktest.Batch("b"), Number: 1, Larvae: 60})
}

// By hand: of 60 larvae 46 ripe cells are to be expected (0.80 × 0.95), of 30 that are capped
// 30. The nucs that wait for them are not free for a wish, and their bees are not there for it
// again; those that were given a cell wait no more, and past the day on which the cells must be
// out none do.
func TestNucsWaitForAGraftedBatch(t *testing.T) {
	none := func(*booktest.Pen) {}
	for name, c := range map[string]struct {
		nucs  int
		more  func(*booktest.Pen)
		on    string
		waits int
	}{
		"planned":     {25, none, "2027-03-31 08:00", 25},
		"not planned": {0, none, "2027-03-31 08:00", 40},
		"counted": {0, func(p *booktest.Pen) {
			p.At("2027-04-04 09:00").Write(book.CappedCounted{Batch: booktest.Batch("b"), Capped: 30})
		}, "2027-04-05 08:00", 30},
		"ten given": {25, func(p *booktest.Pen) {
			for i := range 10 {
				p.At("2027-04-06 09:00").Write(book.CellGiven{Nuc: booktest.Nuc(fmt.Sprint(i)), Batch: booktest.Batch("b")})
			}
		}, "2027-04-06 12:00", 15},
		"past": {25, none, "2027-04-12 08:00", 0},
	} {
		pen := graftedYard(t, c.nucs)
		c.more(pen)
		p := plannerOf(pen, c.on)
		batch := p.View().Batch(booktest.Batch("b"))
		given := len(batch.Given)
		a := p.Answer(plan.Wish{Queens: 5, Graft: p.View().Today() + 1})
		if want := 40 - given - c.waits; a.Free != max(0, want) {
			t.Errorf("%s: %d of 40 nucs are free, want %d", name, a.Free, want)
		}
		w := p.Waiting(batch)
		if c.waits != 40 && w.Nucs != c.waits || c.waits == 40 && w.Nucs != 46 {
			t.Errorf("%s: %d nucs wait", name, w.Nucs)
		}
		if w.Nucs == 0 {
			continue
		}
		kg := p.MadeUp(w.Ladder, w.Size).Kilograms
		have := needs(p, w.Ladder, plan.Size{Nucs: 5, Yard: booktest.Yard("home")})[plan.KilogramsOfBees].Have
		if all := 100 * p.View().Numbers().Get(practice.ColonyGives); kg <= 0 || math.Abs(have-(all-kg)) > 1e-9 {
			t.Errorf("%s: %.2f kg are there for a wish, of %.2f less %.2f", name, have, all, kg)
		}
	}
}
