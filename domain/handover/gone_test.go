package handover_test

import (
	"fmt"
	"slices"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/handover"
)

// sold is a book with three queens handed over two years ago, two of whom were
// claimed, one by name.
func sold() *booktest.Pen {
	p := (&booktest.Pen{}).At("2025-05-01 08:00").Write(
		book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"},
		book.Grafted{Batch: booktest.Batch("b"), Number: 4, Line: "Rook 12", Larvae: 20},
		book.OrderTaken{Order: booktest.Order("31"), Number: "31", Customer: "Hill farm", Queens: 3, By: calendar.Date(2025, time.June, 20)},
	)
	for i, disc := range []string{"11", "12", "13"} {
		nuc, queen := booktest.Nuc(disc), booktest.Queen(disc)
		p.At("2025-05-11 12:00").Write(book.NucNamed{Nuc: nuc, Name: "A" + disc, Sides: 6}, book.CellGiven{Nuc: nuc, Batch: booktest.Batch("b")})
		p.At("2025-06-18 12:00").Write(book.QueenCaught{Nuc: nuc, Queen: queen}, book.QueenMarked{Queen: queen, Disc: disc, Colour: []string{"blue", "blue", "white"}[i]})
		p.At("2025-06-19 12:00").Write(book.QueenHandedOver{Queen: queen, Order: booktest.Order("31"), With: true})
	}
	return p.At("2025-06-21 12:00").Write(
		book.Claimed{Order: booktest.Order("31"), Queens: 1, How: book.DeadOnArrival, Of: []book.QueenID{booktest.Queen("12")}, Why: "dead in the cage"},
		book.Claimed{Order: booktest.Order("31"), Queens: 1, How: book.NotAccepted, Why: "not said which"},
	)
}

func TestTheQueenOfTwoYearsAgoIsFound(t *testing.T) {
	v := sold().View("2027-05-11 08:00")
	for text, want := range map[string]int{"": 3, "hill": 3, "hill 12": 1 + 2, "2025 blue": 2, "farm 13 white": 1, "Rook nobody": 0} {
		if got := handover.HandedOver(v, text); len(got) != want {
			t.Errorf("%q finds %d, want %d", text, len(got), want)
		}
	}
	if g := handover.HandedOver(v, "white")[0]; g.Batch != 4 || g.Number != "31" || g.Line != "Rook 12" {
		t.Errorf("she is of batch %d, line %s, order %s", g.Batch, g.Line, g.Number)
	}
}

func TestClaimsByBatchAndAge(t *testing.T) {
	c := handover.ClaimsOf(sold().View("2027-05-11 08:00"))
	if len(c.ByBatch) != 1 || c.ByBatch[0] != (handover.ClaimRow{Group: 4, Out: 3, Dead: 1}) || c.Unnamed != 1 {
		t.Errorf("claims %+v", c)
	}
	if len(c.ByAge) != 1 || c.ByAge[0].Group == 0 || c.ByAge[0].All() != 1 {
		t.Errorf("by age %+v", c.ByAge)
	}
}

// A claim of two books two replacements: the order is open for them again, and
// nothing else changes.
func TestAClaimIsOwedAgain(t *testing.T) {
	s := handover.New(course.New(sold().View("2025-06-22 08:00")))
	if len(s.Orders) != 1 || s.Orders[0].Short != 2 {
		t.Fatalf("%d orders are open: %+v", len(s.Orders), s.Orders)
	}
}

func TestSinceWhenShort(t *testing.T) {
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	proven(p, "Rook", 2)
	p.At("2027-05-10 08:00").Write(order("1", 2, "Rook", day(t, "2027-05-20")))
	lost := booktest.Nuc("Rook0")
	p.At("2027-05-13 12:00").Write(book.Looked{Nuc: lost, Queen: book.NoneSeen, Eggs: book.NoEggs, Thorough: true}, book.QueenGone{Nuc: lost})
	since := func(on string) calendar.Day {
		v := p.View(on)
		return handover.ShortSince(v, handover.New(course.New(v)))[booktest.Order("1")]
	}
	if got := since("2027-05-16 08:00"); got != day(t, "2027-05-13") {
		t.Errorf("short since %s, the queen was found gone on 13 May", got)
	}
	if got := since("2027-05-12 08:00"); !got.IsZero() {
		t.Errorf("short since %s, nothing is missing yet", got)
	}
}

// Claims of every kind, of two batches and of queens caught at two ages a week apart:
// each is counted in its own column and row, rows by their number.
func TestClaimsOfEveryKind(t *testing.T) {
	order := booktest.Order("40")
	p := (&booktest.Pen{}).At("2026-05-01 08:00").Write(
		book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"},
		book.Grafted{Batch: booktest.Batch("late"), Number: 7, Line: "Rook", Larvae: 20},
		book.Grafted{Batch: booktest.Batch("soon"), Number: 2, Line: "Rook", Larvae: 20},
		book.OrderTaken{Order: order, Number: "40", Customer: "Mill", Queens: 8, By: calendar.Date(2026, time.June, 30)},
	)
	kinds := []book.ClaimKind{book.DeadOnArrival, book.NotAccepted, book.SoonSuperseded, 0}
	for i := range 8 {
		nuc, queen := booktest.Nuc(fmt.Sprint(i)), booktest.Queen(fmt.Sprint(i))
		p.At("2026-05-11 12:00").Write(book.NucNamed{Nuc: nuc, Name: fmt.Sprint("A", i), Sides: 6}, book.CellGiven{Nuc: nuc, Batch: booktest.Batch([]string{"late", "soon"}[i%2])})
		p.At([]string{"2026-06-10 12:00", "2026-06-18 12:00"}[i%2]).Write(book.QueenCaught{Nuc: nuc, Queen: queen})
		p.At("2026-06-20 12:00").Write(book.QueenHandedOver{Queen: queen, Order: order})
		if i%2 == 0 {
			p.At("2026-06-25 12:00").Write(book.Claimed{Order: order, Queens: 1, How: kinds[i/2], Why: "said", Of: []book.QueenID{queen}})
		}
	}
	p.At("2026-06-26 12:00").Write(book.Claimed{Order: order, Queens: 2, Why: "nobody said which"})
	c := handover.ClaimsOf(p.View("2026-07-01 08:00"))
	each := func(group int) handover.ClaimRow {
		return handover.ClaimRow{Group: group, Out: 4, Dead: 1, NotAccepted: 1, Superseded: 1, Unsaid: 1}
	}
	if want := []handover.ClaimRow{{Group: 2, Out: 4}, each(7)}; !slices.Equal(c.ByBatch, want) || c.ByBatch[1].All() != 4 || c.Unnamed != 2 {
		t.Errorf("by batch %+v, %d unnamed, want %+v", c.ByBatch, c.Unnamed, want)
	}
	// Grafted on 1 May they emerged on the 13th: caught at 28 and at 36 days.
	if want := []handover.ClaimRow{each(28), {Group: 35, Out: 4}}; !slices.Equal(c.ByAge, want) {
		t.Errorf("by age %+v, want %+v", c.ByAge, want)
	}
}
