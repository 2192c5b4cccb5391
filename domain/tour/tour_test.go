package tour_test

import (
	"encoding/csv"
	"math"
	"os"
	"slices"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/tour"
)

// published are the optima of testdata/tsplib-summary.csv: Reinelt 1991, TSPLIB - a
// traveling salesman problem library, ORSA J Comput 3:376. Its distances are whole
// numbers: rounded in a plane, on the Earth by the rule printed there.
var published = map[string]struct {
	optimum int
	onEarth bool
}{
	"burma14": {3323, true}, "ulysses16": {6859, true}, "eil51": {426, false}, "berlin52": {7542, false},
}

func TestRoundsNearThePublishedOptima(t *testing.T) {
	for name, p := range published {
		at := places(t, name)
		distance := func(i, j int) float64 {
			return math.Floor(math.Hypot(at[i].X-at[j].X, at[i].Y-at[j].Y) + 0.5)
		}
		if p.onEarth {
			distance = func(i, j int) float64 { return onEarth(at[i], at[j]) }
		}
		order, length := tour.RoundBy(at, distance)
		whole(t, order, len(at))
		if length < float64(p.optimum) || length > 1.01*float64(p.optimum) {
			t.Errorf("%s: %v, the optimum is %d", name, length, p.optimum)
		}
		t.Logf("%s: %v of %d", name, length, p.optimum)
	}
}

// onEarth is the distance of TSPLIB's GEO: degrees and minutes, its own pi and
// radius in km.
func onEarth(a, b tour.Point) float64 {
	angle := func(x float64) float64 {
		deg := math.Trunc(x)
		return 3.141592 * (deg + 5*(x-deg)/3) / 180
	}
	lat, other := angle(a.X), angle(b.X)
	q1 := math.Cos(angle(a.Y) - angle(b.Y))
	q2, q3 := math.Cos(lat-other), math.Cos(lat+other)
	return math.Trunc(6378.388*math.Acos(0.5*((1+q1)*q2-(1-q1)*q3)) + 1)
}

func places(t testing.TB, name string) (at []tour.Point) {
	t.Helper()
	f, err := os.Open("testdata/tsplib-" + name + ".csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil || len(rows) < 14 {
		t.Fatalf("%s: %v, %d rows", name, err, len(rows))
	}
	for _, r := range rows[1:] {
		x, errX := strconv.ParseFloat(r[1], 64)
		y, errY := strconv.ParseFloat(r[2], 64)
		if errX != nil || errY != nil {
			t.Fatalf("%s: %v", name, r)
		}
		at = append(at, tour.Point{X: x, Y: y})
	}
	return at
}

func whole(t interface{ Fatalf(string, ...any) }, order []int, n int) {
	if len(order) != n || n > 0 && order[0] != 0 {
		t.Fatalf("a round of %d through %d points begins with %v", len(order), n, order[:min(1, len(order))])
	}
	sorted := slices.Sorted(slices.Values(order))
	for i := range sorted {
		if sorted[i] != i {
			t.Fatalf("a round not through all points once: %v", order)
		}
	}
}

// some are points, on a lattice as often as not.
func some(t *rapid.T, low, high int) []tour.Point {
	fine := rapid.SampledFrom([]float64{1, 0.001}).Draw(t, "fine")
	axis := rapid.Custom(func(t *rapid.T) float64 {
		return fine * float64(rapid.IntRange(-int(30/fine), int(30/fine)).Draw(t, "x"))
	})
	return rapid.SliceOfNDistinct(rapid.Custom(func(t *rapid.T) tour.Point {
		return tour.Point{X: axis.Draw(t, "x"), Y: axis.Draw(t, "y")}
	}), low, high, rapid.ID).Draw(t, "points")
}

// Up to eight points no order is shorter than the round.
func TestFewPointsAreGoneThroughWhole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := some(t, 0, 7)
		order, length := tour.Round(at)
		whole(t, order, len(at))
		distance := func(i, j int) float64 { return math.Hypot(at[i].X-at[j].X, at[i].Y-at[j].Y) }
		if l := tour.Length(order, distance); math.Abs(l-length) > 1e-9 {
			t.Fatalf("said to be %v, is %v", length, l)
		}
		each(slices.Clone(order), 1, func(other []int) {
			if l := tour.Length(other, distance); l < length-1e-9 {
				t.Fatalf("%v is %v long, %v only %v", order, length, other, l)
			}
		})
	})
}

// each calls for all orders of what lies behind k.
func each(order []int, k int, yield func([]int)) {
	if k >= len(order) {
		yield(order)
		return
	}
	for i := k; i < len(order); i++ {
		order[k], order[i] = order[i], order[k]
		each(order, k+1, yield)
		order[k], order[i] = order[i], order[k]
	}
}

// A round of many points goes through all of them and is the same when asked again;
// it is never longer than always going on to the nearest.
func TestRoundsOfMany(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := some(t, 13, 25)
		order, length := tour.Round(at)
		whole(t, order, len(at))
		if again, l := tour.Round(at); l != length || !slices.Equal(again, order) {
			t.Fatalf("%v, and asked again %v", order, again)
		}
		if nearest := onToTheNearest(at); length > nearest+1e-9 {
			t.Fatalf("%v long, and always on to the nearest %v", length, nearest)
		}
	})
}

func onToTheNearest(at []tour.Point) (length float64) {
	left := slices.Clone(at[1:])
	d := func(a, b tour.Point) float64 { return math.Hypot(a.X-b.X, a.Y-b.Y) }
	here := at[0]
	for len(left) > 0 {
		best := 0
		for i := range left {
			if d(here, left[i]) < d(here, left[best]) {
				best = i
			}
		}
		length += d(here, left[best])
		here = left[best]
		left = slices.Delete(left, best, best+1)
	}
	return length + d(here, at[0])
}

// A point that is there twice makes no round longer, so a round of thirteen can be
// held against the shortest of twelve: within 1 %.
func TestARoundIsNearTheShortest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := some(t, 12, 12)
		_, shortest := tour.Round(at)
		_, length := tour.Round(append(at, at[rapid.IntRange(0, 11).Draw(t, "twice")]))
		if length < shortest-1e-9 || length > 1.01*shortest {
			t.Fatalf("%v, the shortest is %v", length, shortest)
		}
	})
}

// On a circle in any order the round is the circle; in one place it has no length.
func TestRoundsThatAreKnown(t *testing.T) {
	const n = 300
	circle, spot, line := make([]tour.Point, n), make([]tour.Point, n), make([]tour.Point, n)
	for i := range circle {
		sin, cos := math.Sincos(2 * math.Pi * float64(i*7%n) / n)
		circle[i] = tour.Point{X: 50 * cos, Y: 50 * sin}
		line[i] = tour.Point{X: float64(i * 7 % n)}
	}
	for name, c := range map[string]struct {
		at   []tour.Point
		want float64
	}{"circle": {circle, n * 100 * math.Sin(math.Pi/n)}, "spot": {spot, 0}, "line": {line, 2 * (n - 1)}} {
		order, length := tour.Round(c.at)
		whole(t, order, n)
		if math.Abs(length-c.want) > 1e-6 {
			t.Errorf("%s: %v m, want %v", name, length, c.want)
		}
	}
}
