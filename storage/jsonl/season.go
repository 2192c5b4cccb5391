package jsonl

import (
	"io"
	"iter"

	"lidmark/domain/book"
)

// WriteSeason writes all entries of a season, as [Write] does.
func WriteSeason(w io.Writer, s *book.Season) error {
	return Write(w, iter.Seq2[book.Entry, error](func(yield func(book.Entry, error) bool) {
		for e := range s.Entries() {
			if !yield(e, nil) {
				return
			}
		}
	}))
}
