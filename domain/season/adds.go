package season

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"lidmark/domain/plan"
)

// Adds is what a graft adds to the chance of all queens of a promise: what there is of it already, and the other
// grafts found for it, give them with one chance, and together with the graft with the other.
type Adds struct{ Without, With float64 }

// Said is it in words: "88 of 100, 79 without it".
func (a Adds) Said() string {
	return fmt.Sprintf("%s, %s without it", plan.OfHundred(a.With), strings.TrimSuffix(plan.OfHundred(a.Without), " of 100"))
}

// added says what each graft of a pick adds, where not all of its promise hangs on it.
func (s *search) added(f *Found, p pick, numbers []int) {
	promises := s.groups[p.group].promises
	if len(promises) > 1 || len(p.way.of) == 1 && s.had[promises[0]] == nil {
		return
	}
	queens := s.wanted.Promises[promises[0]].Queens
	with := s.chanceOf(promises[0], p.way, queens)
	for i, n := range numbers {
		others := p.way
		others.of = slices.Delete(slices.Clone(p.way.of), i, i+1)
		f.Batches[n].Adds = &Adds{s.chanceOf(promises[0], others, queens), with}
	}
}

// hardlyHelps tells whether grafts for a promise of which something is there already are no use to a keeper: they
// keep it no surer by as much as is nearly kept, neither all of it nor what they keep of it, not as surely as is
// wished, and no queen is to be expected of them.
func (s *search) hardlyHelps(g group, o option) bool {
	has := s.had[g.promises[0]]
	if has == nil || o.level == whole {
		return false
	}
	expected := 0.0
	for _, b := range o.of {
		expected += b.load.size.Queens
	}
	if expected >= 1 {
		return false
	}
	p := s.wanted.Promises[g.promises[0]]
	for _, queens := range []int{p.Queens, p.Queens - o.short} {
		var grafts []plan.Graft
		for _, b := range o.of {
			grafts = append(grafts, due{late: latenessOf(s.ground.ladder(s.ground.yards[b.yard], b.day, 0).Laid, p)}.graft(b.size))
		}
		with, without := s.odds.several(has, grafts, p.Laying, queens), s.odds.several(has, nil, p.Laying, queens)
		if math.Round(100*with)-math.Round(100*without) >= nearMost {
			return false
		}
	}
	return true
}
