package siting

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

// Bill is what a layout costs, with the work to get there.
type Bill struct {
	Lost    float64 // virgins who end where a queen is
	Stay    float64 // virgins who end at a wrong door and stay there
	Drift   float64 // workers at a wrong door, 0 to 1, the mean of the nucs
	Round   float64 // m, walked past all stands and back
	Carried int     // nucs that are carried
	Turned  int     // nucs that are turned where they stand
	Painted int     // fronts that are painted
	Metres  float64 // that nucs are carried, in all
	Minutes float64 // of work to get there
	Queens  float64 // all of it but faults
	Faults  Faults  // which come before all that
	Worth   float64 // what is searched: the queens and what the faults weigh
}

// bill reckons a layout anew, against how the boxes stood, walked in an order.
func (p *plot) bill(l yard.Layout, order []int, n practice.Numbers) Bill {
	doors := l.Doors(p.apart)
	virgins, workers := yard.HomingOf(doors, yard.VirginKernel(n)), yard.HomingOf(doors, yard.WorkerKernel(n))
	var b Bill
	for i, d := range doors {
		if d.Colony {
			continue
		}
		own := &l.Stands[d.Stand].Nucs[d.Nuc]
		lost := l.Lost(virgins, i)
		b.Lost += own.Virgins * lost
		b.Stay += own.Virgins * (virgins.Wrong(i) - lost)
		b.Drift += workers.Wrong(i)
	}
	pr := &p.task.Prices
	b.Queens = pr.Lost*b.Lost + pr.Stays*b.Stay + pr.Drift*b.Drift
	b.Drift /= float64(max(1, l.Nucs()))
	for i := range l.Stands {
		p.work(&b, i, &l.Stands[i])
		b.Faults.add(p.faultsAt(&l.Stands[i]))
	}
	b.Round = p.length(l, order)
	b.Queens += b.Minutes*pr.Minute + pr.Rounds*pr.metres(b.Round)
	b.Worth = b.Queens + p.weight(b.Faults)
	return b
}

// length is how long the walk is in metres.
func (p *plot) length(l yard.Layout, order []int) (sum float64) {
	at := p.task.From
	for _, i := range order {
		sum, at = sum+far(at, l.Stands[i].At), l.Stands[i].At
	}
	return sum + far(at, p.task.From)
}

// work adds what it takes to set a stand as it is to be.
func (p *plot) work(b *Bill, i int, s *yard.Stand) {
	pr, was := &p.task.Prices, &p.was.Stands[i]
	nucs, painted, faced := max(1, len(s.Nucs)), otherwise(s, was, markOf), otherwise(s, was, bearingOf)
	b.Painted += painted
	if p.free(i) {
		return
	}
	b.Turned += faced
	switch {
	case s.At != was.At:
		b.Carried += nucs
		d := float64(nucs) * far(s.At, was.At)
		b.Metres += d
		b.Minutes += float64(nucs) * pr.Carry
		if pr.Walk > 0 {
			b.Minutes += 2 * d / pr.Walk // and back
		}
	case s.Turn != was.Turn:
		b.Turned += nucs
		b.Minutes += float64(nucs) * pr.Turn
	}
	b.Minutes += float64(painted)*pr.Paint + float64(faced)*pr.Turn
}

// otherwise is of how many nucs on a stand something is otherwise than it was.
func otherwise[T comparable](s, was *yard.Stand, of func(*yard.Nuc) T) (n int) {
	for k := range s.Nucs {
		if of(&s.Nucs[k]) != of(&was.Nucs[k]) {
			n++
		}
	}
	return n
}

func markOf(n *yard.Nuc) yard.Mark  { return n.Mark }
func bearingOf(n *yard.Nuc) float64 { return n.Bearing }

func far(a, b book.Point) float64 { return math.Hypot(a.X-b.X, a.Y-b.Y) }
