package yard_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/weather"
	"lidmark/domain/yard"
)

// single is a stand of one nuc.
func single(letter string, x, y, bearing float64, m yard.Mark) yard.Stand {
	return yard.Stand{
		ID: booktest.Stand(letter), Letter: letter, At: book.Point{X: x, Y: y}, Places: 1,
		Nucs: []yard.Nuc{{ID: booktest.Nuc(letter), Name: letter + "1", Place: 1, Bearing: bearing, Mark: m}},
	}
}

// kind is a ground to which a stand near 0, 0 is no fault: shade at noon from a tree
// in the south, sun in the morning from the east.
func kind(more ...book.FeatureDrawn) yard.Ground {
	tree := feature(book.Tree, 8, 4, 0, -3)
	return yard.Ground{Place: weather.Place{Lat: 50, Lon: 10}, Features: append([]book.FeatureDrawn{tree}, more...)}
}

func reading(v float64) book.Reading {
	return book.Reading{Value: v, At: calendar.Moment{Instant: summer.At(9, 0, time.UTC)}}
}

func faults(all []yard.Finding) (names []string) {
	for _, f := range all {
		names = append(names, f.Name+" "+f.Fault.String())
	}
	return names
}

var (
	blue   = yard.Mark{Shape: "disc", Colour: "blue"}
	black  = yard.Mark{Shape: "disc", Colour: "black"}
	red    = yard.Mark{Shape: "disc", Colour: "red"}
	white  = yard.Mark{Shape: "disc", Colour: "white"}
	yellow = yard.Mark{Shape: "disc", Colour: "yellow"}
)

// Each fault alone, just beyond and just within its limit.
func TestFindingsOfAStand(t *testing.T) {
	var n practice.Numbers
	one := func(stands ...yard.Stand) yard.Layout { return yard.Layout{Stands: stands} }
	a := single("A", 0, 0, 90, yard.Mark{})
	dearth := kind()
	dearth.Dearth = true
	wind := func(more ...book.FeatureDrawn) yard.Ground {
		g := kind(more...)
		g.Wind = reading(270)
		return g
	}
	west := single("A", 0, 0, 280, yard.Mark{})
	strong := func(x float64) yard.Layout {
		return yard.Layout{Stands: []yard.Stand{a}, Colonies: []yard.Colony{{Name: "Rook", At: book.Point{X: x}}}}
	}
	bounds := func(edge float64) book.FeatureDrawn {
		return feature(book.Boundary, 0, 0, -20, -20, edge, -20, edge, 20, -20, 20)
	}
	for name, c := range map[string]struct {
		l      yard.Layout
		g      yard.Ground
		faults string
	}{
		"none":             {one(a), kind(), ""},
		"strong":           {strong(29), kind(), "A near a strong colony"},
		"strong, far":      {strong(31), kind(), ""},
		"strong in dearth": {strong(99), dearth, "A near a strong colony"},
		"far in dearth":    {strong(101), dearth, ""},
		"sun at noon":      {one(a), yard.Ground{Place: weather.Place{Lat: 50, Lon: 10}}, "A sun at noon"},
		"no morning":       {one(a), kind(feature(book.Wall, 9, 0, 1, -40, 1, 40)), "A no morning sun"},
		"dwelling":         {one(a), kind(feature(book.Dwelling, 0, 0, 7, -4, 15, -4, 15, 4, 7, 4)), "A near a dwelling"},
		"dwelling, far":    {one(a), kind(feature(book.Dwelling, 0, 0, 9, -4, 15, -4, 15, 4, 9, 4)), ""},
		"track":            {one(a), kind(feature(book.Track, 0, 2, 3.9, -40, 3.9, 40)), "A near a track"},
		"track, far":       {one(a), kind(feature(book.Track, 0, 2, 4.1, -40, 4.1, 40)), ""},
		"boundary":         {one(a), kind(bounds(2.9)), "A near the boundary"},
		"boundary, far":    {one(a), kind(bounds(3.1)), ""},
		"outside":          {one(a), kind(bounds(-1)), "A outside the boundary"},
		"in a hedge":       {one(a), kind(feature(book.Hedge, 1, 0, -0.1, -9, -0.1, 9)), "A where no box can stand"},
		"beside a hedge":   {one(a), kind(feature(book.Hedge, 1, 0, -0.2, -9, -0.2, 9)), ""},
		"in water":         {one(a), kind(feature(book.Water, 0, 0, -2, -2, 2, -2, 2, 2, -2, 2, -2, -2)), "A where no box can stand; A1 out of reach"},
		"hollow":           {one(a), kind(feature(book.ColdHollow, 0, 0, -2, -2, 2, -2, 2, 2, -2, 2)), "A in a cold hollow"},
		"beside a hollow":  {one(a), kind(feature(book.ColdHollow, 0, 0, 1, -2, 2, -2, 2, 2, 1, 2)), ""},
		"water":            {one(a), kind(feature(book.Water, 0, 0, 401, 0)), "A far from water"},
		"water, near":      {one(a), kind(feature(book.Water, 0, 0, 399, 0)), ""},
		"vehicle":          {one(a), kind(feature(book.VehicleSpot, 0, 0, 21, 0)), "A far from the vehicle"},
		"vehicle, near":    {one(a), kind(feature(book.VehicleSpot, 0, 0, 19, 0)), ""},
		"wind":             {one(west), wind(), "A1 in the wind"},
		"away from wind":   {one(a), wind(), ""},
		"sheltered":        {one(west), wind(feature(book.Hedge, 2, 1, -19, -9, -19, 9)), ""},
		"hedge too far":    {one(west), wind(feature(book.Hedge, 2, 1, -21, -9, -21, 9)), "A1 in the wind"},
		"hedge behind":     {one(west), wind(feature(book.Hedge, 0.5, 1, 4, -9, 4, 9)), "A1 in the wind"},
	} {
		if got := strings.Join(faults(yard.Findings(c.l, c.g, summer, n)), "; "); got != c.faults {
			t.Errorf("%s: %q, want %q", name, got, c.faults)
		}
	}
}

