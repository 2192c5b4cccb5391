package state

import (
	"fmt"
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// asksAlong asks for the cells of each batch that can be out, and for what else is
// counted.
func asksAlong(s State) (asks []Ask) {
	for b := range s.Walk.view.Batches() {
		if b.Left() > 0 {
			asks = append(asks, Ask{Name: cellsOf(b), Label: fmt.Sprintf("Cells of batch %d", b.Number), Kind: Figure})
		}
	}
	return append(asks, Ask{Name: "virgins", Label: "Virgins in cages", Kind: Figure}, Ask{Name: "cages", Label: "Empty cages", Kind: Figure})
}

func cellsOf(b *book.Batch) string { return "cells." + strconv.Itoa(b.Number) }

func along(s State, a *Answers) (facts []book.Fact) {
	add := func(what book.Goods, batch book.BatchID, name string) {
		if n := a.Count(name); n > 0 {
			facts = append(facts, book.TakenAlong{What: what, Batch: batch, Count: n})
		}
	}
	for b := range s.Walk.view.Batches() {
		if a.Said(cellsOf(b)) {
			add(book.Cells, b.Batch, cellsOf(b))
		}
	}
	add(book.Virgins, book.BatchID{}, "virgins")
	add(book.Cages, book.BatchID{}, "cages")
	if len(facts) == 0 {
		a.Wrong(s.Form.Asks[0].Name, "say how many of one of them")
	}
	return facts
}

// Goods are the goods of a count in words: "cells of batch 4".
func Goods(v *book.View, c rules.Closing) string {
	if c.Batch.IsZero() {
		return c.What.String()
	}
	return fmt.Sprintf("%s of batch %d", c.What, v.Batch(c.Batch).Number)
}
