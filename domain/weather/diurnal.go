package weather

import (
	"math"

	"lidmark/domain/practice"
)

// Diurnal is the air's temperature through a day between its low and its high,
// Parton and Logan 1981, Agricultural Meteorology 23:205-216: half a wave from
// the low, a little about sunrise, to sunset, then a decay to the next low. The
// printed decay ends above that low; here it is stretched to meet it.
type Diurnal struct {
	Low, High        float64 // °C
	Rise, Length     float64 // hours of the day at which the sun rises, and for how many it is up
	lag, decay, rest float64 // a, b and c of the paper: hours, no unit, hours
}

// NewDiurnal is the course of a day by the keeper's numbers.
func NewDiurnal(low, high, rise, length float64, n practice.Numbers) Diurnal {
	return Diurnal{low, high, rise, length, n.Get(practice.DiurnalPeakLag), n.Get(practice.DiurnalNightDecay), n.Get(practice.DiurnalLowLag)}
}

// At is the temperature in °C at an hour of the day, 0 to 24.
func (d Diurnal) At(hour float64) float64 {
	coldest := d.Rise + d.rest
	sunset := d.Rise + d.Length
	if hour < coldest {
		hour += 24
	}
	if hour <= sunset {
		return d.lit(hour - coldest)
	}
	night := 24 - d.Length + d.rest // from sunset to the next low
	if night <= 0 {
		return d.Low
	}
	fade := func(h float64) float64 { return math.Exp(-d.decay * h / (24 - d.Length)) }
	left := (fade(min(hour-sunset, night)) - fade(night)) / (1 - fade(night))
	return d.Low + (d.lit(sunset-coldest)-d.Low)*left
}

// lit is the temperature so many hours after the low, while the sun is up.
func (d Diurnal) lit(h float64) float64 {
	return d.Low + (d.High-d.Low)*math.Sin(math.Pi*h/(d.Length+2*d.lag))
}
