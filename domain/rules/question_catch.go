package rules

import (
	"fmt"

	"lidmark/domain/book"
)

// caught asks whether a catch was typed already, whether its cage is free, and
// whether there was a queen to be caught.
func caught(v *book.View, f book.QueenCaught) (Question, bool) {
	if q, asks := caughtAlready(v, f); asks {
		return q, true
	}
	if q, asks := cageTaken(v, f); asks {
		return q, true
	}
	return nobodyThere(v, f)
}

// caughtAlready asks of a catch of which the day has the like: the same nuc, the
// same cage, and nobody has reigned there since.
func caughtAlready(v *book.View, f book.QueenCaught) (Question, bool) {
	n := v.Nuc(f.Nuc)
	if len(n.Caught) == 0 || n.Holds.Condition != book.NoQueen {
		return Question{}, false
	}
	last := n.Caught[len(n.Caught)-1]
	if last.Cage != f.Label || last.Culled != f.Culled || last.At.Day(v.Zone()) != v.Today() {
		return Question{}, false
	}
	return Question{
		Asks: fmt.Sprintf("typed already at %s: leave this one out?", n.Name),
		Answers: []Answer{
			{Key: "1", Words: "yes, leave it out", Leave: true},
			{Key: "2", Words: "no, there was a second queen"},
		},
	}, true
}

// cageTaken asks of a cage number under which another queen is still in hand.
func cageTaken(v *book.View, f book.QueenCaught) (Question, bool) {
	if f.Label == "" || f.Culled {
		return Question{}, false
	}
	for q := range v.Queens() {
		if q.Label != f.Label || !q.Caged() || q.Queen == f.Queen {
			continue
		}
		return Question{
			Asks: fmt.Sprintf("cage %s holds %s already. Which is right?", f.Label, cagedQueen(v, q)),
			Answers: []Answer{
				{Key: "1", Words: "the cage was free again"},
				{Key: "2", Words: "wrong cage, leave this line", Leave: true},
			},
		}, true
	}
	return Question{}, false
}

// cagedQueen is who sits in a cage, in words.
func cagedQueen(v *book.View, q *book.Queen) string {
	since := q.Since.Day(v.Zone()).ShortFrom(v.Today())
	if n := v.Nuc(q.From); !q.From.IsZero() && n.Name != "" {
		return fmt.Sprintf("the queen of %s since %s", n.Name, since)
	}
	if q.Virgin {
		return "a virgin since " + since
	}
	return "a queen since " + since
}
