package rules

import (
	"fmt"

	"lidmark/domain/book"
)

// otherwise asks which is right when a cell is found as it cannot be after what
// was seen of it before: shut after it was open, torn after she walked.
func otherwise(v *book.View, f book.Looked) (Question, bool) {
	before, ok := cellSeen(v, f.Nuc)
	if !ok || !contradicts(before.Fact.(book.Looked).Cell, f.Cell) {
		return Question{}, false
	}
	was := before.Fact.(book.Looked).Cell
	n := v.Nuc(f.Nuc)
	return Question{
		Asks: fmt.Sprintf("%s: %s; the book has the %s, seen %s. Which is right?", n.Name, f.Cell, was, before.At.InFrom(v.Today(), v.Zone())),
		Answers: []Answer{
			{Key: "1", Words: fmt.Sprintf("%s, strike the line before", f.Cell), Before: []book.Fact{book.Struck{Entry: before.ID, Why: "the " + f.Cell.String()}}},
			{Key: "2", Words: fmt.Sprintf("%s, leave this line", was), Leave: true},
		},
	}, true
}

// contradicts tells whether a cell can not be found so after it was found
// another way. A shut one may open or be torn.
func contradicts(before, now book.CellSight) bool {
	return now != book.CellUnsaid && before != book.CellUnsaid && before != book.CellShut && before != now
}

// cellSeen is the last line that says how the cell a nuc was last given was
// found.
func cellSeen(v *book.View, id book.NucID) (last book.Entry, ok bool) {
	for e := range v.Lines(id.Subject()) {
		switch f := e.Fact.(type) {
		case book.CellGiven, book.NucMadeUp:
			ok = false
		case book.Looked:
			if f.Cell != book.CellUnsaid {
				last, ok = e, true
			}
		}
	}
	return last, ok
}
