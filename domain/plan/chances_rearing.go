package plan

import (
	"math"
	"slices"
)

// fine is over how many nodes the keeper's rates are integrated.
type fine struct {
	take, ripe int // each on its own
	reared     int // both together
	works      int // exact for fewer than twice so many grafts
	laying     int
}

// usual is as fine as it has to be: a test shows that more nodes change no chance
// by 1e-4.
var usual = fine{take: 8, ripe: 4, reared: 5, works: 2, laying: 4}

// rough costs a fifth of it, and is near enough to know where to look.
var rough = fine{take: 4, ripe: 2, reared: 2, works: 2, laying: 2}

// rearing is one set of the keeper's rates up to the nuc, with the weight it has: by
// graft, the chances of so many ripe ones, and of so many or more.
type rearing struct {
	ripe, tail [][]float64
	weight     float64
}

// rearings are sets that stand for the distribution of these rates. What comes of
// them later hangs, all but for a trace, on their product alone: sets of like
// products are put together at a few nodes of the product, each shared out among
// these as a polynomial through them has it. So the mean over all sets stays what
// it is, and what grafts have in common is as exact as the nodes are.
func (r Rates) rearings(grafts []Graft, f fine) []rearing {
	var sets, products []node
	takes, ripes := r.Link[Taken].known().nodes(f.take), r.ripe(f)
	for _, take := range takes {
		for _, ripe := range ripes {
			products = append(products, node{take.at * ripe.at, take.weight * ripe.weight})
			sets = append(sets, take)
		}
	}
	few := fewer(products, f.reared)
	all := make([]rearing, len(few))
	for i := range all {
		all[i] = newRearing(grafts, few[i].weight)
	}
	sizes, ripen := bySize(grafts), make([]thin, len(ripes))
	for i, ripe := range ripes {
		ripen[i] = each(beta{ripe.at, math.Inf(1)}).keeping()
	}
	for s, set := range products {
		for _, like := range sizes {
			ripe := ripening(grafts[like[0]].Larvae, r.Link[Taken].batches(sets[s].at), ripen[s%len(ripen)])
			for i := range all {
				all[i].add(like[0], ripe, set.weight/few[i].weight*share(few, i, set.at))
			}
		}
	}
	for i := range all {
		all[i].sum(sizes)
	}
	return all
}

// share is the part of what is at x that the i-th node has: a polynomial that is 1
// there and none at the others (Lagrange).
func share(nodes []node, i int, x float64) float64 {
	part := 1.0
	for j, n := range nodes {
		if j != i {
			part *= (x - n.at) / (nodes[i].at - n.at)
		}
	}
	return part
}

// ripe are the nodes of what is left between the take and the nuc.
func (r Rates) ripe(f fine) []node {
	all := []node{{1, 1}}
	for _, l := range r.before()[1:] {
		var next []node
		for _, a := range all {
			for _, b := range r.Link[l].known().nodes(2 * f.ripe) {
				next = append(next, node{a.at * b.at, a.weight * b.weight})
			}
		}
		all = next
	}
	return fewer(all, f.ripe)
}

// ripening is how many of some larvae there are to be placed.
func ripening(larvae int, take beta, ripe thin) []float64 {
	taken := make([]float64, larvae+1)
	take.binomial(taken)
	return ripe.of(taken)
}

func newRearing(grafts []Graft, weight float64) rearing {
	r := rearing{make([][]float64, len(grafts)), make([][]float64, len(grafts)), weight}
	for g, graft := range grafts {
		r.ripe[g], r.tail[g] = make([]float64, graft.Larvae+1), make([]float64, graft.Larvae+2)
	}
	return r
}

func (r *rearing) add(g int, ripe []float64, share float64) {
	for n, p := range ripe {
		r.ripe[g][n] += share * p
	}
}

// sum adds up the tails, and gives grafts of one size what the first of them has.
func (r *rearing) sum(sizes [][]int) {
	for _, like := range sizes {
		ripe, tail := r.ripe[like[0]], r.tail[like[0]]
		for n := len(ripe) - 1; n >= 0; n-- {
			tail[n] = tail[n+1] + ripe[n]
		}
		for _, g := range like {
			r.ripe[g], r.tail[g] = ripe, tail
		}
	}
}

// bySize are the grafts that have as many larvae as each other.
func bySize(grafts []Graft) (all [][]int) {
	for g := range grafts {
		i := slices.IndexFunc(all, func(like []int) bool { return grafts[like[0]].Larvae == grafts[g].Larvae })
		if i < 0 {
			i, all = len(all), append(all, nil)
		}
		all[i] = append(all[i], g)
	}
	return all
}
