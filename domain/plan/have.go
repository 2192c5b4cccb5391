package plan

import (
	"cmp"
	"math"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/strength"
)

// breeders are the colonies kept as breeders of the line; of any where none is
// wished.
func (w *want) breeders() (n float64) {
	for c := range w.view.Colonies() {
		if c.Is(book.Breeder) && (w.s.Line == "" || c.Line == w.s.Line) {
			n++
		}
	}
	return n
}

// of are the colonies of a role.
func (w *want) of(r book.Role) (n float64) {
	for c := range w.view.Colonies() {
		if c.Is(r) {
			n++
		}
	}
	return n
}

// idle are the colonies of a role, cell builders among them, that rear no other
// batch's cells from one step to another.
func (w *want) idle(r book.Role, from, to Step) (n float64) {
	for c := range w.view.Colonies() {
		if (c.Is(r) || c.Is(book.CellBuilder)) && !w.rears(c.Colony, w.l.Rung(from).Best, w.l.Rung(to).Best) {
			n++
		}
	}
	return n
}

// rears tells whether a colony rears grafted cells within some days.
func (w *want) rears(id book.ColonyID, from, to calendar.Day) bool {
	for b := range w.view.Batches() {
		graft := b.At.Day(w.view.Zone())
		moved := graft + w.days(practice.StarterToFinisher)
		capped := graft + w.days(practice.GraftToCapped)
		if b.Starter == id && graft <= to && from < moved || b.Finisher == id && moved <= to && from < capped {
			return true
		}
	}
	return false
}

// nucs are the nucs of the yard that are free when cells are given: empty, or
// with a queen who is ready by then. Those that are alive and keep their bees come first,
// and those that batches grafted before want at that time are left to them.
func (w *want) nucs() []*book.Nuc {
	var free []*book.Nuc
	up := w.l.Rung(MakeUpNucs).Best
	for n := range w.view.Nucs() {
		if n.Yard == w.s.Yard && w.freeFrom(n) <= up {
			free = append(free, n)
		}
	}
	slices.SortStableFunc(free, func(a, b *book.Nuc) int { return book.TrueFirst(keepsBees(a), keepsBees(b)) })
	before := w.wanted(w.s.Yard, up, w.l.Rung(Ready).By, func(b book.BatchPlan) bool { return b.Day < w.l.Day })
	return free[min(before, len(free)):]
}

// keepsBees tells whether a nuc is alive: it gets its next cell as it stands. One with laying
// workers is shaken out, one that is robbed hardly lasts.
func keepsBees(n *book.Nuc) bool {
	return n.EndedBy == "" && !n.MadeUp.IsZero() && n.Condition() != book.LayingWorkers && n.Condition() != book.BeingRobbed
}

// freeFrom is the day from which a nuc can take the next cell, as the calendar
// has it: what it holds is ready by then, or was never there.
func (p *Planner) freeFrom(n *book.Nuc) calendar.Day {
	h, zone := n.Holds, p.view.Zone()
	switch {
	case n.EndedBy != "" || h.Given.IsZero() && h.FirstEggs.IsZero():
		return 0
	case !h.FirstEggs.IsZero():
		return h.FirstEggs.Day(zone) + p.days(practice.ReadyAfterFirstEgg)
	case h.Condition == book.Cell:
		return h.Given.Day(zone) + p.days(practice.GraftToEmerge) - p.days(practice.CellsIn) + p.days(practice.LeastAgeAtHandOver)
	default:
		return h.Given.Day(zone) + p.days(practice.LeastAgeAtHandOver)
	}
}

// MakeUp is what the first so many nucs of a batch are made up with.
type MakeUp struct {
	Cups      float64 // of bees
	Kilograms float64 // the same
	Combs     float64 // of brood
	Nucs      int     // so many of them; the others are alive and keep their bees
	Minutes   float64 // of the keeper's
}

// MakeUps are what the nucs of a yard are made up with on the day that a ladder has
// for it, by how many there are, from none to most: of those the book knows, by their
// wood and comb; of more, as of the usual one. A nuc that is alive keeps its bees: it takes
// none, and no food nor time, and those come first.
// They are shared and must not be changed.
func (p *Planner) MakeUps(l Ladder, yard book.YardID, most int) []MakeUp {
	key := madeKey{yard, l.Day, l.Rung(MakeUpNucs).Best, l.Rung(Ready).By}
	p.mu.Lock()
	all := p.made[key]
	p.mu.Unlock()
	if most >= len(all) {
		all = p.makeUps(l, yard, max(most, 2*len(all)))
		p.mu.Lock()
		p.made[key] = all
		p.mu.Unlock()
	}
	return all[:most+1]
}

