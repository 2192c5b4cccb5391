package weather

import (
	"fmt"
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// signHours are the hours of a day that was told in one stroke.
var signHours = [...]practice.Key{
	book.Flying:   practice.FitHoursPlus,
	book.HalfFit:  practice.FitHoursHalf,
	book.NoFlight: practice.FitHoursMinus,
}

// ofSign is a day told in one stroke: it has the hours of its sign.
func (y *Yard) ofSign(w book.WeatherSeen) Flight {
	f := Flight{Hours: y.numbers.Get(signHours[w.Sign]), Layer: Seen}
	f.Chance = atLeastOne(f.Hours)
	said := "typed"
	if w.Forecast {
		f.Layer, said = Forecast, "foretold"
	}
	f.Why = fmt.Sprintf("%s %s: %s h", w.Sign, said, figure(f.Hours))
	return f
}

// assumed is a day of which nobody said anything.
func (y *Yard) assumed() Flight {
	h := y.numbers.Get(practice.FitHoursUntold)
	return Flight{
		Hours: h, Chance: atLeastOne(h), Layer: Assumed,
		Why: fmt.Sprintf("nobody told this day's weather, and no normals are typed: %s h assumed", figure(h)),
	}
}

// atLeastOne is whether hours that are known are a fit hour.
func atLeastOne(hours float64) float64 {
	if hours >= 1 {
		return 1
	}
	return 0
}

// figure is a quantity to a tenth, without a tenth where that is none.
func figure(x float64) string {
	s := strconv.FormatFloat(x, 'f', 1, 64)
	if s[len(s)-2:] == ".0" {
		return s[:len(s)-2]
	}
	return s
}
