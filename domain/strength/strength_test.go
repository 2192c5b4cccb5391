package strength_test

import (
	"encoding/csv"
	"maps"
	"math"
	"os"
	"slices"
	"strconv"
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/strength"
)

var numbers practice.Numbers

func TestNeed(t *testing.T) {
	for _, row := range []struct {
		night float64
		thin  bool
		want  float64
	}{
		{25, false, 600}, {20, false, 600}, {17, false, 800}, {14, false, 1000}, {11, false, 1250}, {8, false, 1500}, {2, false, 1500}, {8, true, 2250},
	} {
		if got := strength.Need(strength.Night{Celsius: row.night}, row.thin, numbers); math.Abs(got-row.want) > 1e-9 {
			t.Errorf("need of a night of %g °C, thin %v = %g, want %g", row.night, row.thin, got, row.want)
		}
	}
}

func TestColderNightsNeedMoreBees(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.Float64Range(-5, 35).Draw(t, "a"), rapid.Float64Range(-5, 35).Draw(t, "b")
		if a < b && strength.Need(strength.Night{Celsius: a}, false, numbers) < strength.Need(strength.Night{Celsius: b}, false, numbers) {
			t.Fatalf("a night of %g °C needs fewer than one of %g °C", a, b)
		}
	})
}

// TestKilometres: one degree of a meridian is 111.195 km on a sphere of the
// Earth's mean radius.
func TestKilometres(t *testing.T) {
	a, b := &book.Yard{}, &book.Yard{}
	a.Lat, a.Lon, b.Lat, b.Lon = 50, 10, 51, 10
	if got := strength.Kilometres(a, b); math.Abs(got-111.195) > 0.001 {
		t.Errorf("one degree of latitude = %.3f km, want 111.195", got)
	}
	a.Lat, a.Lon, b.Lat, b.Lon = 0, 179.5, 0, -179.5
	if got := strength.Kilometres(a, b); math.Abs(got-111.195) > 0.001 {
		t.Errorf("across the date line = %.3f km, want 111.195", got)
	}
}

var (
	yard = booktest.Yard("Quillbank")
	a1   = booktest.Nuc("A1")
)

func pen() *booktest.Pen {
	p := &booktest.Pen{}
	return p.At("2027-05-01 08:00").Write(
		book.YardDescribed{Yard: yard, Name: "Quillbank", Home: true, Lat: 50, Lon: 10, Zone: "UTC"},
		book.ColonyDescribed{Colony: booktest.Colony("S1"), Name: "S1", Yard: yard},
		book.NucNamed{Nuc: a1, Name: "A1", Sides: 6, Side: 2}, book.NucPlaced{Nuc: a1, Yard: yard})
}

func state(p *booktest.Pen, at string) (strength.State, *strength.Yard, *book.Nuc) {
	v := p.View(at)
	y := strength.NewYard(v, yard, time.UTC)
	return y.Of(v.Nuc(a1)), y, v.Nuc(a1)
}

// TestStocking: three cups of bees of the same yard are 2 100; 30 % fly home
// when the nuc stands open, 8 % when it was shut in.
func TestStocking(t *testing.T) {
	for _, row := range []struct {
		shut bool
		want float64
	}{{false, 1470}, {true, 1932}} {
		p := pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, Shut: row.shut, From: booktest.Colony("S1")})
		if s, _, _ := state(p, "2027-05-10 20:00"); math.Abs(s.Bees-row.want) > 0.5 || !s.NearBees {
			t.Errorf("shut %v: %.0f bees, near %v, want %.0f near ones", row.shut, s.Bees, s.NearBees, row.want)
		}
	}
}

