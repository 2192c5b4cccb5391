package book

import (
	"time"

	"lidmark/domain/calendar"
)

// WeatherHours is a day's weather at a yard by the hour. Value i of each list
// is of the hour that begins i hours after the day does, so that a day on which
// the clocks change has 23 or 25; an hour that nobody told is an unsaid amount,
// and a list may end early. Celsius is the air's temperature, Wind m/s at 10 m,
// Rain mm in the hour, Sky the share of sun, 0 to 1. Forecast marks what was
// only foretold when it was written.
type WeatherHours struct {
	Yard     YardID       `json:"yard"`
	Day      calendar.Day `json:"day"`
	Celsius  []Amount     `json:"celsius,omitzero"`
	Wind     []Amount     `json:"windMS,omitzero"`
	Rain     []Amount     `json:"rainMM,omitzero"`
	Sky      []Amount     `json:"sky,omitzero"`
	Forecast bool         `json:"forecast,omitzero"`
}

// WeatherNormal is what is usual at a yard in a month of the year, 1 to 12: the
// mean Low and High in °C, the Spread of the days about them as a standard
// deviation in °C, the mean Wind in m/s at 10 m, the share of Rainy days and
// the mean share of sun, 0 to 1 each.
type WeatherNormal struct {
	Yard   YardID `json:"yard"`
	Month  int    `json:"month"`
	Low    Amount `json:"lowC,omitzero"`
	High   Amount `json:"highC,omitzero"`
	Spread Amount `json:"spreadC,omitzero"`
	Wind   Amount `json:"windMS,omitzero"`
	Rainy  Amount `json:"rainy,omitzero"`
	Sky    Amount `json:"sky,omitzero"`
}

func (f WeatherHours) about(add func(Subject))  { add(f.Yard.Subject()) }
func (f WeatherNormal) about(add func(Subject)) { add(f.Yard.Subject()) }

// Foretold tells whether what is told of a day, on another day, is a forecast: a day
// to come is, today counts as seen, be it typed or taken in from a file.
func Foretold(day, today calendar.Day) bool { return day > today }

// takeWeather keeps what was seen before what was only forecast. Of two that
// were told alike the later counts, by the hour or not.
func (y *Yard) takeWeather(f WeatherSeen, on calendar.Day) {
	if was, ok := y.Weather[f.Day]; ok && f.Forecast && !was.Forecast {
		return
	}
	y.Weather[f.Day], y.Told[f.Day] = f, on
	if was, ok := y.Hours[f.Day]; ok && (was.Forecast || !f.Forecast) {
		delete(y.Hours, f.Day)
	}
}

// takeHours keeps a day told by the hour, by the same order, and its low and
// high for those who ask for no more.
func (y *Yard) takeHours(f WeatherHours, on calendar.Day) {
	if was, ok := y.Hours[f.Day]; ok && f.Forecast && !was.Forecast {
		return
	}
	day, ok := y.Weather[f.Day]
	if ok && f.Forecast && !day.Forecast {
		return
	}
	y.Hours[f.Day], y.Told[f.Day] = f, on
	low, high := f.LowHigh((f.Day + 1).Start(y.Zone).Sub(f.Day.Start(y.Zone)))
	if !low.IsZero() {
		y.Weather[f.Day] = WeatherSeen{Yard: f.Yard, Day: f.Day, Low: low, High: high, Forecast: f.Forecast}
	}
}

// LowHigh are the lowest and the highest temperature of a day of such a length,
// unsaid when an hour of it is missing.
func (f WeatherHours) LowHigh(length time.Duration) (low, high Amount) {
	n := int(length / time.Hour)
	if len(f.Celsius) < n || n == 0 {
		return Amount{}, Amount{}
	}
	for _, a := range f.Celsius[:n] {
		c, said := a.Get()
		if !said {
			return Amount{}, Amount{}
		}
		low, high = Said(min(low.Or(c), c)), Said(max(high.Or(c), c))
	}
	return low, high
}

// takeNormal keeps the last that was said of a month; a month that no year has
// is passed over.
func (y *Yard) takeNormal(f WeatherNormal) {
	if f.Month >= 1 && f.Month <= len(y.Normals) {
		y.Normals[f.Month-1] = f
	}
}
