package plan

import (
	"cmp"
	"slices"
)

// ByLarvae is how sure a wish is with so many larvae, all else of it as it was answered.
type ByLarvae struct {
	Larvae  int     // of each graft
	Nucs    int     // that most probably get a cell, of those there are
	Chance  float64 // of as many queens as are wished
	Enough  bool    // that is as sure as is wished
	Fewest  bool    // no fewer are enough
	Grafted bool    // so many the answer grafts
}

// ByLarvae is the wish of the answer by how many larvae a graft has: from clearly too
// few over the fewest that are enough, or fill the nucs, to more than help, and those
// of the answer. It is what [Planner.Answer] says of so many, in the same nucs. None
// where larvae are said graft by graft, and where no number of them gives the wish a
// chance that could be told.
func (a Answer) ByLarvae() []ByLarvae {
	if a.Nucs == 0 || a.OneByOne() {
		return nil
	}
	a.Rates.kept = thinned{}
	z := sizing{a: &a, known: map[amount]Chances{}, shares: a.shares}
	for i, b := range a.Batches {
		z.grafts = append(z.grafts, b.Graft)
		if i >= len(a.shares) { // nobody parted any: each has its own
			z.shares = append(z.shares, b.Graft.Nucs)
		}
	}
	fewest := z.fewestOf(a.Larvae)
	amounts := around(cmp.Or(fewest, a.Larvae), a.Larvae)
	const told = 0.005 // less is under 1 of 100
	if z.with(amounts[len(amounts)-1]).AtLeast(a.Queens) < told {
		return nil
	}
	all := make([]ByLarvae, len(amounts))
	for i, n := range amounts {
		c := z.with(n)
		all[i] = ByLarvae{n, z.nucs(n), c.AtLeast(a.Queens), z.enough(c), n == fewest, n == a.Larvae}
	}
	return all
}

// fewestOf is the fewest larvae that are enough, where so many are grafted; 0 where the
// answer found that none are.
func (z sizing) fewestOf(grafted int) int {
	by := 1
	if len(z.grafts) > 1 {
		by = bar
	}
	switch {
	case z.a.Sizing.Limit != NoLimit:
		return 0
	case z.enough(z.with(grafted)) && !z.enough(z.with(max(0, grafted-by))):
		return grafted
	}
	return z.fewest(by)
}

// nucs is in how many of the nucs most probably a cell is placed, where each graft has so many
// larvae.
func (z sizing) nucs(larvae int) (n int) {
	for _, g := range z.grafts {
		for _, s := range z.a.Rates.Along(Graft{Larvae: larvae, Nucs: z.a.Nucs, Late: g.Late}) {
			if s.Link == Placed {
				n += s.Likely()
			}
		}
	}
	return min(n, z.a.Nucs)
}

// amountsTold is how many amounts are told, and amountsBelow how many of them are fewer
// than the one in the middle. Conventions of the program.
const amountsTold, amountsBelow = 8, 4

// amountSteps are by how many larvae amounts are told: bars of a frame and what they are
// easily parted in. stepsTo is how many of them lead up to the middle at least. Common
// practice, no source.
var amountSteps = [...]int{120, 96, 72, 60, 48, 36, 24, bar, 6, 4, 3, 2}

const stepsTo = 4.5

// around are amounts of larvae about a middle, rising, round but for that and for those
// that are grafted.
func around(middle, grafted int) []int {
	step := 1
	if i := slices.IndexFunc(amountSteps[:], func(s int) bool { return stepsTo*float64(s) <= float64(middle) }); i >= 0 {
		step = amountSteps[i]
	}
	all := []int{middle}
	for n := (middle - 1) / step * step; n > 0 && len(all) <= amountsBelow; n -= step {
		if 2*(middle-n) >= step {
			all = append(all, n)
		}
	}
	for n := (middle/step + 1) * step; n <= largestGraft && len(all) < amountsTold; n += step {
		if 2*(n-middle) >= step {
			all = append(all, n)
		}
	}
	if !slices.Contains(all, grafted) { // in place of a round one that is near
		near := func(n int) bool { return n != middle && 2*max(n-grafted, grafted-n) <= step }
		if i := slices.IndexFunc(all, near); i >= 0 {
			all[i] = grafted
		} else {
			all = append(all, grafted)
		}
	}
	slices.Sort(all)
	return all
}
