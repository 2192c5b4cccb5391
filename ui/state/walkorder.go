package state

import (
	"slices"
	"strings"

	"lidmark/domain/book"
)

// ordered are the rows in walking order: what was written of several nucs before
// the first of them, what was written of one, and what is open.
func (m rowMaker) ordered() []WalkRow {
	rows := make([]WalkRow, 0, len(m.nucs))
	m.hidden = nil
	rows = append(rows, m.titled(m.many[book.NucID{}])...)
	for i, n := range m.nucs {
		id := n.Nuc.Nuc
		if !m.shows(n.Nuc) {
			if len(m.of[id]) == 0 && !m.covered[id] {
				m.hidden = append(m.hidden, id)
			}
			continue
		}
		rows = append(rows, m.titled(m.many[id])...)
		own := m.of[id]
		for _, row := range own {
			row.Title, row.Planned, row.Asks = n.Name, m.plan[id], m.asks(id)
			rows = append(rows, row)
		}
		if len(own) == 0 && !m.covered[id] && (m.All || m.plan[id] != "" || m.kept[id]) {
			rows = append(rows, WalkRow{RowName: RowName{Nuc: id}, Nucs: m.ids[i : i+1 : i+1], Title: n.Name, Planned: m.plan[id]})
		}
	}
	return append(rows, WalkRow{RowName: anyNuc})
}

// titled are rows of several nucs by the name of the first and the last.
func (m rowMaker) titled(rows []WalkRow) []WalkRow {
	for i := range rows {
		ids := rows[i].Nucs
		if len(ids) == 0 {
			rows[i].Title, _, _ = strings.Cut(rows[i].Typed, " ") // the letter of a stand
		} else {
			rows[i].Title = m.view.Nuc(ids[0]).Name + "–" + m.view.Nuc(ids[len(ids)-1]).Name
		}
		for _, id := range ids {
			rows[i].Asks = rows[i].Asks || m.asks(id)
		}
	}
	return rows
}

// asks tells whether what was written of a nuc that day does not fit the book,
// and nobody has said why.
func (m rowMaker) asks(id book.NucID) bool {
	if len(m.of[id]) == 0 && !m.covered[id] {
		return false
	}
	return slices.ContainsFunc(m.view.Nuc(id).Gaps, func(g book.Gap) bool {
		return g.Asks && g.At.Day(m.view.Zone()) == m.Day
	})
}
