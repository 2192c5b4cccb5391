package book

import (
	"crypto/sha256"
	"encoding/binary"
	"time"

	"lidmark/domain/calendar"
)

// IDs makes ids as RFC 9562, section 5.7, gives UUIDs of version 7: a time in
// milliseconds, a count within it, and chance. They rise, and rise above every
// id that the book has, even after the machine's clock was set back. What is
// written as one deed has one millisecond, which no other deed of the book has.
//
// The chance is that of a seed: a copy of IDs makes the same ids again, so that
// it can live in a state that is copied. Make it with [NewIDs].
type IDs struct {
	seed   [32]byte
	millis uint64
	count  uint16
}

// countBits are the bits of the count within a millisecond, which stands where
// RFC 9562 has rand_a.
const countBits = 12

// NewIDs begins the first deed after the entries of a season; nil is a new book.
// Every program that runs needs a seed of its own, 32 bytes that nobody guesses.
// It costs a walk over the entries.
func NewIDs(now time.Time, s *Season, seed [32]byte) IDs {
	g := IDs{seed: seed, millis: uint64(max(0, now.UnixMilli()))}
	if s == nil {
		return g
	}
	for e := range s.Entries() {
		if millis := e.ID.millis(); millis >= g.millis {
			g.millis = millis + 1
		}
	}
	return g
}

// millis is the time in an id.
func (id EntryID) millis() uint64 { return binary.BigEndian.Uint64(id[:8]) >> 16 }

// Deed begins another deed.
func (g *IDs) Deed() { g.millis, g.count = g.millis+1, 0 }

// Next is the next id, for an entry or for a thing. A deed of more than 4,096
// ids goes on in the next millisecond.
func (g *IDs) Next() (id [16]byte) {
	if g.count >= 1<<countBits {
		g.Deed()
	}
	binary.BigEndian.PutUint64(id[:8], g.millis<<16|7<<countBits|uint64(g.count))
	g.count++
	var from [40]byte
	copy(from[copy(from[:], g.seed[:]):], id[:8])
	chance := sha256.Sum256(from[:])
	copy(id[8:], chance[:])
	id[8] = id[8]&0x3f | 0x80
	return id
}

// Entries are facts as entries of one moment, in their order, written down by
// writer at written.
func (g *IDs) Entries(at calendar.Moment, written time.Time, writer string, facts ...Fact) []Entry {
	all := make([]Entry, len(facts))
	for i, f := range facts {
		all[i] = Entry{ID: EntryID(g.Next()), At: at, Written: written.UTC().Truncate(time.Second), Writer: writer, Fact: f}
	}
	return all
}
