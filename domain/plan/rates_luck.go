package plan

import "math"

// told is what the book tells of one batch at one link; parts of one where a loss may
// belong to several links.
type told struct{ won, tried float64 }

// told is the rate with what the book tells of some batches.
func (r Rate) told(batches []told) Rate {
	r.Luck = r.learned(batches)
	return r.moved(batches)
}

// moved is the rate with what some batches tell added, at the luck it has. Of n cells with
// like luck the mean is as sure as of n over 1 + (n-1) × their correlation without it (the
// design effect: Kish 1965, Survey Sampling, 5.4), so each batch moves the rate, and makes
// it sure, as so many: else her luck would be taken for the keeper's hand.
func (r Rate) moved(batches []told) Rate {
	alike := 0.0
	if spread := r.Default * (1 - r.Default); spread > 0 {
		alike = min(1, r.Luck*r.Luck/spread)
	}
	for _, b := range batches {
		tells := b.tried / (1 + max(0, b.tried-1)*alike)
		r.Won += tells * b.won / b.tried
		r.Tried += tells
	}
	return r
}

// What is believed of batch luck before the book tells anything: its logarithm is
// normal about that of the keeper's number, two times in three within a half more or
// a third less. No published figure is known for either. A batch or two move it little;
// some ten with counts of 30 or more outweigh it.
const (
	luckDoubt = 0.4 // standard deviation of the logarithm
	luckReach = 3   // standard deviations to each side that are looked at
	luckSteps = 12  // to each side
)

// learned is how far batches stray, by the book and by what is believed before: the
// mean of its logarithm over a grid. Each batch is beta-binomial about the keeper's
// rate, and that is integrated over. A book that tells nothing keeps the number, and a
// keeper whose number says that all batches are alike is believed.
func (r Rate) learned(batches []told) float64 {
	if len(batches) == 0 || r.Luck <= 0 || r.Default <= 0 || r.Default >= 1 {
		return r.Luck
	}
	logs, rates := make([]float64, 0, 2*luckSteps+1), r.known().nodes(oneLink)
	most := math.Inf(-1)
	for i := -luckSteps; i <= luckSteps; i++ {
		z := luckReach * float64(i) / luckSteps
		logs = append(logs, r.strays(r.Luck*math.Exp(luckDoubt*z)).fit(rates, batches)-z*z/2)
		most = max(most, logs[len(logs)-1])
	}
	var sum, all float64
	for i, l := range logs {
		weight := math.Exp(l - most)
		all += weight
		sum += weight * luckReach * float64(i-luckSteps) / luckSteps
	}
	return min(mostLuck, r.Luck*math.Exp(luckDoubt*sum/all))
}

// mostLuck is as far as shares can stray: half of them none and half of them all.
const mostLuck = 0.5

func (r Rate) strays(luck float64) Rate {
	r.Luck = luck
	return r
}

// fit is the logarithm of how likely it is what some batches tell, but for what does
// not hang on their luck; rates are the nodes of what is known of the keeper's rate.
func (r Rate) fit(rates []node, batches []told) float64 {
	var logs []float64
	most := math.Inf(-1)
	moved := r.moved(batches) // luck is what it is at the mean that is then in use
	for _, n := range rates {
		one := moved.batches(n.at)
		l := math.Log(n.weight)
		for _, b := range batches {
			l += one.log(b)
		}
		logs, most = append(logs, l), max(most, l)
	}
	var sum float64
	for _, l := range logs {
		sum += math.Exp(l - most)
	}
	return most + math.Log(sum)
}

// log is the logarithm of the chance of one order of what came through and what did
// not, the share being spread as a beta.
func (b beta) log(t told) float64 {
	won, lost := b.mean*b.weight, (1-b.mean)*b.weight
	return logBeta(won+t.won, lost+max(0, t.tried-t.won)) - logBeta(won, lost)
}

func logBeta(a, b float64) float64 {
	la, _ := math.Lgamma(a)
	lb, _ := math.Lgamma(b)
	both, _ := math.Lgamma(a + b)
	return la + lb - both
}
