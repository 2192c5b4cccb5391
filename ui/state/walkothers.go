package state

import (
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/line"
)

// others makes the rows of what the book has of the day besides, a row for each
// nuc and writer. What was decided for a nuc is no row: it is work to come.
func (m rowMaker) others() {
	type key struct {
		nuc book.NucID
		by  string
	}
	var order []key
	rows, writers := map[key]*WalkRow{}, map[book.NucID]int{}
	for e := range m.view.OfDay(m.Day) {
		nuc := nucIn(e.Fact)
		if _, decided := e.Fact.(book.Planned); decided || nuc.IsZero() || m.told[e.ID] {
			continue
		}
		k := key{nuc, e.Writer}
		if rows[k] == nil {
			order = append(order, k)
			writers[nuc]++
			rows[k] = &WalkRow{RowName: RowName{Nuc: nuc, Part: -writers[nuc]}, Nucs: []book.NucID{nuc}}
		}
		row := rows[k]
		m.take(row, e)
		row.Typed = spaced(row.Typed, line.Codes(e.Fact, m.names))
		row.Back = listed(row.Back, line.WordsOn(e.Fact, m.names, nuc.Subject()))
	}
	for _, k := range order {
		m.file(*rows[k])
	}
}

func spaced(a, b string) string { return strings.TrimSpace(a + " " + b) }

func listed(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + ", " + b
}
