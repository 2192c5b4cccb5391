package state

import (
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/ui/scene"
)

// PlanOther is another day for the graft, with the same amounts for the same day.
type PlanOther struct {
	Day    calendar.Day
	Chance float64
	Ready  calendar.Day // by when they are ready, or lay
	Clash  string       // what is short then that is not short on the day chosen; "" nothing
	Free   []string     // who is free on the day of the graft
	Told   bool         // somebody said who is free when
}

// FreeSaid says who is free on that day, so many by name; "" where nobody said.
func (o PlanOther) FreeSaid(names int) string {
	switch more := len(o.Free) - names; {
	case !o.Told:
		return ""
	case len(o.Free) == 0:
		return "nobody free"
	case names == 0:
		return fmt.Sprintf("%d free", len(o.Free))
	case more > 0:
		return fmt.Sprintf("%s and %d more free", strings.Join(o.Free[:names], ", "), more)
	}
	return strings.Join(o.Free, ", ") + " free"
}

// otherDays are by how many days other grafts are earlier and later.
var otherDays = [...]int{-7, -3, 3}

// others are other days for the graft, and what each costs.
func (s *PlanSheet) others(p *plan.Planner) {
	for _, by := range otherDays {
		if day := s.Batches[0].Day + calendar.Day(by); day > p.View().Today() {
			s.Others = append(s.Others, s.other(p, day))
		}
	}
}

func (s *PlanSheet) other(p *plan.Planner, day calendar.Day) PlanOther {
	w := s.fixed(day)
	a := p.Answer(w)
	if a.Free < w.Nucs {
		w.Nucs = max(1, a.Free)
		a = p.Answer(w)
	}
	return PlanOther{Day: day, Chance: a.Chance, Ready: a.Nearest, Clash: s.clash(p, a), Free: whoIsFree(p, day), Told: p.View().HoursTold()}
}

// clash says what is in the way of another answer and not of this one.
func (s *PlanSheet) clash(p *plan.Planner, a plan.Answer) string {
	var all []string
	b := a.Batches[0]
	for _, step := range []plan.Step{plan.GraftLarvae, plan.GiveCells} {
		if b.Rung(step).NobodyFree {
			all = append(all, "nobody is free to "+step.String())
		}
	}
	if a.Free < s.Nucs && a.Free < s.Free {
		all = append(all, fmt.Sprintf("%d nucs free", a.Free))
	}
	for _, n := range plan.Together(p.NeedsOf(a.Wanting()...)...) {
		if more := n.Short() - s.shortOf(n.Good); n.Known && n.Good != plan.Nucs && more >= 1 {
			all = append(all, fmt.Sprintf("%s %s more short", figure(more), n.Good))
		}
	}
	return strings.Join(all, ", ")
}

// shortOf is how much of a good is short.
func (s *PlanSheet) shortOf(g plan.Good) float64 {
	for _, n := range s.Needs {
		if n.Good == g && n.Known {
			return max(0, n.Short())
		}
	}
	return 0
}

// whoIsFree are the names of those who are free on a day.
func whoIsFree(p *plan.Planner, day calendar.Day) (names []string) {
	for who := range p.View().People() {
		if who.FreeOn(day).Minutes() > 0 {
			names = append(names, who.Name)
		}
	}
	return names
}

// OtherOf names another day for the graft in a scene.
func OtherOf(d calendar.Day) scene.Ref { return scene.Ref{Kind: OtherRef, ID: d.String()} }

// otherClicked moves the graft to a day.
func (s State) otherClicked(day string) State {
	d, err := calendar.ParseDay(day)
	if err != nil {
		return s
	}
	return s.graftOn(d)
}

// datesShown is the window with other days for the graft beside, the keys on the one
// that is chosen, or without; from what was kept beside it leads back to why.
func (s State) datesShown() State {
	s.Planning.Dates, s.Planning.Compare = !s.Planning.Dates && !s.Planning.Compare, false
	if sheet, _ := s.PlanSheet(); s.Planning.Dates {
		s.Focus = OtherOf(sheet.Batches[0].Day)
	}
	return s
}

// otherBeside is the window with the keys on the other day before or after.
func (s State) otherBeside(by int) State {
	sheet, _ := s.PlanSheet()
	if sheet == nil {
		return s
	}
	days := []calendar.Day{sheet.Batches[0].Day}
	for _, o := range sheet.Others {
		days = append(days, o.Day)
	}
	slices.Sort(days)
	i := slices.IndexFunc(days, func(d calendar.Day) bool { return OtherOf(d) == s.Focus })
	s.Focus = OtherOf(days[min(max(i+by, 0), len(days)-1)])
	return s
}
