package siting

import (
	"lidmark/domain/book"
	"lidmark/domain/yard"
)

// trial is a layout that is changed step by step, with what it costs kept along: only
// the doors that a change touches are reckoned anew.
type trial struct {
	*plot
	layout           yard.Layout
	order            []int // stands as they are walked; it is not changed, but another taken
	virgins, workers *yard.Homing
	first            []int     // by stand: its first door
	loss, drift      []float64 // by door, in queens
	effort           []float64 // by stand, in queens
	faults           []Faults  // by stand
	before, after    []int     // by stand: its neighbours in the walk, -1 where it begins and ends
	used             []int     // by mark to hand: fronts that are painted with it
	queens           float64   // with what the faults weigh

	which, changed []int // memory that is used again
	doors          []yard.Door
}

// newTrial is a layout whose stands are walked in an order; none: the walk is not
// counted.
func newTrial(p *plot, l yard.Layout, order []int) *trial {
	doors := l.Doors(p.apart)
	t := &trial{
		plot: p, layout: l.Clone(), order: order, loss: make([]float64, len(doors)), drift: make([]float64, len(doors)),
		virgins: yard.HomingOf(doors, yard.VirginKernel(p.numbers)), workers: yard.HomingOf(l.Doors(p.apart), yard.WorkerKernel(p.numbers)),
		effort: make([]float64, len(l.Stands)), faults: make([]Faults, len(l.Stands)), used: make([]int, len(p.task.Marks)),
	}
	at := 0
	for i := range l.Stands {
		t.first = append(t.first, at)
		at += len(l.Stands[i].Nucs)
		for k := range l.Stands[i].Nucs {
			t.count(i, k, 1)
		}
	}
	t.link()
	t.resum()
	return t
}

// walkAnew takes a shorter order of the walk where there is one.
func (t *trial) walkAnew() {
	if order := t.walk(t.layout); t.length(t.layout, order) < t.length(t.layout, t.order)-tiny {
		t.order = order
		t.link()
		t.resum()
	}
}

// link makes a chain of the walk.
func (t *trial) link() {
	t.before, t.after = make([]int, len(t.layout.Stands)), make([]int, len(t.layout.Stands))
	last := -1
	for _, i := range t.order {
		t.before[i], t.after[i] = last, -1
		if last >= 0 {
			t.after[last] = i
		}
		last = i
	}
}

// resum reckons all sums anew, so that small errors do not gather.
func (t *trial) resum() {
	t.queens = 0
	for i := range t.loss {
		t.loss[i], t.drift[i] = t.lossAt(i), t.driftAt(i)
		t.queens += t.loss[i] + t.drift[i]
	}
	for i := range t.effort {
		t.effort[i] = t.effortAt(i)
		t.faults[i] = t.faultsAt(&t.layout.Stands[i])
		t.queens += t.effort[i] + t.weight(t.faults[i])
	}
	if len(t.order) > 0 {
		for _, i := range t.order {
			t.queens += t.leg(t.before[i], i)
		}
		t.queens += t.leg(t.order[len(t.order)-1], -1)
	}
}

func (t *trial) lossAt(door int) float64 {
	d := &t.virgins.Doors()[door]
	if d.Colony {
		return 0
	}
	flies := t.layout.Stands[d.Stand].Nucs[d.Nuc].Virgins
	if flies == 0 {
		return 0
	}
	p, lost := &t.task.Prices, t.layout.Lost(t.virgins, door)
	return flies * (p.Lost*lost + p.Stays*(t.virgins.Wrong(door)-lost))
}

func (t *trial) driftAt(door int) float64 {
	if t.workers.Doors()[door].Colony {
		return 0
	}
	return t.task.Prices.Drift * t.workers.Wrong(door)
}

func (t *trial) effortAt(stand int) float64 {
	var b Bill
	t.work(&b, stand, &t.layout.Stands[stand])
	return b.Minutes * t.task.Prices.Minute
}

// leg is the walk from a stand to the next, in queens; -1 is where it begins.
func (t *trial) leg(a, b int) float64 {
	return t.task.Prices.Rounds * t.task.Prices.metres(far(t.spot(a), t.spot(b)))
}

func (t *trial) spot(stand int) book.Point {
	if stand < 0 {
		return t.task.From
	}
	return t.layout.Stands[stand].At
}

func (t *trial) legs(stand int) float64 {
	if len(t.order) == 0 {
		return 0
	}
	return t.leg(t.before[stand], stand) + t.leg(stand, t.after[stand])
}

// put sets a stand elsewhere or turns it.
func (t *trial) put(stand int, at book.Point, turn float64) {
	s := &t.layout.Stands[stand]
	t.queens -= t.legs(stand) + t.weight(t.faults[stand])
	s.At, s.Turn = at, turn
	t.faults[stand] = t.faultsAt(s)
	t.queens += t.legs(stand) + t.weight(t.faults[stand])
	t.which = t.which[:0]
	for k := range s.Nucs {
		t.which = append(t.which, t.first[stand]+k)
	}
	t.again(stand)
}

// set marks a front and turns its box on its place.
func (t *trial) set(stand, nuc int, m yard.Mark, bearing float64) {
	n := &t.layout.Stands[stand].Nucs[nuc]
	t.count(stand, nuc, -1)
	turned := n.Bearing != bearing
	n.Mark, n.Bearing = m, bearing
	t.count(stand, nuc, 1)
	if turned { // it may face the wind now
		t.queens -= t.weight(t.faults[stand])
		t.faults[stand] = t.faultsAt(&t.layout.Stands[stand])
		t.queens += t.weight(t.faults[stand])
	}
	t.which = append(t.which[:0], t.first[stand]+nuc)
	t.again(stand)
}

// count keeps how many fronts are painted with each mark.
func (t *trial) count(stand, nuc, by int) {
	m := t.layout.Stands[stand].Nucs[nuc].Mark
	if m == t.was.Stands[stand].Nucs[nuc].Mark {
		return
	}
	for i := range t.task.Marks {
		if t.task.Marks[i].Mark == m {
			t.used[i] += by
			return
		}
	}
}

// again reckons anew what the doors in which touch, and the work at their stand.
func (t *trial) again(stand int) {
	t.doors = t.doors[:0]
	for _, i := range t.which {
		t.doors = append(t.doors, t.layout.Door(stand, i-t.first[stand], t.apart))
	}
	t.hold(t.which, t.doors)
	t.queens -= t.effort[stand]
	t.effort[stand] = t.effortAt(stand)
	t.queens += t.effort[stand]
}

// hold puts doors anew.
func (t *trial) hold(which []int, to []yard.Door) {
	t.changed = t.virgins.SetAll(which, to, t.changed)
	for _, i := range t.changed {
		t.queens -= t.loss[i]
		t.loss[i] = t.lossAt(i)
		t.queens += t.loss[i]
	}
	t.changed = t.workers.SetAll(which, to, t.changed)
	for _, i := range t.changed {
		t.queens -= t.drift[i]
		t.drift[i] = t.driftAt(i)
		t.queens += t.drift[i]
	}
}