func TestFindingsOfTwoFronts(t *testing.T) {
	for name, c := range map[string]struct {
		apart  float64
		turn   float64
		a, b   yard.Mark
		faults string
	}{
		"like":                  {1.9, 0, yard.Mark{}, yard.Mark{}, "A1 looks alike; B1 looks alike"},
		"turned a little":       {1.9, 80, blue, blue, "A1 looks alike; B1 looks alike"},
		"turned":                {1.9, 90, yard.Mark{}, yard.Mark{}, ""},
		"further":               {2.1, 0, yard.Mark{}, yard.Mark{}, "A1 near a look-alike; B1 near a look-alike"},
		"far":                   {3, 0, yard.Mark{}, yard.Mark{}, ""},
		"marked":                {1.9, 0, yard.Mark{}, blue, ""},
		"light and dark":        {1.9, 0, white, blue, ""},
		"red and black":         {1.9, 0, red, black, "A1 red on black; B1 red on black"},
		"hue alone":             {1.0, 0, white, yellow, "A1 mark too small; B1 mark too small"},
		"hue alone, dark":       {1.0, 0, blue, black, "A1 mark too small; B1 mark too small"},
		"hue alone, very near":  {0.7, 0, blue, black, ""},
		"shape":                 {1.9, 0, blue, yard.Mark{Shape: "bar", Colour: "blue"}, ""},
		"hue alone, and turned": {1.0, 90, white, yellow, ""},
	} {
		l := yard.Layout{Stands: []yard.Stand{single("A", -c.apart/2, 0, 45, c.a), single("B", c.apart/2, 0, 45+c.turn, c.b)}}
		all := yard.Findings(l, kind(), summer, practice.Numbers{})
		all = slices.DeleteFunc(all, func(f yard.Finding) bool { return f.Fault > yard.NearAlike })
		if got := strings.Join(faults(all), "; "); got != c.faults {
			t.Errorf("%s: %q, want %q", name, got, c.faults)
		}
		for _, f := range all {
			if f.Advice() != (f.Fault == yard.NearAlike) || f.Source() == "" || f.Figure <= 0 || f.Limit <= 0 {
				t.Errorf("%s: %+v", name, f)
			}
		}
	}
}

