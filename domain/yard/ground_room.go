package yard

import (
	"github.com/paulmach/orb"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// Room is where on a ground a box may be put: within the boundary, clear of what
// stands there, in no cold hollow, as far from dwellings, tracks and the boundary
// as the keeper's numbers want. A ground of which nothing is drawn has room
// everywhere.
type Room struct {
	inside []shape
	clear  []clearing
}

// clearing is a shape from which boxes are kept so many metres away.
type clearing struct {
	shape
	metres float64
}

// Room is where on the ground a box may be put.
func (g *Ground) Room(n practice.Numbers) Room {
	half := n.Get(practice.BoxWide) / 2
	r := Room{inside: g.shapes(book.Boundary)}
	for _, k := range []struct {
		what   book.FeatureKind
		metres float64
	}{
		{book.Dwelling, n.Get(practice.SetbackDwelling)},
		{book.Track, n.Get(practice.SetbackTrack)},
		{book.Hedge, half},
		{book.Wall, half},
		{book.Water, half},
		{book.ColdHollow, 0},
	} {
		for _, s := range g.shapes(k.what) {
			r.clear = append(r.clear, clearing{s, k.metres})
		}
	}
	for i := range r.inside {
		edge := r.inside[i]
		edge.area = false // its line
		r.clear = append(r.clear, clearing{edge, n.Get(practice.SetbackBoundary)})
	}
	return r
}

// besideVehicle is how many metres boxes are kept from where the vehicle stands: half of
// its width and a door that opens; common practice, no source.
const besideVehicle = 2.0

// Open is where on the ground a box is put that does not stand there yet: where there is
// [Ground.Room], under no tree and clear of where the vehicle stands.
func (g *Ground) Open(n practice.Numbers) Room {
	r := g.Room(n)
	for _, s := range g.shapes(book.Tree) {
		r.clear = append(r.clear, clearing{s, n.Get(practice.BoxWide) / 2})
	}
	for _, s := range g.shapes(book.VehicleSpot) {
		r.clear = append(r.clear, clearing{s, besideVehicle})
	}
	return r
}

// Has tells whether a box may be put at a point.
func (r Room) Has(at book.Point) bool {
	p := of(at)
	for i := range r.clear {
		if c := &r.clear[i]; c.holds(p) || c.away(p) < c.metres {
			return false
		}
	}
	drawn := false
	for i := range r.inside {
		if s := &r.inside[i]; s.area {
			if s.holds(p) {
				return true
			}
			drawn = true
		}
	}
	return !drawn
}

// Bounds are the south-western and north-eastern corners of what is within the
// boundary, and whether one is drawn.
func (r Room) Bounds() (low, high book.Point, ok bool) {
	var all orb.MultiPoint
	for i := range r.inside {
		all = append(all, r.inside[i].line...)
	}
	if len(all) == 0 {
		return book.Point{}, book.Point{}, false
	}
	b := all.Bound()
	return book.Point{X: b.Left(), Y: b.Bottom()}, book.Point{X: b.Right(), Y: b.Top()}, true
}
