package state

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/weather"
)

// Flight is how many hours of a day are fit for mating flights, and how that
// is known.
type Flight struct {
	weather.Flight
	Sign book.Sign // as typed; zero: nobody said
}

// Forecast tells whether the day was only foretold.
func (f Flight) Forecast() bool { return f.Layer == weather.Forecast }

// Usual tells whether nobody said anything of the day: its hours are what is
// typical or assumed.
func (f Flight) Usual() bool { return f.Layer == weather.Typical || f.Layer == weather.Assumed }

// FlightOn is the flight of a day at a yard.
func (r *Reading) FlightOn(yard book.YardID, d calendar.Day) Flight {
	return Flight{Flight: r.flights(yard).Day(d), Sign: r.View.Yard(yard).Weather[d].Sign}
}

// readFlights is the weather of a yard on the day read.
func (r *Reading) readFlights(yard book.YardID) *weather.Yard { return weather.NewYard(r.View, yard) }

// WeatherYard is the yard whose weather the ribbon shows: the one given, or
// the mating yard whose weather was told on most days.
func (r *Reading) WeatherYard(yard book.YardID) book.YardID {
	if !yard.IsZero() {
		return yard
	}
	most := -1
	for y := range r.View.Yards() {
		if n := len(y.Told); n > most {
			yard, most = y.Yard, n
		}
	}
	return yard
}

// FullDay is how many hours fill a bar of flying hours: those of a fine day.
func (r *Reading) FullDay() float64 { return r.Numbers().Get(practice.FitHoursPlus) * fullDay }

// fullDay leaves room above a fine day for the sign of its weather.
const fullDay = 1.45
