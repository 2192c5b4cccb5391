package strength_test

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// laying is a nuc of three cups in which eggs were seen on 20 May, on six sides
// of 2 dm².
func laying() *booktest.Pen {
	return made().At("2027-05-20 18:00").Write(book.Looked{Nuc: a1, Eggs: book.SingleEggs})
}

// TestHerBeesEmerge 21 days after the eggs: by then she lays no more than the comb
// has room for and the bees can rear.
func TestHerBeesEmerge(t *testing.T) {
	p := laying()
	// The look said nothing of the bees: they are known until 7 June.
	p.At("2027-06-05 18:00").Write(book.Looked{Nuc: a1, Sides: book.Said(4)})
	before, _, _ := state(p, "2027-06-10 20:00")
	after, _, _ := state(p, "2027-06-14 20:00")
	if !before.BeesKnown || !after.BeesKnown || after.Bees <= before.Bees {
		t.Errorf("%.0f bees on 10 June, %.0f on the 14th, want more when hers emerge", before.Bees, after.Bees)
	}
	if cells := 6 * 2 * 400 * 0.7; before.Comb != cells || before.Brood > cells {
		t.Errorf("%.0f cells of brood in room for %.0f, want no more than %.0f", before.Brood, before.Comb, cells)
	}
}

// TestWhoIsCaughtLaysNoMore: no eggs after her catch.
func TestWhoIsCaughtLaysNoMore(t *testing.T) {
	kept, caught := laying(), laying()
	caught.At("2027-05-22 18:00").Write(book.QueenCaught{Nuc: a1, Queen: booktest.Queen("q")})
	k, _, _ := state(kept, "2027-05-27 20:00")
	c, _, _ := state(caught, "2027-05-27 20:00")
	if want := 600.0; math.Abs(c.Brood-want) > 1e-6 || k.Brood <= c.Brood {
		t.Errorf("%.0f cells of who was caught after two days, want %.0f; %.0f of who was not", c.Brood, want, k.Brood)
	}
}

// TestCombsAreFull from the day on which the brood takes all cells for it, as far
// as many bees rear it: 300 eggs a day into 3360 cells take twelve days.
func TestCombsAreFull(t *testing.T) {
	p := pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 14, From: booktest.Colony("S1")})
	p.At("2027-05-20 18:00").Write(book.Looked{Nuc: a1, Eggs: book.SingleEggs})
	s, _, _ := state(p, "2027-05-22 20:00")
	if want := calendar.Date(2027, 5, 31); s.Ahead.Full != want {
		t.Errorf("full from %s, want %s", s.Ahead.Full, want)
	}
	if s, _, _ := state(laying(), "2027-05-22 20:00"); s.Ahead.Full != 0 {
		t.Errorf("full from %s though its bees are too few to rear so much", s.Ahead.Full)
	}
}

// TestCellsAgreeWithTheTable: the cells reckoned for a dm² of one side lie
// between those of the closest and the widest natural worker comb, hexagons of
// 5.1 and 5.7 mm: 2/(√3·d²).
func TestCellsAgreeWithTheTable(t *testing.T) {
	f, err := os.Open("testdata/cells-per-dm2.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil || len(rows) < 10 {
		t.Fatalf("%d rows, %v", len(rows), err)
	}
	got := numbers.Get(practice.CellsPerSide)
	closest := false
	for _, row := range rows[1:] {
		d, err := strconv.ParseFloat(row[0], 64)
		if err != nil {
			t.Fatal(err)
		}
		cells, err := strconv.ParseFloat(row[1], 64)
		if want := 1e4 * 2 / (math.Sqrt(3) * d * d); err != nil || math.Abs(cells-want) > 0.1 {
			t.Errorf("cells of %g mm: %g a dm², by the hexagon %.1f", d, cells, want)
		}
		closest = closest || d >= 5.1 && d <= 5.7 && math.Abs(cells-got) < 1
	}
	if !closest {
		t.Errorf("%g cells a dm² belong to no worker comb of 5.1 to 5.7 mm", got)
	}
}

// TestNoBeesFromNothing: without brood and a queen there are fewer every day,
// and whatever brood there is never brings more than its cells.
func TestNoBeesFromNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		cups := rapid.Float64Range(0.5, 8).Draw(t, "cups")
		capped, open := rapid.Float64Range(0, 6).Draw(t, "capped"), rapid.Float64Range(0, 6).Draw(t, "open")
		p := pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: cups, Capped: capped, Open: open, From: booktest.Colony("S1")})
		signs(p, rapid.SampledFrom([]book.Sign{book.Flying, book.HalfFit, book.NoFlight}).Draw(t, "sign"), 30)
		start, _, _ := state(p, "2027-05-10 20:00")
		last := start
		for d := 1; d <= 28; d++ {
			s, _, _ := state(p, (calendar.Date(2027, 5, 10)+calendar.Day(d)).String()+" 20:00")
			if came := (last.Brood - s.Brood); s.Bees > last.Bees+came+1e-6 || s.Brood > last.Brood+1e-6 || s.Bees < 0 || s.Brood < -1e-6 {
				t.Fatalf("day %d: %.1f bees and %.1f cells after %.1f and %.1f", d, s.Bees, s.Brood, last.Bees, last.Brood)
			}
			last = s
		}
		if most := start.Bees + 400*(capped+open); last.Bees > most {
			t.Fatalf("%.0f bees of %.0f at most", last.Bees, most)
		}
	})
}

// TestMoreIsNeverLess: more cups, more capped brood or more comb seen crowded
// never make fewer bees on any day, and never an earlier day to be weak.
func TestMoreIsNeverLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		cups, capped := rapid.Float64Range(1, 6).Draw(t, "cups"), rapid.Float64Range(0, 4).Draw(t, "capped")
		more, moreCapped := rapid.Float64Range(0, 3).Draw(t, "more cups"), rapid.Float64Range(0, 3).Draw(t, "more capped")
		day := calendar.Date(2027, 5, 10) + calendar.Day(rapid.IntRange(0, 28).Draw(t, "day"))
		of := func(cups, capped float64) (float64, calendar.Day) {
			p := pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: cups, Capped: capped, From: booktest.Colony("S1")})
			s, _, _ := state(p, day.String()+" 20:00")
			if s.Ahead.Weak == 0 {
				return s.Bees, day + 100
			}
			return s.Bees, s.Ahead.Weak
		}
		few, weak := of(cups, capped)
		many, later := of(cups+more, capped+moreCapped)
		if many < few-1e-6 || later < weak {
			t.Fatalf("%.1f bees and weak on %s of less, %.1f and %s of more", few, weak, many, later)
		}
	})
}
