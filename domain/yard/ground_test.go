package yard_test

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"
	"time"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/planar"
	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/weather"
	"lidmark/domain/yard"
)

// golden is where the published case of the sun lies: Reda and Andreas 2003, Solar
// Position Algorithm (NREL/TP-560-34302), table A5.1; testdata/spa-case.csv.
var (
	golden   = weather.Place{Lat: 39.742476, Lon: -105.1786}
	mountain = time.FixedZone("", -7*3600)
	summer   = calendar.Date(2027, 6, 21)
)

func feature(what book.FeatureKind, height, width float64, xy ...float64) book.FeatureDrawn {
	f := book.FeatureDrawn{What: what, Height: height, Width: width}
	for i := 0; i+1 < len(xy); i += 2 {
		f.Points = append(f.Points, book.Point{X: xy[i], Y: xy[i+1]})
	}
	return f
}

// inDegrees is a point so far away in a direction.
func inDegrees(bearing, metres float64) book.Point {
	sin, cos := math.Sincos(bearing * math.Pi / 180)
	return book.Point{X: sin * metres, Y: cos * metres}
}

func table(t *testing.T, name string) map[string]float64 {
	t.Helper()
	f, err := os.Open("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	rows, err := r.ReadAll()
	if err != nil || len(rows) < 10 {
		t.Fatalf("%s: %v, %d rows", name, err, len(rows))
	}
	of := map[string]float64{}
	for _, row := range rows[1:] {
		if v, err := strconv.ParseFloat(row[1], 64); err == nil {
			of[row[0]] = v
		}
	}
	return of
}

// A metre's pole throws its shadow in the published case 1/tan of the sun's height
// long, away from where it stands; 1.197 m towards 14.34°.
func TestTheShadowOfThePublishedCase(t *testing.T) {
	want := table(t, "spa-case.csv")
	at := time.Date(2003, 10, 17, 12, 30, 30, 0, mountain)
	g := yard.Ground{Place: golden, Zone: mountain, Features: []book.FeatureDrawn{feature(book.Tree, 1, 0.02, 0, 0)}}
	away := want["azimuth_from_north_eastward"] - 180
	long := math.Tan(want["zenith"] * math.Pi / 180)
	for metres, lit := range map[float64]bool{0: false, long / 2: false, long: false, long + 0.02: true} {
		if got := g.Lit(inDegrees(away, metres), at); got != lit {
			t.Errorf("%.3f m away the sun shines: %v, want %v", metres, got, lit)
		}
	}
	for _, side := range []float64{-1, 1} {
		if !g.Lit(inDegrees(away+side, long*0.9), at) || g.Lit(inDegrees(away+side/3, long*0.9), at) {
			t.Errorf("the shadow does not run towards %.2f°", away)
		}
	}
}

// testdata/shade-length.csv: shadow of a metre by the height of the sun, 1/tan.
// A long wall across the sun throws it so far, whenever the sun is so high.
func TestTheLengthOfShadows(t *testing.T) {
	want := table(t, "shade-length.csv")
	seen := 0
	day := weather.SunOn(summer, time.UTC, weather.Place{})
	for at := day.Rise; at.Before(day.Noon); at = at.Add(time.Second * 20) {
		g := yard.Ground{}
		sun := g.Sun(at)
		for altitude, long := range want {
			h, err := strconv.ParseFloat(altitude, 64)
			if err != nil || math.Abs(sun.Altitude-h) > 0.03 || h < 9 {
				continue
			}
			seen++
			left, right := inDegrees(sun.Azimuth-90, 50), inDegrees(sun.Azimuth+90, 50)
			g.Features = []book.FeatureDrawn{feature(book.Wall, 1, 0, left.X, left.Y, right.X, right.Y)}
			behind := sun.Azimuth + 180
			if g.Lit(inDegrees(behind, long*0.99), at) || !g.Lit(inDegrees(behind, long*1.01), at) || !g.Lit(inDegrees(behind, -0.1), at) {
				t.Errorf("sun %v° high: the shadow is not %v m long", altitude, long)
			}
		}
	}
	if seen < 10 {
		t.Errorf("%d of the heights were met", seen)
	}
}

func someFeature(t *rapid.T) book.FeatureDrawn {
	f := book.FeatureDrawn{
		What:   rapid.SampledFrom([]book.FeatureKind{book.Tree, book.Hedge, book.Wall, book.Dwelling}).Draw(t, "what"),
		Height: float64(rapid.IntRange(0, 80).Draw(t, "height")) / 10,
		Width:  float64(rapid.IntRange(0, 40).Draw(t, "width")) / 10,
	}
	for range map[book.FeatureKind]int{book.Tree: 1, book.Hedge: 4, book.Wall: 2, book.Dwelling: 3}[f.What] {
		f.Points = append(f.Points, somePoint(t))
	}
	return f
}

func somePoint(t *rapid.T) book.Point {
	return book.Point{X: float64(rapid.IntRange(-200, 200).Draw(t, "x")) / 10, Y: float64(rapid.IntRange(-200, 200).Draw(t, "y")) / 10}
}

// A spot is in the shade just where a shadow is drawn, but for the corners by which a
// drawn circle is not round.
func TestShadowsAreWhereTheSunDoesNotShine(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := yard.Ground{Place: weather.Place{Lat: 50, Lon: 10}, Features: rapid.SliceOfN(rapid.Custom(someFeature), 0, 3).Draw(t, "features")}
		at := summer.At(rapid.IntRange(0, 23).Draw(t, "hour"), 7, time.UTC)
		p := somePoint(t)
		shaded, near := false, false
		for _, s := range g.Shadows(at) {
			for _, o := range s.Outlines {
				ring := make(orb.Ring, 0, len(o)+1)
				for _, c := range o {
					ring = append(ring, orb.Point{c.X, c.Y})
				}
				ring = append(ring, ring[0])
				shaded = shaded || planar.RingContains(ring, orb.Point{p.X, p.Y})
				near = near || planar.DistanceFrom(ring, orb.Point{p.X, p.Y}) < 0.05
			}
		}
		dark := g.Sun(at).Altitude <= 0
		if got := g.Lit(p, at); got == (shaded || dark) && !near {
			t.Fatalf("the sun shines on %v: %v; in a shadow: %v; night: %v", p, got, shaded, dark)
		}
	})
}

