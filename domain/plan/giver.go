package plan

import (
	"cmp"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Giver is a colony and what it can give on a day, less what it gave within a week.
type Giver struct {
	Colony    *book.Colony
	Kilograms float64      // of bees
	Combs     float64      // of brood
	Rests     calendar.Day // until when it has no more bees, or no more brood, to give for what it gave; zero: it has both
}

// hardlyAny is less than anybody weighs out: what is left of floats.
const hardlyAny = 1e-9

// week is the span over which a colony gives only so much.
const week = 7

// dronesGive is the last turn to give.
const dronesGive = 2

// Givers are the colonies that give bees and brood on a day: brood sources first and
// drone colonies last, of alike those that can give most. What they gave within a week
// is taken off; a breeder, starter, finisher and bank gives none, and one in a yard on standstill
// has nothing to give.
func (p *Planner) Givers(on calendar.Day) []Giver { return givers(p.view, p.numbers, on) }

// Givers are those of a view; see [Planner.Givers].
func Givers(v *book.View, on calendar.Day) []Giver { return givers(v, v.Numbers(), on) }

func givers(v *book.View, n practice.Numbers, on calendar.Day) []Giver {
	var all []Giver
	for c := range v.Colonies() {
		switch {
		case !gives(c):
		case v.Yard(c.Yard).Standstill != nil:
			all = append(all, Giver{Colony: c})
		default:
			all = append(all, giver(c, n, on, v.Zone()))
		}
	}
	inTurn(all)
	return all
}

// inTurn puts givers in the order in which they give.
func inTurn(all []Giver) {
	slices.SortStableFunc(all, func(a, b Giver) int {
		return cmp.Or(cmp.Compare(givesNth(a.Colony), givesNth(b.Colony)), cmp.Compare(b.Kilograms, a.Kilograms))
	})
}

// givesNth is when a colony's turn to give comes: the drones of a drone colony need its bees.
func givesNth(c *book.Colony) int {
	switch {
	case c.Is(book.BroodSource):
		return 0
	case c.Is(book.DroneSource):
		return dronesGive
	default:
		return 1
	}
}

func gives(c *book.Colony) bool {
	return !slices.ContainsFunc([]book.Role{book.Breeder, book.Starter, book.Finisher, book.CellBuilder, book.Bank}, c.Is)
}

// giver is what a colony gives on a day: what a strong one gives in a week, no
// more than the bees it can spare, less what it gave.
func giver(c *book.Colony, n practice.Numbers, on calendar.Day, zone *time.Location) Giver {
	g := Giver{Colony: c, Kilograms: n.Get(practice.ColonyGives), Combs: n.Get(practice.CombsPerColonyWeek)}
	if c.Thousands > 0 {
		spare := max(0, c.Thousands*1000-n.Get(practice.LeaveInColony))
		g.Kilograms = min(g.Kilograms, spare/n.Get(practice.BeesPerKilogram))
	}
	var gave []gave
	for _, t := range c.Gave {
		gave = append(gave, gaveOn(t, n, zone))
	}
	return g.less(gave, on)
}

// gave is what a colony gave, or is to give, on a day.
type gave struct {
	on               calendar.Day
	kilograms, combs float64
}

func gaveOn(t book.Transfer, n practice.Numbers, zone *time.Location) gave {
	return gave{t.At.Day(zone), t.Cups * n.Get(practice.BeesPerCup) / n.Get(practice.BeesPerKilogram), t.Combs}
}

// less is what the giver can give on a day when it gives some within the week before.
func (g Giver) less(all []gave, on calendar.Day) Giver {
	var last calendar.Day
	for _, t := range all {
		if t.on > on-week && t.on <= on {
			g.Kilograms, g.Combs = g.Kilograms-t.kilograms, g.Combs-t.combs
			last = max(last, t.on)
		}
	}
	g.Kilograms, g.Combs = max(0, g.Kilograms), max(0, g.Combs)
	if last != 0 && (g.Kilograms < hardlyAny || g.Combs < hardlyAny) {
		g.Rests = last + week
	}
	return g
}
