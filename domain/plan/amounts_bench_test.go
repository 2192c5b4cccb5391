package plan_test

import (
	"fmt"
	"testing"

	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// BenchmarkQueens answers what one graft of 96 gives, two that share nucs, and four
// of 200 with 320 nucs and with 150 more each, and three of 600 with 550. A keeper should
// not wait: 50 ms for one, 300 ms for several, a second for the largest. The floor of
// several: [BenchmarkSharedFloor].
func BenchmarkQueens(b *testing.B) {
	r := plan.DefaultRates(practice.Numbers{})
	for name, grafts := range map[string][]plan.Graft{
		"one-of-96":             {{Larvae: 96, Nucs: 64}},
		"two-that-share":        {{Larvae: 80, Nucs: 72}, {Larvae: 60}},
		"four-of-200":           {{Larvae: 200, Nucs: 320}, {Larvae: 200}, {Larvae: 200}, {Larvae: 200}},
		"four-of-200-more-nucs": {{Larvae: 200, Nucs: 150}, {Larvae: 200, Nucs: 150}, {Larvae: 200, Nucs: 150}, {Larvae: 200, Nucs: 150}},
		"three-of-600":          {{Larvae: 600, Nucs: 550}, {Larvae: 600}, {Larvae: 600}},
	} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				r.Queens(grafts...)
			}
		})
	}
}

// BenchmarkQueensFloor is the least that one graft can cost: each link as one
// thinning of a full number, n²/2 products each, for seven links.
func BenchmarkQueensFloor(b *testing.B) {
	for _, n := range []int{96, 200} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			of := make([]float64, n+1)
			for b.Loop() {
				for range 7 {
					for i := range of {
						for k := range of[:i] {
							of[k] += 0.5 * of[i]
						}
					}
				}
			}
		})
	}
}

// BenchmarkSharedFloor is the least that three grafts which share 550 nucs can cost: the
// chances of two go into each other by how many nucs are free, once for each of 276
// frequencies and of 20 sets of rates; it does one set at one frequency.
func BenchmarkSharedFloor(b *testing.B) {
	ripe, after := make([]complex128, 551), make([]complex128, 551)
	for b.Loop() {
		for free := range after {
			var sum complex128
			for placed := range ripe[:free] {
				sum += ripe[placed] * after[free-placed]
			}
			after[free] = sum / 551
		}
	}
}

// BenchmarkLarvae finds how many larvae 40 queens need, and what is nearest where no
// number is enough. Its floor is ten answers of one graft.
func BenchmarkLarvae(b *testing.B) {
	r := plan.DefaultRates(practice.Numbers{})
	for name, sure := range map[string]float64{"enough": 0.60, "never-enough": 0.95} {
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				r.Larvae(40, sure, 80)
			}
		})
	}
}

// BenchmarkRaises tells what raises the chance of 40 most.
func BenchmarkRaises(b *testing.B) {
	r := plan.DefaultRates(practice.Numbers{})
	for b.Loop() {
		r.Raises(40, 0.1, plan.Graft{Larvae: 96, Nucs: 64})
	}
}

// An answer is asked for while a number is dragged: it leaves little behind. The
// chances after each link and the nodes of two rates are all that is kept.
func TestAnAnswerLeavesLittleBehind(t *testing.T) {
	r := plan.DefaultRates(practice.Numbers{})
	if n := testing.AllocsPerRun(20, func() { r.Queens(plan.Graft{Larvae: 96, Nucs: 64}) }); n > 170 {
		t.Errorf("%v allocations for one graft, want 170 at most", n)
	}
}
