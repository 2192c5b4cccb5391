package strength_test

import (
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
)

// made is a nuc that was made up with three cups, 1470 bees, on 10 May.
func made() *booktest.Pen {
	return pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, From: booktest.Colony("S1")})
}

// TestALookIsWeighed by hand: 1470 bees with an error of 20 % on 10 May. By the
// evening of the 11th their error is √(0.2² + 0.05²), so a look weighs
// k = 0.0425 / (0.0425 + 0.04) = 0.515. House bees, all of them, die at 1 %, so
// 1455 are reckoned; of 5 sides, 1250 bees, 1455.3 + 0.515·(1250 − 1455.3) = 1349.5
// are kept, with an error of √(0.515·0.04) = 14.4 %.
func TestALookIsWeighed(t *testing.T) {
	p := made().At("2027-05-11 18:00").Write(book.Looked{Nuc: a1, Sides: book.Said(5)})
	s, _, _ := state(p, "2027-05-11 20:00")
	if math.Abs(s.Bees-1349.5) > 0.1 || math.Abs(s.Error-0.1435) > 1e-4 || s.BeesSeen != 1250 || math.Abs(s.BeesThen-s.Bees) > 1e-9 {
		t.Errorf("%.2f bees give or take %.4f, %.0f seen, want 1349.5, 0.1435, 1250", s.Bees, s.Error, s.BeesSeen)
	}
	later, _, _ := state(p, "2027-05-21 20:00")
	if want := math.Sqrt(0.0425*0.04/0.0825 + 10*0.0025); math.Abs(later.Error-want) > 1e-9 {
		t.Errorf("ten days on the error is %.4f, want %.4f", later.Error, want)
	}
}

// TestALookFarOffStandsAlone: 500 seen where 1455 are reckoned lie further apart
// than 2·√(0.0425 + 0.04) = 0.57 of them: something happened that nobody wrote.
// So does a look at none, and the first word of bees at all.
func TestALookFarOffStandsAlone(t *testing.T) {
	for _, row := range []struct {
		name  string
		sides float64
		cups  float64
		want  float64
	}{{"few", 2, 3, 500}, {"none", 0, 3, 0}, {"nobody said before", 5, 0, 1250}} {
		p := pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: row.cups, From: booktest.Colony("S1")})
		p.At("2027-05-11 18:00").Write(book.Looked{Nuc: a1, Sides: book.Said(row.sides)})
		s, _, _ := state(p, "2027-05-11 20:00")
		if math.Abs(s.Bees-row.want) > 1e-6 || s.BeesSeen != 0 || math.Abs(s.Error-0.2) > 1e-9 {
			t.Errorf("%s: %.0f bees, error %.2f, want %.0f as seen, 0.20", row.name, s.Bees, s.Error, row.want)
		}
	}
}

// TestBeesBeyondThoseReckonedAreYoung, so fewer of them die; capped brood seen
// brings more.
func TestBeesBeyondThoseReckonedAreYoung(t *testing.T) {
	left := func(p *booktest.Pen) float64 {
		seen, _, _ := state(p, "2027-05-30 20:00")
		later, _, _ := state(p, "2027-06-06 20:00")
		return later.Bees / seen.Bees
	}
	few := made().At("2027-05-30 18:00").Write(book.Looked{Nuc: a1, Sides: book.Said(1)})
	many := made().At("2027-05-30 18:00").Write(book.Looked{Nuc: a1, Sides: book.Said(6)})
	brood := made().At("2027-05-30 18:00").Write(book.Looked{Nuc: a1, Sides: book.Said(6), Brood: book.Said(3)})
	if f, m, b := left(few), left(many), left(brood); !(f < m && m < b) {
		t.Errorf("left after a week: %.2f of few old bees, %.2f of many, %.2f of many with brood; want them in this order", f, m, b)
	}
}

// TestALookThatIsTooOldSaysNothing, and weighs nothing in the next one.
func TestALookThatIsTooOldSaysNothing(t *testing.T) {
	p := made()
	if s, _, _ := state(p, "2027-06-07 20:00"); !s.BeesKnown {
		t.Error("28 days later: unknown, want known")
	}
	if s, _, _ := state(p, "2027-06-08 20:00"); s.BeesKnown || s.Ahead.Weak != 0 {
		t.Error("29 days later: known, want unknown")
	}
	p.At("2027-06-08 18:00").Write(book.Looked{Nuc: a1, Sides: book.Said(3)})
	if s, _, _ := state(p, "2027-06-08 20:00"); !s.BeesKnown || math.Abs(s.Bees-750) > 1e-6 {
		t.Errorf("seen again: %.0f bees, want the 750 seen", s.Bees)
	}
}
