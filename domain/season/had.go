package season

import (
	"lidmark/domain/book"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
)

// had is what a promise can count on before any graft is found for it: what stands in nucs, what is left of
// its batches, and the grafts planned for it.
type had struct {
	handover.Counted
	grafts []plan.Graft // those planned, each taken to have nucs of its own
	queens int          // of the promise
}

// hadBy is what a promise has; nil: nothing.
func hadBy(p *plan.Planner, promise Promise) *had {
	if promise.Has == nil {
		return nil
	}
	h := &had{Counted: *promise.Has, queens: promise.Queens}
	for _, b := range h.Planned {
		g := p.GraftFor(b, promise.By, promise.Laying)
		g.Again = true
		h.grafts = append(h.grafts, g)
	}
	return h
}

// all is how many must be there in all for so many queens of the promise.
func (h *had) all(queens int) int { return h.Queens - h.queens + queens }

// with are the chances that so many or more are there, with others besides what is in nucs and cells.
func (h *had) with(others plan.Chances) []float64 {
	more := tails(listed(others))
	of := make([]float64, h.Queens+1)
	for n := range of {
		for ready, p := range h.Ready {
			switch wanted := n - ready; {
			case wanted <= 0:
				of[n] += p
			case wanted < len(more):
				of[n] += p * more[wanted]
			}
		}
	}
	return of
}

// keptAlready is how many queens of a promise are there as surely as is wished without any graft.
func (p Promise) keptAlready(of *plan.Planner) (n int) {
	if p.Has == nil {
		return 0
	}
	h := hadBy(of, p)
	chances := tails(h.Chances(of))
	for n < p.Queens-1 && chances[max(0, h.all(n+1))] >= p.Sure-even {
		n++
	}
	return n
}

// chance is the chance of so many queens of a promise with other grafts planned besides.
func (h *had) chance(p *plan.Planner, besides []book.BatchPlan, queens int) float64 {
	return tails(h.Chances(p, besides...))[max(0, h.all(queens))]
}
