package season

import "math"

// level is how far below what is wished a way keeps a promise: so many hundredths less
// sure, which is nearly kept, or less than that, which counts as so many queens short: all of them
// are that part less sure, or the others are as sure as is wished. The
// zero level keeps it as is wished.
type level struct {
	points, short int
	fewer         bool // the others are as sure as is wished
}

// whole is the level at which a promise is kept as is wished.
var whole level

// How many hundredths less than is wished is nearly kept, and for how many minutes of work
// a hundredth is made up for: some four nucs' more, so that a nuc more or a bar more is
// taken for it, and a second graft is not. Then the eighths of its queens that a promise
// counts as short of which is kept less surely than that, or in part. Common practice, no source.
const (
	nearMost     = 2
	pointMinutes = 30
)

var lesserEighths = [...]int{1, 2, 4, 6, 7}

// levels are the levels below what is wished at which a promise is tried, where nothing
// else is served with it.
func (p Promise) levels() (all []level) {
	for n := range nearMost {
		all = append(all, level{points: n + 1})
	}
	was := 0
	for _, eighths := range lesserEighths {
		if short := (eighths*p.Queens + 7) / 8; short > was && short < p.Queens {
			all, was = append(all, level{short: short}, level{short: short, fewer: true}), short
		}
	}
	return all
}

// of is how many queens of a promise there are at the level, and how sure they are at least.
func (l level) of(p Promise) (queens int, sure float64) {
	switch {
	case l.fewer:
		return p.Queens - l.short, p.Sure
	case l.short > 0:
		return p.Queens, p.Sure * (1 - float64(l.short)/float64(p.Queens))
	default:
		return p.Queens, math.Max(0, p.Sure-float64(l.points)/100)
	}
}

// costAt is what it costs that a promise is kept at a level only.
func (s *search) costAt(promise int, l level) cost {
	return cost{s.weights[s.turn[promise]] * int64(l.short), int64(l.points) * pointMinutes * 10 * tenthCost}
}

// minutes are the certainty that is missing at the level, as minutes of work.
func (l level) minutes() float64 { return float64(l.points) * pointMinutes }
