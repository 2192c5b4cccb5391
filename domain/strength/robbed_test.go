package strength_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/strength"
)

// many is a yard of nucs made up on 10 April in flow, of which some were robbed.
func many(nucs, robbed int) *booktest.Pen {
	p := pen().At("2027-04-10 18:00").Write(book.ForageSeen{Yard: yard, Forage: book.InFlow})
	for i := range nucs {
		n := booktest.Nuc(fmt.Sprint("N", i))
		p.Write(book.NucNamed{Nuc: n, Name: fmt.Sprint("N", i), Sides: 6, Side: 2}, book.NucPlaced{Nuc: n, Yard: yard},
			book.NucMadeUp{Nuc: n, Cups: 3, From: booktest.Colony("S1")}, book.EntranceSet{Nuc: n, Area: 1.2 * 1.47})
	}
	p.At("2027-05-01 18:00")
	for i := range robbed {
		p.Write(book.Robbed{Nuc: booktest.Nuc(fmt.Sprint("N", i))})
	}
	return p
}

func riskOf(p *booktest.Pen) strength.Exposure {
	v := p.View("2027-06-09 18:00")
	y := strength.NewYard(v, yard, nil)
	n := v.Nuc(booktest.Nuc("N0"))
	return y.Exposure(n, strength.State{BeesKnown: true, BeesThen: 1470})
}

// TestRobberiesMoveTheBase by hand: 40 nucs stood for 60 days, 80 nuc months. The
// base of −4 is 0.01799 a month, with the weight of 100; a flow and an entrance as
// its bees can guard add nothing, no queen adds 0.5. None robbed:
// (1.799 + 0) / 180 = 0.00999; four: (1.799 + 4) / 180 = 0.0322.
func TestRobberiesMoveTheBase(t *testing.T) {
	for robbed, p := range map[int]float64{0: 0.009993, 4: 0.032215} {
		want := 1 / (1 + math.Exp(-(math.Log(p/(1-p)) + 0.5)))
		e := riskOf(many(40, robbed))
		if math.Abs(e.Risk-want) > 1e-5 || e.Robbed != robbed {
			t.Errorf("%d robbed: risk %.5f with %d told, want %.5f", robbed, e.Risk, e.Robbed, want)
		}
	}
}

// TestMoreRobbedMoreRisk, and the risk stays a share.
func TestMoreRobbedMoreRisk(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		nucs := rapid.IntRange(1, 30).Draw(t, "nucs")
		a, b := rapid.IntRange(0, nucs).Draw(t, "a"), rapid.IntRange(0, nucs).Draw(t, "b")
		few, more := riskOf(many(nucs, min(a, b))).Risk, riskOf(many(nucs, max(a, b))).Risk
		if few > more || few <= 0 || more >= 1 || a != b && few == more {
			t.Fatalf("risk %.4f after %d robbed, %.4f after %d", few, min(a, b), more, max(a, b))
		}
	})
}

// TestARemedyHelps: what is advised lowers the risk by as much as is seen, or is to be
// brief; the entrance narrowed as advised has the risk that was foretold, and is not to be
// narrowed again, nor is one that is one bee wide.
func TestARemedyHelps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := made().Write(book.ForageSeen{Yard: yard, Forage: rapid.SampledFrom([]book.Forage{book.InFlow, book.InDearth}).Draw(t, "forage")})
		area := rapid.Float64Range(0.3, 12).Draw(t, "area")
		p.Write(book.EntranceSet{Nuc: a1, Area: area})
		if rapid.Bool().Draw(t, "fed") {
			p.Write(book.Fed{To: a1.Subject(), Litres: 0.3})
		}
		s, y, n := state(p, "2027-05-10 20:00")
		e := y.Exposure(n, s)
		if e.After > e.Risk+1e-12 || e.Remedy == strength.NoRemedy {
			t.Fatalf("%s: %.4f before, %.4f after", e.Remedy, e.Risk, e.After)
		}
		if e.Helps() == (e.Remedy == strength.Brief) {
			t.Fatalf("%s: %.4f before, %.4f after", e.Remedy, e.Risk, e.After)
		}
		if e.Remedy != strength.NarrowDoor {
			return
		}
		narrow := strength.Door(s.BeesThen, p.View("2027-05-10 20:00").Numbers())
		if area <= narrow {
			t.Fatalf("%.2f cm² is to be narrowed to %.2f", area, narrow)
		}
		p.Write(book.EntranceSet{Nuc: a1, Area: narrow})
		s, y, n = state(p, "2027-05-10 20:00")
		done := y.Exposure(n, s)
		if math.Abs(done.Risk-e.After) > 1e-9 || done.Remedy == strength.NarrowDoor {
			t.Fatalf("foretold %.6f, done %.6f: %s", e.After, done.Risk, done.Remedy)
		}
	})
}