// TestDecline: without a queen a unit dwindles. Khoury, Myerscough & Barron
// 2011, PLoS ONE 6:e18491, with no laying: the shares left in column 4 of the
// table, where foragers die at 0.24 a day and hive bees at 0.01, every day a
// flying day (recruitment is held at 0 where it would turn negative). Their bees
// turn foragers by need, ours by age and begin young, so ours lie above at first
// and below in the end; never further apart than a fifth of the start.
func TestDecline(t *testing.T) {
	const band = 0.2
	f, err := os.Open("testdata/queenless-decline-model.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil || len(rows) < 36 {
		t.Fatalf("%d rows, %v", len(rows), err)
	}
	p := pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, From: booktest.Colony("S1")})
	signs(p, book.Flying, 30)
	start, _, _ := state(p, "2027-05-10 20:00")
	last := start.Bees
	for day := 1; day <= 28; day++ {
		s, _, _ := state(p, (calendar.Date(2027, 5, 10)+calendar.Day(day)).String()+" 20:00")
		if s.Bees >= last {
			t.Errorf("day %d: %.0f bees after %.0f: they cannot grow without brood", day, s.Bees, last)
		}
		last = s.Bees
		model, err := strconv.ParseFloat(rows[1+day][3], 64)
		if left := s.Bees / start.Bees; err != nil || math.Abs(left-model) > band {
			t.Errorf("day %d: %.2f of the bees left, the model leaves %.2f (%v)", day, left, model, err)
		}
	}
}

// signs writes so many days of weather of a sign, from 10 May on.
func signs(p *booktest.Pen, sign book.Sign, days int) {
	for d := range days {
		p.Write(book.WeatherSeen{Yard: yard, Day: calendar.Date(2027, 5, 10) + calendar.Day(d), Sign: sign})
	}
}

func TestCappedBroodBringsBees(t *testing.T) {
	p := pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 1, Capped: 2, From: booktest.Colony("S1")})
	with, _, _ := state(p, "2027-05-24 20:00")
	p = pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 1, From: booktest.Colony("S1")})
	without, _, _ := state(p, "2027-05-24 20:00")
	came := with.Bees - without.Bees
	if most := 2 * 400 * 0.94; came < 0.85*most || came > most {
		t.Errorf("2 dm² of capped brood brought %.0f bees, want somewhat under %.0f", came, most)
	}
}

func TestAFeedLasts(t *testing.T) {
	p := pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, Food: 100, From: booktest.Colony("S1")})
	s, _, _ := state(p, "2027-05-10 20:00")
	if want := 100 / (1.470 * 15); math.Abs(s.FoodDays-want) > 0.01 {
		t.Errorf("100 g last %.2f days, want %.2f", s.FoodDays, want)
	}
	p.At("2027-05-12 18:00").Write(book.Fed{To: a1.Subject(), Litres: 0.3})
	fed, _, _ := state(p, "2027-05-12 20:00")
	if fed.Food < 184 || fed.Light(numbers) {
		t.Errorf("after 0.3 l of syrup: %.0f g, light %v", fed.Food, fed.Light(numbers))
	}
}

// TestALookWithoutSizes: where nobody said how big a side of comb is, that of a
// small one is assumed; food is known only where it is known how many sides
// there are, or that there is none. A look voids what was reckoned before.
func TestALookWithoutSizes(t *testing.T) {
	for _, row := range []struct {
		name  string
		sides int
		look  book.Looked
		bees  float64
		food  float64
		known bool
	}{
		{"sides said", 6, book.Looked{Sides: book.Said(5), Stores: book.Said(2)}, 1250, 1000, true},
		{"no sides", 0, book.Looked{Sides: book.Said(5), Stores: book.Said(2)}, 1250, 0, false},
		{"no sides, no food", 0, book.Looked{Sides: book.Said(5), Stores: book.Said(0)}, 1250, 0, true},
	} {
		p := pen().Write(book.NucNamed{Nuc: a1, Name: "A1", Sides: row.sides})
		p.At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 1, Food: 50, From: booktest.Colony("S1")})
		row.look.Nuc = a1
		p.At("2027-06-03 18:00").Write(row.look)
		s, _, _ := state(p, "2027-06-03 20:00")
		if math.Abs(s.Bees-row.bees) > 1 || !s.SideGuess || math.Abs(s.Food-row.food) > 1 || s.FoodKnown != row.known {
			t.Errorf("%s: %.0f bees, size assumed %v, %.0f g of food, known %v", row.name, s.Bees, s.SideGuess, s.Food, s.FoodKnown)
		}
	}
}

