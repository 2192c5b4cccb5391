package rules

import (
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// FreeLeft are the minutes that all people together are still free on the day of
// a view, from its instant on.
func FreeLeft(v *book.View) (minutes float64) {
	for p := range v.People() {
		if from, until, free := leftOf(v, p); free {
			minutes += until.Sub(from).Minutes()
		}
	}
	return minutes
}

// leftOf is what is left of the free hours of a person on the view's day; false
// where nothing is.
func leftOf(v *book.View, p *book.Person) (from, until time.Time, free bool) {
	h := p.FreeOn(v.Today())
	from, until = h.Between(v.Today(), v.Zone())
	if v.On().After(from) {
		from = v.On()
	}
	return from, until, h.Minutes() > 0 && from.Before(until)
}

// Left is a plan of the view's own day from its instant on: only what is left of
// the free hours counts, and the route begins now where they have begun. Without
// any left it has no hours.
func (p DayPlan) Left(v *book.View) DayPlan {
	var first time.Time
	for person := range v.People() {
		if from, _, free := leftOf(v, person); free {
			first = sooner(first, from)
		}
	}
	p.Free, p.Stops = FreeLeft(v), slices.Clone(p.Stops)
	p.Home = begin(p.Stops, first)
	return p
}

// begins is when the way to the first stop begins; zero: nobody is free.
func (p DayPlan) begins() time.Time {
	if len(p.Stops) == 0 || p.Stops[0].Start.IsZero() {
		return time.Time{}
	}
	return p.Stops[0].Start.Add(-minutesLong(p.Stops[0].Drive))
}

// sooner is the earlier of two instants of which a zero one is none.
func sooner(a, b time.Time) time.Time {
	if a.IsZero() || b.Before(a) {
		return b
	}
	return a
}

// firstFree is when the first person is free on a day; zero: nobody.
func firstFree(v *book.View, d calendar.Day) (first time.Time) {
	for p := range v.People() {
		if h := p.FreeOn(d); h.Minutes() > 0 {
			from, _ := h.Between(d, v.Zone())
			first = sooner(first, from)
		}
	}
	return first
}

// freeAfter is when somebody is free on a day after d: the begin of the free
// hours; zero where nobody is known to be.
func freeAfter(v *book.View, d calendar.Day) time.Time {
	for next := d + 1; next <= d+calendar.Day(v.Numbers().Days(practice.FreeHourAhead)); next++ {
		if first := firstFree(v, next); !first.IsZero() {
			return first
		}
	}
	return time.Time{}
}
