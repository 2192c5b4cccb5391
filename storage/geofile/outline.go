package geofile

import (
	"fmt"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/planar"
)

// outline closes a line and sees to it that it does not cross itself. One that was
// walked may, where its end passes its beginning: the loose ends are cut off.
func (r *reader) outline(it *item, line orb.LineString) (orb.LineString, error) {
	const rounds, mostly = 5, 0.8
	for range rounds {
		closed := line
		if line[0] != line[len(line)-1] {
			closed = append(line[:len(line):len(line)], line[0])
		}
		i, j, ok := crossing(closed)
		if !ok {
			return closed, nil
		}
		at := meeting(closed[i], closed[i+1], closed[j], closed[j+1])
		loop := append(append(orb.LineString{at}, closed[i+1:j+1]...), at)
		if !it.walked || planar.Length(loop) < planar.Length(line)*mostly {
			return nil, fmt.Errorf("%s: the outline crosses itself between points %d and %d: draw it again there", it.where, i+1, j+1)
		}
		r.notes = append(r.notes, it.where+": loose ends of the outline were cut off")
		line = loop
	}
	return nil, fmt.Errorf("%s: the outline crosses itself again and again: walk it again", it.where)
}

// crossing is the first pair of edges of a closed line that cross, i before j.
func crossing(line orb.LineString) (i, j int, ok bool) {
	for i := 0; i+1 < len(line); i++ {
		for j := i + 2; j+1 < len(line); j++ {
			if cross(line[i], line[i+1], line[j], line[j+1]) {
				return i, j, true
			}
		}
	}
	return 0, 0, false
}

func cross(a, b, c, d orb.Point) bool {
	return side(a, b, c)*side(a, b, d) < 0 && side(c, d, a)*side(c, d, b) < 0
}

// meeting is where two edges that cross do so.
func meeting(a, b, c, d orb.Point) orb.Point {
	t := side(c, d, a) / (side(c, d, a) - side(c, d, b))
	return orb.Point{a[0] + t*(b[0]-a[0]), a[1] + t*(b[1]-a[1])}
}

// side is above 0 where c lies to the left of the way from a to b.
func side(a, b, c orb.Point) float64 {
	return (b[0]-a[0])*(c[1]-a[1]) - (b[1]-a[1])*(c[0]-a[0])
}
