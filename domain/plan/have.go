package plan

import (
	"math"
	"slices"

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

// drones are how many drone colonies there are for the yard.
func (w *want) drones() float64 { return float64(len(w.DroneColoniesNear(w.s.Yard))) }

// nucs are the nucs of the yard that are free when cells are given: empty, or
// with a queen who is ready by then. Those that are alive and keep their bees come first,
// and those that batches before it want at that time are left to them.
func (w *want) nucs() []*book.Nuc {
	var free []*book.Nuc
	in := w.l.InNucs(w.s)
	for n := range w.view.Nucs() {
		if n.Yard == w.s.Yard && w.freeFrom(n) <= in.From {
			free = append(free, n)
		}
	}
	slices.SortStableFunc(free, func(a, b *book.Nuc) int { return book.TrueFirst(keepsBees(a), keepsBees(b)) })
	before := w.wanted(w.s.Yard, in.From, in.To, w.before())
	return free[min(before, len(free)):]
}

// before tells, asked in the order of the book, which batches have their nucs before this
// one: those of sooner days, and of its own day those that come before it.
func (w *want) before() func(Wanting) bool {
	passed := false
	return func(b Wanting) bool {
		itself := !w.s.Not.IsZero() && b.Not == w.s.Not
		passed = passed || itself
		return !itself && (b.Day < w.l.Day || b.Day == w.l.Day && !passed)
	}
}

// keepsBees tells whether a nuc is alive: it gets its next cell as it stands. One with laying
// workers is shaken out, one that is robbed hardly lasts.
func keepsBees(n *book.Nuc) bool {
	return n.EndedBy == "" && !n.MadeUp.IsZero() && n.Condition() != book.LayingWorkers && n.Condition() != book.BeingRobbed
}

// freeFrom is the day from which a nuc can take the next cell, as the calendar
// has it: what it holds is ready by then and may leave it, or was never there.
func (p *Planner) freeFrom(n *book.Nuc) calendar.Day { return p.freed()[n.Nuc] }

// allFreed are those days of all nucs; 0 of those that are free.
func (p *Planner) allFreed() map[book.NucID]calendar.Day {
	all := map[book.NucID]calendar.Day{}
	for n := range p.view.Nucs() {
		if n.EndedBy == "" {
			all[n.Nuc] = p.freedOn(n)
		}
	}
	return all
}

func (p *Planner) freedOn(n *book.Nuc) calendar.Day {
	h, zone := n.Holds, p.view.Zone()
	if !h.FirstEggs.IsZero() {
		if ready := p.course.Of(n).ReadyAt; !ready.IsZero() {
			return max(p.Waits(n), calendar.DayOf(ready, p.course.Zone(n.Yard)))
		}
	}
	switch {
	case h.Given.IsZero():
		return 0
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
	Combs     float64 // of brood, in full ones: two halves are one
	All       ByKind  // the nucs by kind, as far as the book knows them
	Halves    float64 // half combs of brood among Combs
	Nucs      int     // so many of them; the others are alive and keep their bees
	Minutes   float64 // of the keeper's
}

// MakeUps are what the nucs of a batch are made up with on the day that a ladder has
// for it, by how many there are, from none to most: of those the book knows, by their
// wood and comb; of more, as of the usual one. A nuc that is alive keeps its bees: it takes
// none, and no food nor time, and those come first.
// They are shared and must not be changed.
func (p *Planner) MakeUps(l Ladder, s Size, most int) []MakeUp {
	key := madeKey{s.Yard, s.Not, l.Day, l.Rung(MakeUpNucs).Best, l.Rung(Ready).By}
	p.mu.Lock()
	all := p.made[key]
	p.mu.Unlock()
	if most >= len(all) {
		all = p.makeUps(l, s, max(most, 2*len(all)))
		p.mu.Lock()
		p.made[key] = all
		p.mu.Unlock()
	}
	return all[:most+1]
}

// madeKey is all on which what nucs are made up with stands, besides the view.
type madeKey struct {
	yard              book.YardID
	batch             book.BatchID
	graft, up, wanted calendar.Day
}

func (p *Planner) makeUps(l Ladder, s Size, most int) []MakeUp {
	w := want{Planner: p, l: l, s: s}
	known := w.nucs()
	in := strength.NewYard(w.view, s.Yard, w.course.Zone(s.Yard))
	night := strength.NightOf(w.view.Yard(s.Yard), l.Rung(MakeUpNucs).Best, w.numbers)
	stay := in.Stay(1, book.Subject{}, true)
	all := make([]MakeUp, most+1)
	for i := range most {
		all[i+1] = all[i]
		if i < len(known) {
			all[i+1].All[p.kindOf(known[i])]++
		}
		switch {
		case i >= len(known):
			all[i+1].add(p.numbers, math.Ceil(strength.Need(night, false, p.numbers)/stay), MiniNuc)
		case !keepsBees(known[i]):
			kind := p.kindOf(known[i])
			thin := kind != FullNuc && p.view.Box(known[i].Box).Thin
			all[i+1].add(p.numbers, math.Ceil(strength.Need(night, thin, p.numbers)/stay), kind)
		}
	}
	return all
}

// add counts one nuc more of a kind that is made up, with so many cups.
func (m *MakeUp) add(n practice.Numbers, cups float64, kind NucKind) {
	minutes := practice.MinutesMakeUp
	switch kind {
	case FullNuc:
		m.Combs += n.Get(practice.BroodCombsPerNuc)
		minutes = practice.MinutesMakeUpFrameNuc
	case HalfNuc:
		m.Halves += n.Get(practice.HalfCombsPerNuc)
		m.Combs += n.Get(practice.HalfCombsPerNuc) / halvesOfComb
	}
	m.Nucs++
	m.Cups += cups
	m.Kilograms = strength.LoadOf(m.Cups, n).Kilograms
	m.Minutes += n.Get(minutes)
}

// MadeUp is what the nucs of a batch of a size are still made up with.
func (p *Planner) MadeUp(l Ladder, s Size) MakeUp {
	if s.NucsMade {
		return MakeUp{}
	}
	nucs := max(0, s.Nucs)
	return p.MakeUps(l, s, nucs)[nucs]
}
