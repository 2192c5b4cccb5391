package state

import (
	"maps"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// counted is the walk with what its rows come to.
func (w *Walk) counted() {
	sheet := w.Before.Sheet()
	nucs := make(map[book.NucID]bool, len(w.Rows))
	w.Done, w.Asking, w.coming = 0, 0, map[book.BatchID]int{}
	for _, row := range w.Rows {
		w.Asking += boolInt(row.Asks)
		for _, id := range row.Nucs {
			nucs[id] = nucs[id] || !row.Open()
		}
		if row.Open() {
			w.comes(sheet(row.Nuc))
		}
	}
	for _, id := range w.hidden {
		w.comes(sheet(id))
	}
	w.Nucs = len(nucs)
	for wrote := range maps.Values(nucs) {
		w.Done += boolInt(wrote)
	}
}

// comes counts the cells that a sheet has for a nuc.
func (w *Walk) comes(planned []book.Fact) {
	for _, f := range planned {
		if g, ok := f.(book.CellGiven); ok {
			w.coming[g.Batch]++
		}
	}
}

// Coming is how many open rows are to get goods of a count by the day's sheet: so
// many are not missing yet.
func (w *Walk) Coming(c rules.Closing) int {
	if c.What != book.Cells {
		return 0
	}
	return min(w.coming[c.Batch], max(0, c.Missing()))
}

// left says what is left of the walk.
func (w *Walk) left() string {
	said := "The walk of " + w.Day.Short() + " is closed"
	if counts := w.Balance(); counts != "" {
		said += ": " + counts
	}
	return said
}

// Balance says what the counts of the walk come to and how many rows are open;
// "" where there is nothing to say.
func (w *Walk) Balance() string {
	var said []string
	for _, c := range w.Closing {
		words := c.String()
		if len(w.Closing) > 1 {
			words = Goods(w.view, c) + " " + words
		}
		said = append(said, words)
	}
	if open := w.Nucs - w.Done; open > 0 {
		said = append(said, counted(open, "row")+" open")
	}
	return strings.Join(said, "; ")
}
