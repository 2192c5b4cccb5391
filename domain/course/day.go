package course

import "math"

// Day is what one day does to a nuc: from every state the states it may come
// to, with the chance of each. It is made by [Model.Day] and may be shared.
type Day struct {
	first [states + 1]int32
	ways  []way
}

type way struct {
	to int32
	p  float64
}

// Day is what a day with so many hours fit for mating flights does, where the
// loss of a fit hour is the usual one times a factor of the yard (1 the usual).
// In the day, in this order: laying queens end, mated ones begin to lay,
// virgins die at home, fly and are mated or lost, and turn drone layers.
func (m *Model) Day(hours, yard float64) *Day {
	d := &Day{ways: make([]way, 0, 2*states)}
	at := 0
	from := func(ways ...way) {
		d.first[at] = int32(len(d.ways))
		for _, w := range ways {
			if w.p > 0 {
				d.ways = append(d.ways, w)
			}
		}
		at++
	}
	for _, l := range []line{given, own} {
		m.cells(l, from)
		m.waiting(l, hours, yard, from)
		m.flying(l, hours, yard, from)
		m.matedDays(l, from)
		m.laying(l, from)
	}
	m.queenless(from)
	d.first[states] = int32(len(d.ways))
	return d
}

// cells: a queen may walk at any hour of her day, and is half a day old at its
// end on the average.
func (m *Model) cells(l line, from func(...way)) {
	from(way{int32(l.waits), 0.5}, way{int32(l.waits + 1), 0.5})
	for day := 1; day < cellDays; day++ {
		from(way{int32(l.cell + day - 1), 1})
	}
}

func (m *Model) waiting(l line, hours, yard float64, from func(...way)) {
	for age := range waitDays {
		flies := m.starts[age]
		ways := m.flight(l, age, hours, yard, flies)
		if flies < 1 {
			home, drones := (1-flies)*(1-m.dies), 0.0
			if age >= m.late {
				drones = m.drones
			}
			ways = append(ways, way{int32(l.waits + min(age+1, waitDays-1)), home * (1 - drones)})
			ways[0].p += (1 - flies) * m.dies
			ways[3].p += home * drones
		}
		from(ways...)
	}
}

func (m *Model) flying(l line, hours, yard float64, from func(...way)) {
	for age := range flyDays {
		from(m.flight(l, age, hours, yard, 1)...)
	}
}

// flight is the day of a virgin old enough to fly, times a share.
func (m *Model) flight(l line, age int, hours, yard, share float64) []way {
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
	return []way{
		{bare, share * (m.dies + (1-m.dies)*(away-mated))},
		{int32(l.mated), share * (1 - m.dies) * mated},
		{int32(l.flies + min(age+1, flyDays-1)), share * home * (1 - drones)},
		{drone, share * home * drones},
	}
}

func (m *Model) matedDays(l line, from func(...way)) {
	for day := range lagDays {
		h := m.lays[day]
		if day == lagDays-1 {
			h = 1
		}
		from(way{int32(l.lays), h}, way{int32(l.mated + min(day+1, lagDays-1)), 1 - h})
	}
}

// laying: a queen who is lost leaves young brood, on which the nuc may raise
// one of its own.
func (m *Model) laying(l line, from func(...way)) {
	for day := range layDays {
		ways := []way{{int32(l.lays + min(day+1, layDays-1)), 1 - m.ends}, {int32(m.brood), m.ends * (1 - m.raised)}}
		for i, s := range m.ownOut {
			ways = append(ways, way{int32(own.cell + i), m.ends * m.raised * s})
		}
		from(ways...)
	}
}

func (m *Model) queenless(from func(...way)) {
	for day := range noneDays {
		h := math.Min(m.turns[day], 1)
		from(way{int32(none + min(day+1, noneDays-1)), 1 - h}, way{workers, h})
	}
	for day := range droneDays {
		from(way{int32(drone + min(day+1, droneDays-1)), 1})
	}
	for day := range workerDays {
		from(way{int32(workers + min(day+1, workerDays-1)), 1})
	}
}

// After is the belief at the start of the next day.
func (b *Belief) After(d *Day) (next Belief) {
	for i, p := range b.p {
		if p == 0 {
			continue
		}
		for _, w := range d.ways[d.first[i]:d.first[i+1]] {
			next.p[w.to] += p * w.p
		}
	}
	return next
}

// before carries weights of tomorrow's states back to those of today: what each
// state of today makes probable of tomorrow.
func (d *Day) before(next *[states]float64) (weights [states]float64) {
	for i := range weights {
		for _, w := range d.ways[d.first[i]:d.first[i+1]] {
			weights[i] += w.p * next[w.to]
		}
	}
	return weights
}
