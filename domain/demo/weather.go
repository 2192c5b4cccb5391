package demo

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Signs of the days, P plus, H half and M minus: the past up to yesterday, and
// the forecast from today. The cold week is three weeks back.
const (
	spring      = "HPPHMHPPPHHPMMHPPPPPHHPPPPHPPPPHPPHPPPPPPHP"
	coldWeek    = "MMMMHMM"
	since       = "HPPPHPPPPPHPPPPP"
	weatherPast = spring + coldWeek + since
	forecast    = "PPHMP"
)

// skies are what a day's sign is made of; each figure may stray by spread.
var skies = map[rune]struct {
	sign                       book.Sign
	low, high, wind, rain, sky float64
}{
	'P': {book.Flying, 15, 24, 2, 0, .8},
	'H': {book.HalfFit, 12, 19, 4, 2, .4},
	'M': {book.NoFlight, 6, 12, 6, 8, .1},
}

// usual is the weather of any month of the season, whenever that is.
var usual = struct{ low, high, spread, wind, rainy, sky float64 }{13, 23, 3.5, 3, .3, .6}

// writeUsual writes what is usual in the months about the day, for all yards.
func (v *valley) writeUsual() {
	const about = 3 // months before and after
	for n := -about; n <= about; n++ {
		_, month, _ := v.on(0).AddMonths(n).Date()
		for _, y := range yards {
			at := v.in(bookBegun, calendar.Morning)
			v.write(v.hand(y.name, at), at, book.WeatherNormal{
				Yard: v.yards[y.name], Month: int(month), Low: book.Said(usual.low), High: book.Said(usual.high), Spread: book.Said(usual.spread),
				Wind: book.Said(usual.wind), Rainy: book.Said(usual.rainy), Sky: book.Said(usual.sky),
			})
		}
	}
}

// writeWeather writes each evening's weather for all yards, last evening's
// forecast, and what is usual.
func (v *valley) writeWeather() {
	v.writeUsual()
	first := -len(weatherPast)
	for i, sky := range weatherPast {
		for _, y := range yards {
			v.weather(y.name, first+i, first+i, sky)
		}
	}
	for i, sky := range forecast {
		for _, y := range yards {
			v.weather(y.name, i, -1, sky)
		}
	}
}

// weather writes a yard's day, told on the same evening or foretold.
func (v *valley) weather(yard string, day, told int, sky rune) {
	s := skies[sky]
	f := book.WeatherSeen{Yard: v.yards[yard], Day: v.on(day), Sign: s.sign, Forecast: told < day}
	f.Low, f.High = v.degrees(s.low), v.degrees(s.high)
	if yard == ledge && !f.Forecast { // where the weather mast stands
		f.Wind = book.Said(s.wind + float64(v.chance.IntN(11))/10)
		f.Rain = book.Said(s.rain * float64(1+v.chance.IntN(3)) / 2)
		f.Sky = book.Said(s.sky)
	}
	at := v.in(told, calendar.Evening)
	v.write(v.hand(yard, at), at, f)
}

// degrees are a temperature up to two degrees above another.
func (v *valley) degrees(from float64) book.Amount {
	return book.Said(from + float64(v.chance.IntN(5))/2)
}
