package main

import (
	"slices"

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
