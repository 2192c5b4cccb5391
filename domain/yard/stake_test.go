package yard_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/yard"
)

// met is where two tapes of lengths meet, left or right of the way from a to b: the
// crossing of two circles.
func met(a, b book.Point, ra, rb float64, left bool) book.Point {
	base := math.Hypot(b.X-a.X, b.Y-a.Y)
	along := (ra*ra - rb*rb + base*base) / (2 * base)
	off := math.Sqrt(max(ra*ra-along*along, 0))
	if !left {
		off = -off
	}
	ux, uy := (b.X-a.X)/base, (b.Y-a.Y)/base
	return book.Point{X: a.X + along*ux - off*uy, Y: a.Y + along*uy + off*ux}
}

func apart(a, b book.Point) float64 { return math.Hypot(a.X-b.X, a.Y-b.Y) }

func drawnPoint(t *rapid.T, name string) book.Point {
	return book.Point{X: rapid.Float64Range(-60, 60).Draw(t, name+".x"), Y: rapid.Float64Range(-60, 60).Draw(t, name+".y")}
}

// TestTapesMeetAtTheStand: circles of the two lengths about the pegs cross at the
// stand, on the side that is told, to within a centimetre, whatever stands where; read
// to the centimetre on the tape they still do to within 2 cm, as flat angles are refused.
func TestTapesMeetAtTheStand(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at, a, b := drawnPoint(t, "stand"), drawnPoint(t, "a"), drawnPoint(t, "b")
		s := yard.StakeOf(at, a, b)
		if s.Flat() {
			return
		}
		if d := apart(met(a, b, s.A, s.B, s.Left), at); d > 0.01 {
			t.Fatalf("%+v from %+v and %+v meets %.3f m away", s, a, b, d)
		}
		read := func(m float64) float64 { return math.Round(m*100) / 100 }
		if d := apart(met(a, b, read(s.A), read(s.B), s.Left), at); d > 0.02 {
			t.Fatalf("read to the centimetre, %+v meets %.3f m away", s, d)
		}
	})
}

// TestStakes: worked by hand, with the triangle of 3, 4 and 5.
func TestStakes(t *testing.T) {
	a, b := book.Point{}, book.Point{X: 5}
	for _, c := range []struct {
		at   book.Point
		want yard.Stake
		flat bool
		side string
	}{
		{book.Point{X: 1.8, Y: 2.4}, yard.Stake{A: 3, B: 4, Left: true, Angle: 90}, false, "left"},
		{book.Point{X: 1.8, Y: -2.4}, yard.Stake{A: 3, B: 4, Angle: 90}, false, "right"},
		{book.Point{X: 2.5}, yard.Stake{A: 2.5, B: 2.5, Angle: 180}, true, "right"},
		{book.Point{X: 10}, yard.Stake{A: 10, B: 5}, true, "right"},
	} {
		got := yard.StakeOf(c.at, a, b)
		near := math.Abs(got.A-c.want.A) + math.Abs(got.B-c.want.B) + math.Abs(got.Angle-c.want.Angle)
		if near > 1e-9 || got.Left != c.want.Left || got.Flat() != c.flat || got.Side() != c.side {
			t.Errorf("%+v is %+v, flat %v, %s; want %+v", c.at, got, got.Flat(), got.Side(), c.want)
		}
	}
}

// TestHowFlatTapesMayMeet: in an angle of 30° they still find the point, as there a
// centimetre of a tape moves it by two, 1/sin 30°; in a flatter one, or one as near to
// 180°, they do not.
func TestHowFlatTapesMayMeet(t *testing.T) {
	meet := func(angle float64) yard.Stake {
		sin, cos := math.Sincos(angle * math.Pi / 180)
		return yard.StakeOf(book.Point{}, book.Point{X: 10}, book.Point{X: 10 * cos, Y: 10 * sin})
	}
	for angle, flat := range map[float64]bool{29.9: true, 30.1: false, 149.9: false, 150.1: true} {
		if s := meet(angle); s.Flat() != flat {
			t.Errorf("tapes that meet in %g°: %+v, flat %v", angle, s, s.Flat())
		}
	}
	for _, angle := range []float64{30.1, 90, 149.9} {
		sin, cos := math.Sincos(angle * math.Pi / 180)
		b := book.Point{X: 10 * cos, Y: 10 * sin}
		s := meet(angle)
		if d := apart(met(book.Point{X: 10}, b, s.A+0.01, s.B, s.Left), book.Point{}); d > 0.0205 {
			t.Errorf("a centimetre of a tape moves a point at %g° by %.4f m", angle, d)
		}
	}
}

// TestPegs: corners have numbers, an outline drawn closed no corner twice, two of a
// kind differ, and what has no sharp point is no peg.
func TestPegs(t *testing.T) {
	square := []book.Point{{}, {X: 20}, {X: 20, Y: 10}, {Y: 10}, {}}
	g := yard.Ground{Features: []book.FeatureDrawn{
		{What: book.Boundary, Points: square},
		{What: book.Tree, Points: []book.Point{{X: 3, Y: 3}}, Label: "old plum"},
		{What: book.Tree, Points: []book.Point{{X: 4, Y: 3}}},
		{What: book.Tree, Points: []book.Point{{X: 5, Y: 3}}},
		{What: book.ColdHollow, Points: square},
	}}
	var names []string
	for _, p := range g.Pegs() {
		names = append(names, p.Name)
	}
	want := []string{"boundary 1", "boundary 2", "boundary 3", "boundary 4", "old plum", "tree", "tree (2)"}
	if len(names) != len(want) {
		t.Fatalf("pegs are %q, want %q", names, want)
	}
	for i := range want {
		if names[i] != want[i] {
			t.Errorf("pegs are %q, want %q", names, want)
		}
	}
	row := yard.Layout{Stands: []yard.Stand{{At: book.Point{X: 5, Y: 5}}, {At: book.Point{X: 10, Y: 5}}, {At: book.Point{X: 15, Y: 5}}}}
	a, b, ok := yard.PegsFor(row, &g, g.Pegs())
	if !ok {
		t.Fatal("no two corners do for a row between them")
	}
	for _, s := range row.Stands {
		if yard.StakeOf(s.At, a.At, b.At).Flat() {
			t.Errorf("from %s and %s the tapes meet too flat at %+v", a.Name, b.Name, s.At)
		}
	}
	if _, _, ok := yard.PegsFor(row, &g, g.Pegs()[:1]); ok {
		t.Error("two tapes begin at one peg")
	}
}

// TestManyPegs: of a boundary walked with a phone two points are found among
// hundreds.
func TestManyPegs(t *testing.T) {
	var pegs []yard.Peg
	for i := range 720 {
		sin, cos := math.Sincos(float64(i) * math.Pi / 360)
		pegs = append(pegs, yard.Peg{At: book.Point{X: 30 * cos, Y: 30 * sin}})
	}
	l := yard.Layout{Stands: []yard.Stand{{At: book.Point{X: 1, Y: 20}}, {At: book.Point{X: -4, Y: 18}}}}
	a, b, ok := yard.PegsFor(l, &yard.Ground{}, pegs)
	if d := apart(a.At, b.At); !ok || d < 40 {
		t.Errorf("the tapes begin %.1f m apart", d)
	}
}
