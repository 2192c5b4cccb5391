package booktest

import (
	"encoding/binary"
	"fmt"
	"time"

	"github.com/google/uuid"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// BigNow is an instant in the middle of the last round of a big book.
var BigNow = time.Date(2027, 7, 12, 7, 0, 0, 0, time.UTC)

// Big is a book to measure speed on: so many nucs on stands of four, worked in
// rounds of about ten entries each until every nuc has perNuc of them. The
// entries are in the order of the book. It is made data, not a record.
func Big(nucs, perNuc int) []book.Entry {
	b := &big{rounds: max(1, perNuc/entriesARound)}
	b.yard()
	for r := range b.rounds {
		b.batch(r)
	}
	for i := range nucs {
		b.place(i)
	}
	for r := range b.rounds {
		b.round(r, nucs)
	}
	return b.entries
}

const (
	entriesARound = 10
	roundDays     = 30
)

type big struct {
	rounds  int
	entries []book.Entry
}

// start is the first day of a round; the last round began 20 days before BigNow.
func (b *big) start(round int) time.Time {
	return BigNow.AddDate(0, 0, -20-roundDays*(b.rounds-1-round))
}

func (b *big) write(at time.Time, facts ...book.Fact) {
	for _, f := range facts {
		var id uuid.UUID
		binary.BigEndian.PutUint64(id[:8], uint64(len(b.entries)+1))
		b.entries = append(b.entries, book.Entry{
			ID: book.EntryID(id), At: calendar.Instantly(at), Written: at.UTC(), Writer: "Ida M.", Fact: f,
		})
	}
}

func (b *big) yard() {
	at := b.start(0).AddDate(0, -1, 0)
	b.write(at, book.YardDescribed{Yard: Yard("big"), Name: "Big", Home: true, Zone: "UTC"},
		book.FeatureDrawn{Feature: Feature("hedge"), Yard: Yard("big"), What: book.Hedge, Points: []book.Point{{X: -5, Y: -5}, {X: 205, Y: -5}}, Height: 2, Width: 1},
		book.PersonDescribed{Person: Person("Ida"), Name: "Ida M.", Free: [7]book.FreeHours{1: {From: 480, Until: 1020}}})
}

func (b *big) batch(round int) {
	at := b.start(round).AddDate(0, 0, -10)
	id := bigBatch(round)
	b.write(at, book.Grafted{Batch: id, Number: round + 1, Line: "Plover", Larvae: 12000})
	b.write(at.AddDate(0, 0, 5), book.CappedCounted{Batch: id, Capped: 11000})
}

func (b *big) place(i int) {
	stand, n := Stand(fmt.Sprint("stand ", i/4)), bigNuc(i)
	at := b.start(0).AddDate(0, 0, -2)
	if i%4 == 0 {
		b.write(at, book.StandSet{Stand: stand, Yard: Yard("big"), Letter: standLetter(i / 4), At: book.Point{X: float64(i / 4 % 50 * 4), Y: float64(i / 200 * 6)}, Places: 4})
	}
	b.write(at, book.NucNamed{Nuc: n, Name: fmt.Sprint(standLetter(i/4), i%4+1), Entrance: float64(i % 4 * 90), Sides: 6},
		book.NucPlaced{Nuc: n, Yard: Yard("big"), Stand: stand, Place: i%4 + 1})
}

// round is one turn of every nuc, day by day so that entries stay in order.
func (b *big) round(r, nucs int) {
	start := b.start(r)
	for _, day := range roundTurn {
		at := start.AddDate(0, 0, day.day)
		if at.After(BigNow) {
			return
		}
		for i := range nucs {
			b.write(at, day.facts(r, i)...)
		}
	}
}

type turnDay struct {
	day   int
	facts func(round, i int) []book.Fact
}

var roundTurn = []turnDay{
	{0, func(_, i int) []book.Fact {
		return []book.Fact{book.NucMadeUp{Nuc: bigNuc(i), Cups: 3, From: Colony("S1")}, book.Fed{To: bigNuc(i).Subject(), Litres: 0.3}}
	}},
	{1, func(r, i int) []book.Fact { return []book.Fact{book.CellGiven{Nuc: bigNuc(i), Batch: bigBatch(r)}} }},
	{4, func(_, i int) []book.Fact {
		return []book.Fact{book.Looked{Nuc: bigNuc(i), Cell: book.CellOpenAtTip, Sides: book.Said(4)}}
	}},
	{17, func(_, i int) []book.Fact { return bigLook(i) }},
	{26, func(_, i int) []book.Fact {
		return []book.Fact{book.Looked{Nuc: bigNuc(i), Queen: book.QueenSeen, Brood: book.Said(3), Sides: book.Said(6)}, book.LidPainted{Nuc: bigNuc(i), Stroke: book.Settled}}
	}},
	{28, func(_, i int) []book.Fact {
		return []book.Fact{book.QueenCaught{Nuc: bigNuc(i)}, book.ShakenOut{Nuc: bigNuc(i)}}
	}},
}

// bigLook finds eggs in nine nucs of ten.
func bigLook(i int) []book.Fact {
	look := book.Looked{Nuc: bigNuc(i), Queen: book.QueenSeen, Eggs: book.SingleEggs, Sides: book.Said(5), Stores: book.Said(2)}
	if i%10 == 0 {
		look = book.Looked{Nuc: bigNuc(i), Queen: book.NoneSeen, Eggs: book.NoEggs, Sides: book.Said(3), Stores: book.Said(1)}
	}
	return []book.Fact{look}
}

func bigBatch(round int) book.BatchID { return Batch(fmt.Sprint("round ", round)) }

func bigNuc(i int) (id book.NucID) {
	id[6], id[8] = 0x70, 0x80
	binary.BigEndian.PutUint32(id[:4], uint32(i+1))
	return id
}

// standLetter counts A, B, … Z, AA, AB, … without I and O.
func standLetter(i int) string {
	const letters = "ABCDEFGHJKLMNPQRSTUVWXYZ"
	if i < len(letters) {
		return letters[i : i+1]
	}
	return standLetter(i/len(letters)-1) + letters[i%len(letters):i%len(letters)+1]
}

// BigClock is a clock that stands at [BigNow].
func BigClock() time.Time { return BigNow }
