package season

import (
	"cmp"
	"slices"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// load is a batch of the book with what it takes.
type load struct {
	standing
	takes []span
	asks  []ask
	comb  calendar.Day // the day of its drone comb
}

// ask is the bees, in kilograms, and the combs of brood that a batch asks of colonies on the
// day of a step.
type ask struct {
	step             plan.Step
	day              calendar.Day
	kilograms, combs float64
}

// account is what the batches of a book take of what there is. It is reckoned anew
// for every way out that is tried; what does not depend on the batches is kept.
type account struct {
	planner *plan.Planner
	ground  *ground // with nothing taken from it
	today   calendar.Day
	told    bool // hours are
	givers  bool // some colony gives bees and brood
	free    map[calendar.Day]float64
	give    map[calendar.Day][2]float64
}

func newAccount(p *plan.Planner, all []standing) *account {
	v := p.View()
	from, until := spanOf(all, v.Today())
	a := &account{
		planner: p, today: v.Today(), ground: newGround(p, yardsWithNucs(v), from-moveMost, until+moveMost),
		told: v.HoursTold(), givers: len(p.Givers(v.Today())) > 0, free: map[calendar.Day]float64{}, give: map[calendar.Day][2]float64{},
	}
	a.ground.fill(a.ground.besides(grafts), 1)
	return a
}

// load is what a batch takes. Bees and brood are for the starters that are still to be set
// up, and the nucs that are still to be made up.
func (a *account) load(s standing) *load {
	l := &load{standing: s, takes: a.ground.takes(s.ladder, s.size)}
	l.asks = a.starterAsk(s)
	if s.makesUp(a.planner) {
		nucs := ask{step: plan.MakeUpNucs, day: s.ladder.Rung(plan.MakeUpNucs).Best}
		for _, n := range a.planner.Needs(s.ladder, s.size) {
			switch n.Good {
			case plan.KilogramsOfBees:
				nucs.kilograms = n.Amount
			case plan.BroodCombs:
				nucs.combs = n.Amount
			}
		}
		l.asks = append(l.asks, nucs)
	}
	l.comb = combOf(a.planner, s)
	return l
}

// starterAsk is what the starters of a batch ask for, where they are still to be set up.
func (a *account) starterAsk(s standing) []ask {
	if kg := s.starterBees(a.planner); kg > 0 {
		return []ask{{plan.SetUpStarter, s.ladder.Rung(plan.SetUpStarter).Best, kg, 0}}
	}
	return nil
}

// like is what a batch takes when it is planned otherwise: bees and brood for nucs as
// before, by the nuc.
func (a *account) like(was *load, s standing) *load {
	l := &load{standing: s, takes: a.ground.takes(s.ladder, s.size)}
	l.asks = a.starterAsk(s)
	for _, k := range was.asks {
		if k.step == plan.MakeUpNucs {
			part := float64(s.size.Nucs) / float64(was.size.Nucs)
			l.asks = append(l.asks, ask{k.step, s.ladder.Rung(k.step).Best, k.kilograms * part, k.combs * part})
		}
	}
	l.comb = combOf(a.planner, s)
	return l
}

// freeOn are the minutes that people are free on a day.
func (a *account) freeOn(d calendar.Day) float64 {
	m, ok := a.free[d]
	if !ok {
		m = float64(a.planner.View().MinutesFree(d))
		a.free[d] = m
	}
	return m
}

// gives are the bees, in kilograms, and the combs that colonies give in the week to
// a day.
func (a *account) gives(d calendar.Day) (kilograms, combs float64) {
	g, ok := a.give[d]
	if !ok {
		for _, giver := range a.planner.Givers(d) {
			g[0] += giver.Kilograms
			g[1] += giver.Combs
		}
		a.give[d] = g
	}
	return g[0], g[1]
}

// clashes are all that some batches cannot have at once, without ways out, by the
// day.
func (a *account) clashes(all []*load) (found []Clash) {
	for _, l := range all {
		for _, t := range l.takes {
			a.ground.add(t)
		}
	}
	found = append(found, a.goods(all)...)
	for _, l := range all {
		for _, t := range l.takes {
			t.amount = -t.amount
			a.ground.add(t)
		}
	}
	var hours []Clash
	for _, l := range all {
		hours = append(hours, a.hours(l)...)
		found = append(found, a.ripe(l, all)...)
	}
	found = append(found, a.over(all, hours)...)
	found = append(found, hours...)
	found = append(found, a.given(all)...)
	found = append(found, a.flying(all)...)
	found = slices.DeleteFunc(found, func(c Clash) bool { return c.To < a.today })
	slices.SortStableFunc(found, func(x, y Clash) int { return cmp.Or(cmp.Compare(x.From, y.From), cmp.Compare(x.Kind, y.Kind)) })
	return found
}

// days of a number of the keeper's.
func (a *account) days(k practice.Key) calendar.Day { return calendar.Day(a.ground.numbers.Days(k)) }
