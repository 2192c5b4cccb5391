package plan

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Dealt is how many of its nucs a planned batch has: those of a yard are dealt to the batches of the book
// in the order of their grafts, those of one day in the order of the book, and each has as many of those
// that are free by the last day on which its cells can be given as the ones before it leave. In a yard of which the book knows no
// nuc a batch has what is said of it. The chances of planned batches go by it, amounts and clashes by what is planned.
func (p *Planner) Dealt(b book.BatchPlan) int {
	return min(b.Nucs, p.room(Wanting{p.LadderOf(b), Size{Nucs: b.Nucs, Yard: b.Yard, Not: b.Batch}}))
}

// room is how many nucs those before it leave to a batch.
func (p *Planner) room(of Wanting) int {
	if !p.toldNucs(of.Yard) {
		return math.MaxInt
	}
	key := roomKey{of.Yard, of.Not, of.Day, of.dealt(Size{})}
	p.mu.Lock()
	n, known := p.rooms[key]
	p.mu.Unlock()
	if known {
		return n
	}
	var taken []Hold
	for _, o := range p.dealtBefore(of) {
		has := o.dealt(o.Size)
		has.Amount = min(has.Amount, float64(p.leave(of.Yard, has, taken)))
		taken = append(taken, has)
	}
	n = p.leave(of.Yard, key.in, taken)
	p.mu.Lock()
	p.rooms[key] = n
	p.mu.Unlock()
	return n
}

// dealt are the nucs that a batch of a size has, from the last day on which its cells can be given: one that
// comes free by then, though after the best day to make it up, still takes a cell.
func (l Ladder) dealt(s Size) Hold {
	in := l.InNucs(s)
	in.From = l.Rung(GiveCells).By
	return in
}

// roomKey is all on which it stands how many nucs are left to a batch, besides the view.
type roomKey struct {
	yard  book.YardID
	batch book.BatchID
	graft calendar.Day
	in    Hold
}

// leave is how many nucs of a yard that are free when a batch has them some holds leave to it.
func (p *Planner) leave(yard book.YardID, in Hold, taken []Hold) int {
	return max(0, p.freeBy(yard, in.From)-int(mostAtOnce(taken, in.From, max(in.From, in.To))))
}

// dealtBefore are the batches of the book that have their nucs of a yard before another, in the order in
// which these are dealt.
func (p *Planner) dealtBefore(of Wanting) (all []Wanting) {
	w := want{Planner: p, l: of.Ladder, s: of.Size}
	before := w.before()
	for _, o := range p.waiting() {
		if before(o) && o.Yard == of.Yard {
			all = append(all, o)
		}
	}
	slices.SortStableFunc(all, func(a, b Wanting) int { return cmp.Compare(a.Day, b.Day) })
	return all
}

// toldNucs tells whether the book knows any nuc of a yard.
func (p *Planner) toldNucs(yard book.YardID) bool {
	for n := range p.view.Nucs() {
		if n.Yard == yard {
			return true
		}
	}
	return false
}

// TakenFrom are what a planned batch, as it is told, takes of the nucs of those behind it: "the graft of Fri
// 14 May has 6 of its 15 nucs then"; none where it takes none.
func (p *Planner) TakenFrom(b book.BatchPlan) (all []string) {
	behind := func(o book.BatchPlan) bool { return o.Yard == b.Yard && o.Day >= b.Day && o.Batch != b.Batch }
	if !slices.ContainsFunc(slices.Collect(p.view.ToGraft()), behind) {
		return nil
	}
	without := p.Without([]book.BatchPlan{b})
	then, _ := p.planned([]book.BatchPlanned{b.BatchPlanned}, b.Batch)
	for o := range then.view.ToGraft() {
		if has := then.Dealt(o); behind(o) && has < without.Dealt(o) {
			all = append(all, fmt.Sprintf("the graft of %s has %d of its %d nucs then", p.said(o.Day), has, o.Nucs))
		}
	}
	return all
}
