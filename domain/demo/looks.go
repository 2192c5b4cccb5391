package demo

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// weak are nucs that dwindled after the cold week: the sides of comb their bees
// are on, and their stores.
var weak = map[string]struct{ sides, stores float64 }{
	"D2": {3, 2}, "H2": {2, 1}, "J4": {3, 2}, "N6": {1, 1}, "P8": {2, 2},
	"Q1": {4, 1}, "R1": {2, 0}, "T2": {2, 0}, "T4": {2, 1}, "V3": {2, 0}, "X1": {3, 1},
}

// light are nucs on the moor that were made up with little food, got no syrup
// and are without stores.
var light = map[string]bool{"W1": true, "X2": true}

// see writes a look, with bees and stores as the nuc has them.
func (v *valley) see(n *nuc, day int, part calendar.Part, f book.Looked) {
	f.Nuc = n.id
	f.Sides, f.Stores = v.beesOn(n, day, f), v.storesOf(n, day)
	v.note(n, v.in(day, part), f)
}

// beesOn are the sides with bees: a queen in full lay keeps her box full.
func (v *valley) beesOn(n *nuc, day int, f book.Looked) book.Amount {
	if w, ok := weak[n.name]; ok && day > coldFeed {
		return book.Said(w.sides)
	}
	if f.Larvae && f.Brood.Some() {
		return book.Said(float64(n.model.sides))
	}
	return book.Said(float64(5 + v.chance.IntN(2)))
}

// storesOf are the stores, 0 to 3: light on the moor since the dearth began.
func (v *valley) storesOf(n *nuc, day int) book.Amount {
	if w, ok := weak[n.name]; ok && day > coldFeed {
		return book.Said(w.stores)
	}
	if light[n.name] {
		return book.Said(0)
	}
	if n.yard == moor && day > dearthSince {
		return book.Said(float64(1 + v.chance.IntN(2)))
	}
	return book.Said(float64(2 + v.chance.IntN(2)))
}

// sawOpen sees the cell open at the tip, two days after she walked.
func (v *valley) sawOpen(n *nuc, batch int) {
	v.see(n, cellSeen(batch), calendar.Evening, book.Looked{Cell: book.CellOpenAtTip})
}

func (v *valley) sawOpenAndVirgin(n *nuc, batch int) {
	v.see(n, cellSeen(batch), calendar.Evening, book.Looked{Cell: book.CellOpenAtTip, Queen: book.VirginSeen})
}

func (v *valley) sawTorn(n *nuc, batch int) {
	v.see(n, cellSeen(batch), calendar.Evening, book.Looked{Cell: book.CellTornAtSide, Queen: book.NoneSeen})
}

// cellSeen is the day on which nucs were opened to see the empty cell.
func cellSeen(batch int) int { return batches[batch-1].day + seeEmergence }

// sawOpenAmidBrood sees the cell open and capped brood of the queen before.
func (v *valley) sawOpenAmidBrood(n *nuc, batch int) {
	v.see(n, cellSeen(batch), calendar.Evening, book.Looked{
		Cell: book.CellOpenAtTip, Brood: book.Said(float64(1 + v.chance.IntN(2))),
	})
}

func (v *valley) sawEggs(n *nuc, day int) {
	f := book.Looked{Eggs: book.SingleEggs, Larvae: v.chance.IntN(2) == 0}
	if v.chance.IntN(3) > 0 {
		f.Queen = book.QueenSeen
	}
	v.see(n, day, calendar.Evening, f)
}

// sawEggsAndLarvae sees the brood of a queen who lays, whatever comes of it.
func (v *valley) sawEggsAndLarvae(n *nuc, day int) {
	v.see(n, day, calendar.Evening, book.Looked{Eggs: book.SingleEggs, Larvae: true})
}

// sawBrood sees capped worker brood; a queen who is seen is marked.
func (v *valley) sawBrood(n *nuc, day int) {
	palms := n.model.side/2 + float64(v.chance.IntN(3))
	f := book.Looked{Eggs: book.SingleEggs, Larvae: true, Brood: book.Said(palms), Temper: book.Said(float64(1 + v.chance.IntN(2)))}
	if n.queen.IsZero() && v.chance.IntN(2) == 0 {
		f.Queen = book.QueenSeen
	}
	v.see(n, day, calendar.Evening, f)
	if f.Queen == book.QueenSeen {
		v.mark(n, day)
	}
}

func (v *valley) sawNoEggs(n *nuc, day int) {
	v.see(n, day, calendar.Evening, book.Looked{Eggs: book.NoEggs})
}

func (v *valley) sawVirgin(n *nuc, day int) {
	v.see(n, day, calendar.Evening, book.Looked{Eggs: book.NoEggs, Queen: book.VirginSeen})
}

func (v *valley) sawNone(n *nuc, day int) {
	v.see(n, day, calendar.Morning, book.Looked{Eggs: book.NoEggs, Queen: book.NoneSeen, Thorough: true})
}

func (v *valley) sawDroneBrood(n *nuc, day int) {
	v.see(n, day, calendar.Evening, book.Looked{Queen: book.QueenSeen, DroneBrood: true, Brood: book.Said(0)})
}

func (v *valley) sawManyEggs(n *nuc, day int) {
	v.see(n, day, calendar.Morning, book.Looked{Queen: book.NoneSeen, Eggs: book.ManyEggs, Temper: book.Said(4), Thorough: true})
}

func (v *valley) sawOwnCells(n *nuc, day int) {
	v.see(n, day, calendar.Morning, book.Looked{Queen: book.NoneSeen, Eggs: book.NoEggs, OwnCells: book.Said(float64(2 + v.chance.IntN(4)))})
}
