package allot

import (
	"fmt"
	"slices"
)

// Way is one thing that can be done with a subject.
type Way struct {
	Worth   float64 // in one money, or in queens, for all; may be negative
	Takes   int     // the supply of which it takes one, counted from 1; 0: none
	Minutes float64 // 0 to 1,000,000; reckoned to the thousandth
}

// Union is a way of two subjects at once, which take no way of their own then.
// Two subjects may have several, of which one at most is chosen.
type Union struct {
	A, B int // subjects
	Way      // Worth is that of both together
}

// Problem is what can be done and what is in hand for it. No way gives one
// of a supply back for another subject to take: what is in hand would then depend
// on what is chosen, and the best use could no more be found supply by supply.
// Moving a thing between two named subjects is a union.
type Problem struct {
	Ways    [][]Way // by subject; the first leaves it as it is, and takes no supply and no minutes
	Unions  []Union
	Supply  []int   // how many there are: Supply[0] is the supply that ways call 1
	Minutes float64 // at most so many in all, reckoned to the thousandth; 0: no limit
}

// Answer is the best that was found. Two answers that differ by less than a
// billionth of the largest gain of any way count as equal. The same problem
// has the same answer; of subjects with the same ways the earlier has the way
// of more worth; a way that is no better than one of less or like cost (the
// earlier of equals) is never chosen, nor does it change what is.
type Answer struct {
	Chosen  []int // the way of every subject, or -1 where a union takes it
	United  []int // the unions, as the problem counts them, rising
	Worth   float64
	Minutes float64

	// More is what one more of each supply would be worth: exact where minutes
	// are not limited and there are no unions, else its price at the bound, as
	// MinuteWorth is that of one more minute; OneMore is exact then.
	More        []float64
	MinuteWorth float64

	Bound float64 // no answer is worth more
	Exact bool    // this one is proven best: Bound equals Worth
}

// Best finds the best use. It refuses a problem that is not well formed, with
// the place.
func Best(p Problem) (Answer, error) {
	if err := p.check(); err != nil {
		return Answer{}, err
	}
	m := measureOf(p)
	s := search{model: modelOf(p, m), measure: m}
	s.run()
	return s.answer(p), nil
}

// OneMore is what one more of a supply, counted from 1, would be worth beyond
// an answer, by solving again. Where one of both answers is not proven best it is
// not exact: one more is worth no more than that.
func OneMore(p Problem, a Answer, supply int) (worth float64, exact bool, err error) {
	if supply < 1 || supply > len(p.Supply) {
		return 0, false, fmt.Errorf("one more of supply %d of %d: give a supply counted from 1", supply, len(p.Supply))
	}
	p.Supply = slices.Clone(p.Supply)
	p.Supply[supply-1]++
	return p.beyond(a)
}

// MoreMinutes is what so many minutes more would be worth beyond an answer to a
// problem with a limit, as [OneMore] is.
func MoreMinutes(p Problem, a Answer, minutes float64) (worth float64, exact bool, err error) {
	if p.Minutes > 0 {
		p.Minutes += minutes
	}
	return p.beyond(a)
}

// beyond is what the best use is worth beyond an answer to a problem with less.
func (p Problem) beyond(a Answer) (worth float64, exact bool, err error) {
	b, err := Best(p)
	if a.Exact && b.Exact {
		return max(0, b.Worth-a.Worth), true, err
	}
	return max(0, b.Bound-a.Worth), false, err
}
