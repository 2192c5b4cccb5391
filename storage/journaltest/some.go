package journaltest

import (
	"encoding/binary"
	"time"

	"github.com/google/uuid"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// start is the instant of the first entry of Some.
var start = time.Date(2027, 4, 10, 8, 0, 0, 0, time.UTC)

// Some is n entries about the given number of nucs, an hour's work a minute
// apart, of the kinds that fill a book in season. They are the same every
// time, and entry i is the same whatever n.
func Some(n, nucs int) []book.Entry {
	all := make([]book.Entry, n)
	for i := range all {
		all[i] = Entry(i, nucs)
	}
	return all
}

// Entry is entry i of [Some].
func Entry(i, nucs int) book.Entry {
	at := start.Add(time.Duration(i) * time.Minute)
	e := book.Entry{
		ID:      book.EntryID(id(0xe, i, at)),
		At:      calendar.Instantly(at),
		Written: at.Add(9 * time.Hour),
		Writer:  [...]string{"Ida M.", "", "Jón Þ."}[i/7%3],
		Fact:    fact(i, nucs),
	}
	if i%3 == 0 {
		e.At = calendar.On(calendar.DayOf(at, nil), calendar.Part(1+i/3%6), nil)
	}
	return e
}

func fact(i, nucs int) book.Fact {
	nuc := book.NucID(id(0xa, i%nucs, start))
	batch := book.BatchID(id(0xb, i/1000, start))
	switch i / nucs % 8 {
	case 0:
		return book.NucNamed{Nuc: nuc, Name: "A" + string(rune('0'+i%10))}
	case 1:
		return book.CellGiven{Nuc: nuc, Batch: batch}
	case 2:
		return book.Looked{Nuc: nuc, Cell: book.CellOpenAtTip, Brood: book.Said(0), Sides: book.Said(float64(i % 6)), Quick: true}
	case 3:
		return book.Looked{Nuc: nuc, Queen: book.QueenSeen, Eggs: book.SingleEggs, Larvae: true, Stores: book.Said(2), Temper: book.Said(1), Note: "calm, “good” bees; sílá\n"}
	case 4:
		return book.QueenCaught{Nuc: nuc, Queen: book.QueenID(id(0xc, i, start)), Label: "7"}
	case 5:
		return book.Noted{Of: nuc.Subject(), Text: "lid slipped; put straight"}
	case 6:
		return book.Fed{To: nuc.Subject()}
	default:
		return book.Struck{Entry: book.EntryID(id(0xe, i-7*nucs, start.Add(time.Duration(i-7*nucs)*time.Minute))), Why: "wrong box"}
	}
}

// id is a UUID, version 7, of the instant at, the kind of thing and its
// number.
func id(kind byte, i int, at time.Time) (u uuid.UUID) {
	binary.BigEndian.PutUint64(u[:8], uint64(at.UnixMilli())<<16)
	u[6] = 0x70
	u[8] = 0x80
	u[9] = kind
	binary.BigEndian.PutUint32(u[12:], uint32(i))
	return u
}
