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
	inTime bool // were nucs free, it would be
}

// nucsFree is the day nearest to that of an answer in whose nucs no cell can go, on which a graft
// makes sense, somebody is free for it and finds a nuc free, in the yard that is named or any: one after it that is still in
// time, else one before it, whose queens wait for their day, else one too late; 0: there is none
// within [backwardMost] days.
func (p *Planner) nucsFree(w Wish, a Answer) (day calendar.Day, in book.YardID) {
	yards := p.yardsFor(w)
	w = p.filled(w)
	from, last := a.Batches[0].Day, make([]calendar.Day, len(yards))
	for i, y := range yards {
		last[i] = p.lastInTime(w, y) - w.before()
	}
	search := func(way calendar.Day, asked func(d calendar.Day, yard int) bool) bool {
		for d := from + way; way*(d-from) <= backwardMost; d += way {
			for i, y := range yards {
				if asked(d, i) && p.fits(w, d, y) {
					day, in = d, y
					return true
				}
			}
		}
		return false
	}
	_ = search(1, func(d calendar.Day, yard int) bool { return d <= last[yard] }) ||
		search(-1, func(d calendar.Day, _ int) bool { return d >= w.From }) ||
		search(1, func(d calendar.Day, yard int) bool { return d > last[yard] })
	return day, in
}

// fits tells whether the first graft of a filled wish on a day makes sense in a yard, somebody is free
// to graft and to give its cells, it finds a nuc free there until its last one is out of them, and no
// step before it is past.
func (p *Planner) fits(w Wish, d calendar.Day, yard book.YardID) bool {
	l := p.Ladder(p.graftOf(w, d), cellsGuess(w), yard)
	if l.nobodyFree() {
		return false
	}
	in := l.InNucs(Size{})
	if w.before() > 0 {
		in.To = p.Ladder(p.graftOf(w, d+w.before()), cellsGuess(w), yard).InNucs(Size{}).To
	}
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
