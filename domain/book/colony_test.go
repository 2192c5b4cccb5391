package book_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
)

// A colony is of its own line where one is written, else of its queen's, be she described with
// it or put in later. What is written of it stays as it was written.
func TestAColonyIsOfItsQueensLine(t *testing.T) {
	plum, rook, home := booktest.Queen("plum"), booktest.Queen("rook"), booktest.Yard("home")
	bare, own := booktest.Colony("bare"), booktest.Colony("own")
	p := (&booktest.Pen{}).At("2027-03-01 08:00").Write(
		book.QueenDescribed{Queen: plum, Name: "Plum 1", Line: "Plum"}, book.QueenDescribed{Queen: rook, Name: "Rook 2", Line: "Rook"},
		book.ColonyDescribed{Colony: bare, Name: "H1", Yard: home, Queen: plum}, book.ColonyDescribed{Colony: own, Name: "H2", Yard: home, Queen: plum, Line: "Teal"})
	p.At("2027-05-01 08:00").Write(book.QueenPutIn{Queen: rook, To: bare.Subject()}, book.QueenPutIn{Queen: rook, To: own.Subject()})
	for on, want := range map[string][2]string{"2027-04-01 08:00": {"Plum", "Teal"}, "2027-06-01 08:00": {"Rook", "Teal"}} {
		v := p.View(on)
		if got := [2]string{v.Colony(bare).Line, v.Colony(own).Line}; got != want {
			t.Errorf("%s: of lines %q, want %q", on, got, want)
		}
		if v.Colony(bare).ColonyDescribed.Line != "" {
			t.Errorf("%s: the queen's line is written into the colony", on)
		}
	}
}
