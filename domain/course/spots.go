package course

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

// Spot is where a virgin flies from: a yard, and how much more or less than usual
// is lost on a flight from her door, see [yard.Factor]. A zero Loss is the usual.
type Spot struct {
	Yard book.YardID
	Loss float64
}

// SpotOf is the spot of a nuc.
func (c *Course) SpotOf(n *book.Nuc) Spot { return Spot{n.Yard, c.spots(n.Yard).of(n.Nuc)} }

// SpotIn is the middling spot of a yard, for queens of whom nobody knows the nuc.
func (c *Course) SpotIn(id book.YardID) Spot { return Spot{id, c.spots(id).mean} }

// Holding is what homing has to know of a nuc: the virgins who will fly from it, and
// the chance that a stranger queen finds a queen there, or one to come.
func (c *Course) Holding(id book.NucID) yard.Holding {
	h := c.Held(c.view.Nuc(id))
	if h.From == 0 {
		return yard.Holding{}
	}
	is := h.Chances()
	return yard.Holding{Virgins: is.Cell + is.Virgin + is.OwnCell + is.OwnVirgin, Queenright: 1 - is.Queenless()}
}

// Step is what a day does to a nuc at a spot.
func (c *Course) Step(at Spot, d calendar.Day) *Day {
	return c.lives.day(dayKey{c.yardDays(at.Yard).at(d), at.loss(), false})
}

// StepOf is what a day with so many hours fit to fly does to a nuc at a spot.
func (c *Course) StepOf(at Spot, hours float64) *Day {
	return c.lives.day(dayKey{hours, at.loss(), false})
}

func (s Spot) loss() float64 {
	if s.Loss == 0 {
		return usualLoss
	}
	return s.Loss
}

// usualLoss is the factor on the loss of virgins where nobody reckons the layout.
const usualLoss = 1

// spots are the losses of a yard's places, worked out once.
type spots struct {
	layout yard.Layout
	loss   map[book.NucID]float64
	mean   float64
}

func (s *spots) of(n book.NucID) float64 {
	if loss, ok := s.loss[n]; ok {
		return loss
	}
	return usualLoss
}

// spots of a yard whose ground nobody drew are the usual: its stands are drawn
// where there was room, not where they are.
func (c *Course) spots(id book.YardID) *spots {
	if c.beside != nil {
		return c.beside.spots(id)
	}
	c.mu.Lock()
	defer c.mu.Unlock()
	s := c.laid[id]
	if s == nil {
		s = c.reckonSpots(id)
		c.laid[id] = s
	}
	return s
}

func drawn(y *book.Yard) bool {
	return len(y.Features) > 0 || y.Wind.Said() || len(y.Picture.JPEG) > 0
}

func (c *Course) reckonSpots(id book.YardID) *spots {
	if !drawn(c.view.Yard(id)) {
		return &spots{mean: usualLoss}
	}
	if was := c.laidBefore[id]; was != nil && was.loss != nil && was.layout.Still(c.view) {
		return was
	}
	return spotsOf(yard.Of(c.view, id), c.view.Numbers())
}

func spotsOf(l yard.Layout, n practice.Numbers) *spots {
	doors := l.Doors(yard.SpacingOf(n))
	home := yard.HomingOf(doors, yard.VirginKernel(n))
	s := &spots{layout: l, loss: make(map[book.NucID]float64, len(doors)), mean: usualLoss}
	var sum float64
	for i, d := range doors {
		if !d.Colony {
			loss := tenths(yard.Factor(home.Wrong(i), n))
			s.loss[l.Stands[d.Stand].Nucs[d.Nuc].ID] = loss
			sum += loss
		}
	}
	if len(s.loss) > 0 {
		s.mean = tenths(sum / float64(len(s.loss)))
	}
	return s
}

// tenths: the kernel is known no finer, and nucs that share a factor share their
// reckoning.
func tenths(x float64) float64 { return math.Round(10*x) / 10 }
