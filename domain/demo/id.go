package demo

import (
	"encoding/binary"
	"math/rand/v2"
	"time"
)

// id is a UUID of version 7 (RFC 9562, section 5.7): 48 bits of Unix time in
// milliseconds, then chance.
func id(t time.Time, chance *rand.Rand) (u [16]byte) {
	binary.BigEndian.PutUint64(u[:8], uint64(t.UnixMilli())<<16|chance.Uint64()>>48)
	binary.BigEndian.PutUint64(u[8:], chance.Uint64())
	u[6] = u[6]&0x0f | 0x70
	u[8] = u[8]&0x3f | 0x80
	return u
}

// name is an id for the next subject. Subjects are named in the order of the
// tables, on the morning on which the book was begun.
func (p *pen) name() [16]byte {
	p.named++
	begun := p.on(bookBegun).At(8, 0, p.zone)
	return id(begun.Add(time.Duration(p.named)*time.Second), p.chance)
}
