package strength_test

import (
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/practice"
	"lidmark/domain/strength"
)

// TestFoodGiven: what a feed adds by hand, on the evening it is given: syrup at
// 615 g of sugar a litre, fondant at nine parts in ten.
func TestFoodGiven(t *testing.T) {
	for _, row := range []struct {
		name string
		fed  book.Fed
		want float64
	}{
		{"nothing", book.Fed{}, 100},
		{"half a litre of syrup", book.Fed{Litres: 0.5}, 100 + 307.5},
		{"500 g of fondant", book.Fed{Fondant: 500}, 100 + 450},
		{"both", book.Fed{Litres: 0.5, Fondant: 500}, 100 + 307.5 + 450},
	} {
		p := pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, Food: 100, From: booktest.Colony("S1")})
		row.fed.To = a1.Subject()
		p.At("2027-05-10 18:30").Write(row.fed)
		if s, _, _ := state(p, "2027-05-10 19:00"); !s.FoodKnown || math.Abs(s.Food-row.want) > 0.01 {
			t.Errorf("%s: %.1f g of food, known %v, want %.1f", row.name, s.Food, s.FoodKnown, row.want)
		}
	}
}

// TestFoodSeen: the full figure is full combs, 6 sides of 2 dm² at 125 g, and
// the others are parts of it.
func TestFoodSeen(t *testing.T) {
	for level, want := range map[float64]float64{0: 0, 1: 500, 2: 1000, book.MostStores: 1500} {
		p := pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, From: booktest.Colony("S1")})
		p.At("2027-05-10 18:30").Write(book.Looked{Nuc: a1, Stores: book.Said(level)})
		if s, _, _ := state(p, "2027-05-10 19:00"); !s.FoodKnown || math.Abs(s.Food-want) > 0.01 {
			t.Errorf("stores %g: %.1f g of food, known %v, want %.0f", level, s.Food, s.FoodKnown, want)
		}
	}
}

// TestDearthNobodySpokeOf: the keeper's number stands between flow and dearth.
func TestDearthNobodySpokeOf(t *testing.T) {
	risk := func(write func(*booktest.Pen)) float64 {
		p := pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, From: booktest.Colony("S1")})
		write(p)
		s, y, n := state(p, "2027-05-11 18:00")
		return y.Exposure(n, s).Risk
	}
	said := func(f book.Forage) func(*booktest.Pen) {
		return func(p *booktest.Pen) { p.Write(book.ForageSeen{Yard: yard, Forage: f}) }
	}
	assumed := func(part float64) func(*booktest.Pen) {
		return func(p *booktest.Pen) { p.Write(book.NumberChanged{Number: "dearth_unsaid", Value: part}) }
	}
	flow, unsaid, dearth := risk(said(book.InFlow)), risk(func(*booktest.Pen) {}), risk(said(book.InDearth))
	if flow >= unsaid || unsaid >= dearth {
		t.Errorf("risk in flow %.3f, unsaid %.3f, in dearth %.3f: want them to rise", flow, unsaid, dearth)
	}
	if none, all := risk(assumed(0)), risk(assumed(1)); none != flow || all != dearth {
		t.Errorf("none assumed %.3f, all %.3f, want %.3f and %.3f", none, all, flow, dearth)
	}
}

// TestNightsAreTheKeepers: a yard whose usual nights are colder needs for them
// what others do for theirs.
func TestNightsAreTheKeepers(t *testing.T) {
	n := numbers
	for name, c := range map[string]float64{"mild_night": 18, "usual_night": 12, "cold_night": 4} {
		n = with(t, n, name, c)
	}
	for c, want := range map[float64]float64{25: 600, 18: 600, 15: 800, 12: 1000, 8: 1250, 4: 1500, 0: 1500} {
		if got := strength.Need(strength.Night{Celsius: c}, false, n); math.Abs(got-want) > 1e-9 {
			t.Errorf("need of a night of %g °C = %g, want %g", c, got, want)
		}
	}
	p := pen().Write(book.NumberChanged{Number: "usual_night", Value: 12})
	if _, y, _ := state(p, "2027-05-11 18:00"); y.Night().Celsius != 12 || y.Night().Known {
		t.Errorf("%s, want 12 °C assumed", y.Night())
	}
}

func with(t *testing.T, n practice.Numbers, name string, v float64) practice.Numbers {
	t.Helper()
	k, ok := practice.ByName(name)
	if !ok {
		t.Fatalf("no number is called %s", name)
	}
	n, err := n.With(k, v)
	if err != nil {
		t.Fatal(err)
	}
	return n
}