// Where nothing stands the sun shines from rise to noon; behind a wall in the east
// it shines later, and under a tree never.
func TestMorningSun(t *testing.T) {
	place := weather.Place{Lat: 50, Lon: 10}
	day := weather.SunOn(summer, time.UTC, place)
	open := yard.Ground{Place: place}
	l := open.LightOn(summer)
	if got, want := l.Morning(book.Point{}), day.Noon.Sub(day.Rise).Hours(); math.Abs(got-want) > 0.2 {
		t.Errorf("%.2f h of sun before noon, want %.2f", got, want)
	}
	if got, want := l.All(book.Point{}), day.Length().Hours(); math.Abs(got-want) > 0.35 || !l.Noon(book.Point{}) {
		t.Errorf("%.2f h of sun, want %.2f, and at noon", got, want)
	}
	walled := yard.Ground{Place: place, Features: []book.FeatureDrawn{feature(book.Wall, 2, 0, 2, -50, 2, 50)}}
	if got := walled.LightOn(summer).Morning(book.Point{}); got >= l.Morning(book.Point{})-2 || got < 1 {
		t.Errorf("%.2f h behind a wall in the east", got)
	}
	under := yard.Ground{Place: place, Features: []book.FeatureDrawn{feature(book.Tree, 6, 4, 0, 0)}}
	if l := under.LightOn(summer); l.All(book.Point{}) != 0 || l.Noon(book.Point{}) {
		t.Errorf("the sun shines under a tree for %v h", l.All(book.Point{}))
	}
}

func TestSunOnTheFront(t *testing.T) {
	g := yard.Ground{Place: weather.Place{Lat: 50, Lon: 10}, Zone: time.FixedZone("", 2*3600)}
	l := g.LightOn(summer)
	for bearing, want := range map[float64]bool{90: true, 135: true, 45: true, 270: false, 215: false} {
		if got := l.OnFront(yard.Door{Bearing: bearing}, 9); got != want {
			t.Errorf("an entrance to %v° has sun by nine: %v, want %v", bearing, got, want)
		}
	}
	if n := l.FrontsInSun([]yard.Door{{Bearing: 90}, {Bearing: 270}, {Bearing: 90, Colony: true}}, 9); n != 1 {
		t.Errorf("%d entrances in the sun, want 1", n)
	}
}

// In the polar day the sun shines at midnight too, in the polar night never.
func TestLightNearThePole(t *testing.T) {
	g := yard.Ground{Place: weather.Place{Lat: 80, Lon: 20}}
	if got := g.LightOn(summer).All(book.Point{}); math.Abs(got-24) > 1e-9 {
		t.Errorf("%v h of sun in the polar day", got)
	}
	if got := g.LightOn(calendar.Date(2027, 12, 21)).All(book.Point{}); got != 0 {
		t.Errorf("%v h of sun in the polar night", got)
	}
}

func TestTheVehicleSpot(t *testing.T) {
	g := yard.Ground{Features: []book.FeatureDrawn{feature(book.Hedge, 1, 1, 0, 0, 5, 5), feature(book.VehicleSpot, 0, 0, 1, 1, 3, 1, 3, 5, 1, 5, 1, 1)}}
	if at, ok := g.VehicleSpot(); !ok || at != (book.Point{X: 2, Y: 3}) {
		t.Errorf("%v %v", at, ok)
	}
	if _, ok := new(yard.Ground).VehicleSpot(); ok {
		t.Error("a bare ground has a vehicle spot")
	}
}
