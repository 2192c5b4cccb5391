package state

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// PlanAmount is one line of the amounts.
type PlanAmount struct {
	Name, Value, Have string
	Short             bool
	Used              []practice.Key
}

// PlanAmounts are what the wish eats, as lines.
func (s State) PlanAmounts() (all []PlanAmount) {
	sheet, _ := s.PlanSheet()
	if sheet == nil {
		return nil
	}
	for _, n := range sheet.Needs {
		a := PlanAmount{Name: n.Good.String(), Value: strings.TrimSpace(figure(n.Amount) + " " + n.Unit()), Used: n.Good.Used()}
		switch {
		case n.Known && n.Short() > 0:
			a.Have, a.Short = fmt.Sprintf("have %s, %s short", figure(n.Have), figure(n.Short())), true
		case n.Known:
			a.Have = "have " + figure(n.Have)
		case n.OrderBy != 0:
			a.Have = "order by " + s.orderBy(n.OrderBy)
		default:
			a.Have = "from " + n.From.Short()
		}
		if n.Good == plan.CupsOfBees {
			a.Have += ", a cup is " + plan.CupOf(s.Present().Numbers()).String()
		}
		if kinds := n.KindsSaid(); kinds != "" {
			a.Have += ": " + kinds
		}
		all = append(all, a)
	}
	return all
}

// orderBy is the day by which something is ordered, at the earliest today: on another
// day than that it has its date.
func (s State) orderBy(d calendar.Day) string {
	if d <= s.Today() && !s.Away() {
		return "today"
	}
	return max(d, s.Today()).Short()
}

// PlanAmountsIn are the amounts of which so many lines have room, and how many more
// there are; 0: all are told. Where not all have room what is short comes first, and
// the last line is left to lead on to the next page.
func (s State) PlanAmountsIn(lines int) (shown []PlanAmount, more int) {
	all := s.PlanAmounts()
	if len(all) <= lines {
		return all, 0
	}
	slices.SortStableFunc(all, func(a, b PlanAmount) int { return cmp.Compare(boolInt(b.Short), boolInt(a.Short)) })
	page := max(1, lines-1)
	from := s.Planning.Amounts * page % (page * ((len(all) + page - 1) / page))
	shown = all[from:min(len(all), from+page)]
	return shown, len(all) - len(shown)
}
