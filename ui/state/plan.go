package state

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// Planning is what the keeper set in the room Plan, besides what stands in its
// fields. The zero Planning is one graft, backwards from the day queens are to be
// ready.
type Planning struct {
	Page     PlanPage     // which page is shown
	Forwards bool         // from a graft on
	Laying   bool         // laying by the day; else ready to hand over
	Grafts   int          // how many, a week apart; 0: one
	Batch    book.BatchID // the planned batch that is being changed; none: a new one
	Tries    []PlanTry    // kept to be compared
}

// PlanTry is a wish that was kept beside others, with what came of it.
type PlanTry struct {
	Wish   plan.Wish
	Graft  calendar.Day
	Chance float64
	Larvae int
	Nucs   int
	Hours  float64 // of the keeper's work
}

// planKey names an answer: what was read, and the wish.
type planKey struct {
	of   *Reading
	wish plan.Wish
}

// planned is what is known of the answer to the wish.
type planned struct {
	sheet *PlanSheet // the last one
	asked planKey    // the one on its way, or there
}

// ReckonPlan asks for the answer to a wish, which takes a moment; what
// [ReckonPlan.Reckon] gives comes back. Of several that wait only the last matters.
type ReckonPlan struct{ key planKey }

func (ReckonPlan) effect() {}

// PlanReckoned brings an answer.
type PlanReckoned struct{ sheet *PlanSheet }

func (PlanReckoned) msg() {}

// Reckon finds the answer. It may run beside the window.
func (e ReckonPlan) Reckon() PlanReckoned { return PlanReckoned{planSheetOf(e.key)} }

// planning is the window after a message with the answer asked for that the room
// Plan needs.
func (s State) planning() (State, []Effect) {
	if s.Book == nil || s.OnOrders() || s.Room != Plan || s.Form != nil {
		return s, nil
	}
	wish, wrong := s.Wish()
	key := planKey{s.Present(), wish}
	if wrong.Field != "" || key == s.planned.asked {
		return s, nil
	}
	s.planned.asked = key
	return s, []Effect{ReckonPlan{key}}
}

// planTaken is the window with an answer that came back, of the wish that was asked
// for last.
func (s State) planTaken(m PlanReckoned) State {
	if m.sheet != nil && m.sheet.key == s.planned.asked {
		s.planned.sheet = m.sheet
	}
	return s
}

// PlanSheet is the answer to the wish, and whether it is that of what stands in the
// fields now; nil while there is none of this book.
func (s State) PlanSheet() (sheet *PlanSheet, now bool) {
	sheet = s.planned.sheet
	if s.Book == nil || sheet == nil {
		return nil, false
	}
	_, wrong := s.Wish()
	return sheet, sheet.key == s.planned.asked && wrong.Field == ""
}

// PlannedBatches are the batches that are planned and not grafted, as they stand now.
func (s State) PlannedBatches() []book.BatchPlan {
	if s.Book == nil {
		return nil
	}
	return s.Present().planned()
}

func (r *Reading) readPlanned() []book.BatchPlan {
	return slices.SortedStableFunc(r.View.Plans(), func(a, b book.BatchPlan) int { return cmp.Compare(a.Day, b.Day) })
}
