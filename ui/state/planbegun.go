package state

import (
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// wishAhead is how many days ahead queens are wished for where no order says.
const wishAhead = 60

// wishBegun is the window with a first wish where none was typed: what is owed for the first
// order that waits for no graft and can be kept, else forty queens, or what the nucs can give.
func (s State) wishBegun() State {
	if s.Typed(WishQueens) != "" {
		return s
	}
	queens, by, of := 0, s.Today()+wishAhead, ""
	p := s.Present().planner()
	for o := range s.Present().View.Orders() {
		if o.Open() == 0 || o.By > s.Today()+plan.MostAhead || season.Waits(p, o.Order) {
			continue
		}
		if line, ok := s.lineFor(o); ok && s.nearestFor(o, o.Open()) == o.By {
			queens, by, of = o.Open(), o.By, line
			break
		}
	}
	if queens == 0 {
		queens, by = s.given(p, 40, by)
	}
	return s.WithField(WishQueens, FieldOf(strconv.Itoa(queens))).WithField(WishDay, FieldOf(s.dayTyped(by))).WithField(WishLine, FieldOf(of))
}

// given are so many queens by a day; where that is less likely than not, as many as the nucs that
// there are most probably give, by the nearest day.
func (s State) given(p *plan.Planner, queens int, by calendar.Day) (int, calendar.Day) {
	a := p.Possible(plan.Wish{Queens: queens, By: by, Larvae: 2 * queens, Yard: s.Yards[Plan]}) // see nearestFor
	if a.Chance >= 0.5 || a.Nucs == 0 {
		return queens, by
	}
	return max(1, a.Then.Quantile(0.5)), a.Day()
}

// lineFor is the line of which queens for an order can be grafted, as it is in the book: its own,
// or one that is taken in its place; ok is false where no breeder is of any of them.
func (s State) lineFor(o *book.Order) (line string, ok bool) {
	if o.Line == "" {
		return "", true
	}
	bred := s.breederLines()
	for _, wanted := range slices.Insert(slices.Clone(o.Substitute), 0, o.Line) {
		if i := slices.IndexFunc(bred, func(l string) bool { return strings.EqualFold(l, wanted) }); i >= 0 {
			return bred[i], true
		}
	}
	return "", false
}

// nearestFor is the day of an order, or the nearest after it by which so many queens can be there
// of a graft to come; 0 where no nuc is free for them then.
func (s State) nearestFor(o *book.Order, queens int) calendar.Day {
	w := plan.Wish{Queens: queens, By: o.By, Larvae: 2 * queens, Yard: s.Yards[Plan]} // larvae are said so that none need be found
	switch a := s.Present().planner().Possible(w); {
	case a.Free == 0:
		return 0
	case a.InTime:
		return o.By
	default:
		return max(a.Nearest, o.By)
	}
}
