package plan

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/stat/distuv"

	"lidmark/domain/practice"
)

// takes are batches drawn with a rate and a luck.
func takes(chance *rand.Rand, batches int, rate, luck float64) (all []told) {
	like := rate*(1-rate)/(luck*luck) - 1
	for range batches {
		share := distuv.Beta{Alpha: rate * like, Beta: (1 - rate) * like, Src: chance}.Rand()
		all = append(all, told{distuv.Binomial{N: 60, P: share, Src: chance}.Rand(), 60})
	}
	return all
}

// TestLuckIsLearned: from books drawn with a luck it is found, within what so many
// batches can tell, and the more so the more there are; a book that tells nothing keeps
// the number.
func TestLuckIsLearned(t *testing.T) {
	r := DefaultRates(practice.Numbers{}).Link[Taken]
	if got := r.told(nil); got != r {
		t.Errorf("a book that tells nothing makes of %+v %+v", r, got)
	}
	for _, luck := range []float64{0.05, 0.11, 0.20} {
		rate := 0.8
		if luck == 0.20 {
			rate = 0.5 // of a keeper whose rate is far from the default
		}
		far := map[int]float64{}
		for _, batches := range []int{5, 40} {
			chance := rand.New(rand.NewPCG(3, uint64(batches)))
			const books = 30
			for range books {
				far[batches] += math.Abs(math.Log(r.learned(takes(chance, batches, rate, luck))/luck)) / books
			}
		}
		if far[40] > 0.22 || luck != r.Luck && far[40] >= far[5] {
			t.Errorf("luck of %v: of 5 and 40 batches it is off by a factor of e to %.2f and %.2f", luck, far[5], far[40])
		}
	}
}

// TestLuckOfAFewBatches: like batches make it less, unlike ones more, and one batch
// moves it by little.
func TestLuckOfAFewBatches(t *testing.T) {
	r := DefaultRates(practice.Numbers{}).Link[Taken]
	like, unlike, one := r.learned([]told{{48, 60}, {49, 60}, {47, 60}, {48, 60}, {48, 60}}), r.learned([]told{{20, 60}, {58, 60}, {30, 60}, {57, 60}}), r.learned([]told{{40, 60}})
	if like >= 0.9*r.Luck || unlike <= 1.3*r.Luck || math.Abs(one/r.Luck-1) > 0.1 {
		t.Errorf("default %v: like batches %v, unlike ones %v, one %v", r.Luck, like, unlike, one)
	}
	// With less luck the same counts tell more.
	a, b := r.told([]told{{48, 60}, {49, 60}, {47, 60}, {48, 60}, {48, 60}}), r.strays(0.2).told([]told{{48, 60}})
	if a.Tried <= 5*b.Tried || math.Abs(a.Won/a.Tried-240.0/300) > 1e-9 {
		t.Errorf("%+v, %+v", a, b)
	}
}

// TestABatchMovesTheRate as far as Bayes' theorem says: the keeper's rate is a beta, the share
// of a batch is one about it, and both are integrated here. A take that is no more than
// unlucky leaves the rate about where it was.
func TestABatchMovesTheRate(t *testing.T) {
	r := DefaultRates(practice.Numbers{}).Link[Taken]
	prior := distuv.Beta{Alpha: r.Default * r.Weight, Beta: (1 - r.Default) * r.Weight}
	for _, taken := range []float64{7, 14, 20, 24, 30} {
		batch := told{taken, 30}
		moved := r.moved([]told{batch})
		likely := func(rate float64) float64 { return prior.Prob(rate) * math.Exp(r.batches(rate).log(batch)) }
		all := quad.Fixed(likely, 0, 1, 800, quad.Legendre{}, 0)
		mean := quad.Fixed(func(x float64) float64 { return x * likely(x) }, 0, 1, 800, quad.Legendre{}, 0) / all
		if got := moved.Mean(); math.Abs(got-mean) > 0.025 {
			t.Errorf("%v of 30 taken make the rate %.3f, by the integral %.3f", taken, got, mean)
		}
	}
}

// TestLuckBelieved: a keeper whose number says that batches are alike is believed, and
// whatever a book tells, it is a luck that can be.
func TestLuckBelieved(t *testing.T) {
	r := DefaultRates(practice.Numbers{}).Link[Taken]
	if got := r.strays(0).learned([]told{{0, 60}, {60, 60}}); got != 0 {
		t.Errorf("no luck became %v", got)
	}
	for _, all := range [][]told{{{60, 60}, {60, 60}}, {{0.5, 0.5}}, {{1e-9, 600}}, {{600, 600}, {0, 600}, {600, 600}, {0.3, 600}}} {
		for _, luck := range []float64{0.001, 0.11, 0.4} {
			if got := r.strays(luck).learned(all); !(got > 0 && got <= mostLuck) {
				t.Errorf("%v of %v: %v", luck, fmt.Sprint(all), got)
			}
		}
	}
}
