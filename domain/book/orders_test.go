package book_test

import (
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// An order with a priority is served before all that have none; a smaller number first,
// then the earlier day, then the order that was taken first.
func TestOrdersAreServedByPriority(t *testing.T) {
	june := calendar.Date(2027, 6, 1)
	p := (&booktest.Pen{}).At("2027-05-01 08:00")
	for _, o := range []book.OrderTaken{
		{Number: "late", By: june + 20},
		{Number: "soon", By: june},
		{Number: "second, soon", By: june + 1, Priority: 2},
		{Number: "ninth", By: june, Priority: 9},
		{Number: "second, late", By: june + 9, Priority: 2},
		{Number: "first", By: june + 40, Priority: 1},
		{Number: "before the first", By: june + 50, Priority: -1},
	} {
		o.Order = booktest.Order(o.Number)
		p.Write(o)
	}
	var got []string
	for o := range p.View("2027-05-02 08:00").Orders() {
		got = append(got, o.Number)
	}
	if want := []string{"before the first", "first", "second, soon", "second, late", "ninth", "soon", "late"}; !slices.Equal(got, want) {
		t.Errorf("served in the order %q, want %q", got, want)
	}
}

// TestAClaimHasADayOfItsOwn: what is claimed once all had gone is replaced by a new day, not
// by the one that has come or is past; what is still owed, or said anew, keeps its day.
func TestAClaimHasADayOfItsOwn(t *testing.T) {
	id, by := booktest.Order("31"), calendar.Date(2027, 5, 16)
	after := calendar.Date(2027, 5, 25) + calendar.Day(practice.Numbers{}.Days(practice.ReplacedWithin))
	hand := func(p *booktest.Pen, on string, all ...string) {
		for _, q := range all {
			p.At(on).Write(book.QueenHandedOver{Queen: booktest.Queen(q), Order: id})
		}
	}
	claim := func(p *booktest.Pen, on string) {
		p.At(on).Write(book.Claimed{Order: id, Queens: 2, How: book.DeadOnArrival})
	}
	for name, row := range map[string]struct {
		write func(*booktest.Pen)
		by    calendar.Day
		open  int
	}{
		"after its day": {func(p *booktest.Pen) { hand(p, "2027-05-16 10:00", "a", "b"); claim(p, "2027-05-25 09:00") }, after, 2},
		"closed before": {func(p *booktest.Pen) {
			hand(p, "2027-05-16 10:00", "a", "b")
			p.Write(book.OrderClosed{Order: id})
			claim(p, "2027-05-25 09:00")
		}, after, 2},
		"before its day":     {func(p *booktest.Pen) { hand(p, "2027-05-10 10:00", "a", "b"); claim(p, "2027-05-12 09:00") }, by, 2},
		"one was still owed": {func(p *booktest.Pen) { hand(p, "2027-05-16 10:00", "a"); claim(p, "2027-05-25 09:00") }, by, 3},
		"called off, one had gone": {func(p *booktest.Pen) {
			hand(p, "2027-05-16 10:00", "a")
			p.Write(book.OrderClosed{Order: id})
			claim(p, "2027-05-25 09:00")
		}, by, 0},
		"its day was said anew": {func(p *booktest.Pen) {
			hand(p, "2027-05-16 10:00", "a", "b")
			claim(p, "2027-05-25 09:00")
			p.At("2027-05-25 10:00").Write(book.OrderTaken{Order: id, Number: "31", Queens: 2, By: by + 12})
		}, by + 12, 2},
	} {
		p := (&booktest.Pen{}).At("2027-05-01 08:00").Write(book.OrderTaken{Order: id, Number: "31", Queens: 2, By: by})
		row.write(p)
		o := p.View("2027-05-26 08:00").Order(id)
		if o.By != row.by || o.Open() != row.open || o.Reopened.IsZero() != (row.by != after) {
			t.Errorf("%s: %d owed by %s, want %d by %s", name, o.Open(), o.By.Short(), row.open, row.by.Short())
		}
	}
}

// What of an order is said anew does not change the day on which it was taken.
func TestAnOrderSaidAnewWasTakenAsBefore(t *testing.T) {
	o := book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 5, By: calendar.Date(2027, 6, 1)}
	p := (&booktest.Pen{}).At("2027-03-20 08:00").Write(o)
	o.Queens = 7
	p.At("2027-04-24 08:00").Write(o)
	got := p.View("2027-05-02 08:00").Order(o.Order)
	if on := got.Taken.Day(p.View("2027-05-02 08:00").Zone()); on != calendar.Date(2027, 3, 20) || got.Queens != 7 {
		t.Errorf("%d queens, taken on %s", got.Queens, on)
	}
}

// A queen whose hand-over is written twice went once: what is owed stays owed.
func TestAQueenGoesToAnOrderOnce(t *testing.T) {
	id, her := booktest.Order("1"), booktest.Queen("q")
	p := (&booktest.Pen{}).At("2027-05-01 08:00").Write(book.OrderTaken{Order: id, Number: "1", Queens: 2, By: calendar.Date(2027, 6, 1)})
	for _, at := range []string{"2027-05-20 08:00", "2027-05-20 09:00"} {
		p.At(at).Write(book.QueenHandedOver{Queen: her, Order: id})
	}
	if o := p.View("2027-05-21 08:00").Order(id); len(o.Handed) != 1 || o.Open() != 1 {
		t.Errorf("%d handed over, %d open", len(o.Handed), o.Open())
	}
}
