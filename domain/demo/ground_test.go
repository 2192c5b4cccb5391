package demo_test

import (
	"math"
	"testing"

	"lidmark/domain/book"
)

// boundaries are the drawn outlines of the yards.
func (s season) boundaries(t *testing.T) map[book.YardID][]book.Point {
	all := map[book.YardID][]book.Point{}
	for y := range s.Yards() {
		for _, f := range y.Features {
			if f.What == book.Boundary {
				all[y.Yard] = f.Points
			}
		}
		if all[y.Yard] == nil || len(y.Features) < 5 {
			t.Errorf("%s has %d features, or no boundary", y.Name, len(y.Features))
		}
	}
	return all
}

// within tells whether a point lies in the box around others.
func within(p book.Point, outline []book.Point) bool {
	low, high := outline[0], outline[0]
	for _, q := range outline {
		low = book.Point{X: min(low.X, q.X), Y: min(low.Y, q.Y)}
		high = book.Point{X: max(high.X, q.X), Y: max(high.Y, q.Y)}
	}
	return low.X <= p.X && p.X <= high.X && low.Y <= p.Y && p.Y <= high.Y
}

func distance(a, b book.Point) float64 { return math.Hypot(a.X-b.X, a.Y-b.Y) }

// TestBoxesStandClear: all stand within their yard, no two stands nearer than
// two metres (look-alikes) and stands of four not nearer than six.
func TestBoxesStandClear(t *testing.T) {
	s := seasonOf(someDay, zone(t, "Europe/Berlin"))
	outlines := s.boundaries(t)
	for y := range s.Yards() {
		var stands []*book.Stand
		for a := range s.Stands(y.Yard) {
			if !within(a.At, outlines[y.Yard]) {
				t.Errorf("%s stands outside %s, at %v", a.Letter, y.Name, a.At)
			}
			for _, b := range stands {
				if d := distance(a.At, b.At); d < 2 || d < 6 && a.Places+b.Places == 8 {
					t.Errorf("%s and %s stand %.1f m apart", a.Letter, b.Letter, d)
				}
			}
			stands = append(stands, a)
		}
	}
}

func TestColoniesStandInTheirYards(t *testing.T) {
	s := seasonOf(someDay, zone(t, "Europe/Berlin"))
	outlines := s.boundaries(t)
	roles := map[book.Role]int{}
	for c := range s.Colonies() {
		if !within(c.At, outlines[c.Yard]) {
			t.Errorf("%s stands outside %s, at %v", c.Name, s.Yard(c.Yard).Name, c.At)
		}
		for _, r := range c.Roles {
			roles[r]++
		}
	}
	least := map[book.Role]int{book.Breeder: 3, book.Starter: 1, book.Finisher: 2, book.BroodSource: 3, book.DroneSource: 5, book.Bank: 1}
	for r, n := range least {
		if roles[r] < n {
			t.Errorf("%d colonies are %v, want %d", roles[r], r, n)
		}
	}
}

// TestNeighboursInARowLookDifferent: the marks on single boxes side by side
// differ in shape and colour.
func TestNeighboursInARowLookDifferent(t *testing.T) {
	s := seasonOf(someDay, zone(t, "Europe/Berlin"))
	var last *book.Nuc
	marked := 0
	for n := range s.Nucs() {
		if n.Front.Shape == "" {
			continue
		}
		marked++
		if last != nil && last.Name[0] == n.Name[0] && (last.Front.Shape == n.Front.Shape || last.Front.Colour == n.Front.Colour) {
			t.Errorf("%s and %s both show a %s %s", last.Name, n.Name, n.Front.Colour, n.Front.Shape)
		}
		last = n
	}
	if marked < 20 {
		t.Errorf("only %d fronts are marked", marked)
	}
}
