package main

import (
	"crypto/rand"
	"time"

	"lidmark/domain/book"
)

// newIDs makes ids above those of a season, with chance of this run alone.
func newIDs(now time.Time, s *book.Season) book.IDs {
	var seed [32]byte
	_, _ = rand.Read(seed[:]) // it never fails, says its documentation
	return book.NewIDs(now, s, seed)
}
