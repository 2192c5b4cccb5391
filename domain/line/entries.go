package line

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Entries are the facts of a line as entries, each of its own moment, written
// down by writer at written.
func (l Line) Entries(ids *book.IDs, written time.Time, writer string) (all []book.Entry) {
	for _, s := range l.Sections {
		for i, f := range s.Facts {
			all = append(all, ids.Entries(s.when(i), written, writer, f)...)
		}
	}
	return all
}

// when is when the fact at a place of the section happened.
func (s Section) when(i int) calendar.Moment {
	if i < len(s.Times) {
		return s.Times[i]
	}
	return s.At
}
