package plan_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/plan"
)

// Where a disease is suspected in a yard its colonies give nothing, so all bees are short, and
// a wish and a planned graft are told that no queen may leave. Once that ends all is as before.
func TestAYardOnStandstillGivesNothing(t *testing.T) {
	s1 := booktest.Colony("S1")
	pen := yardOf(12)
	pen.Write(book.ColonyDescribed{Colony: s1, Name: "S1", Yard: booktest.Yard("home"), Roles: []book.Role{book.BroodSource}, Thousands: 50})
	asked := func() (bees plan.Need, minds string) {
		p := plannerOf(pen, "2027-05-02 08:00")
		a := p.Answer(plan.Wish{Queens: 5, Graft: day(t, "2027-05-20")})
		for _, n := range p.Needs(a.Batches[0].Ladder, a.Batches[0].Size) {
			if n.Good == plan.StarterBees {
				bees = n
			}
		}
		return bees, mindsOf(p, a)
	}
	before, said := asked()
	if before.Have == 0 || strings.Contains(said, "standstill") {
		t.Fatalf("of %v kg there are %v before anything is suspected; minded: %s", before.Amount, before.Have, said)
	}
	pen.At("2027-05-01 18:00").Write(book.DiseaseSuspected{Of: s1.Subject(), What: "foul brood"})
	still, said := asked()
	if still.Have != 0 || still.Short() != still.Amount {
		t.Errorf("of %v kg a colony on standstill gives %v", still.Amount, still.Have)
	}
	if !strings.Contains(said, "Home is on standstill, foul brood suspected since Sat 1 May: until that ends no queen may leave it") {
		t.Errorf("minded: %s", said)
	}
	for _, g := range plannerOf(pen, "2027-05-02 08:00").Givers(day(t, "2027-05-20")) {
		if g.Kilograms != 0 || g.Combs != 0 {
			t.Errorf("%s gives %v kg and %v combs", g.Colony.Name, g.Kilograms, g.Combs)
		}
	}
	pen.At("2027-05-02 07:00").Write(book.SuspicionEnded{Of: s1.Subject()})
	if after, said := asked(); after.Have != before.Have || strings.Contains(said, "standstill") {
		t.Errorf("ended, of %v kg there are %v; minded: %s", after.Amount, after.Have, said)
	}
}
