package plan

import (
	"fmt"
	"math"
	"testing"

	"lidmark/domain/practice"
)

// TestMoreNodesChangeNothing: no chance moves by 1e-4 when the keeper's rates are
// integrated over many more nodes, each on its own.
func TestMoreNodesChangeNothing(t *testing.T) {
	cells := DefaultRates(practice.Numbers{})
	cells.Laying = true
	virgins := cells
	virgins.Virgins = true
	finer := fine{take: 10, ripe: 6, reared: 10, works: 3, laying: 10}
	for _, r := range []Rates{cells, virgins} {
		for _, grafts := range [][]Graft{
			{{Larvae: 80, Nucs: 72}, {Larvae: 60}},
			{{Larvae: 40, Nucs: 20}, {Larvae: 30, Nucs: 10}},
			{{Larvae: 80, Nucs: 40}, {Larvae: 60, Nucs: 40, Late: 0.1}, {Larvae: 60, Late: 0.2}},
			{{Larvae: 60, Nucs: 100}, {Larvae: 60}, {Larvae: 60}, {Larvae: 60}},
		} {
			a, b := Chances{r.shared(grafts, usual)}, Chances{r.shared(grafts, finer)}
			within(t, fmt.Sprint(len(grafts), " grafts, finer"), a, b)
		}
		one := Graft{Larvae: 96, Nucs: 64}
		within(t, "one graft, as if several", r.Queens(one), Chances{r.shared([]Graft{one}, usual)})
	}
}

func within(t *testing.T, what string, a, b Chances) {
	t.Helper()
	for k := range max(a.Most(), b.Most()) + 1 {
		if d := math.Abs(a.AtLeast(k) - b.AtLeast(k)); d > 1e-4 {
			t.Errorf("%s: at least %d differs by %.1e", what, k, d)
		}
	}
}

// TestOneLinkHasNodesEnough: one link's integral moves by less than 1e-6 with five
// times the nodes.
func TestOneLinkHasNodesEnough(t *testing.T) {
	r := DefaultRates(practice.Numbers{}).Link[Taken]
	enter := make([]float64, 97)
	enter[96] = 1
	var finer thin
	for _, n := range r.known().nodes(5 * oneLink) {
		finer.parts = append(finer.parts, part{r.batches(n.at), n.weight})
	}
	a, b := Chances{r.thinning().of(enter)}, Chances{finer.of(enter)}
	for k := range 97 {
		if d := math.Abs(a.AtLeast(k) - b.AtLeast(k)); d > 1e-6 {
			t.Errorf("at least %d differs by %.1e", k, d)
		}
	}
}

// TestNodesHaveTheMoments: n nodes have the first 2n-1 moments of a beta, which are
// products of (a+i)/(a+b+i); also when they stand for many others.
func TestNodesHaveTheMoments(t *testing.T) {
	for _, b := range []beta{{0.8, 20}, {0.95, 20}, {0.5, 2}, {0.5, 1}, {0.9, 0.5}, {0.917, 200}} {
		for n := 1; n <= 8; n++ {
			moment := 1.0
			nodes, few := b.nodes(n), fewer(b.nodes(3*n), n)
			for power := range 2 * n {
				var sum, fewSum float64
				for i := range nodes {
					sum += nodes[i].weight * math.Pow(nodes[i].at, float64(power))
					fewSum += few[i].weight * math.Pow(few[i].at, float64(power))
				}
				if math.Abs(sum-moment) > 1e-10 || math.Abs(fewSum-moment) > 1e-8 {
					t.Errorf("%v, %d nodes: moment %d is %v and %v, want %v", b, n, power, sum, fewSum, moment)
				}
				moment *= (b.mean*b.weight + float64(power)) / (b.weight + float64(power))
			}
		}
	}
}
