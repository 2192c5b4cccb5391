package handover

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
	"lidmark/domain/strength"
)

// Catching is how a queen who lays in a nuc is taken for an order. A cage by itself keeps
// her for few days before the hand-over, a bank for weeks. One whose small combs are full
// before that is caught while they have room, and hangs in a bank until she goes; where no
// cage keeps her so long she gets room, and is caught as late as any other.
type Catching struct {
	By     calendar.Day // the day she is caught; zero: she is in a cage
	From   calendar.Day // and the first one on which she may be
	Full   calendar.Day // the last day on which her small combs have room; zero: they have until she is caught
	ToBank bool         // she hangs in a bank from then on, or from now on if she is in a cage
	Room   bool         // she gets a comb or room, so that she can stay until she is caught
}

// Words say what is to be done with her until she goes: "catch Mon 24 May"; "" for one
// who stays in her cage.
func (c Catching) Words() string {
	switch {
	case c.By == 0 && c.ToBank:
		return "hang her into a bank"
	case c.By == 0:
		return ""
	case c.Room:
		return "give room, catch " + c.By.Short()
	case c.ToBank:
		return "catch by " + c.By.Short() + ", then in a bank"
	case c.Full != 0:
		return "catch by " + c.By.Short() + ", then caged"
	default:
		return "catch " + c.By.Short()
	}
}

// Keeps tells of caged mated queens the last day on which each may go to an order: in a bank as
// long as it keeps her, in a cage by herself few days, longer while she can still be
// hung into a bank that the keeper has.
func Keeps(v *book.View) func(*book.Queen) calendar.Day {
	bank := hasBank(v)
	banked := calendar.Day(v.Numbers().Days(practice.MatedBankMost))
	return func(q *book.Queen) calendar.Day {
		until, alone := Alone(v, q)
		if !alone || bank && v.Today() <= until {
			return q.Since.Day(v.Zone()) + banked
		}
		return until
	}
}

// hasBank tells whether queens can be hung into a bank.
func hasBank(v *book.View) bool {
	for c := range v.Colonies() {
		if c.Is(book.Bank) && closed(v, c.Yard) == "" {
			return true
		}
	}
	return false
}

// fullBy is the last day on which a nuc on small combs has room for a laying queen's
// brood, by the calendar; zero where its combs are not small, or nobody said.
func fullBy(v *book.View, n *book.Nuc, zone *time.Location) calendar.Day {
	if side := v.Numbers().Get(practice.FullCombSide); n.Side <= 0 || n.Side >= side || n.Holds.FirstEggs.IsZero() {
		return 0
	}
	return n.Holds.FirstEggs.Day(zone) + calendar.Day(v.Numbers().Days(practice.FullBy))
}

// catcher says how the queens of orders are caught.
type catcher struct {
	view          *book.View
	course        *course.Course
	alone, banked calendar.Day // days a queen is caged at most: by herself, in a bank
	yards         map[book.YardID]*strength.Yard
}

func (s *Sheet) catch(c *course.Course) {
	v := c.View()
	k := catcher{view: v, course: c, alone: calendar.Day(v.Numbers().Days(practice.CagedMost)), yards: map[book.YardID]*strength.Yard{}}
	k.banked = k.alone
	if hasBank(v) {
		k.banked = max(k.alone, calendar.Day(v.Numbers().Days(practice.MatedBankMost)))
	}
	for i := range s.Orders {
		o := &s.Orders[i]
		for j := range o.Queens {
			o.Queens[j].Catching = k.of(o.Queens[j].Queen, o.Day)
		}
	}
}

// of says how a queen is caught who goes on a day.
func (k catcher) of(q Queen, on Day) Catching {
	if q.Nuc.IsZero() {
		return Catching{ToBank: !q.Bank && on.On > q.Caged+k.alone}
	}
	c := Catching{By: on.Catch, From: max(q.Ready, q.Shut, min(on.Catch, on.On-k.alone))}
	if q.full == 0 || q.full >= on.Catch || k.light(q.Nuc) {
		return c
	}
	c.Full = q.full
	first := max(k.view.Today(), q.Shut)
	last := max(first, q.Ready, q.full)
	switch caged := on.On - last; {
	case last >= on.Catch:
		return c
	case caged <= k.alone:
		c.By = last
	case caged <= k.banked:
		c.By, c.From = last, max(q.Ready, q.Shut, on.On-k.banked)
	default:
		c.Room = true
		return c
	}
	c.By = k.free(c, first)
	c.From = min(c.From, c.By)
	c.ToBank = on.On-c.By > k.alone
	return c
}

// free is the last day up to the one by which she is caught on which somebody is free.
func (k catcher) free(c Catching, first calendar.Day) calendar.Day {
	if k.view.HoursTold() {
		for d := c.By; d >= max(c.From, first); d-- {
			if k.view.MinutesFree(d) > 0 {
				return d
			}
		}
	}
	return c.By
}

// light tells whether a nuc's bees are too few to fill its combs with brood.
func (k catcher) light(id book.NucID) bool {
	n := k.view.Nuc(id)
	y := k.yards[n.Yard]
	if y == nil {
		y = strength.NewYard(k.view, n.Yard, k.course.Zone(n.Yard))
		k.yards[n.Yard] = y
	}
	return y.Of(n).WeakThen()
}
