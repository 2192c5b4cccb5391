package geofile

import (
	"math"
	"reflect"
	"slices"

	"lidmark/domain/book"
)

// rounding is how far in metres a place may move when it is written and read.
const rounding = 0.002

// SamePlace tells whether two places are one but for the rounding of a file.
func SamePlace(a, b book.Point) bool { return math.Hypot(a.X-b.X, a.Y-b.Y) < rounding }

// SameFeature tells whether two features are one but for what a file does to them: it
// rounds places, closes outlines and turns them against the clock.
func SameFeature(a, b book.FeatureDrawn) bool {
	p, around := corners(a)
	q, alsoAround := corners(b)
	a.Points, b.Points = nil, nil
	if around != alsoAround || !reflect.DeepEqual(a, b) {
		return false
	}
	if slices.EqualFunc(p, q, SamePlace) || !around {
		return slices.EqualFunc(p, q, SamePlace)
	}
	slices.Reverse(q[1:])
	return slices.EqualFunc(p, q, SamePlace)
}

// corners are the points of a feature, and whether it is an outline, which goes back
// to its first without saying it.
func corners(f book.FeatureDrawn) (points []book.Point, around bool) {
	n := len(f.Points)
	if n > 3 && f.Points[0] == f.Points[n-1] {
		return slices.Clone(f.Points[:n-1]), true
	}
	return slices.Clone(f.Points), n > 2 && slices.Contains(outlined, f.What)
}
