package state

import (
	"fmt"
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
		if !row.Open() {
			continue
		}
		for _, f := range sheet(row.Nuc) {
			if g, ok := f.(book.CellGiven); ok {
				w.coming[g.Batch]++
			}
		}
	}
	w.Nucs = len(nucs)
	for wrote := range maps.Values(nucs) {
		w.Done += boolInt(wrote)
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
	said := []string{"The walk of " + w.Day.Short() + " is closed"}
	for _, c := range w.Closing {
		said = append(said, c.String())
	}
	return strings.Join(said, ": ") + openWords(w.Nucs-w.Done)
}

func openWords(open int) string {
	switch open {
	case 0:
		return ""
	case 1:
		return "; 1 row open"
	default:
		return fmt.Sprintf("; %d rows open", open)
	}
}
