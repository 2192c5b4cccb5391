package siting

import (
	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

// Kept is what the best layout of a search costs as it was kept along.
func (s *Search) Kept() float64 { return s.best().best }

// FullOfKept is the same reckoned anew.
func (s *Search) FullOfKept() float64 {
	c := s.best()
	return s.plot.bill(c.bestSoFar(), c.order, s.plot.numbers).Worth
}

// StepsTo are the steps from the layout of a task to another of the same boxes, without
// what does not pay where that is asked for.
func StepsTo(t Task, to yard.Layout, pruned bool, n practice.Numbers) []Step {
	p := newPlot(t, n)
	p.begun = p.was
	now := newTrial(p, to, p.walk(to))
	if pruned {
		now.prune()
	}
	steps, _ := now.steps()
	return steps
}
