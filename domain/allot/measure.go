package allot

import "math"

// A measure turns worths and minutes into whole numbers, so that sums are
// exact, equal is equal, and the order of adding does not matter.
type measure struct {
	bits   int     // a gain of 1 is 2 to so many units
	step   float64 // minutes are counted in so many thousandths
	near   float64 // answers that are so near in units are equal
	grain  float64 // all gains are multiples of so many units; 0: there is none
	limit  float64 // of minutes in steps, or infinite
	timely bool    // there is a limit
}

// Bits that whole numbers may have: sums of all subjects stay exact in a
// float64, and single gains, also those of a shifted half, leave room for the
// fraction of a price.
const (
	sumBits   = 52
	gainBits  = 40
	priceBits = 10
	nearBits  = 30
)

func measureOf(p Problem) measure {
	m := measure{limit: math.Inf(1), timely: p.Minutes > 0}
	largest, step := 0.0, 0.0
	for w, gain := range p.gains(m.timely) {
		largest, step = max(largest, gain), divisor(step, thousandths(w.Minutes))
	}
	_, top := math.Frexp(largest)
	_, many := math.Frexp(float64(len(p.Ways)))
	m.bits = min(gainBits, sumBits-many) - top
	for _, gain := range p.gains(m.timely) {
		m.grain = divisor(m.grain, m.gain(gain))
	}
	m.near = math.Ldexp(largest, m.bits-nearBits)
	m.step = max(step, 1)
	if m.timely {
		m.limit = math.Floor(thousandths(p.Minutes) / m.step)
	}
	return m
}

// floor is the most that an answer can gain under a bound.
func (m measure) floor(bound float64) float64 {
	return math.Floor((bound+m.near)/max(1, m.grain)) * max(1, m.grain)
}

// gain is a gain in whole units.
func (m measure) gain(worth float64) float64 { return math.Round(math.Ldexp(worth, m.bits)) }

// worth is a gain of so many units.
func (m measure) worth(gain float64) float64 { return math.Ldexp(gain, -m.bits) }

// minutes are whole steps, and none where nobody limits them.
func (m measure) minutes(w Way) float64 {
	if !m.timely {
		return 0
	}
	return math.Round(thousandths(w.Minutes) / m.step)
}

func thousandths(minutes float64) float64 { return math.Round(minutes * 1000) }

func divisor(a, b float64) float64 {
	for b != 0 {
		a, b = b, math.Mod(a, b)
	}
	return a
}
