package plan_test

import (
	"fmt"
	"strings"
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

// Where no yard keeps a wish, the one has it whose graft gives most.
func TestAWishThatNoYardKeepsGetsTheMost(t *testing.T) {
	pen := yardOf(30)
	ridge, home := booktest.Yard("ridge"), booktest.Yard("home")
	pen.Write(book.YardDescribed{Yard: ridge, Name: "Ridge", Zone: "UTC"})
	for i := range 20 {
		n := booktest.Nuc(fmt.Sprint("r", i))
		pen.Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("R%d", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: ridge})
	}
	wish := plan.Wish{Queens: 60, By: day(t, "2027-06-20")}
	graft := plannerOf(pen, "2027-03-16 08:00").Answer(wish).Graft
	pen.Write(book.BatchPlanned{Batch: booktest.Batch("all"), Day: graft, Larvae: 60, Nucs: 30, Yard: home})
	p := plannerOf(pen, "2027-03-16 08:00")
	if a := p.Possible(wish); a.Yard != ridge || a.Nucs != 20 || a.Chances.Quantile(0.5) < 8 || a.Chance > 0.01 {
		t.Errorf("%d nucs in %s, most probably %d, %v", a.Nucs, p.View().Yard(a.Yard).Name, a.Chances.Quantile(0.5), a.Chance)
	}
}

// Where no nuc is free for a graft in time the nearest has it that finds some: one before, whose queens
// are ready before its nucs are wanted, else one after; and it is said what has the nucs.
func TestAWishForWhichNoNucIsFreeGetsTheNearest(t *testing.T) {
	pen, home := yardOf(30), booktest.Yard("home")
	wish := plan.Wish{Queens: 10, By: day(t, "2027-06-20"), Yard: home}
	graft := plannerOf(pen, "2027-03-16 08:00").Answer(wish).Graft
	pen.Write(book.BatchPlanned{Batch: booktest.Batch("all"), Day: graft, Larvae: 60, Nucs: 30, Yard: home})
	for now, later := range map[string]bool{"2027-03-16 08:00": false, "2027-04-12 08:00": true} {
		p := plannerOf(pen, now)
		a := p.Possible(wish)
		if a.InTime == later || a.Nucs == 0 || a.Graft > graft != later || a.Then.Quantile(0.5) < 8 || a.Full.Day == 0 {
			t.Fatalf("%s: in time %v, %d nucs, grafted on %s, most probably %d", now, a.InTime, a.Nucs, a.Graft, a.Then.Quantile(0.5))
		}
		if in := a.Batches[0].InNucs(plan.Size{}); p.Free(home, in.From, in.To, book.BatchID{}) == 0 {
			t.Errorf("%s: no nuc is free for it", now)
		}
		nearer := wish
		if nearer.Graft = a.Graft + 1; later {
			nearer.Graft = a.Graft - 1
		}
		if n := p.Answer(nearer); n.Nucs != 0 {
			t.Errorf("%s: grafted a day nearer %d nucs are free", now, n.Nucs)
		}
		if says := p.Minds(a)[0].Why; !strings.Contains(says, "no nuc of Home is free for a graft on "+a.Full.Day.Short()+": the graft of "+graft.Short()+" has 30 until ") {
			t.Errorf("%s: %s", now, says)
		}
	}
}
