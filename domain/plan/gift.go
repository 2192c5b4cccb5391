package plan

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Gift is what one colony gives for a batch on a day.
type Gift struct {
	Colony *book.Colony
	Cups   float64
	Combs  float64
}

// OfDrones tells whether a drone colony gives, and is no brood source: for want of others.
func (g Gift) OfDrones() bool { return givesNth(g.Colony) == dronesGive }

// Given is what colonies give on one day for a batch: for its starters, or its nucs.
type Given struct {
	For                   Step // SetUpStarter or MakeUpNucs
	Day                   calendar.Day
	Gifts                 []Gift
	ShortCups, ShortCombs float64 // that nobody can give
	Kilograms, Combs      float64 // of bees and of brood that there are for it
	Rest                  []Giver // who gives nothing, resting from what it gave
}

// Given says who gives the bees and brood of some batches, the planned ones of the book
// having had, or having, theirs by the day on which they want it: what a colony gives in a
// week is there once. Brood sources give before drone colonies, of alike those that can
// give most, so that the fewest are opened. The answer is by batch.
func (p *Planner) Given(of ...Wanting) [][]Given {
	all := p.asks(of)
	slices.SortStableFunc(all, func(a, b ask) int { return cmp.Or(cmp.Compare(a.day, b.day), cmp.Compare(a.turn, b.turn)) })
	found, out := make([][]Given, len(of)), map[book.ColonyID][]gave{}
	for _, a := range all {
		g := p.give(a, out)
		if a.of >= 0 {
			found[a.of] = append(found[a.of], g)
		}
	}
	return found
}

// give is what is given for one ask beside what is given already, and adds it to that.
func (p *Planner) give(a ask, out map[book.ColonyID][]gave) Given {
	cup := p.numbers.Get(practice.BeesPerCup) / p.numbers.Get(practice.BeesPerKilogram)
	g := Given{For: a.step, Day: a.day, ShortCups: a.kilograms / cup, ShortCombs: a.combs}
	there := p.Givers(a.day)
	for i := range there {
		there[i] = there[i].less(out[there[i].Colony.Colony], a.day)
		g.Kilograms, g.Combs = g.Kilograms+there[i].Kilograms, g.Combs+there[i].Combs
	}
	inTurn(there)
	for _, from := range there {
		gift := Gift{from.Colony, min(g.ShortCups, from.Kilograms/cup), min(g.ShortCombs, from.Combs)}
		if gift.Cups < hardlyAny && gift.Combs < hardlyAny {
			if from.Rests != 0 {
				g.Rest = append(g.Rest, from)
			}
			continue
		}
		g.Gifts = append(g.Gifts, gift)
		g.ShortCups, g.ShortCombs = max(0, g.ShortCups-gift.Cups), max(0, g.ShortCombs-gift.Combs)
		id := from.Colony.Colony
		out[id] = append(out[id], gave{a.day, gift.Cups * cup, gift.Combs})
	}
	return g
}
