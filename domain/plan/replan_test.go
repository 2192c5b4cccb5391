package plan_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/plan"
)

// What is done for a planned batch is done for the wish that plans it anew, and once that is
// written: the first graft wants no more bees for starters and nucs, a second one does.
func TestWhatIsDoneStaysDoneWhenPlannedAnew(t *testing.T) {
	batch, on := booktest.Batch("one"), day(t, "2027-05-20")
	pen := yardOf(40).Write(book.BatchPlanned{Batch: batch, Day: on, Larvae: 60, Nucs: 40, Yard: booktest.Yard("home")},
		book.BatchReadied{Batch: batch, Step: book.StarterSetUp}, book.BatchReadied{Batch: batch, Step: book.NucsReady})
	p := plannerOf(pen, "2027-05-11 08:00")
	a := p.Answer(plan.Wish{Queens: 20, Graft: on, Not: batch, Nucs: 40, Grafts: 2, Larvae: 60})
	for i, done := range []bool{true, false} {
		if s := a.Batches[i].Size; s.StartersSet != done || s.NucsMade != done {
			t.Errorf("graft %d: starters set %v, nucs made %v", i+1, s.StartersSet, s.NucsMade)
		}
	}
	if bees := p.BeesOfStarters(a.Batches[0].Size); bees != 0 {
		t.Errorf("%.1f kg of bees for starters that are set up", bees)
	}
	again := p.ToBook(a)[0]
	again.Batch = batch
	p = plannerOf(pen.Write(again), "2027-05-11 08:00")
	if b, _ := p.View().BatchPlan(batch); !p.SizeOf(b).StartersSet || !p.SizeOf(b).NucsMade {
		t.Errorf("written anew: %+v", p.SizeOf(b))
	}
}
