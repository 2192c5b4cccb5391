package book

import (
	"cmp"
	"iter"
	"slices"

	"lidmark/domain/calendar"
)

// BatchPlan is what the book says of a batch that is meant to be grafted.
type BatchPlan struct {
	BatchPlanned
	At      calendar.Moment // when it was planned so
	Done    []ReadyStep     // what was made ready for it, and serves its day
	TooSoon []ReadyStep     // what was made ready for an earlier day from which it was moved, and serves no more
}

// Made tells whether a step that makes ready is done; never for the zero step.
func (p BatchPlan) Made(s ReadyStep) bool { return s != 0 && slices.Contains(p.Done, s) }

// BatchPlan is the plan of a batch as it was last told. Ok is false when it does
// not stand: there is none, it was dropped, or grafted.
func (v *View) BatchPlan(id BatchID) (p BatchPlan, ok bool) {
	grafted := false
	var ready []readied
	for _, e := range v.lines(id.Subject()) {
		switch f := e.Fact.(type) {
		case BatchPlanned:
			p, ok = BatchPlan{BatchPlanned: f, At: e.At}, true
		case BatchReadied:
			ready = append(ready, readied{f.Step, e.At.Day(v.Zone()), p.Day})
		case BatchDropped:
			ok = false
		case Grafted:
			grafted = true // for good: the plan may have been written down after the hour of the graft
		}
	}
	for _, r := range ready {
		if v.serves(r, p.Day) {
			p.Done = append(p.Done, r.step)
		} else {
			p.TooSoon = append(p.TooSoon, r.step)
		}
	}
	return p, ok && !grafted
}

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
