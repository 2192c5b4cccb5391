package state

import (
	"fmt"
	"slices"

	"lidmark/domain/calendar"
)

func notInPlan(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if s.Room != Plan {
		return "go to Plan first with Alt+P"
	}
	if !s.onWish() {
		return "turn to the wish first with Alt+P"
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
	case s.noMove() != "":
		return s.noMove()
	case s.Form != nil:
		return "leave the form first with Esc"
	case !sheet.InTime && !s.Planning.Forwards:
		return sheet.TooLate().Said(func(d calendar.Day) string { return d.ShortFrom(s.Today()) })
	case sheet.Nucs == 0:
		return "no nuc is free then: say how many nucs there will be"
	case s.PlanStands():
		return "nothing changed: it is on the plan so"
	}
	return ""
}

func noDayKept(s State) string {
	if why := notInPlan(s); why != "" {
		return why
	}
	if s.Planning.By == 0 {
		return "no day is kept: they are ready when they are"
	}
	return ""
}

func noNearest(s State) string {
	if why := noAnswer(s); why != "" {
		return why
	}
	if sheet, _ := s.PlanSheet(); sheet.InTime || s.Planning.Forwards {
		return "the day is possible as it is"
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
	sheet, _ := s.PlanSheet()
	switch {
	case len(s.Planning.Tries) == mostTries:
		return fmt.Sprintf("%d are kept: forget them first", mostTries)
	case slices.ContainsFunc(s.Planning.Tries, func(t PlanTry) bool { return t.Wish == sheet.key.wish }):
		return "it is kept already"
	}
	return ""
}

func noAgain(s State) string {
	if why := noAnswer(s); why != "" {
		return why
	}
	if sheet, _ := s.PlanSheet(); sheet.Again.Chance == 0 || sheet.Again.Day == sheet.Batches[0].Day {
		return "no other day leaves time for a second graft and is surer"
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