func TestExposure(t *testing.T) {
	base := func() *booktest.Pen {
		return pen().At("2027-05-10 18:00").Write(book.ForageSeen{Yard: yard, Forage: book.InFlow},
			book.NucMadeUp{Nuc: a1, Cups: 2, Food: 900, From: booktest.Colony("S1")}, book.EntranceSet{Nuc: a1, Area: 1.2},
			book.CellGiven{Nuc: a1})
	}
	for _, row := range []struct {
		name     string
		write    func(*booktest.Pen)
		level    strength.Level
		heaviest strength.Cause
	}{
		{"flow", func(*booktest.Pen) {}, strength.Quiet, strength.WideDoor},
		{"dearth and syrup", func(p *booktest.Pen) {
			p.Write(book.ForageSeen{Yard: yard, Forage: book.InDearth}, book.Fed{To: a1.Subject(), Litres: 0.3})
		}, strength.Watch, strength.Dearth},
		{"dearth, syrup, wide door", func(p *booktest.Pen) {
			p.Write(book.ForageSeen{Yard: yard, Forage: book.InDearth}, book.Fed{To: a1.Subject(), Litres: 0.3}, book.EntranceSet{Nuc: a1, Area: 8})
		}, strength.ActNow, strength.WideDoor},
		{"shut", func(p *booktest.Pen) {
			p.Write(book.ForageSeen{Yard: yard, Forage: book.InDearth}, book.EntranceSet{Nuc: a1})
		}, strength.Quiet, strength.NoCause},
	} {
		t.Run(row.name, func(t *testing.T) {
			p := base()
			row.write(p)
			s, y, n := state(p, "2027-05-10 20:00")
			if e := y.Exposure(n, s); e.Level != row.level || e.Heaviest != row.heaviest {
				t.Errorf("%v for %q (risk %.2f), want %v", e.Level, e.Reason, e.Risk, row.level)
			}
		})
	}
}

// TestFarBeesStay: bees of a yard 5 km or more away hardly leave, those of a
// nearer yard do.
func TestFarBeesStay(t *testing.T) {
	for _, row := range []struct {
		lat  float64
		near bool
	}{{50.04, true}, {50.05, false}} {
		p := pen().Write(book.YardDescribed{Yard: booktest.Yard("other"), Name: "other", Lat: row.lat, Lon: 10, Zone: "UTC"},
			book.ColonyDescribed{Colony: booktest.Colony("S9"), Name: "S9", Yard: booktest.Yard("other")})
		p.At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, From: booktest.Colony("S9")})
		want := 2100 * 0.98
		if row.near {
			want = 2100 * 0.70
		}
		if s, _, _ := state(p, "2027-05-10 20:00"); s.NearBees != row.near || math.Abs(s.Bees-want) > 0.5 {
			t.Errorf("%.2f° apart: near %v, %.0f bees, want %v, %.0f", row.lat-50, s.NearBees, s.Bees, row.near, want)
		}
	}
}

func TestWeatherDecidesHowManyForagersDie(t *testing.T) {
	left := func(sign book.Sign) float64 {
		p := pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, From: booktest.Colony("S1")})
		signs(p, sign, 14)
		s, _, _ := state(p, "2027-05-24 20:00")
		return s.Bees
	}
	if f, h, n := left(book.Flying), left(book.HalfFit), left(book.NoFlight); !(f < h && h < n) {
		t.Errorf("left after two weeks: %.0f flying, %.0f half, %.0f none; want them in this order", f, h, n)
	}
}

