package season_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// nucsOf are the nucs that amounts say a batch wants, and what they say there is.
func nucsOf(p *plan.Planner, b book.BatchPlan) (n plan.Need) {
	for _, n := range p.Planned(b).Needs {
		if n.Good == plan.Nucs {
			return n
		}
	}
	return n
}

func nucsIn(p *plan.Planner) (n int) {
	for range p.View().Nucs() {
		n++
	}
	return n
}

// Of 30 nucs a graft takes up 27 until the day on which its queens are ready, and on that day
// another is made up with 19: amounts and clashes say that both have theirs, and a day sooner that both
// have not.
func TestNucsAreFreeOnTheDayOnWhichQueensAreReady(t *testing.T) {
	home := booktest.Yard("home")
	first := book.BatchPlanned{Batch: booktest.Batch("1"), Day: day(t, "2027-04-21"), Larvae: 44, Nucs: 27, Yard: home}
	pen := world{nucs: 30}.pen().Write(first)
	p := plannerOf(pen)
	ready := p.LadderOf(book.BatchPlan{BatchPlanned: first}).InNucs(plan.Size{}).To + 1
	then := book.BatchPlanned{Batch: booktest.Batch("2"), Day: first.Day, Larvae: 36, Nucs: 19, Yard: home}
	for p.LadderOf(book.BatchPlan{BatchPlanned: then}).Rung(plan.MakeUpNucs).Best < ready {
		then.Day++
	}
	for short, sooner := range map[float64]calendar.Day{0: 0, 16: 1} {
		b := then
		b.Day -= sooner
		now := plannerOf(world{nucs: 30}.pen().Write(first, b))
		for of := range now.View().ToGraft() {
			if n := nucsOf(now, of); n.Short() != short {
				t.Errorf("%d days sooner the graft of %s is short of %v nucs, want %v", sooner, of.Day, n.Short(), short)
			}
		}
		if n := len(season.Clashes(now)); (n > 0) != (short > 0) {
			t.Errorf("%d days sooner there are %d clashes", sooner, n)
		}
	}
}

// Whatever batches a book has, amounts say of a planned one that it is short of nucs where it clashes over nucs,
// and only there. A yard without nucs is one of which nobody told them: no clash is.
func TestAmountsAndClashesCountTheSameNucs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := plannerOf(drawnBatches(t))
		all := season.Clashes(p)
		for b := range p.View().ToGraft() {
			clashes := slices.ContainsFunc(all, func(c season.Clash) bool { return c.Kind == season.NucsShort && slices.Contains(c.Batches, b.Batch) })
			if n := nucsOf(p, b); nucsIn(p) > 0 && (n.Short() > 0) != clashes {
				t.Fatalf("graft of %s: %v nucs, %v there, and a clash over nucs: %v", b.Day, n.Amount, n.Have, clashes)
			}
		}
	})
}
