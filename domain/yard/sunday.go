package yard

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// The mating season of the northern half of the Earth, from the first day to the last,
// and its middle; south of the equator half a year later. Common practice, no source.
const (
	seasonFrom, seasonTo = time.April, time.August
	seasonMiddle         = time.June
	seasonMiddleDay      = 15
	halfYear             = 6 // months
)

// SunDay is the day whose sun and shade matter for a yard that is looked at on day d,
// since queens fly then: d itself within the mating season of its latitude; else the day
// on which the queens of the next planned batch fly; else the middle of the next season.
// A yard nobody placed lies north.
func SunDay(v *book.View, y *book.Yard, d calendar.Day) calendar.Day {
	if inSeason(y, d) {
		return d
	}
	n := v.Numbers()
	flies := n.Duration(practice.GraftToEmerge) + n.Duration(practice.FirstMatingFlight)
	for p := range v.Plans() {
		if flight := p.Day + calendar.Day(flies.Hours()/24); flight >= d && inSeason(y, flight) {
			return flight
		}
	}
	month := seasonMiddle
	if y.Lat < 0 {
		month += halfYear
	}
	year, _, _ := d.Date()
	if middle := calendar.Date(year, month, seasonMiddleDay); middle >= d {
		return middle
	}
	return calendar.Date(year+1, month, seasonMiddleDay)
}

func inSeason(y *book.Yard, d calendar.Day) bool {
	_, month, _ := d.Date()
	if y.Lat < 0 {
		month = (month+halfYear-1)%12 + 1
	}
	return month >= seasonFrom && month <= seasonTo
}
