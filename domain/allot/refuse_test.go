package allot_test

import (
	"math"
	"strings"
	"testing"

	"lidmark/domain/allot"

	"pgregory.net/rapid"
)

func TestBadProblemsAreRefused(t *testing.T) {
	one := func(w allot.Way) allot.Problem {
		return allot.Problem{Ways: [][]allot.Way{{{}}, {{}, {Worth: 1}, w}}, Supply: []int{1}}
	}
	two := func(u allot.Union) allot.Problem {
		return allot.Problem{Ways: [][]allot.Way{{{}}, {{}}}, Unions: []allot.Union{u}}
	}
	for want, p := range map[string]allot.Problem{
		"subject 1, way 2: worth is NaN: give a number within ±1e+15":               one(allot.Way{Worth: math.NaN()}),
		"subject 1, way 2: worth is +Inf: give a number within ±1e+15":              one(allot.Way{Worth: math.Inf(1)}),
		"subject 1, way 2: worth is -2e+15: give a number within ±1e+15":            one(allot.Way{Worth: -2e15}),
		"subject 1, way 2: minutes are NaN: give 0 to 1e+06":                        one(allot.Way{Minutes: math.NaN()}),
		"subject 1, way 2: minutes are -1: give 0 to 1e+06":                         one(allot.Way{Minutes: -1}),
		"subject 1, way 2: takes supply 2 of 1: give 0 for none":                    one(allot.Way{Takes: 2}),
		"subject 1, way 2: takes supply -1 of 1: give 0 for none":                   one(allot.Way{Takes: -1}),
		"subject 1 has no way: give at least the one that leaves it":                {Ways: [][]allot.Way{{{}}, {}}},
		"subject 0, way 0: leaving it takes supply 1 and 0 minutes":                 {Ways: [][]allot.Way{{{Takes: 1}}}, Supply: []int{1}},
		"supply 2 holds -1: give 0 to":                                              {Supply: []int{1, -1}},
		"the limit of minutes is -1: give 0 for none, or minutes":                   {Minutes: -1},
		"the limit of minutes is NaN":                                               {Minutes: math.NaN()},
		"the limit of minutes is +Inf":                                              {Minutes: math.Inf(1)},
		"union 0 joins subjects 0 and 2 of 2: give two different ones":              two(allot.Union{B: 2}),
		"union 0 joins subjects -1 and 1 of 2: give two different ones":             two(allot.Union{A: -1, B: 1}),
		"union 0 joins subjects 1 and 1 of 2: give two different ones":              two(allot.Union{A: 1, B: 1}),
		"union 0: worth is NaN: give a number within":                               two(allot.Union{B: 1, Way: allot.Way{Worth: math.NaN()}}),
		"union 0: takes supply 1 of 0: give 0 for none, or a supply counted from 1": two(allot.Union{B: 1, Way: allot.Way{Takes: 1}}),
	} {
		if _, err := allot.Best(p); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("error = %v, want %q", err, want)
		}
	}
	p := one(allot.Way{})
	for _, supply := range []int{0, 2} {
		if _, _, err := allot.OneMore(p, allot.Answer{}, supply); err == nil {
			t.Errorf("one more of supply %d of 1 is not refused", supply)
		}
	}
}

// TestNoNumberIsTooMuch: whatever the numbers are, a problem is refused or has
// an answer that keeps every limit.
func TestNoNumberIsTooMuch(t *testing.T) {
	number := rapid.OneOf(rapid.Float64(), rapid.Float64Range(0, 1), rapid.SampledFrom([]float64{0, 1, 1e15, -1e15, 1e6, 5e-324, 1e-300}))
	rapid.Check(t, func(t *rapid.T) {
		p := allot.Problem{Supply: []int{rapid.IntRange(0, math.MaxInt32+1).Draw(t, "supply"), 1}, Minutes: number.Draw(t, "limit")}
		way := func() allot.Way {
			return allot.Way{Worth: number.Draw(t, "worth"), Takes: rapid.IntRange(0, 2).Draw(t, "takes"), Minutes: number.Draw(t, "minutes")}
		}
		for range 4 {
			p.Ways = append(p.Ways, []allot.Way{{}, way(), way()})
		}
		p.Unions = []allot.Union{{B: 1, Way: way()}, {A: 1, B: 2, Way: way()}}
		if _, err := allot.Best(p); err == nil {
			solved(t, p)
		}
	})
}

func TestNothingToDo(t *testing.T) {
	a := solved(t, allot.Problem{Supply: []int{3}})
	if a.Worth != 0 || len(a.Chosen) != 0 || a.More[0] != 0 || !a.Exact {
		t.Errorf("no subject: %+v", a)
	}
	a = solved(t, allot.Problem{Ways: [][]allot.Way{{{Worth: 7}}, {{Worth: -2}, {Worth: -3}}}, Minutes: 1})
	if a.Worth != 5 || a.Bound != 5 || !a.Exact {
		t.Errorf("nothing to gain: %+v", a)
	}
}
