package rules

import (
	"fmt"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// anotherQueen asks who a queen is that cannot be the one the book has: one seen, or
// laying, before she could walk or lay, or a virgin where a queen was laying.
func anotherQueen(v *book.View, f book.Looked) (Question, bool) {
	n := v.Nuc(f.Nuc)
	now := n.After(book.Look{At: calendar.Instantly(v.On()), Looked: f}, v.Numbers()).Condition
	if n.Holds.Condition.Queenright() {
		return virginInstead(v, n, f, now)
	}
	if n.Holds.Condition == book.NoQueen && now.Queenright() {
		return nobodyToLay(v, n)
	}
	if n.Holds.Condition != book.Cell && n.Holds.Condition != book.Virgin || n.Holds.Batch.IsZero() {
		return Question{}, false
	}
	walks := walksFrom(v, n)
	switch lays := walks.Add(v.Numbers().Duration(practice.FirstMatingFlightFrom)); {
	case now.Queenright() && v.On().Before(lays):
		return notTheCells(v, n, "a queen lays", "can lay", lays), true
	case now == book.Virgin && n.Holds.Condition == book.Cell && f.Cell != book.CellOpenAtTip && v.On().Before(walks):
		return notTheCells(v, n, "a queen was seen out of her cell", "walks", walks), true
	default:
		return Question{}, false
	}
}

// nobodyToLay asks who lays in a nuc that was given nothing since it lost its queen,
// before one that it could have raised itself can.
func nobodyToLay(v *book.View, n *book.Nuc) (Question, bool) {
	own := v.Numbers().Duration(practice.OwnQueenEmerges) + v.Numbers().Duration(practice.FirstMatingFlightFrom)
	from := n.Queenless.Instant.Add(own)
	if n.Queenless.IsZero() || !v.On().Before(from) {
		return Question{}, false
	}
	return Question{
		Asks: fmt.Sprintf("%s: a queen lays; the book has none there since %s, and one of its own lays from %s at the earliest. Which is right?",
			n.Name, n.Queenless.Day(v.Zone()).ShortFrom(v.Today()), calendar.DayOf(from, v.Zone()).ShortFrom(v.Today())),
		Answers: []Answer{
			{Key: "1", Words: "she is there: a stray, or one that nobody knew of"},
			{Key: "2", Words: "typed wrong or wrong nuc, leave this line", Leave: true},
		},
	}, true
}

// walksFrom is the earliest instant at which a queen given to a nuc can walk: the
// hour at which the first of her batch does with the chance of the hard hour.
func walksFrom(v *book.View, n *book.Nuc) time.Time {
	if !n.Holds.Emerged.IsZero() {
		return n.Holds.Emerged
	}
	return course.New(v).Clock(n.Holds.Batch).FirstOut(v.Numbers().Get(practice.HardChance))
}

// notTheCells asks whether a queen is another than the one given, whose batch would
// be told of her otherwise.
func notTheCells(v *book.View, n *book.Nuc, seen, does string, from time.Time) Question {
	given := n.Holds.Condition.String()
	return Question{
		Asks: fmt.Sprintf("%s: %s; by the book the %s of %s given %s %s from %s. Whose is she?", n.Name, seen, given,
			batchWord(v.Batch(n.Holds.Batch)), n.Holds.Given.Day(v.Zone()).ShortFrom(v.Today()), does, hour(v.Today(), from, v.Zone())),
		Answers: []Answer{
			{Key: "1", Words: "another: the old queen not gone, or a stray; the " + given + " is lost", Before: []book.Fact{book.QueenGone{Nuc: n.NucNamed.Nuc}}},
			{Key: "2", Words: "of the " + given + ": the dates are wrong"},
			{Key: "3", Words: "typed wrong, leave this line", Leave: true},
		},
	}
}

// virginInstead asks what became of a laying queen where a virgin was seen.
func virginInstead(v *book.View, n *book.Nuc, f book.Looked, now book.Condition) (Question, bool) {
	if f.Queen != book.VirginSeen || now != book.Virgin {
		return Question{}, false
	}
	hers := f
	hers.Queen = book.QueenSeen
	return Question{
		Asks: fmt.Sprintf("%s: a virgin was seen; the book has a laying queen there, %s. Which is right?", n.Name, n.Holds.EggsSeen(v.Today(), v.Zone())),
		Answers: []Answer{
			{Key: "1", Words: "the laying queen is gone, not known when", Before: []book.Fact{book.QueenGone{Nuc: f.Nuc}}},
			{Key: "2", Words: "it is the laying queen", Instead: []book.Fact{hers}},
			{Key: "3", Words: "typed wrong, leave this line", Leave: true},
		},
	}, true
}

// celledAlready asks what became of the cell in a nuc that is given another one. The
// same on one day is asked as typed twice.
func celledAlready(v *book.View, id book.NucID, what string) (Question, bool) {
	n := v.Nuc(id)
	given := n.Holds.Given.Day(v.Zone())
	if n.Holds.Condition != book.Cell || given == v.Today() {
		return Question{}, false
	}
	return Question{
		Asks: fmt.Sprintf("%s was given %s; the book has a cell there, given %s. The first one?", n.Name, what, given.ShortFrom(v.Today())),
		Answers: []Answer{
			{Key: "1", Words: "dead or taken out, not known when", Before: []book.Fact{book.QueenGone{Nuc: id}}},
			{Key: "2", Words: "not known: leave it so"},
			{Key: "3", Words: "wrong nuc, leave this line", Leave: true},
		},
	}, true
}
