package review

import "math"

// exactUpTo is how many chances are counted exactly; a normal stands for more.
const exactUpTo = 400

// outOf is how many of independent chances come true: the mean, and the range
// of four in five, from the number that one in ten stays below to the number
// that nine in ten do not exceed.
func outOf(chances []float64) (mean, low, high float64) {
	var variance float64
	for _, p := range chances {
		mean += p
		variance += p * (1 - p)
	}
	if len(chances) > exactUpTo {
		by := tenth * math.Sqrt(variance)
		return mean, math.Max(0, math.Round(mean-by)), math.Min(float64(len(chances)), math.Round(mean+by))
	}
	many := counts(chances)
	return mean, quantile(many, 0.1), quantile(many, 0.9)
}

// tenth is the normal deviate that one in ten exceeds.
const tenth = 1.2815515655446004

// counts are the chances that none, one, two … come true.
func counts(chances []float64) []float64 {
	many := make([]float64, len(chances)+1)
	many[0] = 1
	for i, p := range chances {
		for n := i + 1; n > 0; n-- {
			many[n] = many[n]*(1-p) + many[n-1]*p
		}
		many[0] *= 1 - p
	}
	return many
}

// quantile is the first number by which a share of the chances is reached.
func quantile(many []float64, share float64) float64 {
	var sum float64
	for n, p := range many {
		if sum += p; sum >= share-1e-12 {
			return float64(n)
		}
	}
	return float64(len(many) - 1)
}
