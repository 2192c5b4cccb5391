package plan_test

import (
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/plan"
)

// boughtFor is how much of each good is bought, and for what.
func boughtFor(p *plan.Planner) (amount map[string]float64, of map[string]string) {
	amount, of = map[string]float64{}, map[string]string{}
	for _, b := range p.Buys() {
		amount[b.String()] = b.Amount
		for _, f := range b.For {
			of[b.String()] += f.String() + " by " + f.OrderBy.String() + ";"
		}
	}
	return amount, of
}

// A grafted batch still comes to a cage for each queen to be expected of it, also when all its
// cells are given, and to food as long as its nucs are not made up; its cups and syrup it has.
func TestAGraftedBatchComesToFoodAndCages(t *testing.T) {
	pen, id := yardOf(20), booktest.Batch("b")
	pen.At("2027-04-20 08:00").Write(book.BatchPlanned{Batch: id, Day: day(t, "2027-05-05"), Larvae: 30, Nucs: 20, Yard: booktest.Yard("home"), Line: "Rook"})
	pen.At("2027-05-05 15:00").Write(book.Grafted{Batch: id, Number: 1, Larvae: 30, Line: "Rook"})
	p := plannerOf(pen, "2027-05-06 08:00")
	amount, of := boughtFor(p)
	l := p.Left(p.View().Batch(id))
	if want := math.Ceil(p.Unlearnt(l, 0, true, 0, false).Mean()); amount["queen cages"] != want || want < 5 {
		t.Errorf("%v cages for %v queens", amount["queen cages"], want)
	}
	if amount["food for nucs"] == 0 || amount["cell cups"] > 0 || amount["syrup for rearing"] > 0 {
		t.Errorf("bought is %v", amount)
	}
	if of["food for nucs"][:len("batch 1, Rook by")] != "batch 1, Rook by" {
		t.Errorf("food is for %s", of["food for nucs"])
	}
}

// Orders take discs, a pen or candy: of discs as many as queens in hand do not wear already, in
// the colour of the year in which the queens emerge.
func TestOrdersTakeDiscsPensAndCandy(t *testing.T) {
	pen := yardOf(2)
	pen.At("2027-05-20 08:00").Write(
		book.OrderTaken{Order: booktest.Order("a"), Number: "7", Queens: 5, Disc: true, Marked: true, By: day(t, "2027-07-10")},
		book.OrderTaken{Order: booktest.Order("b"), Number: "8", Queens: 3, Marked: true, Sent: true, From: day(t, "2027-06-20"), By: day(t, "2027-07-01")},
		book.OrderTaken{Order: booktest.Order("c"), Number: "9", Queens: 2, Disc: true, By: day(t, "2028-01-15")},
		book.QueenDescribed{Queen: booktest.Queen("q")},
		book.QueenCaught{Nuc: booktest.Nuc("0"), Queen: booktest.Queen("q")},
		book.QueenMarked{Queen: booktest.Queen("q"), Disc: "11", Colour: "yellow"},
	)
	amount, of := boughtFor(plannerOf(pen, "2027-05-21 08:00"))
	for good, want := range map[string]float64{"number discs, yellow": 4 + 2, "marking pen, yellow": 3, "candy for cages sent": 3} {
		if amount[good] != want {
			t.Errorf("%s: %v, want %v", good, amount[good], want)
		}
	}
	if got := of["number discs, yellow"]; got != "order 7 by 2027-06-26;order 9 by 2028-01-01;" {
		t.Errorf("discs are for %s", got)
	}
}

// Who has fed the starters has the syrup, and orders none for that graft any more.
func TestFedStartersWantNoSyrupBought(t *testing.T) {
	pen, id := yardOf(20), booktest.Batch("b")
	pen.At("2027-04-20 08:00").Write(book.BatchPlanned{Batch: id, Day: day(t, "2027-05-05"), Larvae: 30, Nucs: 20, Yard: booktest.Yard("home")})
	if amount, _ := boughtFor(plannerOf(pen, "2027-04-30 08:00")); amount["syrup for rearing"] == 0 {
		t.Error("no syrup is bought for starters that are to be fed")
	}
	pen.At("2027-04-30 09:00").Write(book.BatchReadied{Batch: id, Step: book.StarterFed})
	amount, _ := boughtFor(plannerOf(pen, "2027-04-30 10:00"))
	if amount["syrup for rearing"] != 0 || amount["cell cups"] == 0 {
		t.Errorf("the starters are fed, and bought is %v", amount)
	}
}
