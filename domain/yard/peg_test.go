package yard_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/yard"
)

// TestTapesGoThroughNoHedge: of a meadow's corners and a house behind a hedge those of
// the meadow are taken, though the house is further; and no tape is longer than tapes
// are where shorter ones do.
func TestTapesGoThroughNoHedge(t *testing.T) {
	meadow := feature(book.Boundary, 0, 0, 0, 0, 40, 0, 40, 30, 0, 30, 0, 0)
	hedge := feature(book.Hedge, 2, 1, -5, 33, 45, 33)
	house := feature(book.Dwelling, 6, 0, 5, 60, 12, 60, 12, 66, 5, 66, 5, 60)
	g := yard.Ground{Features: []book.FeatureDrawn{meadow, hedge, house}}
	var l yard.Layout
	for i := range 12 {
		l.Stands = append(l.Stands, single(string(rune('A'+i)), 8+float64(i%4)*7, 8+float64(i/4)*6, 0, yard.Mark{}))
	}
	a, b, ok := yard.PegsFor(l, &g, g.Pegs())
	if !ok || a.At.Y > 30 || b.At.Y > 30 {
		t.Fatalf("tapes from %v and %v, %v", a, b, ok)
	}
	for _, s := range l.Stands {
		if k := yard.StakeOf(s.At, a.At, b.At); k.A > 50 || k.B > 50 {
			t.Errorf("%s: %.1f and %.1f m", s.Letter, k.A, k.B)
		}
	}
	behind := yard.Ground{Features: []book.FeatureDrawn{hedge, house}}
	if _, _, ok := yard.PegsFor(l, &behind, behind.Pegs()); !ok {
		t.Error("where nothing else is drawn no tape is told")
	}
}

// TestNoTapeBeginsInWater: corners of the boundary that a brook runs over are left out,
// and so are the brook's own ends; a wall's end at some distance is taken.
func TestNoTapeBeginsInWater(t *testing.T) {
	g := yard.Ground{Features: []book.FeatureDrawn{
		feature(book.Boundary, 0, 0, 0, 0, 60, 0, 60, 40, 0, 40, 0, 0),
		feature(book.Water, 0, 2, 0, 1, 60, 1),
		feature(book.Water, 0, 0, 20, 20, 24, 20, 24, 24, 20, 24, 20, 20),
		feature(book.Tree, 0, 6, 22, 22),
		feature(book.Wall, 1, 0.4, 2, 3, 20, 3),
	}}
	var names []string
	for _, p := range g.Pegs() {
		names = append(names, p.Name)
	}
	if got := strings.Join(names, ", "); got != "boundary 3, boundary 4, wall 1, wall 2" {
		t.Error(got)
	}
}
