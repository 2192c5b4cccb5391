package state

import (
	"fmt"
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
)

// Kinds of a [scene.Ref] in the room Plan.
const (
	RungRef    = "rung"    // a step of the ladder; ID is the step, Part the graft
	PlannedRef = "planned" // a planned batch; ID is the batch
	TryRef     = "try"     // a try-out; ID is its place
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
	{Name: "keep try", Does: "keep it beside, to compare", Keys: "Alt+K", Word: "Keep to compare", Why: noKeep, Do: pure(State.tried)},
	{Name: "forget tries", Does: "forget what was kept", Word: "Forget them", Why: noTries, Do: pure(func(s State) State { s.Planning.Tries = nil; return s })},
	{Name: "new plan", Does: "plan another batch", Word: "Another batch", Why: noPlanned, Do: pure(func(s State) State {
		s.Planning = Planning{Tries: s.Planning.Tries}
		return s.withoutFields("plan.").wishBegun()
	})},
	{Name: "drop plan", Does: "take this batch off the plan", Word: "Take it off the plan", Why: noPlanned, Do: dropPlan},
}

// toPlan is the window in the room Plan, the keys on the first figure of the wish.
func (s State) toPlan() State {
	s.Planning.Page = WishPage
	return s.entered(Plan).wishBegun().toField(WishQueens)
}

func notInPlan(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if s.Room != Plan {
		return "go to Plan first with Alt+P"
	}
	return ""
}

// noAnswer says why there is nothing to do with the answer.
func noAnswer(s State) string {
	if why := notInPlan(s); why != "" {
		return why
	}
	if _, wrong := s.Wish(); wrong.Field != "" {
		return wrong.Why
	}
	if _, now := s.PlanSheet(); !now {
		return "it is being reckoned, a moment"
	}
	return ""
}

func noPlanIt(s State) string {
	if why := noAnswer(s); why != "" {
		return why
	}
	sheet, _ := s.PlanSheet()
	switch {
	case s.Book.ReadOnly != "":
		return s.Book.ReadOnly
	case s.Form != nil:
		return "leave the form first with Esc"
	case s.Unsaved():
		return "what was written last is on its way, a moment"
	case !sheet.InTime:
		return "no graft is in time for that day: the nearest is " + sheet.Nearest.Short()
	case sheet.Nucs == 0:
		return "no nuc is free then: say how many nucs there will be"
	}
	return ""
}

func noEarlier(s State) string {
	if why := noAnswer(s); why != "" {
		return why
	}
	if sheet, _ := s.PlanSheet(); sheet.Batches[0].Day <= s.Today()+1 {
		return "a graft can be planned from tomorrow on"
	}
	return ""
}

func noKeep(s State) string {
	if why := noAnswer(s); why != "" {
		return why
	}
	if len(s.Planning.Tries) == mostTries {
		return fmt.Sprintf("%d are kept: forget them first", mostTries)
	}
	return ""
}

func noTries(s State) string {
	if len(s.Planning.Tries) == 0 {
		return "nothing was kept"
	}
	return ""
}

func noPlanned(s State) string {
	if why := notInPlan(s); why != "" {
		return why
	}
	if s.Planning.Batch.IsZero() {
		return "this is a new batch"
	}
	return ""
}

// turnedAround is the window with the wish read the other way, about the same graft.
func (s State) turnedAround() State {
	sheet, now := s.PlanSheet()
	s.Planning.Forwards = !s.Planning.Forwards
	if !now {
		return s
	}
	day := sheet.By
	if s.Planning.Forwards {
		day = sheet.Batches[0].Day
	}
	return s.toWish(WishDay, dayTyped(day))
}

