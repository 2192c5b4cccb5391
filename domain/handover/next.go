package handover

import (
	"math"
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

// coming is a nuc whose queen has not proven herself yet, or has and is not ready.
type coming struct {
	line  string
	sure  float64      // that she is the one who was given, if one lays
	eggs  *course.Eggs // nil: she is proven
	old   calendar.Day // not caught before: too young, too few days since eggs seen, a wait after a treatment, or robbers
	after int
}

// by is the chance that she is ready by a day.
func (k coming) by(d calendar.Day, named bool) float64 {
	if d < k.old {
		return 0
	}
	chance := 1.0
	if k.eggs != nil {
		chance = k.eggs.By(d - calendar.Day(k.after))
	}
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
		o.Next, o.Coming = s.next(i, slices.Concat(all, s.waiting(*o, c.View())), c.View())
	}
}

// next looks for the day, and for how many are there by the order's own.
func (s *Sheet) next(i int, all []coming, v *book.View) (best Next, inTime int) {
	o, wanted, sure := s.Orders[i].Order, s.before(i)+s.Orders[i].Short, v.Numbers().Get(practice.NextSure)
	inTime = s.inTime(i, all, sure)
	for d := s.Orders[i].On; d <= s.Orders[i].On+nextAhead; d++ {
		chance := atLeast(wanted, all, o, catchDay(v, Day{On: d}).Catch)
		best.Most = max(best.Most, chance)
		if chance >= sure {
			return Next{Day: d, Chance: chance, Most: chance}, inTime
		}
	}
	return best, inTime
}

// inTime is how many of those that an order misses are ready by its day with a chance: who
// goes on a day must be ready when she is caught.
func (s *Sheet) inTime(i int, all []coming, sure float64) int {
	o := s.Orders[i]
	if o.Short == 0 {
		return 0
	}
	before := s.before(i)
	return max(0, most(before+o.Short, all, o.Order, o.Catch, sure)-before)
}

// before is how many queens the orders before one miss that it could take: they count as
// wanting them first.
func (s *Sheet) before(i int) (missing int) {
	for _, o := range s.Orders[:i] {
		if o.Short > 0 && shares(o.Order, s.Orders[i].Order) {
			missing += o.Short
		}
	}
	return missing
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
	return chances(wanted, all, o, d)[wanted]
}

// most is how many of them, of so many, are ready by a day with a chance.
func most(wanted int, all []coming, o *book.Order, d calendar.Day, sure float64) int {
	p, chance := chances(wanted, all, o, d), 0.0
	for n := wanted; n > 0; n-- {
		if chance += p[n]; chance >= sure {
			return n
		}
	}
	return 0
}

// chances are those that 0, 1 … and so many or more of them are ready by a day.
func chances(wanted int, all []coming, o *book.Order, d calendar.Day) []float64 {
	p := make([]float64, wanted+1)
	p[0] = 1
	for _, k := range all {
		if !o.Takes(k.line) {
			continue
		}
		q := k.by(d, o.Line != "")
		if q == 0 {
			continue
		}
		p[wanted] += p[wanted-1] * q
		for n := wanted - 1; n > 0; n-- {
			p[n] += (p[n-1] - p[n]) * q
		}
		p[0] *= 1 - q
	}
	return p
}

// waiting are those who are proven, in nucs and for nobody yet, and would do for an order
// but for their day: each is ready from it on.
func (s *Sheet) waiting(o Served, v *book.View) (all []coming) {
	for _, q := range s.Left {
		ready := q
		ready.Ready, ready.Shut = 0, 0
		if !q.Nuc.IsZero() && !math.IsInf(costOf(ready, o, v.Today(), v.Numbers()), 1) {
			all = append(all, coming{line: q.Line, sure: 1, old: max(q.Ready, q.Shut)}) // where it matters that she is of her line, costOf asks it
		}
	}
	return all
}

// comings are the nucs with a queen on the way who is not proven.
func comings(c *course.Course) (all []coming) {
	v, n := c.View(), c.View().Numbers()
	all = []coming{}
	shut := shutUntil(c)
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
		if v.DescentIn(nuc) == book.DescentDoubtful {
			sure = 0
		}
		all = append(all, coming{
			line: v.LineIn(nuc), sure: sure, eggs: c.Eggs(nuc), after: n.Days(practice.ReadyAfterFirstEgg),
			old: max(shut[nuc.Yard], notBefore(c, nuc, p)),
		})
	}
	return all
}

// notBefore is the first day on which the queen of a nuc can be ready: of age, where eggs
// were seen as long after them as her card says, and past the wait after a treatment.
func notBefore(c *course.Course, nuc *book.Nuc, p course.Presumption) calendar.Day {
	v, zone := c.View(), c.Zone(nuc.Yard)
	d := calendar.DayOf(p.Emerged, zone) + calendar.Day(v.Numbers().Days(practice.LeastAgeAtHandOver))
	if !p.ReadyAt.IsZero() {
		d = max(d, calendar.DayOf(p.ReadyAt, zone))
	}
	if nuc.Treated.Waits(v.Today(), zone) {
		d = max(d, nuc.Treated.Until(zone))
	}
	return d
}
