package book_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
)

// Of two suspicions of one instant the same one is named every time.
func TestOneStandstillIsNamed(t *testing.T) {
	p := &booktest.Pen{Writer: "Ida"}
	one, two, yard := booktest.Nuc("1"), booktest.Nuc("2"), booktest.Yard("hill")
	p.At("2027-05-01 08:00").Write(book.YardDescribed{Yard: yard, Name: "Hill", Home: true})
	p.Write(book.NucNamed{Nuc: one, Name: "A1"}, book.NucPlaced{Nuc: one, Yard: yard}, book.NucNamed{Nuc: two, Name: "A2"}, book.NucPlaced{Nuc: two, Yard: yard})
	p.At("2027-05-03 12:00").Write(
		book.DiseaseSuspected{Of: two.Subject(), What: "foulbrood"},
		book.DiseaseSuspected{Of: one.Subject(), What: "foulbrood"},
	)
	for range 20 {
		if s := p.View("2027-05-04 08:00").Yard(yard).Standstill; s == nil || s.Of != two.Subject() {
			t.Fatalf("named is %+v, want A2, which was written first", s)
		}
	}
}
