package handover

import (
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// soon are queens of a line who stand in nucs and surely are ready by a day, whichever
// of its nucs they are.
type soon struct {
	line   string
	by     calendar.Day
	queens int
}

// goods are what is dealt: how many of each kind, and what one costs each order.
type goods struct {
	have []int
	cost [][]float64
}

// wait deals out those who are surely ready in time with those who are ready now: so an
// order gives up queens, and waits, where one after it, for which no graft is in time, is
// kept whole by it. One that goes short all the same has none of them. Who waits is told
// so: an order to which those before it leave no such queens does not, and nobody has
// fewer than without.
func (s *Sheet) wait(want []int, now goods, p *plan.Planner) *match {
	n := p.View().Numbers()
	plain, sure := matched(want, now.have, now.cost), max(n.Get(practice.PlanSure), n.Get(practice.NextSure))
	s.missing(want, plain)
	if !slices.ContainsFunc(s.Orders, func(o Served) bool { return o.late(p.View()) }) {
		return plain
	}
	all := s.comings(p)
	soon, has := s.surely(all, sure), s.has(want, all, sure)
	if len(soon) == 0 {
		return plain
	}
	asks := slices.Clone(want)
	for i, o := range s.Orders {
		if !o.late(p.View()) {
			asks[i] = has[i]
		}
	}
	for {
		m := s.waited(want, asks, s.withSoon(now, soon), len(now.have), func(i int) int { return s.inTime(i, all, sure) })
		then := s.has(want, all, sure)
		if slices.ContainsFunc(s.Orders, func(o Served) bool { return then[o.rank] < has[o.rank] }) {
			s.missing(want, plain)
			return plain
		}
		i := slices.IndexFunc(s.Orders, func(o Served) bool { return has[o.rank] < then[o.rank] && then[o.rank] < want[o.rank] })
		if i < 0 {
			return m
		}
		asks[i] = has[i]
	}
}

// waited deals out as orders ask, of the kinds after the first those that are told.
func (s *Sheet) waited(want, asks []int, both goods, kinds int, told func(int) int) *match {
	for {
		m := matched(asks, both.have, both.cost)
		waits := m.only(kinds)
		s.missing(want, m)
		i := slices.IndexFunc(s.Orders, func(o Served) bool { return waits[o.rank] > 0 && told(o.rank) < waits[o.rank] })
		if i < 0 {
			return m
		}
		for k := kinds; k < len(both.have); k++ {
			both.cost[i][k] = math.Inf(1)
		}
	}
}

// has is how many queens each order has or is told to expect in time.
func (s *Sheet) has(want []int, all []coming, sure float64) (n []int) {
	for i, o := range s.Orders {
		n = append(n, want[i]-o.Short+s.inTime(i, all, sure))
	}
	return n
}

// late tells whether an order misses queens that no graft can bring in time any more, by the calendar.
func (s Served) late(v *book.View) bool {
	return s.Short > 0 && s.lastGraft(v.Numbers()) <= v.Today()
}

// missing says how many ready queens each order misses.
func (s *Sheet) missing(want []int, m *match) {
	for i := range s.Orders {
		s.Orders[i].Short = want[i] - sum(m.deal[i])
	}
}

// only keeps the first kinds of a dealing, and tells what each taker had of the others.
func (m *match) only(kinds int) (others []int) {
	for t, deal := range m.deal {
		others = append(others, sum(deal[kinds:]))
		m.deal[t] = deal[:kinds]
	}
	return others
}

func sum(all []int) (n int) {
	for _, k := range all {
		n += k
	}
	return n
}

// withSoon are goods with those who are surely ready soon, for the orders whose day
// that is.
func (s *Sheet) withSoon(now goods, all []soon) goods {
	both := goods{have: slices.Clone(now.have)}
	for _, k := range all {
		both.have = append(both.have, k.queens)
	}
	for i, o := range s.Orders {
		cost := slices.Clone(now.cost[i])
		for _, k := range all {
			cost = append(cost, o.costOfWait(k, len(s.Orders)))
		}
		both.cost = append(both.cost, cost)
	}
	return both
}

// costOfWait is what it costs that an order waits for a queen: the less the later its
// turn, by more than all dealings of those who are ready differ, so that nobody waits who
// need not.
func (s Served) costOfWait(k soon, orders int) float64 {
	if !s.Order.Takes(k.line) || k.by > s.Catch {
		return math.Inf(1)
	}
	cost := float64(2 * ofSubstitute * (orders + 1) * (orders - s.rank))
	if s.Order.Line != "" && k.line != s.Order.Line {
		cost += ofSubstitute
	}
	return cost
}

// surely are the queens of each line who are ready with a chance by the days of the
// orders: by each day so many more than by the one before.
func (s *Sheet) surely(all []coming, sure float64) (by []soon) {
	var days []calendar.Day
	for _, o := range s.Orders {
		days = append(days, o.Catch)
	}
	slices.Sort(days)
	days = slices.Compact(days)
	of := map[string][]coming{}
	var lines []string
	for _, k := range all {
		if of[k.line] == nil {
			lines = append(lines, k.line)
		}
		of[k.line] = append(of[k.line], k)
	}
	for _, line := range lines {
		o, before := &book.Order{OrderTaken: book.OrderTaken{Line: line}}, 0
		for _, d := range days {
			if n := most(queensOf(of[line]), of[line], o, d, sure); n > before {
				by, before = append(by, soon{line, d, n - before}), n
			}
		}
	}
	return by
}
