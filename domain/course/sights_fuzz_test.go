package course_test

import (
	"encoding/binary"
	"math"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/course"
)

// lookBytes are how many bytes a look is read from, deedBytes a deed with its
// hour and a look after it.
const (
	lookBytes = 24
	deedBytes = lookBytes + 4
)

// lookOf is a look of any bytes: words nobody has, amounts below nothing,
// infinite or no number at all.
func lookOf(b []byte) book.Looked {
	amount := func(i int) book.Amount {
		if b[i]&1 == 0 {
			return book.Amount{}
		}
		return book.Said(math.Float64frombits(binary.LittleEndian.Uint64(b[i:])))
	}
	return book.Looked{
		Nuc: a1, Queen: book.Sight(b[0]), Eggs: book.EggSight(b[1]), Cell: book.CellSight(b[2]),
		Larvae: b[3]&1 > 0, DroneBrood: b[3]&2 > 0, Thorough: b[3]&4 > 0, Quick: b[3]&8 > 0,
		Brood: amount(4), OwnCells: amount(12), Sides: amount(5), Stores: amount(16),
	}
}

// FuzzSights: whatever is looked at and done, in any order at any hour, every
// answer is one, and chances stay chances.
func FuzzSights(f *testing.F) {
	deed := func(hours uint16, which, more byte, look ...byte) []byte {
		b := make([]byte, deedBytes)
		binary.LittleEndian.PutUint16(b, hours)
		b[2], b[3] = which, more
		copy(b[4:], look)
		return b
	}
	var life []byte
	for _, d := range [][]byte{
		deed(1, 1, 0), deed(24, 2, 0), deed(90, 7, 0, 0, 0, 2), deed(300, 7, 0, 2, 1), deed(60, 7, 0, 1, 2),
		deed(10, 14, 0), deed(50, 7, 0, 1, 1, 0, 0, 1, 0, 0, 0, 0, 0, 0xf8, 0x7f, 1, 0, 0, 0, 0, 0, 0xf0, 0xff), deed(200, 7, 0, 3, 3, 3, 15),
	} {
		life = append(life, d...)
		f.Add(life)
	}
	f.Add(append(deed(5, 7, 0, 200, 201, 202, 255), deed(0, 7, 1, 1, 2, 3, 4)...))
	f.Fuzz(func(t *testing.T, b []byte) {
		p := &booktest.Pen{}
		p.At("2027-05-01 08:00").Write(book.YardDescribed{Yard: yard, Name: "Quillbank", Home: true, Zone: "America/Santiago"},
			book.NucNamed{Nuc: a1, Name: "A1"}, book.NucPlaced{Nuc: a1, Yard: yard}, book.Grafted{Batch: batch, Number: 4, Larvae: 20})
		at := time.Date(2027, 5, 1, 9, 0, 0, 0, time.UTC)
		for range 40 {
			if len(b) < deedBytes {
				break
			}
			at = at.Add(time.Duration(binary.LittleEndian.Uint16(b)%700) * time.Hour)
			p.At(at.Format("2006-01-02 15:04")).Write(done[int(b[2])%len(done)](a1, at))
			if b[3]&1 == 0 {
				p.Write(lookOf(b[4:deedBytes]))
			}
			b = b[deedBytes:]
		}
		v := book.NewSeason(booktest.Zones, p.Entries).At(at.Add(time.Duration(len(b)) * time.Hour))
		c := course.New(v)
		got := answersOf(c, v.Nuc(a1))
		for _, days := range [][]course.DayChances{got.Known, got.Was} {
			for _, d := range days {
				if wrong := sound(d.Chances); wrong != "" {
					t.Fatalf("%v: %s: %+v", d.Day, wrong, d.Chances)
				}
			}
		}
		for _, e := range got.Evidence {
			if wrong := sound(e.After); wrong != "" || e.Words == "" {
				t.Fatalf("%q: %s: %+v", e.Words, wrong, e.After)
			}
		}
		for _, p := range got.Eggs {
			if !(p >= 0 && p <= 1+1e-9) {
				t.Fatalf("first eggs %v", got.Eggs)
			}
		}
	})
}
