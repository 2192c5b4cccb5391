package plan

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Full is a graft for whose cells no nuc of a yard is free. Its zero value: there is none.
type Full struct {
	Yard book.YardID
	Ladder
}

// nucsFree is the day nearest to that of an answer in whose nucs no cell can go, on which a graft
// makes sense and finds a nuc free, in the yard that is named or any: one before it, whose queens
// wait for their day, else one after it; 0: there is none within [backwardMost] days.
func (p *Planner) nucsFree(w Wish, a Answer) (day calendar.Day, in book.YardID) {
	yards := []book.YardID{w.Yard}
	if w.Yard.IsZero() {
		yards = p.yardsByNucs()
	}
	from := a.Batches[0].Day
	for _, way := range [...]calendar.Day{-1, 1} {
		nearest := calendar.Day(backwardMost + 1)
		for _, y := range yards {
			free := func(away calendar.Day) bool { return from+way*away >= a.From && p.fits(w, from+way*away, y) }
			for away := calendar.Day(lastStep); away < nearest; away += lastStep {
				if !free(away) {
					continue
				}
				for away > 1 && free(away-1) {
					away--
				}
				nearest, day, in = away, from+way*away, y
			}
		}
		if day != 0 {
			break
		}
	}
	return day, in
}

// fits tells whether a graft of a wish on a day makes sense in a yard, finds a nuc free there, and
// no step before it is past.
func (p *Planner) fits(w Wish, d calendar.Day, yard book.YardID) bool {
	l := p.Ladder(p.graftOf(w, d), cellsGuess(w), yard)
	in := l.InNucs(Size{})
	return p.Free(yard, in.From, in.To, w.Not) > 0 && p.lets(yard, d) >= makesSense && missed(l, p.view.Today()) == 0
}

// full is what is to be minded of an answer whose graft finds no nuc free, or that is of another
// day for that.
func (p *Planner) full(a Answer) Mind {
	m := Mind{Why: fmt.Sprintf("no nuc of %s is free for a graft on %s", p.view.Yard(a.Full.Yard).Name, p.said(a.Full.Day)), Season: true}
	if held := p.held(a); len(held) > 0 {
		m.Why += ": " + strings.Join(held, ", ")
	}
	if a.Nucs == 0 {
		m.Do = "Say how many there will be, or choose another day or yard"
	}
	return m
}

// held says of what the nucs of a yard are for the graft of an answer that finds none free, and
// until when.
func (p *Planner) held(a Answer) (by []string) {
	in, queens, first := a.Full.InNucs(Size{}), 0, calendar.Day(0)
	for _, w := range p.waiting() {
		has := w.InNucs(w.Size)
		if w.Yard == a.Full.Yard && w.Nucs > 0 && has.From <= in.To && in.From <= has.To && (a.Not.IsZero() || w.Size.Not != a.Not) {
			by = append(by, fmt.Sprintf("the graft of %s has %d until %s", p.said(w.Day), w.Nucs, p.said(has.To+1)))
		}
	}
	for n := range p.view.Nucs() {
		if free := p.freeFrom(n); n.Yard == a.Full.Yard && free > in.From {
			if queens++; first == 0 || free < first {
				first = free
			}
		}
	}
	switch {
	case queens == 1:
		by = append(by, "1 has its queen until "+p.said(first))
	case queens > 1:
		by = append(by, fmt.Sprintf("%d have queens, the first until %s", queens, p.said(first)))
	}
	return by
}
