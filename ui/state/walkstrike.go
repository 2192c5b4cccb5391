package state

import (
	"maps"
	"slices"

	"lidmark/domain/book"
)

// strikes are the entries that strike others, the latest first.
func (s State) strikes(ids *book.IDs, entries []book.Entry) (all []book.Entry) {
	for _, e := range slices.Backward(entries) {
		all = append(all, ids.Entries(instantly(s), s.Now, s.Pen.Writer, book.Struck{Entry: e.ID})...)
	}
	return all
}

// rowStruck strikes what is written in the row that is typed into, and stays there
// so that it can be typed anew.
func rowStruck(s State) (State, []Effect) {
	row, _ := s.Walk.Row()
	drops := s.unsaid(row)
	ids := s.Pen.IDs
	ids.Deed()
	entries := s.strikes(&ids, without(row.entries, drops))
	s.Pen.IDs, s = ids, s.withoutFailed(drops)
	s = s.WithField(WalkField, Field{}).lineDrafted()
	s, effects := s.send(Deed{Words: "strike " + rowWords(row, row.Typed), Entries: entries})
	if len(row.Nucs) > 0 {
		s = s.withWalk(func(w *Walk) {
			w.kept = maps.Clone(w.kept)
			if w.kept == nil {
				w.kept = map[book.NucID]bool{}
			}
			w.kept[row.Nucs[0]] = true
			w.At = RowName{Nuc: row.Nucs[0]}
		}).walkRead()
		s = s.rowOpened(s.Walk.At)
	}
	return s, effects
}

// nothingTyped says why the row cannot be struck.
func nothingTyped(s State) string {
	if why := notWalking(s); why != "" {
		return why
	}
	if row, ok := s.Walk.Row(); !ok || row.Open() {
		return "nothing is written in this row"
	}
	return ""
}

// unsaid are the entries of a row that the book did not take.
func (s State) unsaid(row WalkRow) (all []book.Entry) {
	failed := entriesOf(s.Pen.Failed)
	for _, e := range row.entries {
		if failed[e.ID] {
			all = append(all, e)
		}
	}
	return all
}
