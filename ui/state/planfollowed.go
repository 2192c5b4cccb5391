package state

import (
	"reflect"

	"lidmark/domain/book"
)

// planFollowed is the window whose wish follows the planned batch that it changes, where the
// book has that otherwise than before and than the wish: moved in the season, by a way out of
// a clash or by undo, or the first of several that were just planned.
func (s State) planFollowed(was State) State {
	if s.Book == nil || s.Book == was.Book || was.Book == nil || s.Planning.Batch != was.Planning.Batch {
		return s
	}
	now, planned := s.Present().View.BatchPlan(s.Planning.Batch)
	before, _ := was.Present().View.BatchPlan(s.Planning.Batch)
	if !planned || reflect.DeepEqual(before.BatchPlanned, now.BatchPlanned) || s.planned.sheet.gave(now.BatchPlanned) {
		return s
	}
	return s.wishOf(now)
}

// gave tells whether a planned batch is what an answer found, and all that it found.
func (s *PlanSheet) gave(b book.BatchPlanned) bool {
	return s != nil && len(s.Batches) == 1 && s.Batches[0].Day == b.Day && s.Batches[0].Graft.Larvae == b.Larvae && s.Batches[0].Graft.Nucs == b.Nucs
}

// PlanChanged tells whether what the wish is about is on the plan already, so that it is
// changed and not made.
func (s State) PlanChanged() bool {
	_, planned := s.Present().View.BatchPlan(s.Planning.Batch)
	return planned
}
