package allot_test

import (
	"strings"
	"testing"

	"lidmark/domain/allot"
)

// BenchmarkBest solves problems of testdata/cases.csv: 2,000 nucs of six ways
// with eight supplies, 10,000 with eight and with fifty, 2,000 with a limit on
// minutes, with unions, with both. BenchmarkBestFlow is the same without minutes and
// unions, the flow that every bound rests on, and BenchmarkBestFloor the least that
// anything can cost: a bare walk over the ways for the best of each nuc.
func BenchmarkBest(b *testing.B) {
	problems(b, func(p allot.Problem) float64 {
		a, err := allot.Best(p)
		if err != nil {
			b.Fatal(err)
		}
		return a.Worth
	})
}

func BenchmarkBestFlow(b *testing.B) {
	problems(b, func(p allot.Problem) float64 {
		p.Minutes, p.Unions = 0, nil
		a, err := allot.Best(p)
		if err != nil {
			b.Fatal(err)
		}
		return a.Worth
	})
}

func BenchmarkBestFloor(b *testing.B) {
	problems(b, func(p allot.Problem) (sum float64) {
		for _, ways := range p.Ways {
			best := 0.0
			for _, w := range ways {
				best = max(best, w.Worth)
			}
			sum += best
		}
		return sum
	})
}

func problems(b *testing.B, do func(allot.Problem) float64) {
	all := drawn(b)
	for _, name := range []string{"scarce", "alike", "ten thousand", "many supplies", "minutes", "unions", "unions and minutes"} {
		b.Run(strings.ReplaceAll(name, " ", "-"), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if do(all[name]) <= 0 {
					b.Fatal("nothing gained")
				}
			}
		})
	}
}
