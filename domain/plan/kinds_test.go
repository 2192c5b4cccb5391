package plan_test

import (
	"fmt"
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/course"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// By hand: of two mini nucs, four on half combs and three on full ones, all empty, each on
// half combs gets a half comb of brood and each on full ones a full one: 2 + 3 full ones.
func TestNucsAndCombsByKind(t *testing.T) {
	home := booktest.Yard("home")
	pen := sources(map[string]book.Role{"S1": book.BroodSource})
	for i, side := range []float64{2, 2, 4, 4, 4, 4, 8, 8, 8} {
		n := booktest.Nuc(fmt.Sprint(i))
		pen.Write(book.NucNamed{Nuc: n, Name: fmt.Sprint("A", i+1), Sides: 6, Side: side}, book.NucPlaced{Nuc: n, Yard: home})
	}
	p := plan.New(course.New(pen.View("2027-04-02 08:00")))
	l := p.Ladder(p.GraftAt(day(t, "2027-05-01")), 20, home)
	got := needs(p, l, plan.Size{Larvae: 20, Nucs: 9, Yard: home})
	if said := got[plan.Nucs].KindsSaid(); said != "2 mini, 4 half-frame, 3 full-frame" {
		t.Errorf("nucs: %q", said)
	}
	combs := got[plan.BroodCombs]
	if said := combs.KindsSaid(); combs.Amount != 5 || combs.Have != 2 || said != "3 full, 4 of half size" {
		t.Errorf("combs: %v of %v, %q", combs.Amount, combs.Have, said)
	}
	if said := needs(p, l, plan.Size{Larvae: 20, Nucs: 2, Yard: home})[plan.Nucs].KindsSaid(); said != "" {
		t.Errorf("nucs of one kind: %q", said)
	}
}

// 700 bees of 8300 a kilogram: 84 g.
func TestTheCup(t *testing.T) {
	if c := plan.CupOf(practice.Numbers{}); c.String() != "0.24 l, 84 g of bees" || math.Abs(c.Grams-84.34) > 0.01 {
		t.Errorf("a cup is %s", c)
	}
}

// Drone colonies of a yard far away serve no virgin of this one.
func TestDroneColoniesOfTheYard(t *testing.T) {
	home, far := booktest.Yard("home"), booktest.Yard("far")
	pen := sources(map[string]book.Role{"D1": book.DroneSource, "D2": book.DroneSource})
	pen.Write(book.YardDescribed{Yard: far, Name: "Far", Zone: "UTC"},
		book.ColonyDescribed{Colony: booktest.Colony("D3"), Name: "D3", Yard: far, Roles: []book.Role{book.DroneSource}})
	p := plan.New(course.New(pen.View("2027-04-02 08:00")))
	for yard, want := range map[book.YardID]float64{home: 2, far: 1} {
		l := p.Ladder(p.GraftAt(day(t, "2027-05-01")), 20, yard)
		if got := needs(p, l, plan.Size{Larvae: 20, Nucs: 10, Yard: yard})[plan.DroneColonies]; got.Have != want {
			t.Errorf("%v drone colonies, want %v", got.Have, want)
		}
	}
}
