package handover_test

import (
	"fmt"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/handover"
)

// Where looks that are due can show all that an order misses, they come first, and nobody is rung;
// where they cannot, because there are too few such nucs or it is too soon to see capped brood, it
// is as it was. Here ten nucs with eggs stand for ten queens whom no graft can bring any more.
func TestALookComesBeforeRinging(t *testing.T) {
	at := func(on string, wanted, nucs int) (o handover.Served, since bool) {
		p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
		p.Write(order("1", wanted, "", day(t, "2027-06-20")))
		p.At("2027-05-03 12:00").Write(book.Grafted{Batch: booktest.Batch("b"), Number: 3, Line: "Rook", Larvae: 60})
		for i := range nucs {
			n := booktest.Nuc(fmt.Sprint("A", i))
			p.At("2027-05-12 08:00").Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("A%d", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: booktest.Yard("home")}, book.NucMadeUp{Nuc: n})
			p.At("2027-05-13 08:00").Write(book.CellGiven{Nuc: n, Batch: booktest.Batch("b")})
			p.At("2027-06-01 08:00").Write(book.Looked{Nuc: n, Eggs: book.SingleEggs})
		}
		v := p.View(on)
		s := sheetOf(v)
		_, since = handover.ShortSince(v, s)[booktest.Order("1")]
		return s.Orders[0], since
	}
	o, since := at("2027-06-12 08:00", 10, 10)
	if o.Missing() == 0 || len(o.Look) != 10 || o.Lost || len(o.Fell) > 0 || since || o.LookAt() != "A1–A10" || o.Sure <= 0 || o.Sure >= 1 {
		t.Errorf("looks are due: %d missing, look at %s, lost %v, fell %v, since %v, sure %v", o.Missing(), o.LookAt(), o.Lost, o.Fell, since, o.Sure)
	}
	if o, _ := at("2027-06-12 08:00", 11, 10); len(o.Look) > 0 || !o.Lost {
		t.Errorf("one more is wanted than there are nucs: look at %s, lost %v", o.LookAt(), o.Lost)
	}
	if o, _ := at("2027-06-04 08:00", 10, 10); len(o.Look) > 0 {
		t.Errorf("too soon to see capped brood, and they are looked at: %s", o.LookAt())
	}
}
