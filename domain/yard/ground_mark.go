package yard

import (
	"math"
	"slices"
	"strings"

	"lidmark/domain/practice"
)

// SeenFrom is from how far in metres something as wide as size is seen at an angle
// in degrees.
func SeenFrom(size, angle float64) float64 {
	return size / (2 * math.Tan(angle/2*math.Pi/180))
}

// ToldFrom is from how far in metres bees tell two marks apart, 0 where they never
// do: one lighter than the other from further than one of another hue alone, and
// shapes as far as half a mark is seen clearly. A bare front is told from a marked
// one as a lighter from a darker one is.
func ToldFrom(a, b Mark, n practice.Numbers) float64 {
	size := n.Get(practice.MarkSize)
	light, hue := SeenFrom(size, n.Get(practice.MarkSeenLight)), SeenFrom(size, n.Get(practice.MarkSeenHue))
	colours := seen(a.Colour) != seen(b.Colour)
	switch {
	case a.Apart(b) == 0:
		return 0
	case (a == Mark{}) != (b == Mark{}), colours && looksLight(a.Colour) != looksLight(b.Colour):
		return light
	case !strings.EqualFold(a.Shape, b.Shape):
		return min(light, SeenFrom(size/2, n.Get(practice.BeeAcuity)))
	}
	return hue
}

// looksLight tells whether a colour is a light one to the receptor by which bees see
// edges, that for green: common practice, no source.
func looksLight(colour string) bool {
	return slices.Contains([]string{"white", "yellow", "orange", "green", "sky"}, strings.ToLower(colour))
}

// redAndBlack tells whether two marks of one shape differ by red and black alone.
func redAndBlack(a, b Mark) bool {
	return a.Apart(b) == 0 && !strings.EqualFold(a.Colour, b.Colour)
}
