package rules

import (
	"fmt"

	"lidmark/domain/book"
)

// Question is what a record asks that does not fit the book. The record is
// written in any case.
type Question struct {
	Asks    string
	Answers []Answer
	Alike   string // questions alike of one deed are answered together; "" is answered by itself
}

// Answer is one answer, given with one key. Before are facts to write before
// the record, After such to write behind it, Instead such to write in its place;
// Earlier happened before all that is told of the record's moment.
type Answer struct {
	Key           string
	Words         string
	Before, After []book.Fact
	Earlier       []book.Fact
	Instead       []book.Fact
	Leave         bool // the record was a mistake: it is not to be written
}

// Ask is the one question a record asks of a view of the moment before it, if
// any.
func Ask(v *book.View, fact book.Fact) (Question, bool) {
	switch f := fact.(type) {
	case book.CellGiven:
		if seenToday(v, f.Nuc) {
			return seenBeside(v, f), true
		}
		return received(v, f.Nuc, "a cell")
	case book.VirginPutIn:
		return received(v, f.Nuc, "a virgin")
	case book.QueenPutIn:
		if id, ok := f.To.Nuc(); ok {
			return reigns(v, id, "a queen")
		}
	case book.QueenCaught:
		return caught(v, f)
	case book.NucMadeUp:
		return livesStill(v, f)
	case book.Looked:
		if q, asks := anotherQueen(v, f); asks {
			return q, true
		}
		return otherwise(v, f)
	}
	return Question{}, false
}

// seenToday tells whether somebody saw a laying queen herself in a nuc at the
// view's instant.
func seenToday(v *book.View, id book.NucID) bool {
	n := v.Nuc(id)
	if len(n.Looks) == 0 || !n.Holds.Condition.Queenright() && n.Holds.Condition != book.DroneLayer {
		return false
	}
	last := n.Looks[len(n.Looks)-1]
	return last.Queen == book.QueenSeen && last.At.Instant.Equal(v.On())
}

// seenBeside asks of a cell given to a nuc in which the queen was seen at the same
// look: she is not gone.
func seenBeside(v *book.View, f book.CellGiven) Question {
	n := v.Nuc(f.Nuc)
	return Question{
		Asks: fmt.Sprintf("%s was given a cell, and its %s was seen at the same look. Which is right?", n.Name, reigning(n.Holds.Condition)),
		Answers: []Answer{
			{Key: "1", Words: "she is still there, the cell was a mistake", Instead: []book.Fact{book.Dropped{What: book.Cells, Batch: f.Batch, Count: 1}}},
			{Key: "2", Words: "caught her now", Before: []book.Fact{book.QueenCaught{Nuc: f.Nuc, Queen: n.Holds.Queen}}},
			{Key: "3", Words: "typed wrong, leave this line", Leave: true},
		},
	}
}

// reigns asks what became of a laying queen when another is given.
func reigns(v *book.View, id book.NucID, what string) (Question, bool) {
	n := v.Nuc(id)
	if !n.Holds.Condition.Queenright() && n.Holds.Condition != book.DroneLayer {
		return Question{}, false
	}
	return Question{
		Asks: fmt.Sprintf("%s was given %s; the book has a %s there since %s. The old queen?", n.Name, what,
			reigning(n.Holds.Condition), n.Holds.Since.Day(v.Zone()).ShortFrom(v.Today())),
		Answers: []Answer{
			{Key: "1", Words: "gone, not known when", After: []book.Fact{book.QueenGone{Nuc: id}}},
			{Key: "2", Words: "taken out before, not written", Before: []book.Fact{book.QueenCaught{Nuc: id, Queen: n.Holds.Queen}}},
			{Key: "3", Words: "wrong nuc, leave this line", Leave: true},
		},
	}, true
}

func reigning(c book.Condition) string {
	if c == book.DroneLayer {
		return c.String()
	}
	return "laying queen"
}

func nobodyThere(v *book.View, f book.QueenCaught) (Question, bool) {
	n := v.Nuc(f.Nuc)
	switch n.Holds.Condition {
	case book.Empty, book.NoQueen, book.LayingWorkers:
	default:
		return Question{}, false
	}
	return Question{
		Asks: fmt.Sprintf("a queen was caught in %s; the book has it %s. Which is right?", n.Name, without(n.Holds.Condition)),
		Answers: []Answer{
			{Key: "1", Words: "she was there, nobody had seen her"},
			{Key: "2", Words: "wrong nuc, leave this line", Leave: true},
		},
	}, true
}

func without(c book.Condition) string {
	if c == book.NoQueen {
		return "without a queen"
	}
	return c.String()
}

func livesStill(v *book.View, f book.NucMadeUp) (Question, bool) {
	n := v.Nuc(f.Nuc)
	if n.Holds.Condition == book.Empty {
		return Question{}, false
	}
	return Question{
		Asks: fmt.Sprintf("%s was made up; the book has it living, %s. The bees before?", n.Name, n.Holds.Condition),
		Answers: []Answer{
			{Key: "1", Words: "shaken out before, not written", Before: []book.Fact{book.ShakenOut{Nuc: f.Nuc}}},
			{Key: "2", Words: "died out, not known when", Before: []book.Fact{book.NucLost{Nuc: f.Nuc, How: book.DiedOut}}},
			{Key: "3", Words: "wrong nuc, leave this line", Leave: true},
		},
	}, true
}