// TestWaspsAndLongOpenings add their weights: wasps for three weeks or until the
// forage is told without them, a thorough look for two days, in dearth only.
func TestWaspsAndLongOpenings(t *testing.T) {
	score := func(now string, facts map[string]book.Fact) float64 {
		p := made()
		for _, at := range slices.Sorted(maps.Keys(facts)) {
			p.At(at).Write(facts[at])
		}
		v := p.View(now)
		r := strength.NewYard(v, yard, nil).Exposure(v.Nuc(a1), strength.State{BeesKnown: true, BeesThen: 1000}).Risk
		return math.Log(r / (1 - r))
	}
	dearth, wasps := book.ForageSeen{Yard: yard, Forage: book.InDearth}, book.ForageSeen{Yard: yard, Forage: book.InDearth, Wasps: true}
	look, glance := book.Looked{Nuc: a1, Thorough: true}, book.Looked{Nuc: a1}
	for name, row := range map[string]struct {
		now   string
		facts map[string]book.Fact
		adds  float64
	}{
		"wasps":                      {"2027-05-25 18:00", map[string]book.Fact{"2027-05-20 09:00": wasps}, 0.5},
		"wasps three weeks ago":      {"2027-06-10 18:00", map[string]book.Fact{"2027-05-20 09:00": wasps}, 0},
		"wasps gone":                 {"2027-05-25 18:00", map[string]book.Fact{"2027-05-20 09:00": wasps, "2027-05-23 09:00": dearth}, 0},
		"thorough look":              {"2027-05-25 18:00", map[string]book.Fact{"2027-05-20 09:00": dearth, "2027-05-24 18:00": look}, 0.4},
		"a usual look":               {"2027-05-25 18:00", map[string]book.Fact{"2027-05-20 09:00": dearth, "2027-05-24 18:00": glance}, 0},
		"thorough look two days ago": {"2027-05-26 18:00", map[string]book.Fact{"2027-05-20 09:00": dearth, "2027-05-24 18:00": look}, 0},
	} {
		usual := score(row.now, map[string]book.Fact{"2027-05-20 09:00": dearth})
		if got := score(row.now, row.facts) - usual; !(math.Abs(got-row.adds) < 1e-9) {
			t.Errorf("%s adds %.6f, want %g", name, got, row.adds)
		}
	}
	flow := book.ForageSeen{Yard: yard, Forage: book.InFlow}
	in := score("2027-05-25 18:00", map[string]book.Fact{"2027-05-20 09:00": flow})
	if got := score("2027-05-25 18:00", map[string]book.Fact{"2027-05-20 09:00": flow, "2027-05-24 18:00": look}); got != in {
		t.Errorf("a thorough look in flow: %g, without %g", got, in)
	}
}

// TestFlowFeeds: in flow 10 of the 15 g of a day come in on a full flying day, and
// none on a day without flight; they never put by.
func TestFlowFeeds(t *testing.T) {
	left := func(forage book.Forage, sign book.Sign) float64 {
		p := made().At("2027-05-11 18:00").Write(book.Looked{Nuc: a1, Sides: book.Said(4), Stores: book.Said(2)},
			book.ForageSeen{Yard: yard, Forage: forage}, book.WeatherSeen{Yard: yard, Day: calendar.Date(2027, 5, 11), Sign: sign})
		then, v := p.View("2027-05-11 20:00"), p.View("2027-05-12 08:00")
		return strength.NewYard(then, yard, nil).Of(then.Nuc(a1)).Food - strength.NewYard(v, yard, nil).Of(v.Nuc(a1)).Food
	}
	eaten := left(book.InDearth, book.Flying)
	if got := left(book.InFlow, book.Flying); !(eaten > 0 && math.Abs(got-eaten/3) < 1e-9) {
		t.Errorf("a flying day of a flow takes %g g, want a third of %g", got, eaten)
	}
	if got := left(book.InFlow, book.NoFlight); got != eaten {
		t.Errorf("a day of rain in flow takes %g g, want %g", got, eaten)
	}
}