func (s State) grafts() State {
	if s.Planning.Grafts > 1 {
		s.Planning.Grafts = 0
	} else {
		s.Planning.Grafts = 2
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

// graftOn is the window with the first graft on a day.
func (s State) graftOn(d calendar.Day) State {
	s.Planning.Forwards = true
	return s.toWish(WishDay, dayTyped(max(d, s.Today()+1)))
}

// mostTries is how many try-outs are kept beside each other.
const mostTries = 4

// tried is the window with the answer kept beside others.
func (s State) tried() State {
	sheet, _ := s.PlanSheet()
	t := PlanTry{
		Wish: sheet.key.wish, Graft: sheet.Batches[0].Day, Chance: sheet.Chance, Larvae: sheet.Larvae * len(sheet.Batches), Nucs: sheet.Nucs, Hours: sheet.Hours(),
	}
	s.Planning.Tries = append(s.Planning.Tries[:len(s.Planning.Tries):len(s.Planning.Tries)], t)
	return s
}

// tryTaken is the window with a try-out as its wish.
func (s State) tryTaken(i int) State {
	if i < 0 || i >= len(s.Planning.Tries) {
		return s
	}
	w := s.Planning.Tries[i].Wish
	s.Planning.Forwards, s.Planning.Laying, s.Planning.Grafts, s.Planning.Batch = w.Graft != 0, w.Laying, w.Grafts, w.Not
	s.Yards[Plan] = w.Yard
	return s.toWish(WishQueens, strconv.Itoa(w.Queens)).toWish(WishDay, dayTyped(max(w.By, w.Graft))).toWish(WishLine, w.Line).
		toWish(WishNucs, openTyped(w.Nucs)).toWish(WishLarvae, openTyped(w.Larvae)).toWish(WishSure, openTyped(int(w.Sure*100+0.5)))
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
	s.Planning.Batch, s.Planning.Laying, s.Planning.Grafts, s.Planning.Forwards = id, b.Laying, 0, true
	s.Focus = scene.Ref{Kind: PlannedRef, ID: id.Subject().String()}
	return s.toWish(WishQueens, strconv.Itoa(max(1, b.Queens))).toWish(WishDay, dayTyped(b.Day)).toWish(WishLine, b.Line).
		toWish(WishNucs, openTyped(b.Nucs)).toWish(WishLarvae, openTyped(b.Larvae)).toWish(WishSure, openTyped(int(b.Sure*100+0.5)))
}

// planIt writes the answer down: a planned batch a graft.
func planIt(s State) (State, []Effect) {
	sheet, _ := s.PlanSheet()
	ids, facts := s.Pen.IDs, []book.Fact(nil)
	for i, b := range sheet.Batches {
		id := s.Planning.Batch
		if i > 0 || id.IsZero() {
			id = book.BatchID(ids.Next())
		}
		at := b.Ladder.Graft.In(s.Present().View.Zone())
		facts = append(facts, book.BatchPlanned{
			Batch: id, Day: b.Day, Minute: at.Hour()*60 + at.Minute(), Line: sheet.Line, Breeder: s.breederOf(sheet.Line), Yard: sheet.Yard,
			Larvae: sheet.Larvae, Nucs: sheet.Nucs, Queens: sheet.Queens, By: sheet.By, Laying: sheet.Laying, Sure: sheet.Sure, Orders: s.ordersFor(sheet),
		})
	}
	s.Pen.IDs = ids
	s.Planning.Batch = facts[0].(book.BatchPlanned).Batch
	return s.write(planWords(sheet), calendar.Instantly(s.Now), facts...)
}

// planWords say what was planned, for undo.
func planWords(p *PlanSheet) string {
	if n := len(p.Batches); n > 1 {
		return fmt.Sprintf("%d grafts planned from %s", n, p.Batches[0].Day.Short())
	}
	return fmt.Sprintf("graft of %s planned for %s", larvaeWord(p.Larvae), p.Batches[0].Day.Short())
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

// ordersFor are the open orders that a planned batch is for: those that take its
// line and are due no sooner than it is ready, the first ones, up to its queens.
func (s State) ordersFor(p *PlanSheet) (all []book.OrderID) {
	left := p.Queens
	for o := range s.Present().View.Orders() {
		if n := o.Open(); n > 0 && n <= left && o.By >= p.Nearest && o.Takes(p.Line) {
			all, left = append(all, o.Order), left-n
		}
	}
	return all
}

func dropPlan(s State) (State, []Effect) {
	id := s.Planning.Batch
	s.Planning = Planning{Tries: s.Planning.Tries}
	return s.write("planned graft taken off", calendar.Instantly(s.Now), book.BatchDropped{Batch: id})
}
