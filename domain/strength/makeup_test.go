package strength_test

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/strength"
)

// TestIsItEnough for tomorrow morning: three cups of the same yard in thin wood,
// a night of 8 °C: 2100 bees less 30 or 8 % against 1500 × 1.5.
func TestIsItEnough(t *testing.T) {
	p := pen().Write(book.WeatherSeen{Yard: yard, Day: calendar.Date(2027, 5, 11), Low: book.Said(8), Forecast: true})
	y := strength.NewYard(p.View("2027-05-10 18:00"), yard, nil)
	from := booktest.Colony("S1").Subject()
	m := y.Morning(strength.MakeUp{Cups: 3, From: from, Thin: true})
	for name, row := range map[string][2]float64{
		"bees": {m.Bees, 1470}, "open": {m.Open, 1470}, "shut in": {m.ShutIn, 1932}, "need": {m.Need, 2250},
		"more open": {m.MoreOpen, 2}, "more shut in": {m.MoreShut, 1}, "enough cups": {m.Enough.Cups, 4}, "enough": {m.EnoughBees, 2576},
	} {
		if math.Abs(row[0]-row[1]) > 1e-6 {
			t.Errorf("%s: %g, want %g", name, row[0], row[1])
		}
	}
	if !m.Short() || !m.Enough.Shut {
		t.Errorf("short %v, shut in %v, want both", m.Short(), m.Enough.Shut)
	}
	if m := y.Morning(strength.MakeUp{Cups: 4, From: from, Shut: true, Thin: true}); m.Short() || m.MoreShut != 0 {
		t.Errorf("four cups shut in: %+v, want enough", m)
	}
}

// TestLoads: 40 cups are 28 000 bees, at 8300 a kilogram 3.4 kg, at 1.1 kg a
// colony 3.07 colonies; 128 cups are 89 600, 10.8 kg, 9.8 colonies.
func TestLoads(t *testing.T) {
	for _, row := range []struct {
		cups, bees, kg float64
		fewer, more    int
	}{{40, 28000, 3.373, 3, 4}, {128, 89600, 10.795, 9, 10}, {1, 700, 0.084, 1, 1}, {0, 0, 0, 0, 0}} {
		l := strength.LoadOf(row.cups, numbers)
		if l.Bees != row.bees || math.Abs(l.Kilograms-row.kg) > 0.001 || l.Fewer != row.fewer || l.More != row.more {
			t.Errorf("%g cups: %+v, want %+v", row.cups, l, row)
		}
	}
}

// TestWhatIsEnoughIsEnough, and one cup less is not.
func TestWhatIsEnoughIsEnough(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := pen().Write(book.WeatherSeen{Yard: yard, Day: calendar.Date(2027, 5, 11), Low: book.Said(rapid.Float64Range(-5, 30).Draw(t, "low")), Forecast: true})
		y := strength.NewYard(p.View("2027-05-10 18:00"), yard, nil)
		m := y.Morning(strength.MakeUp{
			Cups: rapid.Float64Range(0.5, 6).Draw(t, "cups"), From: booktest.Colony("S1").Subject(),
			Shut: rapid.Bool().Draw(t, "shut"), Thin: rapid.Bool().Draw(t, "thin"),
		})
		again := y.Morning(m.Enough)
		less := m.Enough
		less.Cups--
		if again.Short() || !y.Morning(less).Short() {
			t.Fatalf("%+v is said to be enough: %+v", m.Enough, again)
		}
	})
}

// TestNeedLiesAmongClusters: Southwick 1985, J Comp Physiol B 156:143-149: the
// heat of a cluster at 2 °C grows as mass^0.521, so food a bee falls with their
// number; that of a thousand bees at rest lies under what is reckoned for a nuc
// with brood and flight, and over a half of it.
func TestNeedLiesAmongClusters(t *testing.T) {
	f, err := os.Open("testdata/southwick1985-cluster.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil || len(rows) < 8 {
		t.Fatalf("%d rows, %v", len(rows), err)
	}
	for _, row := range rows[1:] {
		grams, err := strconv.ParseFloat(row[0], 64)
		if err != nil {
			t.Fatal(err)
		}
		if honey, err := strconv.ParseFloat(row[5], 64); err != nil || grams == 120 && (honey > 15 || honey < 7.5) {
			t.Errorf("1000 bees use %g g of honey, 15 g of sugar are reckoned (%v)", honey, err)
		}
		heat, err := strconv.ParseFloat(row[2], 64)
		if want := 22.69 * math.Pow(grams, -0.479); err != nil || math.Abs(heat-want) > 0.01 {
			t.Errorf("%g g: %g ml a gram and hour, by the law %.3f (%v)", grams, heat, want, err)
		}
	}
}
