package allot

import (
	"testing"

	"pgregory.net/rapid"
)

// TestFlowWithNarrowArcs: where a search has narrowed arcs a flow is still the
// best there is, as trying all shows.
func TestFlowWithNarrowArcs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := core{left: []int{0, rapid.IntRange(0, 4).Draw(t, "first"), rapid.IntRange(0, 4).Draw(t, "second"), rapid.IntRange(0, 4).Draw(t, "third")}}
		for g := range rapid.IntRange(1, 4).Draw(t, "classes") {
			arcs := []arc{{}}
			for w := range rapid.IntRange(1, 3).Draw(t, "ways") {
				arcs = append(arcs, arc{
					gain: float64(rapid.IntRange(1, 20).Draw(t, "gain")), supply: rapid.IntRange(0, 3).Draw(t, "supply"),
					room: rapid.IntRange(1, 2).Draw(t, "room"), way: w + 1,
				})
			}
			c.add(class{group: g, count: rapid.IntRange(1, 4).Draw(t, "count")}, arcs)
		}
		got, _ := c.fill(0).total()
		if want := c.most(0, c.classes[0].count); got != want {
			t.Fatalf("the flow gains %v, want %v: %+v", got, want, c)
		}
	})
}

// most tries all ways to send those open of a class, and the classes after
// them, from an arc on.
func (c *core) most(i, open int) float64 {
	if i == len(c.arcs) {
		return 0
	}
	a, best := c.arcs[i], 0.0
	for many := 0; many <= open && (many <= a.room || a.leaves()) && (a.supply == 0 || many <= c.left[a.supply]); many++ {
		rest := open - many
		if i+1 < len(c.arcs) && c.arcs[i+1].class != a.class {
			rest = c.classes[a.class+1].count
		}
		c.left[a.supply] -= many
		best = max(best, a.gain*float64(many)+c.most(i+1, rest))
		c.left[a.supply] += many
	}
	return best
}
