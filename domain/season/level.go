package season

import "math"

// level is how far below what is wished a way keeps a promise: so many hundredths less
// sure, which is nearly kept, or less than that, which counts as so many queens short. The
// zero level keeps it as is wished.
type level struct{ points, short int }

// whole is the level at which a promise is kept as is wished.
var whole level

// How many hundredths less than is wished is nearly kept, and for how many minutes of work
// a hundredth is made up for: some four nucs' more, so that a nuc more or a bar more is
// taken for it, and a second graft is not. Then the parts of its queens that a promise
// counts as short of which is kept less surely than that. Common practice, no source.
const (
	nearMost     = 2
	pointMinutes = 30
)

var lesserParts = [...]int{8, 4, 2}

// levels are the levels below what is wished at which a promise is tried, where nothing
// else is served with it.
func (p Promise) levels() (all []level) {
	for n := range nearMost {
		all = append(all, level{points: n + 1})
	}
	was := 0
	for _, part := range lesserParts {
		if short := (p.Queens + part - 1) / part; short > was && short < p.Queens {
			all, was = append(all, level{short: short}), short
		}
	}
	return all
}

// of is how sure a promise is at the level, at least: one that is so many of its queens
// short is that part less sure.
func (l level) of(p Promise) float64 {
	if l.short > 0 {
		return p.Sure * (1 - float64(l.short)/float64(p.Queens))
	}
	return math.Max(0, p.Sure-float64(l.points)/100)
}

// costAt is what it costs that a promise is kept at a level only.
func (s *search) costAt(promise int, l level) cost {
	return cost{s.weights[s.turn[promise]] * int64(l.short), int64(l.points) * pointMinutes * 10 * tenthCost}
}

// minutes are the certainty that is missing at the level, as minutes of work.
func (l level) minutes() float64 { return float64(l.points) * pointMinutes }
