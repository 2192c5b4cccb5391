package plan

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/weather"
)

// Flown is where the weather comes from by which the queens of a graft fly: the days
// of their flights by its layer.
type Flown struct {
	Seen, Foretold, Usual, Assumed int
	Hours                          float64      // fit to fly, as far as drones are there
	Droneless                      int          // days on which none are
	Months                         []time.Month // of days that are assumed
	Each                           float64      // hours that are assumed of each of them
	Later                          float64      // fit to fly after those days, until they are as old as Late
	Late                           calendar.Day // days of age at which a virgin is late
}

// Flown is the weather of the days on which the queens of a ladder fly in a yard.
func (p *Planner) Flown(l Ladder, yard book.YardID) (f Flown) {
	y, r := p.course.Weather(yard), l.Rung(Fly)
	f.Late = p.days(practice.VirginLate)
	for d := r.By + 1; d <= l.Rung(Emerge).Best+f.Late; d++ {
		f.Later += p.MatingHours(yard, d)
	}
	for d := r.From; d <= r.By; d++ {
		day := y.Day(d)
		drones := p.DronesOn(yard, d)
		f.Hours += drones * day.Hours
		if drones == 0 {
			f.Droneless++
		}
		switch day.Layer {
		case weather.Seen:
			f.Seen++
		case weather.Forecast:
			f.Foretold++
		case weather.Typical:
			f.Usual++
		default:
			f.Assumed++
			f.Each = math.Round(10*day.Hours) / 10
			if _, m, _ := d.Date(); !slices.Contains(f.Months, m) {
				f.Months = append(f.Months, m)
			}
		}
	}
	return f
}

// Days are all days of the flights.
func (f Flown) Days() int { return f.Seen + f.Foretold + f.Usual + f.Assumed }

// String says by which weather, in the keeper's words.
func (f Flown) String() string {
	kinds := []struct {
		days        int
		some, alone string
	}{
		{f.Seen, "seen", "by weather seen"},
		{f.Foretold, "foretold", "by the forecast"},
		{f.Usual, "by the usual weather", "by the usual weather"},
		{f.Assumed, "assumed", "no weather told: assumed"},
	}
	var all []string
	for _, k := range kinds {
		switch {
		case k.days == f.Days():
			return k.alone + f.without()
		case k.days > 0:
			all = append(all, fmt.Sprintf("%d %s", k.days, k.some))
		}
	}
	return "days: " + strings.Join(all, ", ") + f.without()
}

// without says of how many of the days nobody expects drones; "" where of none.
func (f Flown) without() string {
	switch f.Droneless {
	case 0:
		return ""
	case f.Days():
		return ", all without drones"
	default:
		return fmt.Sprintf(", %d without drones", f.Droneless)
	}
}

// untold is what is to be minded where nobody told the weather of some of the days.
func (f Flown) untold() (m Mind, ok bool) {
	if f.Assumed == 0 {
		return m, false
	}
	var months []string
	for _, m := range f.Months {
		months = append(months, m.String())
	}
	return Mind{
		Why: fmt.Sprintf("no weather told for %s: %.3g h a day fit to fly are assumed", strings.Join(months, " and "), f.Each),
		Do:  "Tell what is usual there in that month",
	}, true
}
