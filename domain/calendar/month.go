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

// MostDays is how many days a month has at most, in any year: of February 29. Of what is
// no month it is 0.
func MostDays(m time.Month) int {
	const leap = 2028 // a year in which every month has the most that it can
	if m < time.January || m > time.December {
		return 0
	}
	_, _, last := Date(leap, m+1, 0).Date()
	return last
}
