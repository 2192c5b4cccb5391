package handover

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// Next is when the queens that an order misses are to be expected: the first day
// by which so many more of its lines are ready with the wished chance. None is
// zero: what stands in nucs will not do, and a graft is needed.
type Next struct {
	Day    calendar.Day
	Chance float64
	Most   float64 // the chance that is reached in the end, where that is too little
}

// nextAhead is how many days ahead of an order's day more queens are looked for.
const nextAhead = 45

// coming is a nuc whose queen has not proven herself yet.
type coming struct {
	line  string
	sure  float64 // that she is the one who was given, if one lays
	eggs  *course.Eggs
	old   calendar.Day // from when she is old enough
	after int
}

// by is the chance that she is ready by a day.
func (k coming) by(d calendar.Day, named bool) float64 {
	if d < k.old {
		return 0
	}
	chance := k.eggs.By(d - calendar.Day(k.after))
	if named {
		chance *= k.sure
	}
	return chance
}

// expect says of every order that misses queens when they are to be expected, of
// those nucs that nobody before it waits for.
func (s *Sheet) expect(c *course.Course) {
	var all []coming
	for i := range s.Orders {
		o := &s.Orders[i]
		if o.Short == 0 {
			continue
		}
		if all == nil {
			all = comings(c)
		}
		o.Next = s.next(i, all, c.View().Numbers())
	}
}

// next looks for the day. Orders before it that miss queens it could take count
// as wanting them first.
func (s *Sheet) next(i int, all []coming, n practice.Numbers) Next {
	o, wanted := s.Orders[i].Order, s.Orders[i].Short
	for _, before := range s.Orders[:i] {
		if before.Short > 0 && shares(before.Order, o) {
			wanted += before.Short
		}
	}
	var best Next
	for d := s.Orders[i].On; d <= s.Orders[i].On+nextAhead; d++ {
		chance := atLeast(wanted, all, o, d)
		best.Most = max(best.Most, chance)
		if chance >= n.Get(practice.NextSure) {
			return Next{Day: d, Chance: chance, Most: chance}
		}
	}
	return best
}

// shares tells whether two orders may want the same queen.
func shares(a, b *book.Order) bool {
	if a.Takes(b.Line) || b.Takes(a.Line) {
		return true
	}
	return slices.ContainsFunc(a.Substitute, b.Takes)
}

// atLeast is the chance that so many of the coming queens that will do for an order
// are ready by a day: the sum over independent nucs, exactly.
func atLeast(wanted int, all []coming, o *book.Order, d calendar.Day) float64 {
	p := make([]float64, wanted+1) // of 0, 1 … and of wanted or more
	p[0] = 1
	for _, k := range all {
		if !o.Takes(k.line) {
			continue
		}
		q := k.by(d, o.Line != "")
		p[wanted] += p[wanted-1] * q
		for n := wanted - 1; n > 0; n-- {
			p[n] += (p[n-1] - p[n]) * q
		}
		p[0] *= 1 - q
	}
	return p[wanted]
}

// comings are the nucs with a queen on the way who is not proven.
func comings(c *course.Course) (all []coming) {
	v, n := c.View(), c.View().Numbers()
	all = []coming{}
	for nuc := range v.Nucs() {
		if _, proven := laying(c, nuc); proven || closed(v, nuc.Yard) != "" {
			continue
		}
		p, h := c.Of(nuc), c.Held(nuc)
		if h.From == 0 || p.Emerged.IsZero() {
			continue
		}
		chances := h.Chances()
		sure := chances.Sure()
		if nuc.Holds.Descent == book.DescentDoubtful {
			sure = 0
		}
		all = append(all, coming{
			line: v.LineIn(nuc), sure: sure, eggs: c.Eggs(nuc), after: n.Days(practice.ReadyAfterFirstEgg),
			old: calendar.DayOf(p.Emerged, c.Zone(nuc.Yard)) + calendar.Day(n.Days(practice.LeastAgeAtHandOver)),
		})
	}
	return all
}
