package handover

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// Against trying every dealing there is: the units by taker are the greatest in
// the order of the takers, and the cost the least of all such dealings.
func TestMatchAgainstEveryDealing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want := rapid.SliceOfN(rapid.IntRange(0, 2), 1, 3).Draw(t, "want")
		have := rapid.SliceOfN(rapid.IntRange(0, 2), 1, 3).Draw(t, "have")
		cost := make([][]float64, len(want))
		for i := range cost {
			cost[i] = make([]float64, len(have))
			for k := range cost[i] {
				if c := rapid.IntRange(0, 6).Draw(t, "cost"); c == 6 {
					cost[i][k] = math.Inf(1)
				} else {
					cost[i][k] = float64(c)
				}
			}
		}
		m := matched(want, have, cost)
		gets, sum := totals(m.deal, cost)
		bestGets, bestSum := every(want, have, cost)
		if !slices.Equal(gets, bestGets) || math.Abs(sum-bestSum) > 1e-9 {
			t.Fatalf("dealt %v at %v, best is %v at %v", gets, sum, bestGets, bestSum)
		}
	})
}

func totals(deal [][]int, cost [][]float64) (gets []int, sum float64) {
	for i := range deal {
		n := 0
		for k, units := range deal[i] {
			if n += units; units > 0 {
				sum += float64(units) * cost[i][k]
			}
		}
		gets = append(gets, n)
	}
	return gets, sum
}

func every(want, have []int, cost [][]float64) (gets []int, least float64) {
	least = math.Inf(1)
	deal := make([][]int, len(want))
	for i := range deal {
		deal[i] = make([]int, len(have))
	}
	var try func(i, k int)
	try = func(i, k int) {
		if i == len(want) {
			g, sum := totals(deal, cost)
			if by := slices.Compare(g, gets); gets == nil || by > 0 || by == 0 && sum < least {
				gets, least = g, sum
			}
			return
		}
		if k == len(have) {
			try(i+1, 0)
			return
		}
		most := min(have[k], want[i])
		if math.IsInf(cost[i][k], 1) {
			most = 0
		}
		for n := 0; n <= most; n++ {
			deal[i][k] = n
			have[k], want[i] = have[k]-n, want[i]-n
			try(i, k+1)
			have[k], want[i] = have[k]+n, want[i]+n
		}
		deal[i][k] = 0
	}
	try(0, 0)
	return gets, least
}
