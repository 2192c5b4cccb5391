package allot

import (
	"fmt"
	"math"
)

const (
	mostWorth   = 1e15 // beyond it a float64 has no thousandths
	mostMinutes = 1e6
)

// SupplyError tells that a supply, counted from 1, holds fewer than none or more than
// can be dealt out. Who knows what the supply is can say it in his own words.
type SupplyError struct{ Supply, Holds int }

// MostHeld is as many as a supply can hold.
const MostHeld = math.MaxInt32

// Error is the fault in the words of the problem.
func (e SupplyError) Error() string {
	return fmt.Sprintf("supply %d holds %d: give 0 to %d", e.Supply, e.Holds, MostHeld)
}

// check says what is wrong with a problem, and where.
func (p Problem) check() error {
	if !(p.Minutes >= 0) || math.IsInf(p.Minutes, 0) {
		return fmt.Errorf("the limit of minutes is %v: give 0 for none, or minutes", p.Minutes)
	}
	for i, n := range p.Supply {
		if n < 0 || n > MostHeld {
			return SupplyError{i + 1, n}
		}
	}
	for i, ways := range p.Ways {
		if len(ways) == 0 {
			return fmt.Errorf("subject %d has no way: give at least the one that leaves it", i)
		}
		if ways[0].Takes != 0 || ways[0].Minutes != 0 {
			return fmt.Errorf("subject %d, way 0: leaving it takes supply %d and %v minutes: it must take nothing", i, ways[0].Takes, ways[0].Minutes)
		}
		for j, w := range ways {
			if err := p.checkWay(w); err != nil {
				return fmt.Errorf("subject %d, way %d: %w", i, j, err)
			}
		}
	}
	for i, u := range p.Unions {
		if u.A < 0 || u.B < 0 || u.A >= len(p.Ways) || u.B >= len(p.Ways) || u.A == u.B {
			return fmt.Errorf("union %d joins subjects %d and %d of %d: give two different ones, counted from 0", i, u.A, u.B, len(p.Ways))
		}
		if err := p.checkWay(u.Way); err != nil {
			return fmt.Errorf("union %d: %w", i, err)
		}
	}
	return nil
}

func (p Problem) checkWay(w Way) error {
	switch {
	case !(math.Abs(w.Worth) <= mostWorth):
		return fmt.Errorf("worth is %v: give a number within ±%g", w.Worth, mostWorth)
	case !(w.Minutes >= 0 && w.Minutes <= mostMinutes):
		return fmt.Errorf("minutes are %v: give 0 to %g", w.Minutes, mostMinutes)
	case w.Takes < 0 || w.Takes > len(p.Supply):
		return fmt.Errorf("takes supply %d of %d: give 0 for none, or a supply counted from 1", w.Takes, len(p.Supply))
	default:
		return nil
	}
}
