package siting

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

// Spared is a nuc without which the others fare better.
type Spared struct {
	Nuc    book.NucID
	Name   string
	Lost   float64  // fewer virgins lost from the other nucs
	Drift  float64  // of the workers of the others together, in nucs, fewer at a wrong door
	Gain   float64  // queens, for the others
	Beside []string // the nucs that fare better, by how much
}

// Words say why it is this one.
func (s Spared) Words() string {
	return fmt.Sprintf("%s: without it %.2f virgins fewer are lost and drift of the others falls by %.0f of 100 of a nuc; most at %s",
		s.Name, s.Lost, 100*s.Drift, joined(s.Beside))
}

func joined(names []string) string {
	last := len(names) - 1
	switch last {
	case -1:
		return "none"
	case 0:
		return names[0]
	}
	return strings.Join(names[:last], ", ") + " and " + names[last]
}

// Spare are the nucs that are too many, for when so many are: those whose bees and
// doors cost the others most, one after the other. What the nuc itself yields is not
// weighed: may tells which can be done without; nil: any.
func Spare(l yard.Layout, many int, may func(book.NucID) bool, n practice.Numbers) (all []Spared) {
	p := newPlot(Task{Layout: l, Prices: PricesOf(n)}, n)
	t := newTrial(p, p.was, nil)
	gone := map[int]bool{}
	for range many {
		best, door := Spared{}, -1
		for i := range t.virgins.Doors() {
			if nuc := t.nuc(i); nuc == nil || gone[i] || may != nil && !may(nuc.ID) {
				continue
			}
			if s := t.without(i); door < 0 || s.Gain > best.Gain+tiny {
				best, door = s, i
			}
		}
		if door < 0 {
			break
		}
		gone[door] = true
		t.away(door, len(gone))
		all = append(all, best)
	}
	return all
}

// nuc is the nuc behind a door, nil for a colony.
func (t *trial) nuc(door int) *yard.Nuc {
	d := &t.virgins.Doors()[door]
	if d.Colony {
		return nil
	}
	return &t.layout.Stands[d.Stand].Nucs[d.Nuc]
}

// away sets a door where it counts for nothing.
func (t *trial) away(door, place int) {
	d := t.virgins.Doors()[door]
	d.At = t.aside(place)
	t.hold([]int{door}, []yard.Door{d})
}

// besideMost is how many nucs are named.
const besideMost = 3

// without is what the others gain when a nuc is taken away.
func (t *trial) without(door int) Spared {
	as := t.virgins.Doors()[door]
	nuc := t.nuc(door)
	s := Spared{Nuc: nuc.ID, Name: nuc.Name}
	touched := t.touched(door)
	gains := make([]figures, len(touched))
	for k, i := range touched {
		gains[k] = t.figures(i)
	}
	t.away(door, 0)
	for k, i := range touched {
		after := t.figures(i)
		gains[k].lost -= after.lost
		gains[k].drift -= after.drift
		gains[k].queens -= after.queens
		s.Lost, s.Drift, s.Gain = s.Lost+gains[k].lost, s.Drift+gains[k].drift, s.Gain+gains[k].queens
	}
	t.hold([]int{door}, []yard.Door{as})
	slices.SortStableFunc(gains, func(a, b figures) int { return cmp.Compare(b.queens, a.queens) })
	for _, g := range gains[:min(besideMost, len(gains))] {
		if g.queens > tiny {
			s.Beside = append(s.Beside, g.name)
		}
	}
	return s
}

// touched are the other nucs whose bees take a door for their own.
func (t *trial) touched(door int) (all []int) {
	as := t.virgins.Doors()[door]
	for _, h := range []*yard.Homing{t.virgins, t.workers} {
		for _, i := range h.Set(door, as) {
			if i != door && t.nuc(i) != nil && !slices.Contains(all, i) {
				all = append(all, i)
			}
		}
	}
	return all
}

// figures are what becomes of the bees of a nuc.
type figures struct {
	name                string
	lost, drift, queens float64
}

func (t *trial) figures(door int) figures {
	n := t.nuc(door)
	return figures{n.Name, n.Virgins * t.layout.Lost(t.virgins, door), t.workers.Wrong(door), t.loss[door] + t.drift[door]}
}
