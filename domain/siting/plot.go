package siting

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

// plot is what all chains of a search share: the task, and how the boxes stand, with
// the added ones.
type plot struct {
	task    Task
	numbers practice.Numbers
	apart   yard.Spacing
	was     yard.Layout
	begun   yard.Layout // was, with a place for each added stand
	stood   []yard.Door // the entrances of was
	turns   []int       // stands that may be turned
	moves   []int       // stands that may be carried
	faces   [][2]int    // stand and nuc of the boxes that may be turned on their places
	paints  [][2]int    // stand and nuc of the fronts that may be painted
	noRoom  float64     // what a stand where no box may stand weighs, in queens
}

func newPlot(t Task, n practice.Numbers) *plot {
	p := &plot{task: t, numbers: n, apart: yard.SpacingOf(n), was: t.Layout.Clone()}
	for _, s := range t.Add {
		s.Fixed = false
		p.was.Stands = append(p.was.Stands, s)
	}
	p.was = p.was.Clone()
	p.stood = p.was.Doors(p.apart)
	p.noRoom = p.beyondAll()
	for i := range p.was.Stands {
		p.mayChange(i)
	}
	return p
}

func (p *plot) mayChange(i int) {
	s := &p.was.Stands[i]
	if s.Fixed || !p.fresh(i) && len(p.task.Only) > 0 && !slices.Contains(p.task.Only, s.ID) {
		return
	}
	if p.task.Turn > 0 && len(s.Nucs) > 0 {
		p.turns = append(p.turns, i)
	}
	if p.task.Move {
		p.moves = append(p.moves, i)
	}
	for k := range s.Nucs {
		if p.task.Face && s.Places > 1 && !s.Nucs[k].Shared {
			p.faces = append(p.faces, [2]int{i, k})
		}
	}
	if len(p.task.Marks) > 0 {
		for k := range s.Nucs {
			p.paints = append(p.paints, [2]int{i, k})
		}
	}
}

// fresh tells whether a stand is added: it stands nowhere yet.
func (p *plot) fresh(stand int) bool { return stand >= len(p.task.Layout.Stands) }

// free tells whether a stand is still to be set up: however it is to stand, nobody has
// more work with it.
func (p *plot) free(stand int) bool { return p.fresh(stand) || p.was.Stands[stand].Idle() }

// walk is the order in which the stands of a layout are walked.
func (p *plot) walk(l yard.Layout) []int {
	order, _ := yard.Round(l, p.task.From)
	return order
}

// has tells whether a stand may be put at a point.
func (p *plot) has(at book.Point) bool {
	t := &p.task
	inside := t.Low == t.High || at.X >= t.Low.X && at.X <= t.High.X && at.Y >= t.Low.Y && at.Y <= t.High.Y
	return inside && (t.Room == nil || t.Room(at))
}
