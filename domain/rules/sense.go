package rules

import (
	"fmt"
	"time"

	"lidmark/domain/book"
)

// Sense tells whether an entry makes sense at all: its things are known to
// the book, it lies not after now, and a box has no more sides than it has.
// Whatever else it says is taken down.
func Sense(v *book.View, now time.Time, e book.Entry) error {
	if e.At.Instant.After(now) {
		return fmt.Errorf("%s lies ahead: write down what has happened", e.At.In(v.Zone()))
	}
	for _, s := range book.Subjects(e.Fact) {
		if id, ok := s.Nuc(); ok && v.Nuc(id).Name == "" && !founds(e.Fact) {
			return fmt.Errorf("the nuc is not in the book: name it first")
		}
		if id, ok := s.Batch(); ok && v.Batch(id).At.IsZero() && !founds(e.Fact) {
			return fmt.Errorf("the batch is not in the book: write down its graft first")
		}
	}
	if f, ok := e.Fact.(book.Looked); ok {
		n := v.Nuc(f.Nuc)
		if sides, said := f.Sides.Get(); said && n.Sides > 0 && sides > float64(n.Sides) {
			return fmt.Errorf("%g sides in %s: it has %d", sides, n.Name, n.Sides)
		}
	}
	return nil
}

// founds tells whether a fact brings a nuc or a batch into the book.
func founds(f book.Fact) bool {
	switch f.(type) {
	case book.NucNamed, book.Grafted:
		return true
	default:
		return false
	}
}
