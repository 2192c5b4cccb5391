package book

import "math"

// Positions is how exactly what leaves a book tells where things are. The zero
// Positions tells it as the book has it.
type Positions uint8

// The ways to tell it. Roughly moves a yard to the nearest point of a grid of about a
// kilometre: what stands where in it stays as it is. Nowhere leaves all places out.
// Both leave out photographs of the ground, by which a place can be found.
const (
	Exactly Positions = iota
	Roughly
	Nowhere
)

// rough is the step of the grid in degrees of latitude, 1.1 km.
const rough = 0.01

// Rough is the point of the coarse grid that is nearest to a place on Earth, in
// degrees.
func Rough(lat, lon float64) (float64, float64) {
	lat = math.Round(lat/rough) * rough
	step := rough / max(math.Cos(lat*math.Pi/180), rough)
	return lat, math.Round(lon/step) * step
}

// Told is a fact as it tells where things are. It shares nothing that it changes with
// the fact.
func (p Positions) Told(f Fact) Fact {
	if p == Exactly {
		return f
	}
	switch f := f.(type) {
	case YardDescribed:
		if p == Nowhere {
			f.Lat, f.Lon = 0, 0
		} else if f.Lat != 0 || f.Lon != 0 {
			f.Lat, f.Lon = Rough(f.Lat, f.Lon)
		}
		return f
	case GroundPictured:
		return GroundPictured{Yard: f.Yard}
	}
	if p == Nowhere {
		return placeless(f)
	}
	return f
}

// placeless is a fact without where things are on a yard's ground.
func placeless(f Fact) Fact {
	switch f := f.(type) {
	case StandSet:
		f.At = Point{}
		return f
	case ColonyDescribed:
		f.At = Point{}
		return f
	case FeatureDrawn:
		f.Points = nil
		return f
	case LayoutTried:
		stands := make([]StandSet, len(f.Stands))
		for i, s := range f.Stands {
			s.At = Point{}
			stands[i] = s
		}
		f.Stands = stands
		return f
	}
	return f
}
