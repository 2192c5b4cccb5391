package yard_test

import (
	"math"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/yard"
)

// some is a layout of single stands at points, and the pick of all of them.
func some(at ...book.Point) (l yard.Layout, all yard.Pick) {
	for i, p := range at {
		id := booktest.Stand(strconv.Itoa(i))
		l.Stands = append(l.Stands, yard.Stand{ID: id, At: p, Places: 1, Nucs: []yard.Nuc{{ID: booktest.Nuc(strconv.Itoa(i)), Place: 1}}})
		all = append(all, id)
	}
	return l, all
}

func at(x, y float64) book.Point { return book.Point{X: x, Y: y} }

func near(a, b book.Point) bool { return math.Hypot(a.X-b.X, a.Y-b.Y) < 1e-9 }

func TestEdits(t *testing.T) {
	l, all := some(at(0, 0), at(1, 2), at(10, 0))
	for _, tt := range []struct {
		name  string
		got   yard.Layout
		want  []book.Point
		turns []float64
	}{
		{"moved", l.Moved(all[:1], 2, -1), []book.Point{at(2, -1), at(1, 2), at(10, 0)}, []float64{0, 0, 0}},
		{"snapped", l.Moved(all, 0.26, 0.24).Snapped(all, 0.5), []book.Point{at(0.5, 0), at(1.5, 2), at(10.5, 0)}, []float64{0, 0, 0}},
		{"turned", l.Turned(all[1:2], -45), []book.Point{at(0, 0), at(1, 2), at(10, 0)}, []float64{0, 315, 0}},
		{"faced", l.Turned(all, 30).Faced(all, 405), []book.Point{at(0, 0), at(1, 2), at(10, 0)}, []float64{45, 45, 45}},
		{"lined", l.Lined(all), []book.Point{at(0, 0), at(1, 0), at(10, 0)}, []float64{0, 0, 0}},
		{"spread", l.Spread(all), []book.Point{at(0, 0), at(5, 0), at(10, 0)}, []float64{0, 0, 0}},
		{"arced to the right", l.Arced(all, 5), []book.Point{at(0, 0), at(5, -5), at(10, 0)}, []float64{270, 180, 90}},
		{"arced to the left", l.Arced(all, -5), []book.Point{at(0, 0), at(5, 5), at(10, 0)}, []float64{270, 0, 90}},
		{"held", l.Held(all[:1], true).Moved(all, 1, 0), []book.Point{at(0, 0), at(2, 2), at(11, 0)}, []float64{0, 0, 0}},
	} {
		for i, s := range tt.got.Stands {
			if !near(s.At, tt.want[i]) || math.Abs(s.Turn-tt.turns[i]) > 1e-9 {
				t.Errorf("%s: stand %d at %v turned %v, want %v turned %v", tt.name, i, s.At, s.Turn, tt.want[i], tt.turns[i])
			}
		}
	}
	two, pair := some(at(0, 0), at(4, 0))
	if swung := two.Swung(pair, 90); !near(swung.Stands[0].At, at(2, 2)) || !near(swung.Stands[1].At, at(2, -2)) || swung.Stands[0].Turn != 90 {
		t.Errorf("swung: %+v", swung.Stands)
	}
	n := 0
	more := two.Doubled(pair, 0, 3, func() (book.StandID, string) {
		n++
		return booktest.Stand("new" + strconv.Itoa(n)), "S" + strconv.Itoa(n)
	})
	if len(more.Stands) != 4 || more.Stands[3].Letter != "S2" || !near(more.Stands[3].At, at(4, 3)) || len(more.Stands[2].Nucs) != 0 || len(two.Stands) != 2 {
		t.Errorf("doubled: %+v", more.Stands)
	}
	if painted := two.Painted([]book.NucID{booktest.Nuc("1")}, yard.Mark{Shape: "disc", Colour: "blue"}); painted.Stands[1].Nucs[0].Mark.Colour != "blue" || two.Stands[1].Nucs[0].Mark.Colour != "" {
		t.Errorf("painted: %+v", painted.Stands)
	}
}

// What is done and undone leaves the layout as it was, and edits keep all boxes.
func TestEditLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		points := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) book.Point {
			return at(float64(rapid.IntRange(-9, 9).Draw(t, "x")), float64(rapid.IntRange(-9, 9).Draw(t, "y")))
		}), 0, 8).Draw(t, "points")
		l, all := some(points...)
		by := float64(rapid.IntRange(-90, 90).Draw(t, "by"))
		for name, back := range map[string]yard.Layout{
			"moved": l.Moved(all, by, 1).Moved(all, -by, -1), "turned": l.Turned(all, by).Turned(all, -by), "swung": l.Swung(all, by).Swung(all, -by),
		} {
			for i, s := range back.Stands {
				if math.Hypot(s.At.X-points[i].X, s.At.Y-points[i].Y) > 1e-9 || math.Abs(math.Remainder(s.Turn, 360)) > 1e-9 {
					t.Fatalf("%s and back: stand %d at %v turned %v, was at %v", name, i, s.At, s.Turn, points[i])
				}
			}
		}
		for name, got := range map[string]yard.Layout{"lined": l.Lined(all), "spread": l.Spread(all), "arced": l.Arced(all, by/10)} {
			if got.Nucs() != len(points) {
				t.Fatalf("%s: %d boxes of %d", name, got.Nucs(), len(points))
			}
			for i, s := range got.Stands {
				if math.IsNaN(s.At.X+s.At.Y+s.Turn) || s.Turn < 0 || s.Turn >= 360 {
					t.Fatalf("%s: stand %d at %v turned %v", name, i, s.At, s.Turn)
				}
			}
		}
	})
}
