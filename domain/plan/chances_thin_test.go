package plan

import (
	"math"
	"testing"

	"lidmark/domain/practice"
)

// TestKeptLinksAreTheSame: what is kept while a wish is answered changes no chance, whichever
// amounts and rates were asked for before.
func TestKeptLinksAreTheSame(t *testing.T) {
	afresh := DefaultRates(practice.Numbers{})
	kept := afresh
	kept.kept = thinned{}
	for _, g := range []Graft{{Larvae: 96, Nucs: 64}, {Larvae: 40, Nucs: 64, Late: 0.2}, {Larvae: 96, Nucs: 10}} {
		for _, laying := range []bool{false, true} {
			afresh.Laying, kept.Laying = laying, laying
			a, b := afresh.Queens(g), kept.Queens(g)
			for n := range g.Larvae + 1 {
				if math.Abs(a.Exactly(n)-b.Exactly(n)) > 1e-12 {
					t.Errorf("%+v: %d with %v, and %v kept", g, n, a.Exactly(n), b.Exactly(n))
				}
			}
		}
		afresh.Link[Taken], kept.Link[Taken] = afresh.Link[Taken].Raised(pointsMore), kept.Link[Taken].Raised(pointsMore)
	}
}
