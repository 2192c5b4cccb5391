package line

import (
	"time"

	"lidmark/domain/book"
)

// Entries are the facts of a line as entries, each of its section's moment,
// written down by writer at written.
func (l Line) Entries(ids *book.IDs, written time.Time, writer string) (all []book.Entry) {
	for _, s := range l.Sections {
		all = append(all, ids.Entries(s.At, written, writer, s.Facts...)...)
	}
	return all
}