// TestAnEntranceAtItsSmallest: few bees guard less than a bee needs to get in; an entrance
// that is one bee wide is not to be narrowed, one that is wider to that and no less.
func TestAnEntranceAtItsSmallest(t *testing.T) {
	exposure := func(area float64) (strength.Exposure, float64) {
		p := made().Write(book.ForageSeen{Yard: yard, Forage: book.InDearth}, book.EntranceSet{Nuc: a1, Area: area})
		p.At("2027-05-10 19:00").Write(book.Looked{Nuc: a1, Sides: book.Said(1)})
		s, y, n := state(p, "2027-05-10 20:00")
		return y.Exposure(n, s), strength.Door(s.BeesThen, p.View("2027-05-10 20:00").Numbers())
	}
	for area, want := range map[float64]strength.Remedy{0.4: strength.Brief, 0.64: strength.Brief, 0.645: strength.Brief, 2: strength.NarrowDoor} {
		e, narrow := exposure(area)
		if e.Remedy != want || narrow != 0.64 || e.Level == strength.Quiet {
			t.Errorf("%.2f cm²: %s, to %.2f, %s: want %s to 0.64", area, e.Remedy, narrow, e.Level, want)
		}
	}
}

// TestFoodAfterRobbers: what robbers left nobody knows until somebody looks or feeds.
func TestFoodAfterRobbers(t *testing.T) {
	at := func(hour string, then ...book.Fact) strength.State {
		p := pen().At("2027-05-08 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, Food: 400, From: booktest.Colony("S1")})
		p.At("2027-05-10 18:00").Write(book.Robbed{Nuc: a1})
		p.At("2027-05-10 19:00").Write(then...)
		s, _, _ := state(p, hour)
		return s
	}
	if s := at("2027-05-10 17:00"); !s.FoodKnown || s.Food < 300 {
		t.Errorf("before the robbers %.0f g, known %v, want what it was given", s.Food, s.FoodKnown)
	}
	if s := at("2027-05-11 18:00"); s.FoodKnown || s.FoodDays != 0 || !s.BeesKnown {
		t.Errorf("food for %.1f days, known %v, want that nobody knows", s.FoodDays, s.FoodKnown)
	}
	if s := at("2027-05-10 20:00", book.Fed{To: a1.Subject(), Fondant: 250}); !s.FoodKnown || math.Abs(s.Food-225) > 0.01 {
		t.Errorf("fed since: %.1f g, known %v, want 225 g", s.Food, s.FoodKnown)
	}
	if s := at("2027-05-10 20:00", book.Looked{Nuc: a1, Stores: book.Said(0)}); !s.FoodKnown || s.Food != 0 {
		t.Errorf("looked at since: %.1f g, known %v, want none", s.Food, s.FoodKnown)
	}
}

// TestGuardsAsOfTheirDay: where bees dwindled by reckoning since they were put in, the
// reason says of which day its figure is.
func TestGuardsAsOfTheirDay(t *testing.T) {
	p := pen().At("2027-05-01 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 1, From: booktest.Colony("S1")},
		book.EntranceSet{Nuc: a1, Area: 8}, book.ForageSeen{Yard: yard, Forage: book.InFlow})
	s, y, n := state(p, "2027-05-20 18:00")
	if s.Bees > s.BeesThen-100 {
		t.Fatalf("%.0f bees of %.0f: nothing dwindled", s.Bees, s.BeesThen)
	}
	if e := y.Exposure(n, s); e.Heaviest != strength.WideDoor || !strings.HasSuffix(e.Reason, " on Sat 1 May") {
		t.Errorf("%q, want the day of the figure", e.Reason)
	}
}
