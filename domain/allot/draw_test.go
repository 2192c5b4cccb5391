package allot_test

import (
	"lidmark/domain/allot"

	"pgregory.net/rapid"
)

// A kind of problem to draw.
type kind struct{ limited, united bool }

var kinds = []kind{{}, {limited: true}, {united: true}, {limited: true, united: true}}

// small draws a problem that can be tried out whole: few subjects, coarse
// worths so that many answers are equal, or fine ones.
func (k kind) small(t *rapid.T) allot.Problem {
	p := allot.Problem{Supply: rapid.SliceOfN(rapid.IntRange(0, 3), 0, 3).Draw(t, "supply")}
	if k.limited {
		p.Minutes = float64(rapid.IntRange(1, 2000).Draw(t, "hundredths of the limit")) / 100
		if rapid.Bool().Draw(t, "whole limit") {
			p.Minutes = float64(rapid.IntRange(1, 20).Draw(t, "minutes in all"))
		}
	}
	coarse := rapid.Bool().Draw(t, "coarse")
	n := rapid.IntRange(0, 6).Draw(t, "subjects")
	for range n {
		ways := []allot.Way{{Worth: worth(t, coarse)}}
		for range rapid.IntRange(0, 3).Draw(t, "ways") {
			ways = append(ways, k.way(t, &p, coarse))
		}
		p.Ways = append(p.Ways, ways)
	}
	for range rapid.IntRange(0, 6).Draw(t, "unions") {
		if k.united && n >= 2 {
			a := rapid.IntRange(0, n-2).Draw(t, "a")
			p.Unions = append(p.Unions, allot.Union{A: a, B: rapid.IntRange(a+1, n-1).Draw(t, "b"), Way: k.way(t, &p, coarse)})
		}
	}
	return p
}

func (k kind) way(t *rapid.T, p *allot.Problem, coarse bool) allot.Way {
	w := allot.Way{Worth: worth(t, coarse), Takes: rapid.IntRange(0, len(p.Supply)).Draw(t, "takes")}
	if rapid.Bool().Draw(t, "whole") {
		w.Minutes = float64(rapid.IntRange(0, 8).Draw(t, "minutes"))
	} else {
		w.Minutes = float64(rapid.IntRange(0, 80).Draw(t, "tenths")) / 10
	}
	return w
}

func worth(t *rapid.T, coarse bool) float64 {
	if coarse {
		return float64(rapid.IntRange(0, 5).Draw(t, "worth"))
	}
	return float64(rapid.IntRange(-3000, 10000).Draw(t, "fine worth")) / 997
}
