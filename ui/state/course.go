package state

import (
	"fmt"
	"math"
	"slices"
	"sync"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// NucCourse is what a nuc most probably holds: by day, and why.
type NucCourse struct {
	Now   CourseParts
	Days  []CourseDay       // from the life's beginning to two weeks beyond the day read
	Looks []course.Evidence // in order

	Ever           float64      // the chance that a queen lays, ever
	Half, Nine     calendar.Day // by when half and nine in ten of those who lay have laid
	WaitUntil      calendar.Day // from which waiting no longer pays; none: it is not waited for eggs
	Given          int          // if one lays, with how many of 100 she is the one given
	WeatherIsKnown bool         // somebody told something of the weather of these days

	was func() []CourseDay
}

// CourseDay is what a nuc may hold at the start of a day.
type CourseDay struct {
	Day calendar.Day
	CourseParts
}

// Ahead of the day read, and before it, a course shows so many days.
const (
	courseAhead  = 14
	courseBefore = 56
)

// hardlyEver is the chance under which no day of a first egg is told.
const hardlyEver = 0.02

// CourseOf is the course of a nuc; of an empty one it has no days.
func (r *Reading) CourseOf(id book.NucID) *NucCourse { return r.courses(id) }

func (r *Reading) readCourse(id book.NucID) *NucCourse {
	n := r.of[id]
	c := &NucCourse{}
	held := r.Course.Held(n.Nuc)
	if held.From.IsZero() {
		return c
	}
	chances := held.Chances()
	c.Now, c.Given = coursePartsOf(chances), percent(chances.Sure())
	for _, d := range r.Course.Evenings(n.Nuc, courseAhead) {
		if d.Day >= r.Day-courseBefore {
			c.Days = append(c.Days, CourseDay{d.Day, coursePartsOf(d.Chances)})
		}
	}
	c.was = sync.OnceValue(func() (days []CourseDay) {
		for _, d := range r.Course.Hindsight(n.Nuc) {
			days = append(days, CourseDay{d.Day, coursePartsOf(d.Chances)})
		}
		return days
	})
	c.Looks = r.Course.Evidence(n.Nuc)
	c.WeatherIsKnown = r.weatherTold(n.Yard, held.From)
	if eggs := r.Course.Eggs(n.Nuc); !n.Holds.Condition.Queenright() && eggs.Ever() >= hardlyEver {
		c.Ever, c.Half, c.Nine = eggs.Ever(), eggs.Day(0.5), eggs.Day(0.9)
		c.WaitUntil = eggs.NotWorth(r.Day, r.Numbers().Get(practice.WorthNucDay))
	}
	return c
}

// NowKnown are the days of a nuc's course up to the day of the clock by all that is
// known now, beside what was known on each; none where nothing was learned since.
func (s State) NowKnown(id book.NucID) []CourseDay {
	present, then := s.Present(), s.Reading().CourseOf(id).Days
	if present.Nuc(id) == nil || len(then) == 0 {
		return nil
	}
	c := present.CourseOf(id)
	if c.was == nil {
		return nil
	}
	days, learned := []CourseDay{}, false
	for _, d := range c.was() {
		i := int(d.Day - then[0].Day)
		if i < 0 || i >= len(then) {
			continue
		}
		days = append(days, d)
		learned = learned || !d.alike(then[i].CourseParts)
	}
	if !learned {
		return nil
	}
	return days
}

// alike tells whether chances round to the same per cent, give or take one.
func (p CourseParts) alike(q CourseParts) bool {
	for i := range p {
		if math.Abs(p[i]-q[i]) > 0.015 {
			return false
		}
	}
	return true
}

// Parts are the parts that are worth a word on any day, in their order.
func (c *NucCourse) Parts() (parts []CoursePart) {
	for p := range courseParts {
		if slices.ContainsFunc(c.Days, func(d CourseDay) bool { return d.Shown(p) }) {
			parts = append(parts, p)
		}
	}
	return parts
}

// weatherTold tells whether somebody told of a day since.
func (r *Reading) weatherTold(yard book.YardID, since calendar.Day) bool {
	for d := since; d <= r.Day; d++ {
		if !r.FlightOn(yard, d).Usual() {
			return true
		}
	}
	return false
}

// Grounds says what the chances rest on where no look speaks; "" where one does.
func (c *NucCourse) Grounds() string {
	switch {
	case len(c.Looks) > 0:
		return ""
	case c.WeatherIsKnown:
		return "No look speaks yet: reckoned from what was done and from the weather."
	default:
		return "By the calendar alone: no look speaks yet, and nobody told the weather."
	}
}

// FirstEgg says when the first egg is to be expected; "" where none is awaited.
func (c *NucCourse) FirstEgg() string {
	if c.Half.IsZero() {
		return ""
	}
	return fmt.Sprintf("%d of 100 get to lay; of those half by %s, nine in ten by %s", percent(c.Ever), c.Half.Short(), c.Nine.Short())
}

// Says is a day of the course in words.
func (d CourseDay) Says() string { return d.Day.Short() + ": " + d.String() }
