package course

import "math"

// Day is what one day does to a nuc: from every state the states it may come
// to, with the chance of each. It is made by [Model.Day] and may be shared.
type Day struct{ from [states][]way }

type way struct {
	to int32
	p  float64
}

// Day is what a day with so many hours fit for mating flights does, where the
// loss of a fit hour is the usual one times a factor of the yard (1 the usual).
// In the day, in this order: laying queens end, mated ones begin to lay,
// virgins die at home, fly and are mated or lost, and turn drone layers.
func (m *Model) Day(hours, yard float64) *Day {
	d := &Day{*m.any()}
	ways := make([]way, 0, 2*(waitDays+flyDays)*flightWays)
	put := func(at int, of [flightWays]way) {
		begin := len(ways)
		ways = appendWays(ways, of[:]...)
		d.from[at] = ways[begin:len(ways):len(ways)]
	}
	for _, l := range []line{given, own} {
		for age := range waitDays {
			put(l.waits+age, m.waiting(l, age, hours, yard))
		}
		for age := range flyDays {
			put(l.flies+age, m.flight(l, age, hours, yard, 1))
		}
	}
	return d
}

// appendWays adds the ways that are gone at all.
func appendWays(all []way, more ...way) []way {
	for _, w := range more {
		if w.p > 0 {
			all = append(all, w)
		}
	}
	return all
}

// anyDay are the ways from all states but those of virgins, to which a day does the same
// whatever its hours.
func (m *Model) anyDay() *[states][]way {
	var from [states][]way
	put := func(at int, ways ...way) { from[at] = appendWays(nil, ways...) }
	for _, l := range []line{given, own} {
		m.cells(l, put)
		m.matedDays(l, put)
		m.laying(l, put)
	}
	m.queenless(put)
	return &from
}

// cells: a queen may walk at any hour of her day, and is half a day old at its
// end on the average.
func (m *Model) cells(l line, put func(int, ...way)) {
	put(l.cell, way{int32(l.waits), 0.5}, way{int32(l.waits + 1), 0.5})
	for day := 1; day < cellDays; day++ {
		put(l.cell+day, way{int32(l.cell + day - 1), 1})
	}
}

// waiting is the day of a virgin too young to fly: she flies from it on, or waits.
func (m *Model) waiting(l line, age int, hours, yard float64) [flightWays]way {
	flies := m.starts[age]
	ways := m.flight(l, age, hours, yard, flies)
	if flies < 1 {
		home, drones := (1-flies)*(1-m.dies), 0.0
		if age >= m.late {
			drones = m.drones
		}
		ways[0].p += (1 - flies) * m.dies
		ways[3].p += home * drones
		ways[4] = way{int32(l.waits + min(age+1, waitDays-1)), home * (1 - drones)}
	}
	return ways
}

// flightWays are how many ways a virgin's day may go at most: she is lost, mated, flies on,
// turns drone layer, or still waits.
const flightWays = 5

// flight is the day of a virgin old enough to fly, times a share.
func (m *Model) flight(l line, age int, hours, yard, share float64) [flightWays]way {
	e := hours * m.fit[age]
	lost := m.lost * yard
	away := leaves((m.mated + lost) * e)
	mated := 0.0
	if away > 0 {
		mated = away * m.mated / (m.mated + lost)
	}
	home := (1 - m.dies) * (1 - away)
	var drones float64
	if age >= m.late {
		drones = m.drones
	}
	return [flightWays]way{
		{bare, share * (m.dies + (1-m.dies)*(away-mated))},
		{int32(l.mated), share * (1 - m.dies) * mated},
		{int32(l.flies + min(age+1, flyDays-1)), share * home * (1 - drones)},
		{drone, share * home * drones},
	}
}

func (m *Model) matedDays(l line, put func(int, ...way)) {
	for day := range lagDays {
		h := m.lays[day]
		if day == lagDays-1 {
			h = 1
		}
		put(l.mated+day, way{int32(l.lays), h}, way{int32(l.mated + min(day+1, lagDays-1)), 1 - h})
	}
}

// laying: a queen who is lost leaves young brood, on which the nuc may raise
// one of its own.
func (m *Model) laying(l line, put func(int, ...way)) {
	for day := range layDays {
		ways := []way{{int32(l.lays + min(day+1, layDays-1)), 1 - m.ends}, {int32(m.brood), m.ends * (1 - m.raised)}}
		for i, s := range m.ownOut {
			ways = append(ways, way{int32(own.cell + i), m.ends * m.raised * s})
		}
		put(l.lays+day, ways...)
	}
}

func (m *Model) queenless(put func(int, ...way)) {
	for day := range noneDays {
		h := math.Min(m.turns[day], 1)
		put(none+day, way{int32(none + min(day+1, noneDays-1)), 1 - h}, way{workers, h})
	}
	for day := range droneDays {
		put(drone+day, way{int32(drone + min(day+1, droneDays-1)), 1})
	}
	for day := range workerDays {
		put(workers+day, way{int32(workers + min(day+1, workerDays-1)), 1})
	}
}

// After is the belief at the start of the next day.
func (b *Belief) After(d *Day) (next Belief) {
	for i, p := range b.p {
		if p == 0 {
			continue
		}
		for _, w := range d.from[i] {
			next.p[w.to] += p * w.p
		}
	}
	return next
}

// before carries weights of tomorrow's states back to those of today: what each
// state of today makes probable of tomorrow.
func (d *Day) before(next *[states]float64) (weights [states]float64) {
	for i := range weights {
		for _, w := range d.from[i] {
			weights[i] += w.p * next[w.to]
		}
	}
	return weights
}
