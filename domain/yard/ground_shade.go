package yard

import (
	"math"
	"slices"
	"time"

	"github.com/paulmach/orb"

	"lidmark/domain/book"
	"lidmark/domain/weather"
)

// casters are what stands up and is taken as tight: a tree as a pillar as wide as
// its crown, a hedge and a wall as wide as they are, a dwelling with upright walls.
// What has no height casts no shade.
func (g *Ground) casters() (all []shape) {
	for _, s := range g.shapes(book.Tree, book.Hedge, book.Wall, book.Dwelling) {
		if s.Height > 0 {
			all = append(all, s)
		}
	}
	return all
}

// Sun is where the sun stands over the ground at an instant.
func (g *Ground) Sun(at time.Time) weather.Sky {
	return weather.SunAt(at, g.Place, weather.StandardAir)
}

// Lit tells whether the sun shines on a spot of the ground at an instant.
func (g *Ground) Lit(p book.Point, at time.Time) bool { return lit(g.casters(), of(p), g.Sun(at)) }

// lit: the sun is up, and nothing on the way to it is high enough.
func lit(casters []shape, p orb.Point, sun weather.Sky) bool {
	if sun.Altitude <= 0 {
		return false
	}
	for i := range casters {
		if casters[i].meets(p, towards(p, sun.Azimuth, casters[i].shade(sun))) {
			return false
		}
	}
	return true
}

// shade is how far a feature's shadow reaches: height / tan(altitude), at most a
// kilometre.
func (s *shape) shade(sun weather.Sky) float64 {
	const most = 1000
	return min(s.Height/math.Tan(sun.Altitude*math.Pi/180), most)
}

// Shadow is the shade of a feature on the ground: outlines that together cover it.
type Shadow struct {
	Feature  book.FeatureID
	Outlines [][]book.Point
}

// Shadows are what lies in the shade at an instant, feature by feature; none while
// the sun is down.
func (g *Ground) Shadows(at time.Time) (all []Shadow) {
	sun := g.Sun(at)
	if sun.Altitude <= 0 {
		return nil
	}
	for _, s := range g.casters() {
		all = append(all, Shadow{s.Feature, s.shadow(sun)})
	}
	return all
}

// shadow is for each stretch of a feature's line what it covers when it is moved
// away from the sun; of an outline what lies in it too.
func (s *shape) shadow(sun weather.Sky) (outlines [][]book.Point) {
	reach := s.shade(sun)
	for i := 1; i < len(s.line); i++ {
		var corners []orb.Point
		for _, p := range []orb.Point{s.line[i-1], s.line[i]} {
			for _, c := range around(p, s.half) {
				corners = append(corners, c, towards(c, sun.Azimuth+180, reach))
			}
		}
		outlines = append(outlines, hull(corners))
	}
	if s.area {
		outlines = append(outlines, points(s.line))
	}
	return outlines
}

// around are points on a circle, enough of them that it looks round; the middle
// alone where it has no radius.
func around(p orb.Point, radius float64) (all []orb.Point) {
	if radius == 0 {
		return []orb.Point{p}
	}
	const sides = 24
	for k := range sides {
		all = append(all, towards(p, float64(k)*360/sides, radius))
	}
	return all
}

// hull is the least outline without a dent around points (Andrew 1979, Inf Process
// Lett 9:216).
func hull(all []orb.Point) []book.Point {
	slices.SortFunc(all, func(a, b orb.Point) int { return slices.Compare(a[:], b[:]) })
	var out []orb.Point
	for range 2 {
		begun := len(out)
		for _, p := range all {
			for len(out) >= begun+2 && side(out[len(out)-2], out[len(out)-1], p) <= 0 {
				out = out[:len(out)-1]
			}
			out = append(out, p)
		}
		out = out[:len(out)-1]
		slices.Reverse(all)
	}
	return points(out)
}

func points(all []orb.Point) []book.Point {
	out := make([]book.Point, len(all))
	for i, p := range all {
		out[i] = book.Point{X: p[0], Y: p[1]}
	}
	return out
}
