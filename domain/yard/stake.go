package yard

import (
	"math"

	"lidmark/domain/book"
)

// Stake is how a point on the ground is found with two tapes that begin at two pegs:
// where so many metres of the one meet so many of the other.
type Stake struct {
	A, B  float64 // m from the first and from the second peg
	Left  bool    // it lies to the left of the way from the first to the second
	Angle float64 // degrees, in which the tapes meet
}

// flattest is in what angle tapes may meet at least, or short of 180°: a centimetre
// of a tape then moves the point by no more than two, 1/sin 30°.
const flattest = 30

// StakeOf is how a point is found from two pegs.
func StakeOf(at, a, b book.Point) Stake {
	ax, ay, bx, by := a.X-at.X, a.Y-at.Y, b.X-at.X, b.Y-at.Y
	across := ax*by - ay*bx
	return Stake{
		A: math.Hypot(ax, ay), B: math.Hypot(bx, by),
		Left:  across > 0,
		Angle: math.Atan2(math.Abs(across), ax*bx+ay*by) * 180 / math.Pi,
	}
}

// Flat tells whether the tapes meet in so flat an angle that the point cannot be
// found with them.
func (s Stake) Flat() bool { return s.Angle < flattest || s.Angle > 180-flattest }

// Side is the side on which the point lies, in a word.
func (s Stake) Side() string {
	if s.Left {
		return "left"
	}
	return "right"
}
