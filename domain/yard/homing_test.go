package yard_test

import (
	"encoding/csv"
	"math"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

var (
	virgins = yard.VirginKernel(practice.Numbers{})
	workers = yard.WorkerKernel(practice.Numbers{})
)

// row is n like doors in a plain row, so far apart, all facing one way.
func row(n int, apart float64) []yard.Door {
	doors := make([]yard.Door, n)
	for i := range doors {
		doors[i].At.X = float64(i) * apart
	}
	return doors
}

func stand(places int, bearings ...float64) yard.Layout {
	s := yard.Stand{Places: places}
	for i, b := range bearings {
		s.Nucs = append(s.Nucs, yard.Nuc{Place: i + 1, Bearing: b})
	}
	return yard.Layout{Stands: []yard.Stand{s}}
}

// The kernel keeps the published anchors of drift, each within its band: queens of
// pairs 2 to 5 m apart about 4 % (1 to 8; Perez-Sato et al. 2008, Apidologie
// 39:708-713), workers in plain rows 22 % (17 to 27; Pfeiffer & Crailsheim 1998,
// Insectes Sociaux 45:151-167); touching look-alikes in a row 10 to 30 % of virgins
// (common practice, no source). The exact values are worked by hand from the kernel.
func TestHomingKeepsThePublishedAnchors(t *testing.T) {
	tests := []struct {
		name           string
		doors          []yard.Door
		of             int
		kernel         yard.Kernel
		want, low, top float64
	}{
		{"pair 2 m apart", row(2, 2), 0, virgins, 0.0347, 0.01, 0.08},
		{"pair 5 m apart", row(2, 5), 0, virgins, 0.0107, 0.01, 0.08},
		{"plain row, 0.5 m", row(21, 0.5), 10, virgins, 0.1924, 0.10, 0.30},
		{"workers, plain row, 0.7 m", row(21, 0.7), 10, workers, 0.2194, 0.17, 0.27},
	}
	for _, tt := range tests {
		got := yard.HomingOf(tt.doors, tt.kernel).Wrong(tt.of)
		if math.Abs(got-tt.want) > 5e-5 || got < tt.low || got > tt.top {
			t.Errorf("%s: wrong door %.4f; worked by hand %.4f, published %.2f to %.2f", tt.name, got, tt.want, tt.low, tt.top)
		}
	}
}

// The published middles that the anchors are of stand in a table that was written
// without the kernel: per cent, by source and layout.
func TestTheAnchorsAreThePublishedOnes(t *testing.T) {
	f, err := os.Open("testdata/drift.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	anchors := []struct {
		source, layout string
		value          string
		got            float64
		off            float64 // how far the kernel may be from it
	}{
		{"Pfeiffer & Crailsheim 1998", "rows", "22", yard.HomingOf(row(21, 0.7), workers).Wrong(10), 0.05},
		{"Perez-Sato, Hughes", "pairs of hives 2 m", "4", yard.HomingOf(row(2, 2), virgins).Wrong(0), 0.03},
		{"Perez-Sato et al. 2008", "pairs of hives 5 m", "4", yard.HomingOf(row(2, 5), virgins).Wrong(0), 0.03},
	}
	for _, a := range anchors {
		i := slices.IndexFunc(rows, func(r []string) bool {
			return strings.HasPrefix(r[0], a.source) && strings.HasPrefix(r[1], a.layout)
		})
		if i < 0 || rows[i][4] != a.value {
			t.Fatalf("%s, %s: no such row with %s", a.source, a.layout, a.value)
		}
		if want, _ := strconv.ParseFloat(rows[i][4], 64); math.Abs(a.got-want/100) > a.off {
			t.Errorf("%s, %s: %.3f, published %s of 100", a.source, a.layout, a.got, a.value)
		}
	}
}

// A stand of four with doors four ways: worked by hand, 9 to 10 %.
func TestAStandOfFourDoorsFourWays(t *testing.T) {
	doors := stand(4, 0, 90, 270, 180).Doors(yard.SpacingOf(practice.Numbers{}))
	h := yard.HomingOf(doors, virgins)
	for i := range doors {
		if got := h.Wrong(i); got < 0.09 || got > 0.10 {
			t.Errorf("place %d: wrong door %.4f, want 0.09 to 0.10", i+1, got)
		}
	}
}

func TestWhatHelpsBeesHome(t *testing.T) {
	wrong := func(change func(d *yard.Door)) float64 {
		doors := row(2, 1)
		change(&doors[1])
		return yard.HomingOf(doors, virgins).Wrong(0)
	}
	plain := wrong(func(*yard.Door) {})
	for name, change := range map[string]func(d *yard.Door){
		"further": func(d *yard.Door) { d.At.X = 2 },
		"turned":  func(d *yard.Door) { d.Bearing = 45 },
		"marked":  func(d *yard.Door) { d.Mark = yard.Mark{Shape: "disc", Colour: "blue"} },
	} {
		if got := wrong(change); got >= plain {
			t.Errorf("%s: %.4f, want less than %.4f", name, got, plain)
		}
	}
	if got := wrong(func(d *yard.Door) { d.Bearing = 360 }); got != plain {
		t.Errorf("a full turn: %.4f, want %.4f", got, plain)
	}
	busier := row(2, 1)
	busier[0].Bees, busier[1].Bees = 500, 1000
	if got := yard.HomingOf(busier, virgins).Wrong(0); got <= plain {
		t.Errorf("a busier neighbour: %.4f, want more than %.4f", got, plain)
	}
}

func TestMarksThatBeesTellApart(t *testing.T) {
	blue, red, black := yard.Mark{Shape: "disc", Colour: "blue"}, yard.Mark{Shape: "disc", Colour: "red"}, yard.Mark{Shape: "disc", Colour: "black"}
	for _, tt := range []struct {
		a, b yard.Mark
		ways int
	}{
		{yard.Mark{}, yard.Mark{}, 0},
		{yard.Mark{}, blue, 1},
		{blue, yard.Mark{Shape: "Disc", Colour: "Blue"}, 0},
		{blue, yard.Mark{Shape: "bar", Colour: "blue"}, 1},
		{blue, yard.Mark{Shape: "bar", Colour: "white"}, 2},
		{red, black, 0},
	} {
		if got := tt.a.Apart(tt.b); got != tt.ways || tt.b.Apart(tt.a) != got {
			t.Errorf("%v and %v: %d ways, want %d", tt.a, tt.b, got, tt.ways)
		}
	}
}

// someDoors are doors on a lattice, so that ties are common, or anywhere.
func someDoors(t *rapid.T) []yard.Door {
	place := rapid.Custom(func(t *rapid.T) book.Point {
		if rapid.Bool().Draw(t, "lattice") {
			return book.Point{X: float64(rapid.IntRange(-5, 5).Draw(t, "x")), Y: float64(rapid.IntRange(-5, 5).Draw(t, "y"))}
		}
		return book.Point{X: rapid.Float64Range(-40, 40).Draw(t, "x"), Y: rapid.Float64Range(-40, 40).Draw(t, "y")}
	})
	return rapid.SliceOfN(rapid.Custom(func(t *rapid.T) yard.Door {
		return yard.Door{
			At: place.Draw(t, "at"), Bearing: float64(rapid.IntRange(-8, 16).Draw(t, "turn")) * 45,
			Mark: yard.Mark{Shape: rapid.SampledFrom([]string{"", "disc", "bar"}).Draw(t, "shape")},
			Bees: float64(rapid.IntRange(0, 3).Draw(t, "bees")) * 500,
		}
	}), 1, 25).Draw(t, "doors")
}

// anew is the chance reckoned without squares: all others sorted by distance, the
// nearest counted, ties sharing the places left.
func anew(doors []yard.Door, k yard.Kernel, i int) float64 {
	type other struct{ d, w float64 }
	var all []other
	for j := range doors {
		if d := math.Hypot(doors[j].At.X-doors[i].At.X, doors[j].At.Y-doors[i].At.Y); j != i && d <= 10*k.Reach {
			all = append(all, other{d, k.Weight(&doors[i], &doors[j])})
		}
	}
	slices.SortFunc(all, func(a, b other) int { return int(math.Copysign(1, a.d-b.d)) })
	var sum float64
	for at := 0; at < len(all) && at < k.Nearest; {
		end, tied := at, 0.0
		for end < len(all) && all[end].d <= all[at].d+1e-9 {
			tied += all[end].w
			end++
		}
		sum += tied * min(1, float64(k.Nearest-at)/float64(end-at))
		at = end
	}
	return sum / (1 + sum)
}

func TestHomingIsThatOfAllPairs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		doors := someDoors(t)
		h := yard.HomingOf(slices.Clone(doors), virgins)
		for i := range doors {
			if got, want := h.Wrong(i), anew(doors, virgins, i); math.Abs(got-want) > 1e-9 {
				t.Fatalf("door %d: %.12f, of all pairs %.12f", i, got, want)
			}
		}
	})
}

