package book

import (
	"iter"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// NotGrafted tells whether a planned batch has lapsed: nobody grafted it by [View.GraftBy]. On a day
// ahead, by the day that it is looked at from.
func (v *View) NotGrafted(p BatchPlan) bool { return v.GraftBy(p.Day) < v.From() }

// GraftBy is the last day on which a batch that is planned for a day can be grafted as it is planned: as
// long as on the comb on which its breeder was confined the youngest larvae are not too old. Its
// starter, set up for the day of the plan, stands as long.
func (v *View) GraftBy(planned calendar.Day) calendar.Day { return planned + v.graftLate() }

// graftLate is by how many days a graft can be late with what was made ready for its day.
func (v *View) graftLate() calendar.Day {
	n := v.Numbers()
	hatched := n.Duration(practice.ConfineBreederBefore) - n.Duration(practice.ConfineBreederFor) - n.Duration(practice.QueenHatches)
	young := n.Duration(practice.LarvaAgeRefused) - hatched
	return calendar.Day(max(0, young/(24*time.Hour)))
}

// GraftOn is the day on which a planned batch is grafted: its own, or, once that is past and as long as
// it has not lapsed, the day that is looked from.
func (v *View) GraftOn(p BatchPlan) calendar.Day {
	if p.Day >= v.From() || v.NotGrafted(p) {
		return p.Day
	}
	if stands, ok := v.BatchPlan(p.Batch); !ok || stands.Day != p.Day {
		return p.Day // grafted, or told of another day meanwhile
	}
	return v.From()
}

// ToGraft yields those of [View.Plans] that can still be grafted.
func (v *View) ToGraft() iter.Seq[BatchPlan] {
	return func(yield func(BatchPlan) bool) {
		for p := range v.Plans() {
			if !v.NotGrafted(p) && !yield(p) {
				return
			}
		}
	}
}
