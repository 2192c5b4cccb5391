package book_test

import (
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
)

// TestEveryCellIsSomewhere: whatever is done with the cells of a batch, those on the
// way are among those that can be given, and all together are as many as were counted.
func TestEveryCellIsSomewhere(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		four := booktest.Batch("4")
		p := &booktest.Pen{}
		p.At("2027-05-05 18:00").Write(book.Grafted{Batch: four, Number: 4, Larvae: 24})
		p.At("2027-05-15 08:00")
		for i := range rapid.IntRange(0, 12).Draw(t, "deeds") {
			b := p.View("2027-05-20 00:00").Batch(four)
			n := rapid.IntRange(1, 8).Draw(t, "cells")
			var fact book.Fact
			switch rapid.IntRange(0, 5).Draw(t, "deed") {
			case 0:
				fact = book.TakenAlong{What: book.Cells, Batch: four, Count: min(n, b.Left())}
			case 1:
				fact = book.BroughtBack{What: book.Cells, Batch: four, Count: min(n, b.OnTheWay())}
			case 2:
				fact = book.Dropped{What: book.Cells, Batch: four, Count: min(n, b.OnTheWay())}
			case 3:
				fact = book.CellsCulled{Batch: four, Cells: min(n, b.Left())}
			default:
				if b.Unplaced() == 0 {
					continue
				}
				name := string(rune('a' + i))
				fact = book.CellGiven{Batch: four, Nuc: booktest.Nuc(name)}
				if n > 4 {
					fact = book.VirginCaged{Batch: four, Queen: booktest.Queen(name), Cell: true}
				}
			}
			p.Write(fact)
			now := p.View("2027-05-20 00:00").Batch(four)
			if now.OnTheWay() < 0 || now.Left() < 0 || now.OnTheWay()+now.Left() != now.Unplaced() {
				t.Fatalf("%d left and %d on the way of %d", now.Left(), now.OnTheWay(), now.Unplaced())
			}
			if gone := len(now.Given) + len(now.Caged) + now.Culled + now.Lost; gone+now.Unplaced() != 24 {
				t.Fatalf("%d gone and %d to be given, of 24", gone, now.Unplaced())
			}
		}
	})
}
