package bee

import (
	"math"
	"time"

	"lidmark/domain/practice"
)

// Loose tells what is lost of cells that stay loose together: the first
// virgin out destroys, when her grace is over, every cell not yet out.
//
// With F the law of one of n cells and g the grace, the cells lost to a first
// virgin of hour f ≤ x come to
//
//	∫ n (n−1) F′(f) (1−F(f))ⁿ⁻² (1−F(f+g)) df,
//
// summed here once over f; the shift shared by the batch is integrated over
// when asked. At instant t it counts what was lost by then: f ≤ t − g.
type Loose struct {
	clock      Clock
	grace      float64
	cooledFrom float64 // hour from which the cells grow at speed
	speed      float64
	from, step float64   // hours of the sums: from, from + step, …
	rate, sum  []float64 // the integrand, and the integral up to it
}

// Loose gives the losses of the batch's cells, kept warm.
func (c Clock) Loose() Loose { return c.loose(math.Inf(1), 1) }

// Cooled gives the losses of the batch's cells when the incubator is turned
// to a temperature in °C at an instant. See [Speed] for how little is known:
// a last resort.
func (c Clock) Cooled(at time.Time, celsius float64) Loose {
	return c.loose(c.hour(at), Speed(celsius, c.numbers))
}

// stepsInSpread is how many steps of the sums make one spread of a cell; the
// sums are then exact to a hundredth of a cell, of a hundred cells of which none
// was out long after they should have been, to a tenth.
const stepsInSpread = 60

func (c Clock) loose(from, speed float64) Loose {
	l := Loose{
		clock: c, cooledFrom: from, speed: speed,
		grace: c.numbers.Get(practice.GraceOfFirstVirgin),
		from:  c.law.mean - c.law.older - tails*c.law.spread,
		step:  c.law.spread / stepsInSpread,
	}
	count := int((c.law.older+2*tails*c.law.spread)/l.step) + 2
	l.rate, l.sum = make([]float64, count), make([]float64, count)
	for i := range count {
		l.rate[i] = l.lossRate(l.from + float64(i)*l.step)
		if i > 0 {
			l.sum[i] = l.sum[i-1] + (l.rate[i-1]+l.rate[i])/2*l.step
		}
	}
	return l
}

// lossRate is the integrand at hour f.
func (l Loose) lossRate(f float64) float64 {
	law, n := l.clock.law, l.clock.cells
	if n < 2 {
		return 0
	}
	pairs := float64(n) * float64(n-1)
	return pairs * law.density(f) * power(law.in(f), n-2) * law.in(f+l.grace*l.speed)
}

// upTo is the integral up to hour x: straight between two steps of rate.
func (l Loose) upTo(x float64) float64 {
	at := (x - l.from) / l.step
	switch last := len(l.sum) - 1; {
	case !(at > 0):
		return 0
	case at >= float64(last):
		return l.sum[last]
	}
	i := int(at)
	part := at - float64(i)
	return l.sum[i] + l.step*part*(l.rate[i]+(l.rate[i+1]-l.rate[i])*part/2)
}

// grown is the hour of growth reached at hour x by the wall clock.
func (l Loose) grown(x float64) float64 {
	if x <= l.cooledFrom {
		return x
	}
	return l.cooledFrom + (x-l.cooledFrom)*l.speed
}

// Lost gives how many of the cells are expected to be destroyed by t.
func (l Loose) Lost(t time.Time) float64 {
	by := l.grown(l.clock.hour(t) - l.grace)
	if by <= l.clock.after {
		return 0
	}
	var lost float64
	for _, nd := range l.clock.nodes {
		lost += nd.weight * (l.upTo(by-nd.shift) - l.upTo(l.clock.after-nd.shift))
	}
	return lost
}

// LostIfWalked gives how many of the cells are expected to be destroyed by t,
// knowing that by then a virgin has walked.
func (l Loose) LostIfWalked(t time.Time) float64 {
	walked := l.clock.firstBy(l.grown(l.clock.hour(t)))
	if walked == 0 {
		return 0
	}
	return l.Lost(t) / walked
}

// Cells gives how many are expected to be cells still, whole and not out, at t.
func (l Loose) Cells(t time.Time) float64 {
	c := l.clock
	now := max(l.grown(c.hour(t)), c.after)
	safe := max(l.grown(c.hour(t)-l.grace), c.after)
	var in float64
	for _, nd := range c.nodes {
		in += nd.weight * c.law.in(now-nd.shift) * power(c.law.in(safe-nd.shift), c.cells-1)
	}
	return float64(c.cells) * in
}

// Virgins gives how many are expected to be virgins, out and not yet at each
// other, at t.
func (l Loose) Virgins(t time.Time) float64 {
	return max(float64(l.clock.cells)-l.Lost(t)-l.Cells(t), 0)
}
