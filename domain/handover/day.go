package handover

import (
	"fmt"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Day is the day on which an order's queens leave the keeper's hands.
type Day struct {
	On      calendar.Day
	Arrive  calendar.Day // when they are with the customer
	Catch   calendar.Day // when those in nucs are caught: the last day somebody is free
	Warning string       // what speaks against the day; "": nothing
}

// dayOf is the day for an order: the last one on which its queens are still in
// time, are sent on a day of the week on which queens are sent, and are not on the
// way on a day foretold or seen too hot. Where no day of its window is so, the
// last one in time, with what speaks against it.
func dayOf(v *book.View, o *book.Order) Day {
	last, first := max(o.By, v.Today()), max(o.From, v.Today())
	if !o.Sent {
		return catchDay(v, Day{On: last, Arrive: last})
	}
	journey := o.JourneyDays(v.Numbers())
	for on := last - journey; on >= first-journey && on >= v.Today(); on-- {
		if d := (Day{On: on, Arrive: on + journey}); against(v, d) == "" {
			return catchDay(v, d)
		}
	}
	d := Day{On: max(last-journey, v.Today()), Arrive: max(last, v.Today()+journey)}
	d.Warning = against(v, d)
	return catchDay(v, d)
}

// against is what speaks against sending queens on a day.
func against(v *book.View, d Day) string {
	n := v.Numbers()
	if w := weekday(d.On); w < n.Get(practice.SentFrom) || w > n.Get(practice.SentUntil) {
		return fmt.Sprintf("sent on a %s: not a day on which queens are sent; agree on another one", d.On.Weekday())
	}
	home := v.HomeYard()
	if home == nil {
		return ""
	}
	for on := d.On; on <= d.Arrive; on++ {
		if high, said := home.Weather[on].High.Get(); said && high > n.Get(practice.HeatStop) {
			return fmt.Sprintf("%.0f °C on %s: too hot for queens on the way; agree on another day", high, on.Short())
		}
	}
	return ""
}

// weekday counts Monday as 1 and Sunday as 7.
func weekday(d calendar.Day) float64 {
	if w := d.Weekday(); w != time.Sunday {
		return float64(w)
	}
	return 7
}

// catchDay adds the day on which queens in nucs are caught: the last one up to the
// hand-over on which somebody is free, as far back as a cage keeps them.
func catchDay(v *book.View, d Day) Day {
	d.Catch = d.On
	if !v.HoursTold() {
		return d
	}
	least := max(v.Today(), d.On-calendar.Day(v.Numbers().Days(practice.CagedMost)))
	for on := d.On; on >= least; on-- {
		if v.MinutesFree(on) > 0 {
			d.Catch = on
			return d
		}
	}
	return d
}
