package weather

import "lidmark/domain/practice"

// limits are within what an hour is fit to fly, as the keeper's numbers have it.
type limits struct {
	cool, warm, hot, tooHot              float64 // °C
	calm, windy                          float64 // m/s, as felt at 2 m
	overcast, broken                     float64 // what an hour of it counts
	from, peakFrom, peakUntil, until     float64 // hours by the sun
	rainLasts, rainyDay                  float64 // h a mm; what is left of a rainy day
	usualRange, usualWind, usualSun      float64
	strays, windStrays                   float64
	off, offGrows, windOff, right, fades float64
}

func limitsOf(n practice.Numbers) limits {
	warm := n.Get(practice.WarmEnoughToFly)
	return limits{
		cool: warm - n.Get(practice.FlightRampBelow), warm: warm + n.Get(practice.FlightRampAbove),
		hot: n.Get(practice.HotFrom), tooHot: n.Get(practice.TooHotToFly),
		calm: n.Get(practice.CalmUpTo), windy: n.Get(practice.TooWindyToFly),
		overcast: n.Get(practice.OvercastFit), broken: n.Get(practice.BrokenCloudFit),
		from: n.Get(practice.FlightFrom), peakFrom: n.Get(practice.FlightPeakFrom),
		peakUntil: n.Get(practice.FlightPeakUntil), until: n.Get(practice.FlightUntil),
		rainLasts: n.Get(practice.RainLasts), rainyDay: n.Get(practice.RainyDayFit),
		usualRange: n.Get(practice.UsualDayRange), usualWind: n.Get(practice.UsualWind), usualSun: n.Get(practice.UsualSun),
		strays: n.Get(practice.UsualSpread), windStrays: n.Get(practice.WindSpread),
		off: n.Get(practice.ForecastError), offGrows: n.Get(practice.ForecastErrorGrows), windOff: n.Get(practice.ForecastWindError),
		right: n.Get(practice.ForecastSignRight), fades: n.Get(practice.ForecastSignFades),
	}
}

// warmth is the share of an hour that is fit by its temperature in °C.
func (l *limits) warmth(c float64) float64 {
	switch {
	case c <= l.cool:
		return 0
	case c >= l.warm && c <= l.hot:
		return 1
	}
	return min(rising(c, l.cool, l.warm), 1-rising(c, l.hot, l.tooHot))
}

// breeze is the share by the wind in m/s at 2 m.
func (l *limits) breeze(w float64) float64 { return 1 - rising(w, l.calm, l.windy) }

// sky is the share by how much of the hour the sun shines, 0 to 1: straight
// lines from overcast by broken cloud, which is half of it, to sun.
func (l *limits) sky(sun float64) float64 {
	sun = min(max(sun, 0), 1)
	if sun < 0.5 {
		return l.overcast + (l.broken-l.overcast)*sun*2
	}
	return l.broken + (1-l.broken)*(sun-0.5)*2
}

// time is the share by the hour of the day, by the sun.
func (l *limits) time(h float64) float64 {
	return min(rising(h, l.from, l.peakFrom), 1-rising(h, l.peakUntil, l.until))
}

// rising goes straight from 0 at a to 1 at b; it is a step where b is not above a.
func rising(x, a, b float64) float64 {
	switch {
	case x >= b && x > a:
		return 1
	case x <= a:
		return 0
	}
	return (x - a) / (b - a)
}
