package plan

import "math"

// beta is the distribution of a share. A zero share of either side, or a weight
// without bound, makes it one point.
type beta struct {
	mean, weight float64 // weight: of how many trials it is as sure as
}

func (b beta) point() bool {
	return math.IsInf(b.weight, 1) || b.mean <= 0 || b.mean >= 1
}

// known is what is known of the keeper's rate.
func (r Rate) known() beta { return beta{min(1, max(0, r.Mean())), max(r.Weight+r.Tried, leastWeight)} }

// leastWeight keeps a beta from falling apart into none and all.
const leastWeight = 0.1

// batches is how the share of a batch is spread where the keeper's rate is so
// much. How strongly batches differ is fixed at the mean of the rate, so that a
// rate near none or all has less room to stray, as it must.
func (r Rate) batches(rate float64) beta {
	m := r.Mean()
	spread := m * (1 - m)
	if r.Luck <= 0 || spread <= 0 {
		return beta{rate, math.Inf(1)}
	}
	return beta{rate, max(spread/(r.Luck*r.Luck)-1, leastWeight)}
}

// node is a share and the weight it has in a sum that stands for an integral.
type node struct{ at, weight float64 }

// nodes are n shares with weights that sum to one: sums over them are the mean over
// the distribution, exact for polynomials of a degree below 2n (Gauss-Jacobi
// quadrature: Golub & Welsch 1969, Math Comp 23:221-230; the recurrence is that of
// the Jacobi polynomials, Abramowitz & Stegun 22.7, moved to 0 to 1).
func (b beta) nodes(n int) []node {
	if b.point() {
		return []node{{b.mean, 1}}
	}
	return b.recurrence(n).nodes()
}

// recurrence are the terms a and b of monic polynomials each of which is
// (x - a) times the one before less b times the one before that.
type recurrence struct{ a, b []float64 }

func (b beta) recurrence(n int) recurrence {
	p, q := (1-b.mean)*b.weight-1, b.mean*b.weight-1 // exponents of 1-x and x
	r := recurrence{make([]float64, n), make([]float64, n)}
	r.a[0] = b.mean
	for i := 1; i < n; i++ {
		k := float64(i)
		s := 2*k + p + q
		r.a[i] = (1 + (q*q-p*p)/(s*(s+2))) / 2
		r.b[i] = k * (k + p) * (k + q) * (k + p + q) / (s * s * (s + 1) * (s - 1))
		if i == 1 { // k+p+q and s-1 are the same, and may both be none
			r.b[i] = (1 + p) * (1 + q) / (s * s * (s + 1))
		}
	}
	return r
}

// nodes are the zeros of the last polynomial, found between those of the one before
// it, with the weights that go with them.
func (r recurrence) nodes() []node {
	var zeros []float64
	for n := 1; n <= len(r.a); n++ {
		between := append(append([]float64{0}, zeros...), 1)
		zeros = zeros[:0:0]
		for i := 1; i < len(between); i++ {
			zeros = append(zeros, r.zero(n, between[i-1], between[i]))
		}
	}
	all := make([]node, len(zeros))
	for i, x := range zeros {
		all[i] = node{x, 1 / r.squares(x)}
	}
	return all
}

// zero is the zero of the n-th polynomial between two shares, by halving.
func (r recurrence) zero(n int, low, high float64) float64 {
	below := r.value(n, low) < 0
	for range halvings {
		if at := (low + high) / 2; (r.value(n, at) < 0) == below {
			low = at
		} else {
			high = at
		}
	}
	return (low + high) / 2
}

// halvings find a share to the last digit that a float64 has.
const halvings = 54

// value is the n-th polynomial at x.
func (r recurrence) value(n int, x float64) float64 {
	was, is := 0.0, 1.0
	for k := range n {
		was, is = is, (x-r.a[k])*is-r.b[k]*was
	}
	return is
}

// squares is the sum of the squares of the polynomials at x, each made to have a
// mean square of one.
func (r recurrence) squares(x float64) (sum float64) {
	was, is, norm := 0.0, 1.0, 1.0
	for k := range r.a {
		if k > 0 {
			norm *= r.b[k]
		}
		sum += is * is / norm
		was, is = is, (x-r.a[k])*is-r.b[k]*was
	}
	return sum
}

// fewer are n nodes that stand for many, as exactly as so few can (the polynomials
// of the many are built up one by one: the procedure of Stieltjes, Gautschi 1982,
// SIAM J Sci Stat Comput 3:289-317).
func fewer(many []node, n int) []node {
	if len(many) <= n {
		return many
	}
	r := recurrence{make([]float64, n), make([]float64, n)}
	norm := 1.0
	for k := range n {
		var square, first float64
		for _, m := range many {
			v := r.value(k, m.at)
			square += m.weight * v * v
			first += m.weight * v * v * m.at
		}
		r.a[k], r.b[k] = first/square, square/norm
		norm = square
	}
	r.b[0] = 0
	return r.nodes()
}
