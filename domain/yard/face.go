package yard

import (
	"lidmark/domain/book"
)

// FreeSides are the bearings, in degrees clockwise from where the stand itself faces,
// to which a box on a place of it can face without another box before it: its own side
// first, to which no other place has its own where there are up to four.
func (s *Stand) FreeSides(place int) []float64 {
	const north, east, south, west = 0, 90, 180, 270
	switch {
	case s.Places <= 1 || place < 1:
		return []float64{north, east, south, west}
	case s.Places == 2:
		return [][]float64{{west, north, south}, {east, north, south}}[(place-1)%2]
	case s.Places <= block:
		return [][]float64{{north, west}, {east, north}, {west, south}, {south, east}}[(place-1)%block]
	case place%2 == 0:
		return []float64{south, north}
	}
	return []float64{north, south}
}

// Outwards is the layout with each box on the picked stands turned to its own side of
// the stand, see [Stand.FreeSides]. What stands alone and what shares its box with
// other nucs stays as it is.
func (l Layout) Outwards(p Pick) Layout {
	return l.each(p, func(s *Stand) {
		for i := range s.Nucs {
			if n := &s.Nucs[i]; s.Places > 1 && !n.Shared {
				n.Bearing = s.FreeSides(n.Place)[0]
			}
		}
	})
}

// Facing is the layout with the boxes on the picked stands turned so that their
// entrances face bearings on the ground, degrees clockwise from north: by place those
// that are given, and from the first again where there are more boxes. What shares its
// box with other nucs stays as it is.
func (l Layout) Facing(p Pick, bearings ...float64) Layout {
	return l.each(p, func(s *Stand) {
		for i := range s.Nucs {
			if n := &s.Nucs[i]; len(bearings) > 0 && !n.Shared {
				n.Bearing = compass(bearings[i%len(bearings)] - s.Turn)
			}
		}
	})
}

// FacingOne is the layout with the box of one nuc turned to a bearing on the ground,
// unless it shares it with other nucs.
func (l Layout) FacingOne(id book.NucID, bearing float64) Layout {
	l = l.Clone()
	for i := range l.Stands {
		for k := range l.Stands[i].Nucs {
			if n := &l.Stands[i].Nucs[k]; n.ID == id && !n.Shared {
				n.Bearing = compass(bearing - l.Stands[i].Turn)
			}
		}
	}
	return l
}

// Faces is where the entrance of a nuc on the stand faces on the ground, degrees
// clockwise from north.
func (s *Stand) Faces(n *Nuc) float64 { return compass(n.Bearing + s.Turn) }

// Compass is a bearing in a word, to an eighth of the compass.
func Compass(bearing float64) string {
	const eighths = 8
	words := [eighths]string{"north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"}
	return words[int(compass(bearing)/(360/eighths)+0.5)%eighths]
}
