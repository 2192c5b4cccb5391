package roll

import (
	"lidmark/domain/book"
)

// within finds where a row contradicts itself.
func (r *reading) within(it *item) {
	r.inOrder(it)
	eggs := it.on[EggsSeenOn]
	switch {
	case it.on[CellGivenOn].said() && it.on[VirginPutInOn].said():
		r.wrong(it, VirginPutInOn, fault{"a cell was given and a virgin put in", "leave one of the two out: that of which its queen is"})
	case it.on[GraftedOn].said() && it.batch == 0:
		r.wrong(it, GraftedOn, fault{"a graft and no number of its batch", "number the batch, or leave the day out"})
	case !it.saysHolds:
	case (it.colour != "" || it.disc != "") && !mayBeMarked[it.holds]:
		r.wrong(it, MarkColour, faulty("leave out the mark, or mend what it holds", "a marked queen, and it holds: %s", it.holds))
	case eggs.said() && beforeEggs[it.holds]:
		r.wrong(it, Holds, faulty("mend what it holds, or leave the day of the eggs out", "it holds: %s, and eggs were seen %s", it.holds, eggs.day.ShortFrom(r.today)))
	default:
		r.withinHolds(it)
	}
}

// mayBeMarked are the conditions of a nuc in which there is, or may be, a queen
// who can carry a mark.
var mayBeMarked = map[book.Condition]bool{
	book.Virgin: true, book.Due: true, book.Laying: true, book.GoodBrood: true, book.DroneLayer: true, book.BeingRobbed: true,
}

// beforeEggs are the conditions in which no queen of the nuc has laid.
var beforeEggs = map[book.Condition]bool{book.Empty: true, book.Cell: true, book.Virgin: true, book.Due: true}

// withinHolds weighs what a nuc holds against the rest of its row.
func (r *reading) withinHolds(it *item) {
	given := it.on[CellGivenOn].said()
	virgin := it.on[VirginPutInOn].said()
	switch {
	case it.holds == book.Cell && virgin:
		r.wrong(it, Holds, fault{"it holds a cell, and a virgin was put in", "keep one of the two"})
	case it.holds == book.Cell && it.on[EmergedOn].said():
		r.wrong(it, Holds, fault{"it holds a cell, and she emerged", "write virgin, or leave the day out"})
	case it.holds == book.Cell && !given && !r.holdsInBook(it, book.Cell):
		r.wrong(it, Holds, fault{"it holds a cell, and no day tells when that was given", "write the day into a column of cells given"})
	case it.holds == book.Due && !given && !virgin && !r.holdsInBook(it, book.Cell) && !r.holdsInBook(it, book.Virgin):
		r.wrong(it, Holds, fault{"it is due for a look, and no cell or virgin has a day", "write the day of the cell or the virgin"})
	case (it.holds == book.NoQueen || it.holds == book.Empty) && it.seen == book.QueenSeen:
		r.wrong(it, QueenSeen, faulty("mend one of the two", "its queen was seen, and it holds: %s", it.holds))
	case it.holds == book.Empty && (it.bees.Some() || it.brood.Some()):
		r.wrong(it, Holds, fault{"it is empty, and has bees or brood", "mend one of the two"})
	}
}

// holdsInBook tells whether the book has a nuc with a condition.
func (r *reading) holdsInBook(it *item, c book.Condition) bool {
	return it.there != nil && it.there.Holds.Condition == c
}

// inOrder finds days that cannot follow each other as they do.
func (r *reading) inOrder(it *item) {
	for _, o := range []struct{ early, late Column }{
		{GraftedOn, CellGivenOn},
		{GraftedOn, EmergedOn},
		{GraftedOn, VirginPutInOn},
		{CellGivenOn, EmergedOn},
		{EmergedOn, VirginPutInOn},
		{CellGivenOn, EggsSeenOn},
		{VirginPutInOn, EggsSeenOn},
		{EmergedOn, EggsSeenOn},
		{EggsSeenOn, LastLookOn},
	} {
		early, late := it.on[o.early], it.on[o.late]
		if early.said() && late.said() && late.day < early.day {
			r.wrong(it, o.late, faulty("mend one of the two days", "%s %s, before %s %s",
				o.late.Words(), late.day.ShortFrom(r.today), o.early.Words(), early.day.ShortFrom(r.today)))
		}
	}
}
