package state

import (
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// Cost is what waiting costs by the clock: from when on, and what.
type Cost struct {
	At   time.Time
	What string
}

// Waiting is what it costs to put a finding off, in the order of time, as far as
// the clock can tell: nothing that is past already, nothing that is only feared.
func (r *Reading) Waiting(f rules.Finding) (all []Cost) {
	now := r.View.On()
	add := func(at time.Time, what string) {
		if at.After(now) {
			all = append(all, Cost{at, what})
		}
	}
	if f.Hard {
		add(f.By, "its hard hour; queens are lost from then on")
	} else {
		add(f.By, "the last day for it")
	}
	if id, ok := f.Of.Nuc(); ok {
		r.waitingNuc(r.Nuc(id), add)
	}
	if id, ok := f.Of.Batch(); ok {
		all = append(all, r.waitingBatch(id)...)
	}
	slices.SortStableFunc(all, func(a, b Cost) int { return a.At.Compare(b.At) })
	return all
}

// waitingNuc adds the days of a nuc after which something cannot be mended.
func (r *Reading) waitingNuc(n *Nuc, add func(time.Time, string)) {
	if n == nil {
		return
	}
	p := n.Presumed
	if n.Holds.Condition == book.NoQueen {
		add(p.OwnFrom, "a virgin of its own is possible; a cell would be torn down")
	}
	add(p.TooLateAt, "too late to mate")
	add(p.LayingWorkersAt, "laying workers are to be expected")
}

// waitingBatch is how many of a batch's cells are lost by when.
func (r *Reading) waitingBatch(id book.BatchID) (all []Cost) {
	late, ok := r.Late(id)
	if !ok {
		return nil
	}
	for _, l := range late.Losses {
		if n := late.Lost(l.By); n.High >= 0.5 && l.By.After(r.View.On()) {
			all = append(all, Cost{l.By, n.String() + " of " + counted(late.Cells, "cell") + " lost"})
		}
	}
	return all
}
