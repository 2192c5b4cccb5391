package season

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/plan"
)

// Board is the batches of a book, planned and grafted, with what they take, on which a
// batch can be moved to see what that does. It is not for several goroutines at once.
type Board struct{ trial }

// NewBoard lays out the batches of the book.
func NewBoard(p *plan.Planner) *Board {
	all := standings(p)
	b := &Board{trial{account: newAccount(p, all)}}
	for _, s := range all {
		b.loads = append(b.loads, b.load(s))
	}
	b.found = b.clashes(b.loads)
	return b
}

// Clashes are all that the batches of the book, planned and grafted, want and cannot
// all have from the view's day on, by the day, each with its cheapest ways out.
func Clashes(p *plan.Planner) []Clash { return NewBoard(p).Clashes() }

// Clashes are those of the batches as they stand, by the day, each with its cheapest
// ways out.
func (b *Board) Clashes() []Clash {
	all := slices.Clone(b.found)
	for i, c := range all {
		all[i].Why, all[i].Ways = b.why(c, b.loads), b.ways(c)
	}
	return all
}

// If are the clashes there would be were a planned batch planned otherwise, without
// ways out.
func (b *Board) If(f book.BatchPlanned) []Clash {
	loads := slices.Clone(b.loads)
	for i, l := range loads {
		if l.id == f.Batch && !l.grafted {
			as := l.planned
			as.BatchPlanned = f
			title := titleOf(b.planner.View(), as)
			loads[i] = b.like(l, standing{id: l.id, title: title, planned: as, ladder: b.ladderOf(as), size: b.planner.SizeOf(as), virgins: as.Nucs})
		}
	}
	all := b.clashes(loads)
	for i, c := range all {
		all[i].Why = b.why(c, loads)
	}
	return all
}
