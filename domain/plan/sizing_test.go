package plan

import (
	"testing"

	"lidmark/domain/practice"
)

// TestTheRoughSearchFindsTheFewest: the fewest larvae are those that a search finds
// which asks the whole everywhere, also where none are enough.
func TestTheRoughSearchFindsTheFewest(t *testing.T) {
	for _, c := range []struct {
		queens, nucs int
		sure         float64
		late         float64
	}{{20, 40, 0.9, 0}, {30, 64, 0.75, 0.2}, {40, 64, 0.5, 0.1}, {60, 64, 0.9, 0}, {5, 20, 0.97, 0}} {
		a := &Answer{Wish: Wish{Queens: c.queens, Sure: c.sure}, Rates: DefaultRates(practice.Numbers{})}
		z := sizing{a: a, grafts: []Graft{{}, {Late: c.late}}, shares: []int{c.nucs, 0}, known: map[amount]Chances{}}
		want := bar * fewest(1, largestGraft/bar, func(n int) bool { return z.enough(z.with(n * bar)) })
		if got := z.fewest(bar); got != want {
			t.Errorf("%+v: %d larvae, the fewest are %d", c, got, want)
		}
		if asked := len(z.known); asked > 12 {
			t.Errorf("%+v: the whole was asked %d times", c, asked)
		}
	}
}

// TestWhatIsKnownIsOfItsAmounts: what was reckoned once is not told of other amounts,
// and the grafts are those that were asked for last.
func TestWhatIsKnownIsOfItsAmounts(t *testing.T) {
	a := &Answer{Wish: Wish{Queens: 10, Sure: 0.5}, Rates: DefaultRates(practice.Numbers{})}
	z := sizing{a: a, grafts: []Graft{{}}, shares: []int{20}, known: map[amount]Chances{}}
	few, many := z.with(12), z.with(48)
	if z.with(12).AtLeast(10) != few.AtLeast(10) || few.AtLeast(10) >= many.AtLeast(10) || z.grafts[0].Larvae != 12 {
		t.Errorf("12 larvae: %v, 48: %v, set to %d", few.AtLeast(10), many.AtLeast(10), z.grafts[0].Larvae)
	}
	z.shares[0] = 5
	if z.with(48).Most() > 5 {
		t.Error("what is known of 20 nucs is told of 5")
	}
}
