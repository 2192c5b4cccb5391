package yard

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// Layout is how the boxes of a yard stand, really or in a try-out. It is a value:
// a changed one is a copy with another Stands, see [Layout.Clone].
type Layout struct {
	Yard     book.YardID
	Stands   []Stand
	Colonies []Colony // full-size colonies, which stay where they are
}

// Stand is a support with its boxes: where its middle is in metres, how far it is
// turned clockwise from north in degrees, and its nucs.
type Stand struct {
	ID     book.StandID
	Letter string
	At     book.Point
	Turn   float64
	Places int
	Round  string
	Fixed  bool // it stays where it is, whatever is searched
	Nucs   []Nuc
}

// Nuc is a mating colony on a place of a stand: the bearing of its entrance while
// its stand is not turned, its front mark, and its bees, 0 where nobody knows.
// Virgins is how many virgins will fly from it in the time that is looked at,
// Queenright the chance that a stranger queen finds a queen there; both 0 to 1.
type Nuc struct {
	ID         book.NucID
	Name       string
	Place      int
	Bearing    float64
	Mark       Mark
	Bees       float64
	Virgins    float64
	Queenright float64
	Shared     bool // its box holds other nucs: it cannot be turned without them
	Idle       bool // it was never made up: nobody carries anything to stand it elsewhere
}

// Colony is a full-size colony near the nucs, with its bees, 0 where nobody knows.
type Colony struct {
	ID   book.ColonyID
	Name string
	At   book.Point
	Bees float64
}

// Clone is a layout that can be changed without the first one.
func (l Layout) Clone() Layout {
	stands := make([]Stand, len(l.Stands))
	copy(stands, l.Stands)
	for i := range stands {
		stands[i].Nucs = append([]Nuc(nil), stands[i].Nucs...)
	}
	l.Stands = stands
	return l
}

// Nucs is how many nucs stand in the layout.
func (l Layout) Nucs() (n int) {
	for i := range l.Stands {
		n += len(l.Stands[i].Nucs)
	}
	return n
}

// block is the most places that stand in a square; more are a row.
const block = 4

// Spacing is how far apart in metres the places of a stand are, in a square of up
// to four and in a row.
type Spacing struct{ Block, Row float64 }

// SpacingOf takes the spacing from a keeper's numbers.
func SpacingOf(n practice.Numbers) Spacing {
	return Spacing{Block: n.Get(practice.PlaceApartInBlock), Row: n.Get(practice.PlaceApartInRow)}
}

// On is where a place of the stand is on the ground: places 1 and 2 in front, 3
// and 4 behind in a square, or in a row from left to right; the middle where a nuc
// has no place.
func (s *Stand) On(place int, apart Spacing) book.Point {
	at := s.offset(place, apart)
	sin, cos := math.Sincos(s.Turn * math.Pi / 180)
	return book.Point{X: s.At.X + at.X*cos + at.Y*sin, Y: s.At.Y - at.X*sin + at.Y*cos}
}

func (s *Stand) offset(place int, apart Spacing) book.Point {
	switch {
	case s.Places <= 1 || place < 1:
		return book.Point{}
	case s.Places > block:
		return book.Point{X: (float64(place) - float64(s.Places+1)/2) * apart.Row}
	}
	k := apart.Block / 2
	return [block]book.Point{{X: -k, Y: k}, {X: k, Y: k}, {X: -k, Y: -k}, {X: k, Y: -k}}[(place-1)%block]
}