// madeKey is all on which what nucs are made up with stands, besides the view.
type madeKey struct {
	yard              book.YardID
	graft, up, wanted calendar.Day
}

func (p *Planner) makeUps(l Ladder, yard book.YardID, most int) []MakeUp {
	w := want{p, l, Size{Yard: yard}, nil}
	known := w.nucs()
	in := strength.NewYard(w.view, yard, w.course.Zone(yard))
	night := strength.NightOf(w.view.Yard(yard), l.Rung(MakeUpNucs).Best, w.numbers)
	stay := in.Stay(1, book.Subject{}, true)
	all := make([]MakeUp, most+1)
	for i := range most {
		all[i+1] = all[i]
		switch {
		case i >= len(known):
			all[i+1].add(p.numbers, math.Ceil(strength.Need(night, false, p.numbers)/stay), false)
		case !keepsBees(known[i]):
			full := known[i].Side >= p.numbers.Get(practice.FullCombSide)
			thin := !full && p.view.Box(known[i].Box).Thin
			all[i+1].add(p.numbers, math.Ceil(strength.Need(night, thin, p.numbers)/stay), full)
		}
	}
	return all
}

// add counts one nuc more that is made up, with so many cups, on full combs or not.
func (m *MakeUp) add(n practice.Numbers, cups float64, full bool) {
	minutes := practice.MinutesMakeUp
	if full {
		m.Combs += n.Get(practice.BroodCombsPerNuc)
		minutes = practice.MinutesMakeUpFrameNuc
	}
	m.Nucs++
	m.Cups += cups
	m.Kilograms = strength.LoadOf(m.Cups, n).Kilograms
	m.Minutes += n.Get(minutes)
}

// MadeUp is what the nucs of a batch of a size are made up with.
func (p *Planner) MadeUp(l Ladder, s Size) MakeUp {
	nucs := max(0, s.Nucs)
	return p.MakeUps(l, s.Yard, nucs)[nucs]
}

// Giver is a colony and what it can give on a day; nothing while it rests.
type Giver struct {
	Colony    *book.Colony
	Kilograms float64      // of bees
	Combs     float64      // of brood
	Rests     calendar.Day // until when it rests from what it gave; zero: it does not
}

// hardlyAny is less than anybody weighs out: what is left of floats.
const hardlyAny = 1e-9

// week is the span over which a colony gives only so much.
const week = 7

// Givers are the colonies that give bees and brood on a day, those that can give
// most first. What they gave within a week is taken off; a breeder, starter,
// finisher and bank gives none.
func (p *Planner) Givers(on calendar.Day) []Giver { return givers(p.view, p.numbers, on) }

// Givers are those of a view; see [Planner.Givers].
func Givers(v *book.View, on calendar.Day) []Giver { return givers(v, v.Numbers(), on) }

func givers(v *book.View, n practice.Numbers, on calendar.Day) []Giver {
	var all []Giver
	for c := range v.Colonies() {
		if gives(c) {
			all = append(all, giver(c, n, on, v.Zone()))
		}
	}
	slices.SortStableFunc(all, func(a, b Giver) int { return cmp.Compare(b.Kilograms, a.Kilograms) })
	return all
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
	var last calendar.Day
	for _, t := range c.Gave {
		if d := t.At.Day(zone); d > on-week {
			g.Kilograms -= t.Cups * n.Get(practice.BeesPerCup) / n.Get(practice.BeesPerKilogram)
			g.Combs -= t.Combs
			last = max(last, d)
		}
	}
	g.Kilograms, g.Combs = max(0, g.Kilograms), max(0, g.Combs)
	if last != 0 && (g.Kilograms == 0 || g.Combs < hardlyAny) {
		g.Rests = last + week
	}
	return g
}

// give is all the bees, in kilograms, that colonies can give on a day.
func (w *want) give(on calendar.Day) (kg float64) {
	for _, g := range w.Givers(on) {
		kg += g.Kilograms
	}
	return kg
}
