package siting

import "lidmark/domain/yard"

// Faults are what is wrong with the places of a layout.
type Faults struct {
	NoRoom int // stands where no box may stand: outside the boundary, in a hedge, too near a track
	Windy  int // fronts in the wind that nothing shelters
}

// faultsAt are those of a stand.
func (p *plot) faultsAt(s *yard.Stand) (f Faults) {
	if !p.has(s.At) {
		f.NoRoom++
	}
	for k := range s.Nucs {
		n := &s.Nucs[k]
		if _, is := p.task.Wind.On(s.On(n.Place, p.apart), s.Faces(n)); is {
			f.Windy++
		}
	}
	return f
}

// faultsOf are those of some stands as they stand in a trial.
func (t *trial) faultsOf(stands []int) (f Faults) {
	for _, i := range stands {
		f.add(t.faults[i])
	}
	return f
}

func (f *Faults) add(o Faults) { f.NoRoom, f.Windy = f.NoRoom+o.NoRoom, f.Windy+o.Windy }

// weight is what faults weigh, in queens.
func (p *plot) weight(f Faults) float64 {
	return float64(f.NoRoom)*p.noRoom + float64(f.Windy)*p.task.Prices.Wind
}

// beyondAll is more queens than the boxes of a layout can lose, however they stand: so
// much a stand weighs where no box may stand, so that no gain outweighs it.
func (p *plot) beyondAll() float64 {
	pr := &p.task.Prices
	sum := 1 + pr.Drift*float64(p.was.Nucs())
	for i := range p.was.Stands {
		for _, n := range p.was.Stands[i].Nucs {
			sum += n.Virgins * max(pr.Lost, pr.Stays)
		}
	}
	return sum
}
