package course

import (
	"math"
	"slices"

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

// Step is what a day does to a nuc at a spot.
func (c *Course) Step(at Spot, d calendar.Day) *Day {
	return c.lives.day(dayKey{c.yardDays(at.Yard).at(d), at.loss(), false})
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
	doors []yard.Door
	loss  map[book.NucID]float64
	mean  float64
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
		s = &spots{mean: usualLoss}
		if drawn(c.view.Yard(id)) {
			s = spotsOf(yard.Of(c.view, id), c.view.Numbers(), c.laidBefore[id])
		}
		c.laid[id] = s
	}
	return s
}

func drawn(y *book.Yard) bool {
	return len(y.Features) > 0 || y.Wind.Said() || len(y.Picture.JPEG) > 0
}

// spotsOf reckons a layout, unless it stands as it did.
func spotsOf(l yard.Layout, n practice.Numbers, was *spots) *spots {
	doors := l.Doors(yard.SpacingOf(n))
	if was != nil && slices.Equal(doors, was.doors) {
		return was
	}
	home := yard.HomingOf(slices.Clone(doors), yard.VirginKernel(n))
	s := &spots{doors: doors, loss: make(map[book.NucID]float64, len(doors))}
	for i, d := range doors {
		if d.Colony {
			continue
		}
		s.loss[l.Stands[d.Stand].Nucs[d.Nuc].ID] = tenths(yard.Factor(home.Wrong(i), n))
		s.mean += s.loss[l.Stands[d.Stand].Nucs[d.Nuc].ID]
	}
	s.mean = tenths(s.mean / max(1, float64(len(s.loss))))
	if len(s.loss) == 0 {
		s.mean = usualLoss
	}
	return s
}

// tenths: the kernel is known no finer, and nucs that share a factor share their
// reckoning.
func tenths(x float64) float64 { return math.Round(10*x) / 10 }
