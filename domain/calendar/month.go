package calendar

import "time"

const daysAWeek = 7

// WeekStart is the first day of the week that d lies in, where weeks begin on
// first: d itself or one of the six days before it. ISO 8601 weeks begin on
// [time.Monday].
func (d Day) WeekStart(first time.Weekday) Day {
	return d - Day((d.Weekday()-first+daysAWeek)%daysAWeek)
}

// AddMonths is the same day of the month n months on, or earlier where n is
// negative; the month's last day where it has no such day.
func (d Day) AddMonths(n int) Day {
	year, month, day := d.Date()
	_, _, last := Date(year, month+time.Month(n)+1, 0).Date()
	return Date(year, month+time.Month(n), min(day, last))
}
