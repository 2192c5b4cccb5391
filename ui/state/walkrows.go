package state

import (
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/line"
)

// rowMaker makes the rows of a walk.
type rowMaker struct {
	*Walk
	writer  string
	counts  map[book.EntryID]bool // entries of the day that count
	told    map[book.EntryID]bool // those that a line typed in this window wrote
	under   map[book.EntryID]bool // those on their way into the book
	failed  map[book.EntryID]bool // those that the book did not take
	again   map[book.EntryID]bool // those that stand twice
	of      map[book.NucID][]WalkRow
	many    map[book.NucID][]WalkRow // by the first of their nucs
	covered map[book.NucID]bool
	names   line.Names
}

// rows are the rows of the walk as the book stands.
func (w *Walk) rows(pen Pen, now time.Time) []WalkRow {
	m := rowMaker{
		Walk: w, writer: pen.Writer, counts: map[book.EntryID]bool{}, told: map[book.EntryID]bool{},
		under: entriesOf(pen.Sent), failed: entriesOf(pen.Failed), again: map[book.EntryID]bool{},
		of: map[book.NucID][]WalkRow{}, many: map[book.NucID][]WalkRow{}, covered: map[book.NucID]bool{}, names: line.In(w.view),
	}
	for e := range w.view.OfDay(w.Day) {
		m.counts[e.ID] = true
	}
	for _, t := range w.Twins {
		m.again[t.Again.ID] = true
	}
	for _, d := range slices.Concat(pen.Earlier, pen.Done, pen.Sent, pen.Failed) {
		m.deed(d)
	}
	m.others()
	rows := m.ordered()
	for i, row := range rows {
		if row.Asks && !row.Failed {
			rows[i].Passed = w.askedAgain(row, pen, now, nil).Passed
		}
		if i > 0 && row.sameWords(rows[i-1]) {
			rows[i].SameAs = rows[i-1].Title
		}
	}
	return rows
}

func entriesOf(deeds []Deed) map[book.EntryID]bool {
	all := map[book.EntryID]bool{}
	for _, d := range deeds {
		for _, e := range d.Entries {
			all[e.ID] = true
		}
	}
	return all
}

// take puts an entry into its row.
func (m rowMaker) take(row *WalkRow, e book.Entry) {
	row.entries = append(row.entries, e)
	row.Under = row.Under || m.under[e.ID]
	row.Failed = row.Failed || m.failed[e.ID]
	row.Twice = row.Twice || m.again[e.ID]
	if e.Writer != m.writer {
		row.By = e.Writer
	}
}

// deed makes the rows of what was typed in one stroke, as far as it counts.
func (m rowMaker) deed(d Deed) {
	rows := make([]WalkRow, len(d.Typed))
	for i, t := range d.Typed {
		rows[i].RowName = RowName{Deed: d.Number, Part: i}
		rows[i].Nucs, rows[i].Typed, rows[i].Back = t.Nucs, t.Words, t.Back
	}
	part := 0
	for _, e := range d.Entries {
		part = partOf(d.Typed, part, e.Fact)
		if _, strikes := e.Fact.(book.Struck); m.counts[e.ID] && part < len(rows) && !strikes {
			m.told[e.ID] = true
			m.take(&rows[part], e)
		}
	}
	for _, row := range rows {
		if len(row.entries) > 0 {
			m.file(row)
		}
	}
}

// partOf is the part of a typed line to which a fact belongs, by the part of the
// fact before it.
func partOf(typed []Typed, part int, f book.Fact) int {
	id := nucIn(f)
	_, counts := f.(book.RowLooked)
	for i := part; i < len(typed) && (counts || !id.IsZero()); i++ {
		if slices.Contains(typed[i].Nucs, id) || counts && len(typed[i].Nucs) == 0 {
			return i
		}
	}
	return part
}

// file puts a row where it is found again.
func (m rowMaker) file(row WalkRow) {
	switch len(row.Nucs) {
	case 0:
		m.many[book.NucID{}] = append(m.many[book.NucID{}], row)
	case 1:
		row.Nuc, row.like = row.Nucs[0], row.Nucs[0]
		m.of[row.Nuc] = append(m.of[row.Nuc], row)
	default:
		row.like = m.likeMost(row.Nucs)
		m.many[row.Nucs[0]] = append(m.many[row.Nucs[0]], row)
		for _, id := range row.Nucs {
			m.covered[id] = true
		}
	}
}
