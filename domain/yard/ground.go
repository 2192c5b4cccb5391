package yard

import (
	"time"

	"github.com/paulmach/orb"

	"lidmark/domain/book"
	"lidmark/domain/weather"
)

// Ground is what stands and lies around the boxes of a yard, in metres as its
// layout. The ground itself is taken as level.
type Ground struct {
	Features []book.FeatureDrawn
	Wind     book.Reading // degrees from which it mostly blows; not said: nobody knows
	Place    weather.Place
	Zone     *time.Location // nil: UTC
	Dearth   bool
}

// GroundOf is the ground of a yard as the book has it. A yard without a place lies
// where its zone does, see [weather.PlaceOf].
func GroundOf(y *book.Yard) Ground {
	return Ground{Features: y.Features, Wind: y.Wind, Place: weather.PlaceOf(y), Zone: y.Zone, Dearth: y.Forage == book.InDearth}
}

func (g *Ground) zone() *time.Location {
	if g.Zone == nil {
		return time.UTC
	}
	return g.Zone
}

// shapes are the features of some kinds as shapes.
func (g *Ground) shapes(of ...book.FeatureKind) (all []shape) {
	for i := range g.Features {
		for _, k := range of {
			if f := &g.Features[i]; f.What == k && len(f.Points) > 0 {
				all = append(all, shapeOf(f))
			}
		}
	}
	return all
}

// VehicleSpot is where the vehicle stands, the first one drawn, by its middle.
func (g *Ground) VehicleSpot() (at book.Point, ok bool) {
	for _, s := range g.shapes(book.VehicleSpot) {
		b := orb.LineString(s.line).Bound().Center()
		return book.Point{X: b[0], Y: b[1]}, true
	}
	return book.Point{}, false
}
