package state

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Flight is how many hours of a day are fit for mating flights, and how that
// is known.
type Flight struct {
	Hours    float64
	Sign     book.Sign // as typed; zero: nobody said
	Forecast bool      // only foretold
	Typical  bool      // nobody said anything: the mean of the days that are known
}

// FlightOn is the flight of a day at a yard.
func (r *Reading) FlightOn(yard book.YardID, d calendar.Day) Flight {
	y := r.View.Yard(yard)
	if w, ok := y.Weather[d]; ok && w.Sign != 0 {
		return Flight{Hours: r.Numbers().Get(fitHours[w.Sign]), Sign: w.Sign, Forecast: w.Forecast}
	}
	return Flight{Hours: r.typical(y), Typical: true}
}

var fitHours = map[book.Sign]practice.Key{
	book.Flying:   practice.FitHoursPlus,
	book.HalfFit:  practice.FitHoursHalf,
	book.NoFlight: practice.FitHoursMinus,
}

// typical is the mean of the days seen at a yard; of a yard without any, the
// hours of a half fit day.
func (r *Reading) typical(y *book.Yard) float64 {
	days := map[book.Sign]int{}
	for _, w := range y.Weather {
		if w.Sign != 0 && !w.Forecast {
			days[w.Sign]++
		}
	}
	sum, n := 0.0, 0
	for _, sign := range []book.Sign{book.Flying, book.HalfFit, book.NoFlight} {
		sum += float64(days[sign]) * r.Numbers().Get(fitHours[sign])
		n += days[sign]
	}
	if n == 0 {
		return r.Numbers().Get(practice.FitHoursHalf)
	}
	return sum / float64(n)
}

// WeatherYard is the yard whose weather the ribbon shows: the one given, or
// the mating yard whose weather was told on most days.
func (r *Reading) WeatherYard(yard book.YardID) book.YardID {
	if !yard.IsZero() {
		return yard
	}
	most := -1
	for y := range r.View.Yards() {
		if n := len(y.Weather); n > most {
			yard, most = y.Yard, n
		}
	}
	return yard
}

// FullDay is how many hours fill a bar of flying hours: those of a fine day.
func (r *Reading) FullDay() float64 { return r.Numbers().Get(practice.FitHoursPlus) * fullDay }

// fullDay leaves room above a fine day for the sign of its weather.
const fullDay = 1.45