func TestHomingGoesOnAsIfReckonedAnew(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		doors := someDoors(t)
		h := yard.HomingOf(slices.Clone(doors), virgins)
		for range 5 {
			which := rapid.SliceOfNDistinct(rapid.IntRange(0, len(doors)-1), 1, min(3, len(doors)), rapid.ID[int]).Draw(t, "doors")
			before := make([]float64, len(doors))
			for j := range doors {
				before[j] = h.Wrong(j)
			}
			to := make([]yard.Door, len(which))
			for k, i := range which {
				if to[k] = someDoors(t)[0]; rapid.Bool().Draw(t, "stays") {
					to[k].At = doors[i].At
				}
				doors[i] = to[k]
			}
			changed := h.SetAll(which, to, nil)
			fresh := yard.HomingOf(slices.Clone(doors), virgins)
			for j := range doors {
				if h.Wrong(j) != fresh.Wrong(j) {
					t.Fatalf("door %d after a change of %v: %v, anew %v", j, which, h.Wrong(j), fresh.Wrong(j))
				}
				if h.Wrong(j) != before[j] && !slices.Contains(changed, j) {
					t.Fatalf("door %d changed and was not named", j)
				}
			}
		}
	})
}

func TestHomingLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		doors := someDoors(t)
		h := yard.HomingOf(slices.Clone(doors), virgins)
		// Turned by a quarter and moved, the yard is the same yard.
		turned := slices.Clone(doors)
		for i, d := range doors {
			turned[i].At, turned[i].Bearing = book.Point{X: d.At.Y + 3, Y: -d.At.X - 7}, d.Bearing+90
		}
		other := yard.HomingOf(turned, virgins)
		for i := range doors {
			var sum float64
			for _, e := range h.Ends(i) {
				sum += e.Share
			}
			if w := h.Wrong(i); w < 0 || w >= 1 || math.Abs(sum-w) > 1e-12 {
				t.Fatalf("door %d: wrong %v, its ends add up to %v", i, w, sum)
			}
			if math.Abs(h.Wrong(i)-other.Wrong(i)) > 1e-9 {
				t.Fatalf("door %d: %v, turned %v", i, h.Wrong(i), other.Wrong(i))
			}
		}
	})
}

// One more look-alike never helps the door next to which it stands.
func TestALookAlikeNextDoorNeverHelps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		doors := someDoors(t)
		before := yard.HomingOf(slices.Clone(doors), virgins).Wrong(0)
		like := doors[0]
		after := yard.HomingOf(append(slices.Clone(doors), like), virgins).Wrong(0)
		if after < before-1e-12 {
			t.Fatalf("wrong door %v, with a look-alike %v", before, after)
		}
	})
}
