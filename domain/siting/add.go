package siting

import (
	"fmt"
	"math/rand/v2"

	"lidmark/domain/book"
	"lidmark/domain/yard"
)

// Singles are single boxes that are to be added, each on a stand of its own with an id
// and a letter as given in turn. A virgin is to fly from each, and each has a queen
// where a stranger comes, as in [yard.Layout.Full].
func Singles(many int, name func() (book.StandID, string)) []yard.Stand {
	return Stands(many, 1, name)
}

// Stands are so many boxes that are to be added as [Singles] are, with at most each of
// them on a stand, where they face outwards.
func Stands(many, each int, name func() (book.StandID, string)) (stands []yard.Stand) {
	for ; many > 0; many -= each {
		s := yard.Stand{Places: each}
		s.ID, s.Letter = name()
		for place := 1; place <= min(each, many); place++ {
			n := yard.Nuc{Name: s.Letter, Place: place, Virgins: 1, Queenright: 1}
			if each > 1 {
				n.Name, n.Bearing = fmt.Sprintf("%s-%d", s.Letter, place), s.FreeSides(place)[0]
			}
			s.Nucs = append(s.Nucs, n)
		}
		stands = append(stands, s)
	}
	return stands
}

// OnAStand is how many boxes most stands of a layout have; 1 where none has any.
func OnAStand(l yard.Layout) int {
	best, stands := 1, map[int]int{}
	for i := range l.Stands {
		if n := len(l.Stands[i].Nucs); n > 0 {
			stands[n]++
			if most := stands[best]; stands[n] > most || stands[n] == most && n > best {
				best = n
			}
		}
	}
	return best
}

// placesTried is how many places are looked at for a stand that is added.
const placesTried = 500

// settle finds a first place for each added stand, one after the other, each where it
// costs the least; the search goes on from there.
func (p *plot) settle() error {
	more := len(p.task.Add)
	if more == 0 {
		return nil
	}
	p.begun = p.was.Clone()
	for k := range more {
		i := len(p.begun.Stands) - more + k
		p.begun.Stands[i].At = p.aside(k) // out of the way of those before it
	}
	t := newTrial(p, p.begun, nil)
	for k := range more {
		i := len(p.begun.Stands) - more + k
		if !t.settle(i) {
			return &NoRoom{p.was.Stands[i].Letter, k, more}
		}
	}
	p.begun = t.layout
	return nil
}

// aside is a point so far away that what stands there counts for nothing.
func (p *plot) aside(k int) book.Point {
	const away = 10_000 // m
	return book.Point{X: p.task.High.X + away*float64(k+1), Y: p.task.High.Y + away}
}

// settle puts a stand where it costs the least of some places all over the ground.
func (t *trial) settle(stand int) bool {
	s := &t.layout.Stands[stand]
	best, least := book.Point{}, 0.0
	found, aside := false, s.At
	turn := s.Turn
	chance := rand.New(rand.NewPCG(t.task.Seed, uint64(stand)))
	for range placesTried {
		at := t.anywhere(chance)
		if t.put(stand, at, turn); !t.fits(stand) {
			continue
		}
		if cost := t.queens + t.task.Prices.Rounds*t.detour(at); !found || cost < least {
			best, least, found = at, cost, true
		}
	}
	if !found {
		t.put(stand, aside, turn)
		return false
	}
	t.put(stand, best, turn)
	return true
}

// detour is about what a stand at a point adds to the walk, in queens: there and back
// from the nearest other.
func (t *trial) detour(at book.Point) float64 {
	near := far(at, t.task.From)
	for i := range t.layout.Stands {
		if d := far(at, t.layout.Stands[i].At); d > 0 {
			near = min(near, d)
		}
	}
	return t.task.Prices.metres(2 * near)
}
