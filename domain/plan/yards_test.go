package plan_test

import (
	"fmt"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/plan"
)

// Where no yard is named and the one with most nucs cannot keep a wish, another that can has it,
// and it is told why; where the first keeps it, it has it.
func TestTheYardThatKeepsAWish(t *testing.T) {
	pen := yardOf(30)
	ridge := booktest.Yard("ridge")
	pen.Write(book.YardDescribed{Yard: ridge, Name: "Ridge", Zone: "UTC"})
	for i := range 24 {
		n := booktest.Nuc(fmt.Sprint("r", i))
		pen.Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("R%d", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: ridge})
	}
	wish := plan.Wish{Queens: 5, By: day(t, "2027-06-20")}
	home := plannerOf(pen, "2027-03-16 08:00").Answer(wish)
	if home.Yard != booktest.Yard("home") || !home.Instead.Yard.IsZero() || home.Chance < home.Sure-1e-9 {
		t.Errorf("%d nucs at home, %v, instead %+v", home.Nucs, home.Chance, home.Instead)
	}
	pen.Write(book.BatchPlanned{Batch: booktest.Batch("all"), Day: home.Graft, Larvae: 60, Nucs: 30, Yard: booktest.Yard("home")})
	p := plannerOf(pen, "2027-03-16 08:00")
	away := p.Answer(wish)
	if away.Yard != ridge || away.Instead.Yard != booktest.Yard("home") || away.Instead.Chance > 0.1 || away.Chance < away.Sure-1e-9 {
		t.Fatalf("%d nucs in %s, %v, instead %+v", away.Nucs, p.View().Yard(away.Yard).Name, away.Chance, away.Instead)
	}
	minds := p.Minds(away)
	if says := "in Ridge and not in Home, where most nucs stand: there it is under 1 of 100"; minds[len(minds)-1].Why != says {
		t.Errorf("minds %+v", minds)
	}
	wish.Yard = booktest.Yard("home")
	if named := p.Answer(wish); named.Yard != wish.Yard || !named.Instead.Yard.IsZero() {
		t.Errorf("named %s, instead %+v", p.View().Yard(named.Yard).Name, named.Instead)
	}
}
