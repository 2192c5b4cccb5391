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

// Those who went last are told first; of one day they stay as the book has them.
func TestWhoWentLastIsToldFirst(t *testing.T) {
	order := booktest.Order("9")
	p := (&booktest.Pen{}).At("2026-06-01 08:00").Write(
		book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"},
		book.OrderTaken{Order: order, Number: "9", Queens: 3, By: calendar.Date(2026, time.June, 30)})
	for _, who := range []string{"1", "2", "3"} {
		p.At("2026-06-10 12:00").Write(book.QueenCaught{Nuc: booktest.Nuc(who), Queen: booktest.Queen(who)}, book.QueenMarked{Queen: booktest.Queen(who), Disc: who})
	}
	for i, on := range []string{"2026-06-12 12:00", "2026-06-20 12:00", "2026-06-15 12:00"} {
		p.At(on).Write(book.QueenHandedOver{Queen: booktest.Queen(fmt.Sprint(i + 1)), Order: order})
	}
	var discs []string
	for _, g := range handover.HandedOver(p.View("2026-07-01 08:00"), "") {
		discs = append(discs, g.Mark.Disc)
	}
	if want := []string{"2", "3", "1"}; !slices.Equal(discs, want) {
		t.Errorf("told %v, want %v", discs, want)
	}
}

// All three are of one batch and one age: whichever was not accepted, she is of them.
func TestClaimsByBatchAndAge(t *testing.T) {
	c := handover.ClaimsOf(sold().View("2027-05-11 08:00"))
	if len(c.ByBatch) != 1 || c.ByBatch[0] != (handover.ClaimRow{Group: 4, Out: 3, Dead: 1, NotAccepted: 1}) || c.BatchNotSaid.All() != 0 {
		t.Errorf("claims %+v", c)
	}
	if len(c.ByAge) != 1 || c.ByAge[0].Group == 0 || c.ByAge[0].All() != 2 || c.AgeNotSaid.All() != 0 {
		t.Errorf("by age %+v", c.ByAge)
	}
}

// A claim of two books two replacements: the order is open for them again, and
// nothing else changes.
func TestAClaimIsOwedAgain(t *testing.T) {
	s := sheetOf(sold().View("2025-06-22 08:00"))
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
		return handover.ShortSince(v, sheetOf(v))[booktest.Order("1")]
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
	p.At("2026-06-26 12:00").Write(book.Claimed{Order: order, Queens: 2, Why: "nobody said which, all others are claimed"})
	c := handover.ClaimsOf(p.View("2026-07-01 08:00"))
	each := func(group int) handover.ClaimRow {
		return handover.ClaimRow{Group: group, Out: 4, Dead: 1, NotAccepted: 1, Superseded: 1, Unsaid: 1}
	}
	if want := []handover.ClaimRow{{Group: 2, Out: 4, Unsaid: 2}, each(7)}; !slices.Equal(c.ByBatch, want) || c.ByBatch[1].All() != 4 {
		t.Errorf("by batch %+v, want %+v", c.ByBatch, want)
	}
	// Grafted on 1 May they emerged on the 13th: caught at 28 and at 36 days.
	if want := []handover.ClaimRow{each(28), {Group: 35, Out: 4, Unsaid: 2}}; !slices.Equal(c.ByAge, want) {
		t.Errorf("by age %+v, want %+v", c.ByAge, want)
	}
	if c.BatchNotSaid.All()+c.AgeNotSaid.All() > 0 {
		t.Errorf("not said: %+v", c)
	}
}

// Whom a claim does not name is counted with the queens whom it can mean only where these
// are all of one batch, or of one age; who went after it is none of them.
func TestClaimsOfWhomNobodySaidWhich(t *testing.T) {
	order := booktest.Order("7")
	p := (&booktest.Pen{}).At("2026-05-01 08:00").Write(
		book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"},
		book.Grafted{Batch: booktest.Batch("1"), Number: 1, Larvae: 20}, book.Grafted{Batch: booktest.Batch("2"), Number: 2, Larvae: 20},
		book.OrderTaken{Order: order, Number: "7", Queens: 4, By: calendar.Date(2026, time.June, 30)})
	for i, batch := range []string{"1", "1", "2"} {
		nuc := booktest.Nuc(fmt.Sprint(i))
		p.At("2026-05-11 12:00").Write(book.NucNamed{Nuc: nuc, Name: fmt.Sprint("A", i), Sides: 6}, book.CellGiven{Nuc: nuc, Batch: booktest.Batch(batch)})
		p.At("2026-06-10 12:00").Write(book.QueenCaught{Nuc: nuc, Queen: booktest.Queen(fmt.Sprint(i))})
	}
	went := func(on string, queens ...int) {
		for _, i := range queens {
			p.At(on).Write(book.QueenHandedOver{Queen: booktest.Queen(fmt.Sprint(i)), Order: order})
		}
	}
	went("2026-06-11 12:00", 0, 1)
	p.At("2026-06-12 12:00").Write(book.Claimed{Order: order, Queens: 1, How: book.DeadOnArrival, Why: "of the first two"})
	went("2026-06-13 12:00", 2)
	p.At("2026-06-14 12:00").Write(book.Claimed{Order: order, Queens: 1, How: book.NotAccepted, Why: "of all three"})
	c := handover.ClaimsOf(p.View("2026-07-01 08:00"))
	if want := []handover.ClaimRow{{Group: 1, Out: 2, Dead: 1}, {Group: 2, Out: 1}}; !slices.Equal(c.ByBatch, want) || c.BatchNotSaid != (handover.ClaimRow{NotAccepted: 1}) {
		t.Errorf("by batch %+v, not said %+v", c.ByBatch, c.BatchNotSaid)
	}
	if want := []handover.ClaimRow{{Group: 28, Out: 3, Dead: 1, NotAccepted: 1}}; !slices.Equal(c.ByAge, want) || c.AgeNotSaid.All() != 0 {
		t.Errorf("by age %+v, not said %+v", c.ByAge, c.AgeNotSaid)
	}
}

// The age at which a queen was caught is that which her nuc's card says on the day, by the
// clock of her batch: by hand, grafted at eight in the evening she emerges 295 hours later,
// after midnight of the thirteenth day, and is 35 days old on 18 June.
func TestCaughtAtTheAgeThatWasTold(t *testing.T) {
	b, nuc, queen := booktest.Batch("b"), booktest.Nuc("A1"), booktest.Queen("q")
	p := (&booktest.Pen{}).At("2025-05-01 20:00").Write(
		book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"},
		book.Grafted{Batch: b, Number: 4, Larvae: 20, LarvaAge: 18},
	)
	p.At("2025-05-11 12:00").Write(book.NucNamed{Nuc: nuc, Name: "A1", Sides: 6}, book.NucPlaced{Nuc: nuc, Yard: booktest.Yard("home")}, book.CellGiven{Nuc: nuc, Batch: b})
	p.At("2025-05-30 12:00").Write(book.Looked{Nuc: nuc, Eggs: book.SingleEggs, Queen: book.QueenSeen})
	v := p.View("2025-06-18 11:00")
	told := course.New(v).Of(v.Nuc(nuc)).Age
	p.At("2025-06-18 12:00").Write(book.QueenCaught{Nuc: nuc, Queen: queen})
	p.At("2025-06-19 12:00").Write(book.QueenHandedOver{Queen: queen, To: "a neighbour"})
	if g := handover.HandedOver(p.View("2025-06-20 08:00"), ""); len(g) != 1 || g[0].Age != 35 || told != 35 {
		t.Errorf("caught at %d days, her nuc said %d", g[0].Age, told)
	}
}
