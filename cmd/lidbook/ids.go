package main

import (
	"crypto/rand"
	"encoding/binary"
	"time"

	"lidmark/domain/book"
)

// ids makes ids as RFC 9562 gives UUIDs of version 7: a time in milliseconds,
// a count within it, and chance. They rise, and rise above every id that the
// book has, even after the machine's clock was set back. What is written as one
// deed has one millisecond, which no other deed of the book has.
type ids struct {
	millis uint64
	count  uint16
}

const countBits = 12

func newIDs(now time.Time, s *book.Season) *ids {
	g := &ids{millis: uint64(now.UnixMilli())}
	if s == nil {
		return g
	}
	for e := range s.Entries() {
		if millis := millisOf(e.ID); millis >= g.millis {
			g.millis = millis + 1
		}
	}
	return g
}

// millisOf is the time in an id.
func millisOf(id book.EntryID) uint64 { return binary.BigEndian.Uint64(id[:8]) >> 16 }

// deed begins another deed.
func (g *ids) deed() { g.millis, g.count = g.millis+1, 0 }

// next is the next id.
func (g *ids) next() (id [16]byte) {
	if g.count >= 1<<countBits {
		g.millis, g.count = g.millis+1, 0
	}
	if _, err := rand.Read(id[8:]); err != nil {
		panic(err) // it never fails, says its documentation
	}
	binary.BigEndian.PutUint64(id[:8], g.millis<<16|7<<countBits|uint64(g.count))
	id[8] = id[8]&0x3f | 0x80
	g.count++
	return id
}