// A mark of 20 cm is seen from 2.29 m at 5° and from 0.76 m at 15°, one of 50 cm from
// 5.7 m at 5°, a box of 30 cm from 9.0 m at 1.9°: s / (2 tan(angle/2)), reckoned from
// Giurfa et al. 1996, J Comp Physiol A 178:699, and Rigosi et al. 2017, Sci Rep 7:45972.
func TestHowFarMarksAreSeen(t *testing.T) {
	for _, c := range [][3]float64{{0.2, 5, 2.29}, {0.2, 15, 0.76}, {0.1, 5, 1.15}, {0.5, 5, 5.73}, {0.3, 1.9, 9.05}} {
		if got := yard.SeenFrom(c[0], c[1]); math.Abs(got-c[2]) > 0.006 {
			t.Errorf("%v m at %v°: %.3f m, want %v", c[0], c[1], got, c[2])
		}
	}
	var n practice.Numbers
	for _, c := range []struct {
		a, b yard.Mark
		want float64
	}{{red, black, 0}, {blue, blue, 0}, {white, black, 2.29}, {white, yellow, 0.76}, {yard.Mark{}, red, 2.29}, {blue, yard.Mark{Shape: "bar", Colour: "blue"}, 2.29}} {
		if got := yard.ToldFrom(c.a, c.b, n); math.Abs(got-c.want) > 0.006 {
			t.Errorf("%v and %v: %.3f m, want %v", c.a, c.b, got, c.want)
		}
	}
}

// A ring of hedge shuts a stand in; a gap of a metre lets the keeper through, one of
// half a metre does not. The middle of a tight block of boxes cannot be reached.
func TestStandsOutOfReach(t *testing.T) {
	for gap, want := range map[float64]string{0: "A1 out of reach", 0.5: "A1 out of reach", 1: ""} {
		hedge := feature(book.Hedge, 0, 0.01, gap/2, -5, 5, -5, 5, 5, -5, 5, -5, -5, -gap/2, -5)
		g := kind(hedge, feature(book.VehicleSpot, 0, 0, 0, -12))
		l := yard.Layout{Stands: []yard.Stand{single("A", 0, 0, 90, yard.Mark{})}}
		if got := strings.Join(faults(yard.Findings(l, g, summer, practice.Numbers{})), "; "); got != want {
			t.Errorf("a gap of %v m: %q, want %q", gap, got, want)
		}
	}
	var block yard.Layout
	for i := range 25 {
		block.Stands = append(block.Stands, single(string(rune('A'+i)), float64(i%5)*0.6, float64(i/5)*0.6, float64(i)*90, yard.Mark{}))
	}
	out := yard.Findings(block, yard.Ground{}, summer, practice.Numbers{})
	out = slices.DeleteFunc(out, func(f yard.Finding) bool { return f.Fault != yard.OutOfReach })
	if got := strings.Join(faults(out), "; "); !strings.Contains(got, "M1 out of reach") || strings.Contains(got, "A1 out of reach") {
		t.Errorf("of a block of 25: %s", got)
	}
}

