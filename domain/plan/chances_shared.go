package plan

import (
	"math"
	"math/cmplx"

	"lidmark/domain/spread"
)

// Several grafts for one promise share the keeper's rates and the nucs. Given the
// rates they differ only in their luck, so the whole is an integral over the rates of
// what is exact for each of them. Of the rates only those are integrated over that
// do not come out of it: the share of grafts that work, the take, what ripens, and
// mating. The others thin all queens alike and without luck; that is done at the
// end, for all grafts together and in closed form.
//
// For rates that are known the chances of the sum come from its characteristic
// function: at each of its frequencies the grafts are gone through from the last to
// the first, by how many nucs are free.

// shared are the chances of what some grafts give together.
func (r Rates) shared(grafts []Graft, f fine) []float64 {
	p := promise{
		rearings: r.rearings(grafts, f),
		works:    r.Link[GraftWorks].known().nodes(f.works), // exact for fewer than 2 × works grafts
	}
	for _, turn := range turnsOf(grafts) {
		p.turns = append(p.turns, waysOf(turn))
		p.most += p.turns[len(p.turns)-1].most
	}
	laying := r.Link[LayingOfAccepted].known().nodes(f.laying)
	half := (p.most+1)/2 + 1
	values := make([]complex128, len(laying)*half)
	spread.Singly(len(values), func(i int) {
		l := laying[i/half]
		values[i] = complex(l.weight, 0) * p.value(r.Link[LayingOfAccepted].batches(l.at), turn(i%half, p.most+1))
	})
	for i := half; i < len(values); i++ {
		values[i%half] += values[i]
	}
	of := backwards(values[:half], p.most+1)
	for _, l := range r.after() {
		if l != LayingOfAccepted {
			of = r.thinning(l).of(of)
		}
	}
	return of
}

// turn is the i-th of n points around the unit circle.
func turn(i, n int) complex128 { return cmplx.Rect(1, 2*math.Pi*float64(i)/float64(n)) }

// backwards are the n chances whose characteristic function has these values at the
// first half of its frequencies; at the others it has their conjugates. What comes out below
// nothing by rounding is nothing, and the rest is less by as much, so that the sum stays that of
// the values.
func backwards(values []complex128, n int) []float64 {
	of, all := make([]float64, n), 0.0
	for k := range of {
		sum := real(values[0])
		for i := 1; i < len(values); i++ {
			part := 2 * real(values[i]*turn(-(i*k)%n, n))
			if 2*i == n {
				part /= 2
			}
			sum += part
		}
		of[k] = max(0, sum/float64(n))
		all += of[k]
	}
	if all > 0 {
		for k := range of {
			of[k] *= real(values[0]) / all
		}
	}
	return of
}

// ways is how many nucs can be free at each graft.
type ways struct {
	grafts    []Graft
	low, high []int // free at a graft, at least and at most
	enough    []int // with so many free no graft from this one on lacks any
	most      int   // queens in all
}

func waysOf(grafts []Graft) ways {
	n := len(grafts)
	w := ways{grafts, make([]int, n), make([]int, n), make([]int, n+1), 0}
	for g := n - 1; g >= 0; g-- {
		w.enough[g] = w.enough[g+1] + grafts[g].Larvae
	}
	low, high := 0, 0
	for g, graft := range grafts {
		w.low[g], w.high[g] = low+graft.Nucs, high+graft.Nucs
		low, high = max(0, w.low[g]-graft.Larvae), w.high[g]
	}
	w.most = min(w.enough[0], w.high[n-1])
	return w
}

// promise is some grafts and the rates over which is integrated. Given the rates, what
// one turn of the nucs gives does not hang on what another gives.
type promise struct {
	turns    []ways
	most     int // queens in all
	rearings []rearing
	works    []node
}

// turnsOf are the grafts by the turns in which they have the nucs.
func turnsOf(grafts []Graft) (turns [][]Graft) {
	from := 0
	for g := range grafts {
		if g > from && grafts[g].Again {
			turns, from = append(turns, grafts[from:g]), g
		}
	}
	return append(turns, grafts[from:])
}

// value is the characteristic function of the queens of all grafts at a point of the
// unit circle, for one share of queens who lay.
func (p promise) value(laying beta, z complex128) (sum complex128) {
	var turns []*backward
	for _, w := range p.turns {
		b := w.backward()
		for g, graft := range w.grafts {
			b.queens[g] = laying.queens(min(w.high[g], graft.Larvae), (z-1)*complex(1-min(1, graft.Late), 0))
		}
		turns = append(turns, b)
	}
	for _, k := range p.rearings {
		first := 0
		for _, b := range turns {
			b.reared(k, first)
			first += len(b.grafts)
		}
		for _, w := range p.works {
			of := complex(k.weight*w.weight, 0)
			for _, b := range turns {
				of *= b.value(w.at)
			}
			sum += of
		}
	}
	return sum
}

// queens are, for 0 to n that are placed, the mean of (1 + share × x) to the power of
// how many are placed: the generating function of those who lay, less one. For a
// beta it is a hypergeometric function; each follows from the two before it
// (Abramowitz & Stegun 15.2.10).
func (b beta) queens(n int, x complex128) []complex128 {
	of := make([]complex128, n+1)
	of[0] = 1
	if n == 0 {
		return of
	}
	of[1] = 1 + complex(b.mean, 0)*x
	for k := 1; k < n; k++ {
		if b.point() {
			of[k+1] = of[k] * of[1]
			continue
		}
		at, won, part := float64(k), b.mean*b.weight, complex(1/(b.weight+float64(k)), 0)
		of[k+1] = part * ((complex(2*at+b.weight, 0)+complex(won+at, 0)*x)*of[k] - complex(at, 0)*(1+x)*of[k-1])
	}
	return of
}
