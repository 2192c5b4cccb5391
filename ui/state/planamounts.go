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
	good              plan.Good
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
			a.Have = "from " + n.From.ShortFrom(s.Today())
		}
		if n.Good == plan.CupsOfBees {
			a.Have += ", a cup is " + plan.CupOf(s.Present().Numbers()).String()
		}
		if kinds := n.KindsSaid(); kinds != "" {
			a.Have += ": " + kinds
		}
		a.good = n.Good
		all = append(all, a)
	}
	slices.SortStableFunc(all, toldBefore)
	return all
}

// orderBy is the day by which something is ordered, at the earliest today: on another
// day than that it has its date.
func (s State) orderBy(d calendar.Day) string {
	if d <= s.Today() && !s.Away() {
		return "today"
	}
	return max(d, s.Today()).ShortFrom(s.Today())
}

// goodsTold is the order in which amounts are told: first what the keeper has to find, of what stays
// those follow as they are got ready.
var goodsTold = [...]plan.Good{plan.Starters, plan.Finishers, plan.Nucs, plan.CupsOfBees, plan.RearerFeed, plan.DroneColonies}

// toldBefore compares two amounts in the order in which they are told.
func toldBefore(a, b PlanAmount) int {
	at := func(g plan.Good) int {
		if i := slices.Index(goodsTold[:], g); i >= 0 {
			return i
		}
		return len(goodsTold)
	}
	return cmp.Compare(at(a.good), at(b.good))
}

// AmountPage is a page of the amounts: those that are told, how many more the next one tells, and
// whether it is the last of several, behind which the first one comes again.
type AmountPage struct {
	Told []PlanAmount
	More int
	Last bool
}

// PlanAmountsIn are the amounts of which so many lines have room. Where not all have room what is
// short comes first, and the last line is left to lead on to the next page.
func (s State) PlanAmountsIn(lines int) AmountPage {
	all := s.PlanAmounts()
	if len(all) <= lines {
		return AmountPage{Told: all}
	}
	slices.SortStableFunc(all, func(a, b PlanAmount) int { return cmp.Compare(boolInt(b.Short), boolInt(a.Short)) })
	page := max(1, lines-1)
	from := s.Planning.Amounts * page % (page * ((len(all) + page - 1) / page))
	to := min(len(all), from+page)
	return AmountPage{all[from:to], len(all) - to, to == len(all)}
}