func TestFindingsSayWhatToDo(t *testing.T) {
	l := yard.Layout{
		Stands:   []yard.Stand{single("A", 0, 0, 270, yard.Mark{}), single("B", 1.5, 0, 270, yard.Mark{})},
		Colonies: []yard.Colony{{Name: "Rook", At: book.Point{X: 12}}},
	}
	g := kind(feature(book.Water, 0, 0, 600, 0), feature(book.VehicleSpot, 0, 0, 0, 50), feature(book.Boundary, 0, 0, -50, -50, 3.2, -50, 3.2, 51, -50, 51))
	g.Wind = reading(250)
	var said []string
	for _, f := range yard.Findings(l, g, summer, practice.Numbers{}) {
		said = append(said, f.Words())
	}
	want := []string{
		"A1 looks like B1, 1.5 m away: at least 2 m keeps look-alikes apart; turn one or paint its front",
		"A1 faces the wind, 20° off it, with no hedge or wall before it: turn it more than 45° away, or shelter it",
		"stand A: colony Rook is 12.0 m away, keep 30 m",
		"stand A: water is 0.60 km away, 0.4 km is far enough",
		"stand A: the vehicle is 50 m away, 20 m is far enough to carry",
		"stand B: the boundary is 1.7 m away, keep 3 m",
	}
	for _, w := range want {
		if !slices.Contains(said, w) {
			t.Errorf("nobody says %q, but\n%s", w, strings.Join(said, "\n"))
		}
	}
}

func TestFindingsAreGathered(t *testing.T) {
	var l yard.Layout
	for i := range 9 {
		l.Stands = append(l.Stands, single(string(rune('A'+i)), float64(i)*4, 0, 90, yard.Mark{}))
	}
	g := kind(feature(book.VehicleSpot, 0, 0, 0, 0), feature(book.ColdHollow, 0, 0, 1, -1, 5, -1, 5, 1, 1, 1))
	var said []string
	for _, all := range yard.Gathered(yard.Findings(l, g, summer, practice.Numbers{})) {
		said = append(said, all.Words())
		if all.Of[0].Fault != all.Fault {
			t.Errorf("%v holds %v", all.Fault, all.Of[0].Fault)
		}
	}
	want := []string{
		"stand B: it stands in a cold hollow, where nights are the coldest",
		"8 stands have no shade at noon, where small boxes get too hot: B, C, D, E, F, G and 2 more",
		"3 stands are further than 20 m from the vehicle: G, H, I",
	}
	if !slices.Equal(said, want) {
		t.Errorf("%s", strings.Join(said, "\n"))
	}
	for f := yard.LooksAlike; f <= yard.OutOfReach; f++ {
		words := yard.Gathering{Fault: f, Of: []yard.Finding{{Fault: f, Name: "A", Limit: 7}, {Fault: f, Name: "B", Limit: 7}}}.Words()
		if !strings.HasSuffix(words, ": A, B") || strings.Contains(words, "%") || f.String() == "" {
			t.Errorf("%v: %s", f, words)
		}
	}
}

// Alike counts as all pairs say, wherever the boxes stand.
func TestAlikeIsThatOfAllPairs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var l yard.Layout
		for range rapid.IntRange(0, 15).Draw(t, "stands") {
			p := somePoint(t)
			mark := rapid.SampledFrom([]yard.Mark{{}, red, black, blue}).Draw(t, "mark")
			l.Stands = append(l.Stands, single("A", p.X/4, p.Y/4, float64(rapid.IntRange(0, 7).Draw(t, "bearing"))*45, mark))
		}
		doors := l.Doors(yard.SpacingOf(practice.Numbers{}))
		want := 0
		for i, a := range doors {
			if slices.ContainsFunc(append(slices.Clone(doors[:i]), doors[i+1:]...), func(b yard.Door) bool {
				turn := math.Abs(math.Mod(a.Bearing-b.Bearing+540, 360) - 180)
				return math.Hypot(a.At.X-b.At.X, a.At.Y-b.At.Y) < 2 && turn < 90 && a.Mark.Apart(b.Mark) == 0
			}) {
				want++
			}
		}
		if got := yard.Alike(l, practice.Numbers{}); got != want {
			t.Fatalf("%d alike, want %d", got, want)
		}
	})
}

