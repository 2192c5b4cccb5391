package book

import (
	"cmp"
	"fmt"
	"iter"
	"slices"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Plans yields the batches that are planned and not grafted, by the day of the
// graft.
func (v *View) Plans() iter.Seq[BatchPlan] {
	var all []BatchPlan
	for _, sub := range v.season.kinds[KindBatch] {
		if id, is := sub.Batch(); is {
			if p, ok := v.BatchPlan(id); ok {
				all = append(all, p)
			}
		}
	}
	slices.SortFunc(all, func(a, b BatchPlan) int {
		return cmp.Or(cmp.Compare(a.Day, b.Day), cmp.Compare(a.Minute, b.Minute), a.Batch.compare(b.Batch))
	})
	return slices.Values(all)
}

// Apart tells a planned batch from others of its day and line: nothing where there is none, else its
// larvae, "24 larvae", and among as many its place, "24 larvae, 1 of 2".
func (v *View) Apart(b BatchPlan) string {
	others, alike, place := 0, 0, 0
	for o := range v.Plans() {
		if o.Batch == b.Batch {
			o = b // as it is tried
		}
		if o.Day != b.Day || o.Line != b.Line {
			continue
		}
		others++
		if o.Larvae == b.Larvae {
			alike++
		}
		if o.Batch == b.Batch {
			place = alike
		}
	}
	switch {
	case others < 2 || place == 0:
		return ""
	case alike < 2:
		return larvaeWord(b.Larvae)
	default:
		return fmt.Sprintf("%s, %d of %d", larvaeWord(b.Larvae), place, alike)
	}
}

func larvaeWord(n int) string {
	if n == 1 {
		return "1 larva"
	}
	return fmt.Sprintf("%d larvae", n)
}

// NotGrafted tells whether a planned batch has lapsed: nobody grafted it by [View.GraftBy]. On a day
// ahead, by the day that it is looked at from.
func (v *View) NotGrafted(p BatchPlan) bool { return v.GraftBy(p) < v.From() }

// GraftBy is the last day on which a planned batch can be grafted as it is planned: as long as on the
// comb on which its breeder was confined the youngest larvae are not too old. Its starter, set up for
// the day of the plan, stands as long.
func (v *View) GraftBy(p BatchPlan) calendar.Day { return p.Day + v.graftLate() }

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
