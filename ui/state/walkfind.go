package state

import (
	"slices"

	"lidmark/domain/book"
)

// Row is the row that is typed into; none where there is none.
func (w *Walk) Row() (WalkRow, bool) {
	i := w.index(w.At)
	if i < 0 {
		return WalkRow{}, false
	}
	return w.Rows[i], true
}

func (w *Walk) index(name RowName) int {
	return slices.IndexFunc(w.Rows, func(r WalkRow) bool { return r.RowName == name })
}

func (w *Walk) has(name RowName) bool { return w.index(name) >= 0 }

// nextOpen is the next open row behind a row, from the first one on where the row
// is none of the walk; the line for any nuc when all behind it are written.
func (w *Walk) nextOpen(name RowName) RowName {
	for _, row := range w.Rows[w.index(name)+1:] {
		if row.Open() && !row.Any() {
			return row.RowName
		}
	}
	return anyNuc
}

// openBehind is the next open row behind those of a nuc, as [Walk.nextOpen] finds
// it.
func (w *Walk) openBehind(id book.NucID) RowName {
	order := w.order(id)
	last := RowName{}
	for _, row := range w.Rows {
		if len(row.Nucs) > 0 && w.order(row.Nucs[0]) <= order {
			last = row.RowName
		}
	}
	return w.nextOpen(last)
}

// order is the place of a nuc in walking order; below 0 for none.
func (w *Walk) order(id book.NucID) int {
	if at, ok := w.places[id]; ok {
		return at
	}
	return -1
}
