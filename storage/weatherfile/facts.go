package weatherfile

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// series are the facts of all days taken in.
func (t *taking) series() (s Series, err error) {
	var hours []book.Amount // the temperatures of all days, one behind the other
	for _, d := range slices.Sorted(maps.Keys(t.days)) {
		if told := t.days[d]; told.whole {
			if f := t.seenDay(d, &told.slots[0]); f != (book.WeatherSeen{Yard: t.Yard, Day: d, Forecast: f.Forecast}) {
				s.Facts = append(s.Facts, f)
			}
			continue
		}
		f := t.hours(d, t.days[d])
		length := int((d + 1).Start(t.Zone).Sub(d.Start(t.Zone)) / time.Hour)
		hours = append(append(hours, f.Celsius...), make([]book.Amount, max(0, length-len(f.Celsius)))...)
		if len(f.Celsius)+len(f.Wind)+len(f.Rain)+len(f.Sky) > 0 {
			s.Facts = append(s.Facts, f)
		}
	}
	if len(s.Facts) == 0 {
		return Series{}, fmt.Errorf("%s: no row of it tells anything: choose another file, or other columns", t.Name)
	}
	s.Missing = gaps(hours)
	return s, nil
}

// gaps are how many amounts are unsaid between the first and the last that is said.
func gaps(list []book.Amount) (n int) {
	unsaid, begun := 0, false
	for _, a := range list {
		switch {
		case a.IsZero():
			unsaid++
		case begun:
			n, unsaid = n+unsaid, 0
		default:
			begun, unsaid = true, 0
		}
	}
	return n
}

func (t *taking) seenDay(d calendar.Day, s *slot) book.WeatherSeen {
	return book.WeatherSeen{
		Yard: t.Yard, Day: d, Forecast: d >= t.Today,
		Low: s.mean(Low, tenths), High: s.mean(High, tenths), Wind: s.mean(Wind, tenths), Rain: s.mean(Rain, tenths), Sky: s.sky(),
	}
}

func (t *taking) hours(d calendar.Day, told *day) book.WeatherHours {
	f := book.WeatherHours{Yard: t.Yard, Day: d, Forecast: d >= t.Today}
	for _, s := range told.slots[:told.last+1] {
		f.Celsius = append(f.Celsius, s.mean(Temperature, tenths))
		f.Wind = append(f.Wind, s.mean(Wind, tenths))
		f.Rain = append(f.Rain, s.total(Rain, tenths))
		f.Sky = append(f.Sky, s.sky())
	}
	for _, list := range []*[]book.Amount{&f.Celsius, &f.Wind, &f.Rain, &f.Sky} {
		if !slices.ContainsFunc(*list, func(a book.Amount) bool { return !a.IsZero() }) {
			*list = nil
		}
	}
	return f
}

// How finely values are kept: as instruments tell them.
const tenths, hundredths = 10, 100

// mean is the mean of what was told of a quantity; readings within an hour are
// taken together.
func (s *slot) mean(q Quantity, by float64) book.Amount {
	if s.times[q] == 0 {
		return book.Amount{}
	}
	return book.Said(math.Round(s.sum[q]/float64(s.times[q])*by) / by)
}

// total is the sum of what was told of a quantity.
func (s *slot) total(q Quantity, by float64) book.Amount {
	if s.times[q] == 0 {
		return book.Amount{}
	}
	return book.Said(math.Round(s.sum[q]*by) / by)
}

// sky is the share of sun, or what the clouds leave of it.
func (s *slot) sky() book.Amount {
	if s.times[Sun] > 0 {
		return s.mean(Sun, hundredths)
	}
	cloud, said := s.mean(Cloud, hundredths).Get()
	if !said {
		return book.Amount{}
	}
	return book.Said(math.Round((1-cloud)*hundredths) / hundredths)
}
