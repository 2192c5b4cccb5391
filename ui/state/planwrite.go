package state

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
)

// planIt writes the answer down: a planned batch a graft.
func planIt(s State) (State, []Effect) {
	sheet, _ := s.PlanSheet()
	ids, facts := s.Pen.IDs, []book.Fact(nil)
	for _, b := range s.toPlanned(sheet) {
		if b.Batch.IsZero() {
			b.Batch = book.BatchID(ids.Next())
		}
		facts = append(facts, b)
	}
	s.Pen.IDs = ids
	first := facts[0].(book.BatchPlanned)
	words := s.planWords(sheet, first)
	s.Planning.Batch = first.Batch
	return s.write(words, calendar.Instantly(s.Now), facts...)
}

// planWords say what was planned, for undo: of a batch that was moved what that costs.
func (s State) planWords(p *PlanSheet, first book.BatchPlanned) string {
	if b, ok := s.Present().View.BatchPlan(first.Batch); ok && b.Day != first.Day {
		return s.movedWords(first, p.Chance, s.Present().lane(plannedKey{b.Batch, b.Day}).Chance)
	}
	if n := len(p.Batches); n > 1 {
		return fmt.Sprintf("%d grafts planned from %s", n, p.Batches[0].Day.ShortFrom(s.Today()))
	}
	return fmt.Sprintf("graft of %s planned for %s", book.LarvaeSaid(p.Larvae), p.Batches[0].Day.ShortFrom(s.Today()))
}

// breederOf is the first breeder of a line; none where no line is wished.
func (s State) breederOf(line string) (id book.ColonyID) {
	for c := range s.Present().View.Colonies() {
		if line != "" && c.Line == line && c.Is(book.Breeder) {
			return c.Colony
		}
	}
	return id
}

// ordersFor are the open orders that the grafts of an answer are evidently for.
func (s State) ordersFor(p *PlanSheet) (all []book.OrderID) {
	for _, o := range handover.OrdersFor(s.Present().planner(), p.Queens, p.Line, p.By) {
		all = append(all, o.Order)
	}
	return all
}

func dropPlan(s State) (State, []Effect) {
	id := s.planHand()
	s.Planning, s.Selection = Planning{Tries: s.Planning.Tries}, Selection{}
	return s.write("planned graft taken off", calendar.Instantly(s.Now), book.BatchDropped{Batch: id})
}

// planHand is the planned batch that commands are about: in Plan the one that is being
// changed, else the one selected.
func (s State) planHand() book.BatchID {
	if s.onWish() {
		return s.Planning.Batch
	}
	id, _ := s.Selection.Last().Batch()
	return id
}

// plannedChosen tells whether what is selected is a batch that is planned and not
// grafted.
func (s State) plannedChosen() bool {
	id, ok := s.Selection.Last().Batch()
	if !ok || s.Book == nil {
		return false
	}
	_, planned := s.Present().View.BatchPlan(id)
	return planned
}

// noPlanChosen says why there is no planned batch to do something with.
func noDropPlan(s State) string {
	if why := noPlanChosen(s); why != "" {
		return why
	}
	return s.notToday()
}

func noPlanChosen(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if _, ok := s.Present().View.BatchPlan(s.planHand()); !ok {
		return "select a batch that is planned and not grafted"
	}
	return s.Book.ReadOnly
}
