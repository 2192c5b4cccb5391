package main

import (
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/line"
)

// queen finds a queen by any name that is printed of her, see [line.QueensCalled]; but those
// are passed over.
func (f finder) queen(name string, but ...book.QueenID) (*book.Queen, error) {
	return line.Queen(f.View, name, true, func(q *book.Queen) bool { return !slices.Contains(but, q.Queen) })
}

// ownQueen finds a queen by what is hers alone: no nuc's name by itself means her.
func (f finder) ownQueen(name string) (*book.Queen, error) {
	return line.Queen(f.View, name, false, func(*book.Queen) bool { return true })
}

// heldBy are the nucs of a name, or of some with their yard behind them, that hold queens of whom nothing
// is told but what is told of the nucs: as the hand-over names those who are still to be caught.
func (f finder) heldBy(name string) (found []*book.Nuc) {
	for n := range f.Nucs() {
		all, in := name, prefixed(" in ", f.Yard(n.Yard).Name)
		if at := len(all) - len(in); at > 0 && strings.EqualFold(all[at:], in) {
			all = all[:at]
		}
		called := func(one string) bool { return strings.EqualFold(one, n.Name) }
		if n.Condition() >= book.Virgin && n.Condition() <= book.DroneLayer && slices.ContainsFunc(strings.Fields(all), called) {
			found = append(found, n)
		}
	}
	return found
}
