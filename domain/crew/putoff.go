package crew

import (
	"cmp"
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// PutOff is what it is expected to cost when what rules ask of things today waits until a day, priced as
// [Plan] prices what waits where nobody comes before, with the reason of the dearest; ok is false where
// today's work has nothing of them, or they cost nothing that is known.
func PutOff(j *rules.Judged, until calendar.Day, what ...book.PutOff) (cost Price, ok bool) {
	v := j.Course().View()
	plan := j.Day(v.Today())
	if until > calendar.DayOf(plan.Next, v.Zone()) {
		plan.Next = until.At(12, 0, v.Zone()) // noon, as where nobody told hours
	}
	day, err := newPricer(j, plan).plan(plan, nil, nil)
	if err != nil {
		return cost, false
	}
	for _, w := range day.Waits { // the dearest first
		asks := func(f rules.Finding) bool {
			return slices.ContainsFunc(what, func(p book.PutOff) bool { return p.Of == w.Of && p.Of == f.Of && p.Rule == string(f.Rule) })
		}
		if slices.ContainsFunc(w.Task.Findings, asks) {
			cost.Queens += w.Price.Queens
			cost.Why = cmp.Or(cost.Why, w.Price.Why)
		}
	}
	return cost, cost.Queens >= leastTold
}

// leastTold is the least loss that is told, in queens. A bound of telling.
const leastTold = 0.005

// Said is what it costs to wait until a day, in a sentence without a full stop.
func (p Price) Said(until calendar.Day, today calendar.Day) string {
	return fmt.Sprintf("waiting until %s is expected to cost %.2f queens: %s", until.ShortFrom(today), p.Queens, p.Why)
}
