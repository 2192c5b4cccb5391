package series

import (
	"maps"
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// series are the facts of all days taken in.
func (t *taking) series() (s Series) {
	for _, d := range slices.Sorted(maps.Keys(t.days)) {
		if told := t.days[d]; told.whole {
			if f := t.seenDay(d, &told.slots[0]); f != (book.WeatherSeen{Yard: t.Yard, Day: d, Forecast: f.Forecast}) {
				s.Facts = append(s.Facts, f)
			}
			continue
		}
		if f := t.hours(d, t.days[d]); len(f.Celsius)+len(f.Wind)+len(f.Rain)+len(f.Sky) > 0 {
			s.Facts = append(s.Facts, f)
		}
	}
	s.Gaps = gapsOf(s.Facts, t.Zone)
	for _, q := range slices.Sorted(maps.Keys(t.doubts)) {
		s.Doubts = append(s.Doubts, t.doubts[q])
	}
	return s
}

func (t *taking) seenDay(d calendar.Day, s *slot) book.WeatherSeen {
	return book.WeatherSeen{
		Yard: t.Yard, Day: d, Forecast: book.Foretold(d, t.Today),
		Low: s.mean(Low, tenths), High: s.mean(High, tenths), Wind: s.mean(Wind, tenths), Rain: s.mean(Rain, tenths), Sky: s.sky(),
	}
}

func (t *taking) hours(d calendar.Day, told *day) book.WeatherHours {
	f := book.WeatherHours{Yard: t.Yard, Day: d, Forecast: book.Foretold(d, t.Today)}
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
