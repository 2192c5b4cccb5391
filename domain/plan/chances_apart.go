package plan

import "math"

// Apart is what one graft gives whose nucs no other graft has, for each set of the keeper's
// rates that grafts have in common, less what thins all their queens alike. Given a set, what
// a graft gives does not hang on what another gives: grafts that are reckoned once can be
// put together in any way, see [Rates.Together].
type Apart struct {
	of      [][]float64 // by set of rates: the chances of so many
	weights []float64   // by set: how much it weighs
}

// Apart is what a graft gives whose nucs no other graft has.
func (r Rates) Apart(g Graft) (a Apart) {
	in := each(beta{1 - min(1, max(0, g.Late)), math.Inf(1)})
	works := r.Link[GraftWorks].known().nodes(usual.works)
	laying := r.Link[LayingOfAccepted].known().nodes(usual.laying)
	for _, k := range r.rearings([]Graft{g}, usual) {
		given := placed(k.ripe[0], max(0, g.Nucs))
		for _, l := range laying {
			lay := in.of(each(r.Link[LayingOfAccepted].batches(l.at)).of(given))
			for _, w := range works {
				a.weights = append(a.weights, k.weight*l.weight*w.weight)
				of := make([]float64, len(lay))
				for n, p := range lay {
					of[n] = w.at * p
				}
				of[0] += 1 - w.at
				a.of = append(a.of, of)
			}
		}
	}
	return a
}

// Together are the chances of how many queens come of some grafts together each of which has
// nucs of its own: those of [Rates.Queens] where each has its nucs [Graft.Again].
func (r Rates) Together(all ...Apart) Chances {
	if len(all) == 0 {
		return Chances{}
	}
	var sum []float64
	for i, w := range all[0].weights {
		of := []float64{1}
		for _, a := range all {
			of = convolved(of, a.of[i])
		}
		if sum == nil {
			sum = make([]float64, len(of))
		}
		for n, p := range of {
			sum[n] += w * p
		}
	}
	for _, l := range r.after() {
		if l != LayingOfAccepted {
			sum = r.thinning(l).of(sum)
		}
	}
	return Chances{sum}
}

// convolved are the chances of the sum of two numbers.
func convolved(a, b []float64) []float64 {
	of := make([]float64, len(a)+len(b)-1)
	for i, p := range a {
		for j, q := range b {
			of[i+j] += p * q
		}
	}
	return of
}
