package siting

import (
	"math"
	"math/rand/v2"

	"lidmark/domain/book"
	"lidmark/domain/yard"
)

// change is one thing done to a layout: a stand set elsewhere or turned, or, where
// there is a nuc, its front painted or its box turned on its place.
type change struct {
	stand   int
	nuc     int // -1: the stand itself
	at      book.Point
	turn    float64
	mark    yard.Mark
	bearing float64
}

// marked is the change that gives a front a mark; faced turns a box on its place.
func (t *trial) marked(stand, nuc int, m yard.Mark) change {
	return change{stand: stand, nuc: nuc, mark: m, bearing: t.layout.Stands[stand].Nucs[nuc].Bearing}
}

func (t *trial) faced(stand, nuc int, bearing float64) change {
	return change{stand: stand, nuc: nuc, mark: t.layout.Stands[stand].Nucs[nuc].Mark, bearing: bearing}
}

// apply does a change and gives the one that takes it back.
func (t *trial) apply(c change) (back change) {
	s := &t.layout.Stands[c.stand]
	if c.nuc < 0 {
		back = change{stand: c.stand, nuc: -1, at: s.At, turn: s.Turn}
		t.put(c.stand, c.at, c.turn)
		return back
	}
	n := &s.Nucs[c.nuc]
	back = change{stand: c.stand, nuc: c.nuc, mark: n.Mark, bearing: n.Bearing}
	t.set(c.stand, c.nuc, c.mark, c.bearing)
	return back
}

// nothing tells whether a change leaves all as it is.
func (t *trial) nothing(c change) bool {
	s := &t.layout.Stands[c.stand]
	if c.nuc < 0 {
		return s.At == c.at && s.Turn == c.turn
	}
	return s.Nucs[c.nuc].Mark == c.mark && s.Nucs[c.nuc].Bearing == c.bearing
}

// on does a change to a layout alone.
func (c change) on(l yard.Layout) {
	if s := &l.Stands[c.stand]; c.nuc < 0 {
		s.At, s.Turn = c.at, c.turn
	} else {
		s.Nucs[c.nuc].Mark, s.Nucs[c.nuc].Bearing = c.mark, c.bearing
	}
}

// deal proposes changes to be done together: a turn, a mark, two marks or two stands
// exchanged, a stand carried, a box or all of a stand turned on their places.
func (t *trial) deal(r *rand.Rand, to []change) []change {
	turns, paints, faces := len(t.turns), len(t.paints), len(t.faces)
	n := turns + paints + faces + 2*len(t.moves)
	if n == 0 {
		return to
	}
	switch k := r.IntN(n); {
	case k < turns:
		return append(to, t.turned(r, t.turns[k]))
	case k < turns+paints:
		return t.painted(r, t.paints[k-turns], to)
	case k < turns+paints+faces:
		return t.turnedOn(r, t.faces[k-turns-paints], to)
	}
	stand := t.moves[r.IntN(len(t.moves))]
	if other := t.moves[r.IntN(len(t.moves))]; r.IntN(4) == 0 && other != stand {
		return t.exchanged(stand, other, to)
	}
	return append(to, t.carried(r, stand))
}

// turned is a stand turned some steps, or back as it was.
func (t *trial) turned(r *rand.Rand, stand int) change {
	s := &t.layout.Stands[stand]
	c := change{stand: stand, nuc: -1, at: s.At, turn: t.was.Stands[stand].Turn}
	if steps := max(1, int(math.Round(circle/t.task.Turn))); r.IntN(steps+1) > 0 {
		c.turn = math.Mod(float64(r.IntN(steps))*t.task.Turn, circle)
	}
	return c
}

const circle = 360

// painted is a front with a mark to hand, or as it was, or two that exchange theirs.
func (t *trial) painted(r *rand.Rand, at [2]int, to []change) []change {
	c := t.marked(at[0], at[1], t.was.Stands[at[0]].Nucs[at[1]].Mark)
	switch k := r.IntN(len(t.task.Marks) + 2); {
	case k < len(t.task.Marks):
		c.mark = t.task.Marks[k].Mark
	case k == len(t.task.Marks):
		o := t.paints[r.IntN(len(t.paints))]
		c.mark = t.layout.Stands[o[0]].Nucs[o[1]].Mark
		to = append(to, t.marked(o[0], o[1], t.layout.Stands[at[0]].Nucs[at[1]].Mark))
	}
	return append(to, c)
}

// carried is a stand set a little further, far away, or back where it was.
func (t *trial) carried(r *rand.Rand, stand int) change {
	s, was := &t.layout.Stands[stand], &t.was.Stands[stand]
	c := change{stand: stand, nuc: -1, at: was.At, turn: s.Turn}
	switch k := r.IntN(8); {
	case k == 0 && !t.fresh(stand):
	case k <= 1:
		c.at = t.anywhere(r)
	default:
		d := nearest * math.Pow(furthest/nearest, r.Float64())
		sin, cos := math.Sincos(r.Float64() * 2 * math.Pi)
		c.at = staked(s.At.X+d*cos, s.At.Y+d*sin)
	}
	return c
}

// anywhere is a point on the ground where places are looked for.
func (t *trial) anywhere(r *rand.Rand) book.Point {
	w, h := t.task.High.X-t.task.Low.X, t.task.High.Y-t.task.Low.Y
	return staked(t.task.Low.X+r.Float64()*w, t.task.Low.Y+r.Float64()*h)
}

// How far in metres a stand is carried in one step.
const nearest, furthest = 0.2, 10.0

// staked is a point to a tenth of a metre: finer cannot be staked out by tape.
func staked(x, y float64) book.Point {
	const fine = 10
	return book.Point{X: math.Round(x*fine) / fine, Y: math.Round(y*fine) / fine}
}

// exchanged are two stands in each other's place.
func (t *trial) exchanged(a, b int, to []change) []change {
	s, o := &t.layout.Stands[a], &t.layout.Stands[b]
	return append(to, change{stand: a, nuc: -1, at: o.At, turn: s.Turn}, change{stand: b, nuc: -1, at: s.At, turn: o.Turn})
}