// Two rows of stands by hand: 3 stands 2 m apart, the vehicle 2 m before the first:
// out and back 12 m.
func TestTheRoundOfALayout(t *testing.T) {
	l := yard.Layout{Stands: []yard.Stand{single("B", 4, 0, 0, yard.Mark{}), single("A", 2, 0, 0, yard.Mark{}), single("C", 6, 0, 0, yard.Mark{})}}
	g := kind(feature(book.VehicleSpot, 0, 0, 0, 0))
	stands, metres := yard.RoundOf(l, g)
	if metres != 12 || len(stands) != 3 {
		t.Errorf("%v m past %v, want 12", metres, stands)
	}
	if _, metres := yard.RoundOf(l, kind()); metres != 8 {
		t.Errorf("from the first stand %v m, want 8", metres)
	}
	if stands, metres := yard.RoundOf(yard.Layout{}, kind()); len(stands) != 0 || metres != 0 {
		t.Errorf("without stands %v %v", stands, metres)
	}
}

func TestSunnyFronts(t *testing.T) {
	l := yard.Layout{Stands: []yard.Stand{single("A", 0, 0, 90, yard.Mark{}), single("B", 9, 0, 270, yard.Mark{})}}
	if got := yard.SunnyFronts(l, kind(), summer, practice.Numbers{}); got != 1 {
		t.Errorf("%d entrances in the morning sun, want 1", got)
	}
}

// TestAWholeStandIsJudged: not its middle alone, but each of its boxes; and no stand
// stands in another.
func TestAWholeStandIsJudged(t *testing.T) {
	four := func(letter string, x float64) yard.Stand {
		s := yard.Stand{ID: booktest.Stand(letter), Letter: letter, At: book.Point{X: x}, Places: 4}
		for i := range 4 {
			name := fmt.Sprint(letter, i+1)
			s.Nucs = append(s.Nucs, yard.Nuc{ID: booktest.Nuc(name), Name: name, Place: i + 1, Bearing: 90 * float64(i)})
		}
		return s
	}
	at := func(x float64, k book.FeatureKind) yard.Ground { // to the east of x
		return kind(feature(k, 0, 0, x, -9, 40, -9, 40, 9, x, 9, x, -9))
	}
	for name, c := range map[string]struct {
		l    yard.Layout
		g    yard.Ground
		want yard.Fault
		none bool
	}{
		"a box in the hollow":  {yard.Layout{Stands: []yard.Stand{four("A", 0)}}, at(0.1, book.ColdHollow), yard.InHollow, false},
		"beside the hollow":    {yard.Layout{Stands: []yard.Stand{four("A", 0)}}, at(2, book.ColdHollow), yard.InHollow, true},
		"a box in water":       {yard.Layout{Stands: []yard.Stand{four("A", 0)}}, at(0.1, book.Water), yard.OnFeature, false},
		"a box outside":        {yard.Layout{Stands: []yard.Stand{four("A", 0.5)}}, at(0.4, book.Boundary), yard.OutsideBounds, false},
		"on another":           {yard.Layout{Stands: []yard.Stand{four("A", 0), four("B", 0.1)}}, kind(), yard.OnAnother, false},
		"half on another":      {yard.Layout{Stands: []yard.Stand{four("A", 0), four("B", 0.4)}}, kind(), yard.OnAnother, false},
		"clear of the other":   {yard.Layout{Stands: []yard.Stand{four("A", 0), four("B", 3)}}, kind(), yard.OnAnother, true},
		"all within its bound": {yard.Layout{Stands: []yard.Stand{four("A", 9)}}, at(0, book.Boundary), yard.OutsideBounds, true},
	} {
		found := slices.ContainsFunc(yard.Findings(c.l, c.g, summer, practice.Numbers{}), func(f yard.Finding) bool { return f.Fault == c.want })
		if found == c.none {
			t.Errorf("%s: found %v", name, found)
		}
	}
}
