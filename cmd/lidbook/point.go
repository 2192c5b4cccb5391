package main

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"

	"lidmark/domain/book"
)

// farthest is how far from the origin of a yard a point may be, m.
const farthest = 10_000

// pointOf reads a point of a yard's ground: metres east and north of its origin.
func pointOf(text string) (p book.Point, err error) {
	east, north, parted := strings.Cut(strings.TrimSpace(text), ",")
	x, errX := strconv.ParseFloat(strings.TrimSpace(east), 64)
	y, errY := strconv.ParseFloat(strings.TrimSpace(north), 64)
	if !parted || errX != nil || errY != nil || math.IsNaN(x) || math.IsNaN(y) {
		return p, fmt.Errorf("point %q: write metres east and north of the yard's origin, like 4.5,12", text)
	}
	if math.Abs(x) > farthest || math.Abs(y) > farthest {
		return p, fmt.Errorf("point %q: that is more than %d km from the yard's origin; write metres", text, farthest/1000)
	}
	return book.Point{X: x, Y: y}, nil
}

// below0 are points and degrees whose first figure is below 0.
var below0 = regexp.MustCompile(`^-[0-9]+(\.[0-9]+)?,-?[0-9]+(\.[0-9]+)?$|^-[0-9]+\.[0-9]+$`)

// noFlags are arguments in which no point and no degree below 0 is taken for a flag: it
// gets a blank before it, which nobody minds who reads it.
func noFlags(args []string) (all []string) {
	for _, a := range args {
		if below0.MatchString(a) {
			a = " " + a
		}
		all = append(all, a)
	}
	return all
}
