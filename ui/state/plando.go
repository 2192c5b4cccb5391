package state

import (
	"slices"
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// Kinds of a [scene.Ref] in the room Plan.
const (
	RungRef    = "rung"    // a step of the ladder; ID is the step, Part the graft
	PlannedRef = "planned" // a planned batch; ID is the batch
	TryRef     = "try"     // a try-out; ID is its place
	OtherRef   = "other"   // another day for the graft; ID is the day
	FigureRef  = "figure"  // a figure that says where it comes from
)

// planCommands are the commands of the room Plan.
var planCommands = []Command{
	{Name: "plan", Does: "Plan", Keys: "Alt+P", Why: noBook, Do: pure(State.toPlan)},
	{Name: "wish", Does: "the wish", Word: "Wish", Why: noBook, Do: pure(State.toPlan)},
	{Name: "plan it", Does: "make it the plan", Keys: "Ctrl+Enter", Word: "Make it the plan", Why: noPlanIt, Do: planIt},
	{Name: "forwards", Does: "from a graft, or from the day", Keys: "Alt+F", Why: notInPlan, Do: pure(State.turnedAround)},
	{Name: "laying by", Does: "laying by that day, or ready to hand over", Why: notInPlan, Do: pure(func(s State) State { s.Planning.Laying = !s.Planning.Laying; return s })},
	{Name: "two grafts", Does: "two grafts, a week apart; again: one", Keys: "Alt+G", Why: notInPlan, Do: pure(State.grafts)},
	{Name: "day earlier", Does: "the graft a day earlier", Keys: "Alt+,", Word: "A day earlier", Why: noEarlier, Do: graftMoved(-1)},
	{Name: "day later", Does: "the graft a day later", Keys: "Alt+.", Word: "A day later", Why: noAnswer, Do: graftMoved(1)},
	{Name: "any day", Does: "ready when they are, not by that day", Why: noDayKept, Do: pure(func(s State) State { s.Planning.By = 0; return s })},
	{Name: "nearest day", Does: "wish for the soonest day that is possible", Why: noNearest, Do: pure(func(s State) State {
		sheet, _ := s.PlanSheet()
		return s.toWish(WishDay, s.dayTyped(sheet.Nearest))
	})},
	{Name: "other dates", Does: "other days for the graft; again: why", Keys: "Ctrl+D", Word: "Other dates", Why: noAnswer, Do: pure(State.datesShown)},
	{Name: "by larvae", Does: "how sure by larvae; again: queens", Keys: "Alt+Shift+H", Word: "How sure by larvae", Why: noByLarvae, Do: pure(State.byLarvaeShown)},
	{Name: "more amounts", Does: "the other amounts", Why: noAnswer, Do: pure(func(s State) State { s.Planning.Amounts++; return s })},
	{Name: "keep try", Does: "keep it beside, to compare", Keys: "Alt+K", Word: "Keep to compare", Why: noKeep, Do: pure(State.tried)},
	{Name: "graft again", Does: "graft so that another is in time if it fails", Why: noAgain, Do: pure(func(s State) State {
		sheet, _ := s.PlanSheet()
		return s.graftOn(sheet.Again.Day)
	})},
	{Name: "compare", Does: "compare what was kept beside", Why: noTries, Do: pure(State.compared)},
	{Name: "forget tries", Does: "forget what was kept", Word: "Forget them", Why: noTries, Do: pure(func(s State) State { s.Planning.Tries, s.Planning.Compare = nil, false; return s })},
	{Name: "new plan", Does: "plan another batch", Word: "Another batch", Why: noPlanned, Do: pure(func(s State) State {
		s.Planning = Planning{Tries: s.Planning.Tries, Compare: s.Planning.Compare, ByLarvae: s.Planning.ByLarvae}
		return s.withoutFields("plan.").wishBegun()
	})},
	{Name: "move plan", Does: "change this planned batch in Plan", Keys: "Alt+Shift+P", Word: "Move or change it", Why: noPlanChosen, Do: pure(func(s State) State {
		id, _ := s.Selection.Last().Batch()
		return s.entered(Plan).planLoaded(id)
	})},
	{Name: "drop plan", Does: "take this batch off the plan", Word: "Take it off the plan", Why: noDropPlan, Do: dropPlan},
}

// toPlan is the window in the room Plan, the keys on the first figure of the wish.
func (s State) toPlan() State {
	s.Planning.Page = WishPage
	return s.entered(Plan).wishBegun().toField(WishQueens)
}

// turnedAround is the window with the wish read the other way, about the same graft.
func (s State) turnedAround() State {
	sheet, now := s.PlanSheet()
	s.Planning.Forwards, s.Planning.By = !s.Planning.Forwards, 0
	if !now {
		return s
	}
	day := sheet.By
	if s.Planning.Forwards {
		day = sheet.Batches[0].Day
	}
	return s.toWish(WishDay, s.dayTyped(day))
}

// grafts is the window with two grafts in place of one, or one in place of several: of
// larvae that were said one by one the first are left.
func (s State) grafts() State {
	w, _ := s.Wish()
	if w.OneByOne() {
		s = s.toWish(WishLarvae, openTyped(w.Larvae))
	}
	if s.Planning.Grafts = 2; w.Grafts > 1 {
		s.Planning.Grafts = 0
	}
	return s
}

// graftMoved moves the graft by days: the wish is read from it then.
func graftMoved(by int) func(State) (State, []Effect) {
	return pure(func(s State) State {
		sheet, _ := s.PlanSheet()
		return s.graftOn(sheet.Batches[0].Day + calendar.Day(by))
	})
}

// graftOn is the window with the first graft on a day. The day for which queens are
// wanted stays: so it is seen what the other day costs.
func (s State) graftOn(d calendar.Day) State {
	if !s.Planning.Forwards {
		w, _ := s.Wish()
		s.Planning.Forwards, s.Planning.By = true, w.By
	}
	if b, ok := s.Present().View.BatchPlan(s.Planning.Batch); ok { // what is moved keeps its amounts
		for field, n := range map[string]int{WishLarvae: b.Larvae, WishNucs: b.Nucs} {
			if s.Typed(field) == "" {
				s = s.toWish(field, openTyped(n))
			}
		}
	}
	return s.toWish(WishDay, s.dayTyped(max(d, s.Today()+1)))
}

// mostTries is how many try-outs are kept beside each other.
const mostTries = 4

// tried is the window with the answer kept beside others.
func (s State) tried() State {
	sheet, _ := s.PlanSheet()
	s.Planning.Tries = append(slices.Clip(s.Planning.Tries), tryOf(sheet))
	return s.compared()
}

// compared is the window with what was kept in sight.
func (s State) compared() State {
	s.Planning.Compare = true
	if p := s.PlanPane(s.Layout()); p.Kept.Bottom() > p.Body.Bottom() {
		s = s.scrolled(PlanPlace, p.Kept.Bottom()-p.Body.Bottom())
	}
	return s
}

// tryTaken is the window with a try-out as its wish.
func (s State) tryTaken(i int) State {
	if i < 0 || i >= len(s.Planning.Tries) {
		return s
	}
	w := s.Planning.Tries[i].Wish
	s.Planning.Forwards, s.Planning.Laying, s.Planning.Grafts, s.Planning.Batch = w.Graft != 0, w.Laying, w.Grafts, w.Not
	if w.OneByOne() {
		s.Planning.Grafts = 0 // its larvae say how many
	}
	day := w.By
	if s.Planning.By = 0; w.Graft != 0 {
		s.Planning.By, day = w.By, w.Graft
	}
	s.Yards[Plan] = w.Yard
	return s.toWish(WishQueens, strconv.Itoa(w.Queens)).toWish(WishDay, s.dayTyped(day)).toWish(WishHour, hourTyped(w.Minute)).toWish(WishLine, w.Line).
		toWish(WishNucs, openTyped(w.Nucs)).toWish(WishLarvae, plan.LarvaeSaid(w.Said())).toWish(WishApart, openTyped(w.Apart)).toWish(WishSure, openTyped(hundredths(w.Sure)))
}

// openTyped is a number that may be left out, as it stands in its field.
func openTyped(n int) string {
	if n == 0 {
		return ""
	}
	return strconv.Itoa(n)
}

// planLoaded is the window with a planned batch to be changed.
func (s State) planLoaded(id book.BatchID) State {
	b, ok := s.Present().View.BatchPlan(id)
	if !ok {
		return s
	}
	s.Selection, s.Focus = Select(id.Subject()), PlannedOf(id)
	return s.wishOf(b)
}

// wishOf is the window with a planned batch as its wish.
func (s State) wishOf(b book.BatchPlan) State {
	s.Planning.Batch, s.Planning.Laying, s.Planning.Grafts, s.Planning.Forwards, s.Planning.By = b.Batch, b.Laying, 0, true, b.By
	s.Yards[Plan] = b.Yard
	return s.toWish(WishQueens, strconv.Itoa(max(1, b.Queens))).toWish(WishDay, s.dayTyped(b.Day)).toWish(WishHour, hourTyped(b.Minute)).toWish(WishLine, b.Line).
		toWish(WishNucs, openTyped(b.Nucs)).toWish(WishLarvae, openTyped(b.Larvae)).toWish(WishSure, openTyped(hundredths(b.Sure)))
}
