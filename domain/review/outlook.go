package review

import (
	"sync"

	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// outlook is what every state of a nuc at the start of a day comes to by the day
// asked for.
type outlook struct {
	lays   *course.Figure // a queen lays
	own    *course.Figure // one of the nuc's own raising lays
	ready  *course.Figure // she has laid long enough to be caught
	queens *course.Figure // what she is worth, in queens
	kept   *course.Figure // share of its bees that are kept
}

// horizon are the outlooks of the days at one spot.
type horizon struct {
	course *course.Course
	at     course.Spot
	end    calendar.Day // the day after the one asked for
	mu     sync.Mutex
	days   map[calendar.Day]*outlook
	again  map[lookKey]*course.Figure
	anew   map[calendar.Day]anew
}

func newHorizon(c *course.Course, at course.Spot, by calendar.Day) *horizon {
	return &horizon{course: c, at: at, end: by + 1, days: map[calendar.Day]*outlook{by + 1: atEnd(c.View().Numbers())}, again: map[lookKey]*course.Figure{}, anew: map[calendar.Day]anew{}}
}

// atEnd is what a state is worth on the day itself. A queen who lays and is not
// ready costs the nuc's days until she is.
func atEnd(n practice.Numbers) *outlook {
	ready, own := n.Days(practice.ReadyAfterFirstEgg), n.Get(practice.WorthOwnQueen)
	day, dwindled := n.Get(practice.WorthNucDay), n.Get(practice.LayingWorkersMean)
	yes := func(is bool) float64 {
		if is {
			return 1
		}
		return 0
	}
	return &outlook{
		lays:  course.Each(func(s course.State) float64 { return yes(s.Holds == course.HoldsLaying) }),
		own:   course.Each(func(s course.State) float64 { return yes(s.Holds == course.HoldsLaying && s.Own) }),
		ready: course.Each(func(s course.State) float64 { return yes(s.Holds == course.HoldsLaying && s.Days >= ready) }),
		queens: course.Each(func(s course.State) float64 {
			if s.Holds != course.HoldsLaying {
				return 0
			}
			price := 1.0
			if s.Own {
				price = own
			}
			return max(0, price-day*float64(max(0, ready-s.Days)))
		}),
		kept: course.Each(func(s course.State) float64 {
			switch s.Holds {
			case course.HoldsNone:
				return max(0, 1-float64(s.Days)/dwindled)
			case course.HoldsDroneLayer, course.HoldsWorkers:
				return 0
			default:
				return 1
			}
		}),
	}
}

// on is the outlook at the start of a day; beyond the end that of the end.
func (h *horizon) on(d calendar.Day) *outlook {
	h.mu.Lock()
	defer h.mu.Unlock()
	from := min(d, h.end)
	for h.days[from] == nil {
		from++
	}
	for ; from > d; from-- {
		next, step := h.days[from], h.course.Step(h.at, from-1)
		h.days[from-1] = &outlook{step.Before(next.lays), step.Before(next.own), step.Before(next.ready), step.Before(next.queens), step.Before(next.kept)}
	}
	return h.days[from]
}

// figure is what a nuc comes to.
type figure struct {
	lays, own, ready, queens, kept, given, found, meets, again, caught float64
}

func (o *outlook) of(b *course.Belief) figure {
	return figure{lays: b.Expect(o.lays), own: b.Expect(o.own), ready: b.Expect(o.ready), queens: b.Expect(o.queens), kept: b.Expect(o.kept)}
}

func (f figure) plus(g figure) figure {
	return figure{
		lays: f.lays + g.lays, own: f.own + g.own, ready: f.ready + g.ready, queens: f.queens + g.queens, kept: f.kept + g.kept,
		given: f.given + g.given, found: f.found + g.found, meets: f.meets + g.meets, again: f.again + g.again,
	}
}
