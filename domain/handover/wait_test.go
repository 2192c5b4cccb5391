package handover_test

import (
	"fmt"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/domain/practice"
)

// awaited is a book with eight Rook ready, and others whose eggs were seen on 13 May: ready
// by 25 May, as surely as they live.
func awaited(nucs int) *booktest.Pen {
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	proven(p, "Rook", 8)
	later := booktest.Batch("later")
	p.At("2027-04-03 15:00").Write(book.Grafted{Batch: later, Number: 9, Line: "Rook", Larvae: 20})
	for i := range nucs {
		n := booktest.Nuc(fmt.Sprint("later", i))
		p.At("2027-04-10 12:00").Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("L%d", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: booktest.Yard("home")})
		p.At("2027-04-13 12:00").Write(book.CellGiven{Nuc: n, Batch: later})
		p.At("2027-05-13 12:00").Write(book.Looked{Nuc: n, Queen: book.QueenSeen, Eggs: book.SingleEggs})
	}
	return p
}

func first(queens int, by calendar.Day) book.OrderTaken {
	o := order("1", queens, "Rook", by)
	o.Number = "P"
	return o
}

func second(queens int, by calendar.Day) book.OrderTaken {
	o := order("2", queens, "Rook", by)
	o.Number, o.Priority = "Q", 0
	return o
}

// The order served first leaves those who are ready to the other when others surely are
// ready by its own, later day, and the other is kept whole by it: to one that goes short all
// the same it leaves none.
func TestAnOrderWaitsWhereAnotherWouldGoShort(t *testing.T) {
	june, may := day(t, "2027-06-04"), day(t, "2027-05-24")
	for _, c := range []struct {
		name               string
		coming, p, q       int
		byP                calendar.Day
		waits, comes, lack int // of P, those of them to be expected in time, and what Q misses
	}{
		{"twelve come for six", 12, 6, 8, june, 6, 6, 0},
		{"nobody goes short, nobody waits", 12, 6, 2, june, 0, 0, 0},
		{"only as many as the other misses", 12, 6, 4, june, 2, 2, 0},
		{"nobody comes", 0, 6, 8, june, 0, 0, 6},
		{"as many as surely come", 4, 6, 4, june, 2, 2, 0},
		{"fewer come than keep the other whole", 4, 6, 8, june, 0, 0, 6},
		{"they are not ready by its day", 12, 6, 8, may, 0, 0, 6},
	} {
		p := awaited(c.coming)
		p.At("2027-05-14 08:00").Write(first(c.p, c.byP), second(c.q, may))
		s := sheetOf(p.View("2027-05-18 08:00"))
		o, other := s.Orders[0], s.Orders[1]
		t.Logf("%s: P misses %d, %d expected, %+v; Q misses %d", c.name, o.Short, o.Coming, o.Next, other.Short)
		if o.Order.Number != "P" || o.Coming != o.Short || len(o.Queens)+o.Short != c.p {
			t.Errorf("%s: P has %d, misses %d, %d of them to be expected", c.name, len(o.Queens), o.Short, o.Coming)
		}
		if o.Short != c.waits || o.Coming != c.comes || other.Short != c.lack {
			t.Errorf("%s: P waits for %d, %d to be expected; Q misses %d; want %d, %d, %d", c.name, o.Short, o.Coming, other.Short, c.waits, c.comes, c.lack)
		}
		if o.Short > 0 && (o.Next.Chance < practice.Numbers{}.Get(practice.PlanSure) || o.Next.Day > c.byP) {
			t.Errorf("%s: P is told %+v", c.name, o.Next)
		}
	}
}

// A keeper who wants a promise to hold more surely lets fewer wait: she who comes may
// still be lost.
func TestHowSurelyAnOrderWaits(t *testing.T) {
	waits := func(sure float64) (most int) {
		for q := 3; q <= 8; q++ { // two are ready for it beside the six of the first
			p := awaited(6)
			p.At("2027-05-14 07:00").Write(book.NumberChanged{Number: "plan_sure", Value: sure})
			p.At("2027-05-14 08:00").Write(first(6, day(t, "2027-06-04")), second(q, day(t, "2027-05-24")))
			most = max(most, sheetOf(p.View("2027-05-18 08:00")).Orders[0].Short)
		}
		return most
	}
	if low, high := waits(0.5), waits(0.99); high >= low || high == 0 {
		t.Errorf("at 0.5 %d wait, at 0.99 %d", low, high)
	}
}

// An order gives up queens only to one for which no graft is in time any more, by the calendar:
// from the very last day on which one would be, since the day asked about is too late to plan for.
func TestAnOrderWaitsFromTheLastDayOfAGraftOn(t *testing.T) {
	last := day(t, "2027-05-18")
	for today, waits := range map[string]int{"2027-05-17 08:00": 0, "2027-05-18 08:00": 4} {
		p := awaited(12)
		proven(p, "Linnet", 6)
		takes, only := first(12, day(t, "2027-06-10")), second(6, last+handover.FromGraft(practice.Numbers{}))
		takes.Substitute, only.Line = []string{"Linnet"}, "Linnet"
		p.At("2027-05-14 08:00").Write(takes, only)
		s := sheetOf(p.View(today))
		if o, other := s.Orders[0], s.Orders[1]; o.Short != waits || other.Short != 4-waits {
			t.Errorf("%s: P waits for %d and Q misses %d, want %d and %d", today, o.Short, other.Short, waits, 4-waits)
		}
	}
}
