package season_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// A search grafts on no day before which a step is past: of a promise of the soonest queens
// there are, the breeder still has to be confined.
func TestNoGraftIsFoundBeforeWhichAStepIsPast(t *testing.T) {
	p := plannerOf(world{nucs: 30, givers: 4}.pen())
	today := p.View().Today()
	first := p.FirstGraft()
	w := season.Wanted{Window: 90, Larvae: []int{48}, Promises: []season.Promise{{Name: "order 1", Queens: 3, By: today + 60, Sure: 0.5}}}
	found := season.Search(p, w, nil)
	if len(found.Batches) != 1 {
		t.Fatalf("%+v", found.Short)
	}
	l := p.Ladder(p.GraftAt(first), 1, book.YardID{})
	for _, s := range []plan.Step{plan.Confine, plan.FeedStarter, plan.SetUpStarter} {
		if by := l.Rung(s).By; by < today {
			t.Errorf("grafted on %s: %s was due by %s", first, s, by)
		}
	}
	if p.Ladder(p.GraftAt(first-1), 1, book.YardID{}).Rung(plan.Confine).By >= today && first > today+1 {
		t.Errorf("%s would have done", first-1)
	}
	w.Promises[0].By = today + 43
	if f := season.Search(p, w, nil); len(f.Batches) != 0 {
		t.Errorf("grafted on %s of %s", f.Batches[0].Day, today)
	}
	w.From = today + 1
	if f := season.Search(p, w, nil); len(f.Batches) != 1 {
		t.Errorf("who says the day himself is told %+v", f.Short)
	}
}
