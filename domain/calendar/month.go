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

// Month is a month laid out in weeks, as a wall calendar shows it.
type Month struct {
	Year  int
	Month time.Month
	Weeks [][daysAWeek]Day // four to six; days of the months around it fill the first and last
}

// MonthOf is the month that d lies in, its weeks beginning on first.
func MonthOf(d Day, first time.Weekday) Month {
	m := Month{}
	m.Year, m.Month, _ = d.Date()
	end := Date(m.Year, m.Month+1, 1)
	for start := Date(m.Year, m.Month, 1).WeekStart(first); start < end; start += daysAWeek {
		var week [daysAWeek]Day
		for i := range week {
			week[i] = start + Day(i)
		}
		m.Weeks = append(m.Weeks, week)
	}
	return m
}

// Holds tells whether d is a day of the month itself.
func (m Month) Holds(d Day) bool {
	year, month, _ := d.Date()
	return year == m.Year && month == m.Month
}
