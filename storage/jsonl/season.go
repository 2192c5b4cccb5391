package jsonl

import (
	"io"
	"iter"

	"lidmark/domain/book"
)

// WriteSeason writes all entries of a season, as [Write] does, telling where things are
// as exactly as is wanted.
func WriteSeason(w io.Writer, s *book.Season, p book.Positions) error {
	return Write(w, iter.Seq2[book.Entry, error](func(yield func(book.Entry, error) bool) {
		for e := range s.Entries() {
			e.Fact = p.Told(e.Fact)
			if !yield(e, nil) {
				return
			}
		}
	}))
}
