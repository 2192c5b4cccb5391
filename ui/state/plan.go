package state

import (
	"cmp"
	"fmt"
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
	By       calendar.Day // forwards: the day for which queens are wanted all the same; 0: when they are ready
	Laying   bool         // laying by the day; else ready to hand over
	Grafts   int          // how many, a week apart; 0: one
	Batch    book.BatchID // the planned batch that is being changed; none: a new one
	Tries    []PlanTry    // kept to be compared
	Dates    bool         // other days for the graft stand beside
	Compare  bool         // what was kept is compared beside, before those days
	ByLarvae bool         // how sure it is by larvae, in place of a hundred such plans
	Turn     bool         // the turn of a nuc was asked for: lanes give way to it
	Amounts  int          // which page of the amounts is shown, from 0, where not all have room
}

// PlanTry is a wish that was kept beside others, with what came of it.
type PlanTry struct {
	Wish    plan.Wish
	Graft   calendar.Day
	By      calendar.Day
	Chance  float64
	Promise int // at 90 %
	Larvae  int // of all grafts
	Nucs    int
	Hours   float64 // of the keeper's work
}

// tryOf is what is kept of an answer.
func tryOf(p *PlanSheet) PlanTry {
	larvae := 0
	for _, n := range p.Grafted() {
		larvae += n
	}
	return PlanTry{
		Wish: p.key.wish, Graft: p.Batches[0].Day, By: p.By, Chance: p.Chance, Promise: p.Chances.Promise(promised),
		Larvae: larvae, Nucs: p.Nucs, Hours: p.Hours(),
	}
}

// promised is the certainty by which try-outs are compared.
const promised = 0.9

// PlanTries are what was kept to be compared, and last the answer as it is now,
// where there is one.
func (s State) PlanTries() (kept []PlanTry, now *PlanTry) {
	if sheet, is := s.PlanSheet(); is {
		t := tryOf(sheet)
		now = &t
	}
	return s.Planning.Tries, now
}

// OnPlan is the planned batch that the wish changes, as it stands on the plan, to be compared
// with what was kept; ok is false where there is none.
func (s State) OnPlan() (t PlanTry, ok bool) {
	b, ok := s.Present().View.BatchPlan(s.Planning.Batch)
	if !ok {
		return t, false
	}
	l, p := s.PlannedStands(b), s.Present().planner()
	t = PlanTry{
		Wish:  plan.Wish{Queens: b.Queens, By: b.By, Laying: b.Laying, Line: b.Line, Yard: b.Yard, Sure: b.Sure},
		Graft: b.Day, By: b.By, Chance: l.Chance, Promise: l.Chances.Promise(promised), Larvae: b.Larvae, Nucs: b.Nucs,
	}
	for _, m := range p.Ahead(l.Ladder, l.Size) {
		t.Hours += m.Minutes / 60
	}
	return t, true
}

// Wanted says what a try-out is for, as read today: how many queens, ready or laying, by when.
func (t PlanTry) Wanted(today calendar.Day) (queens, by string) {
	state := "ready"
	if t.Wish.Laying {
		state = "laying"
	}
	return fmt.Sprintf("%d %s", t.Wish.Queens, state), dayMonthFrom(t.By, today)
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
// Plan needs; while a day is dragged it is reckoned at once.
func (s State) planning(was State) (State, []Effect) {
	if s.Book == nil || !s.onWish() || s.Form != nil || s.Drag.Kind == RungDrag || s.Drag.Kind == PlannedDrag {
		return s, nil
	}
	if field := s.InField(); field != was.InField() && slices.Contains(WishFields, field) {
		s = s.scrolled(PlanPlace, -s.Scroll[PlanPlace]) // the wish is in sight
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
	wish, wrong := s.Wish()
	return sheet, sheet.key == planKey{s.Present(), wish} && wrong.Field == ""
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
