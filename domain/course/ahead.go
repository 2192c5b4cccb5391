package course

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Holds is a kind of state of a nuc.
type Holds uint8

// The kinds of what a nuc may hold.
const (
	HoldsCell Holds = iota
	HoldsVirgin
	HoldsMated
	HoldsLaying
	HoldsNone
	HoldsDroneLayer
	HoldsWorkers
)

// State is one thing a nuc may hold, of the queen given or of the nuc's own,
// and for how many days: to a cell's emergence, a virgin's age, without queen and
// open brood, else since.
type State struct {
	Holds
	Own  bool
	Days int
}

// Figure is a number for every state: what it is worth, or how probable
// something is where it is so. Carried back day by day it says of today's
// states what is to be expected.
type Figure struct{ w [states]float64 }

// Each is a figure by state.
func Each(of func(State) float64) *Figure {
	kinds := map[byte]Holds{'c': HoldsCell, 'v': HoldsVirgin, 'm': HoldsMated, 'l': HoldsLaying, 'n': HoldsNone, 'd': HoldsDroneLayer, 'w': HoldsWorkers}
	return &Figure{each(func(k kind, days int) float64 { return of(State{kinds[k.what], k.own, max(days, 0)}) })}
}

// Sees is the chance, by state, that a look sees what the sight says.
func (m *Model) Sees(s Sight) *Figure { return &Figure{m.saw.weights(s)} }

// Before is what a figure of tomorrow's states is at the start of the day.
func (d *Day) Before(next *Figure) *Figure { return &Figure{d.before(&next.w)} }

// Times is the product of two figures, state by state: of two chances that both
// are so.
func (f *Figure) Times(g *Figure) *Figure {
	both := *f
	for i := range both.w {
		both.w[i] *= g.w[i]
	}
	return &both
}

// Expect is the mean of a figure.
func (b *Belief) Expect(f *Figure) (sum float64) {
	for i, p := range b.p {
		sum += p * f.w[i]
	}
	return sum
}

// Split parts a belief by the chance of something where each state is so: what
// is with it, and what is without. The two sum to the belief; neither sums to
// one.
func (b *Belief) Split(f *Figure) (with, without Belief) {
	for i, p := range b.p {
		with.p[i] = p * f.w[i]
		without.p[i] = p - with.p[i]
	}
	return with, without
}

// TakeOut takes out the queen who is there, with the chance by state that she
// is found: what is left has no queen.
func (b *Belief) TakeOut(found *Figure) {
	out, left := b.Split(found)
	left.p[bare] += out.sum(0, states)
	*b = left
}

// Emerging is when a cell of a batch emerges that is given at an instant in a
// yard and taken in at the start of a row, see [Held].
func (c *Course) Emerging(yard book.YardID, batch book.BatchID, at time.Time, row calendar.Day) Emerging {
	r := reading{asked: asked{Course: c, numbers: c.view.Numbers(), zone: c.Zone(yard)}}
	return r.emerging(batch, event{row: row, at: calendar.Instantly(at)}).Emerging
}
