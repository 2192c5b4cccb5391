package weather

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// ofRow is a day told by its low, high, wind, rain and sky, or some of them; it
// fails where nothing tells how warm it is.
func (y *Yard) ofRow(w book.WeatherSeen) (Flight, bool) {
	t, ok := y.fillIn(w, y.normal(w.Day))
	if !ok {
		return Flight{}, false
	}
	return y.told(y.profile(t, y.length(w.Day)), w.Day, w.Forecast, t.words(w), t.takenWords()), true
}

// told is the flight of a day that was seen or foretold: as it is, or as it is
// likely to come when forecasts err as they do.
func (y *Yard) told(p profile, d calendar.Day, forecast bool, words, taken string) Flight {
	l := &y.limits
	if !forecast {
		h := p.fit(l)
		return Flight{Hours: h, Chance: atLeastOne(h), Layer: Seen, Why: fmt.Sprintf("%s: %s h%s", words, figure(h), taken)}
	}
	ahead := y.ahead(d)
	errs := l.off + l.offGrows*float64(ahead-1)
	h, chance := p.expected(l, 0, errs, l.windOff, whole)
	return Flight{Hours: h, Chance: chance, Layer: Forecast, Why: fmt.Sprintf("forecast %s, give or take %s °C %s ahead: %s h, %s for at least 1 h%s",
		words, figure(errs), days(ahead), figure(h), percent(chance), taken)}
}

// ahead is how many days the forecast of a day reached, one at least.
func (y *Yard) ahead(d calendar.Day) int { return max(1, d.Sub(y.yard.Told[d])) }

// ofNormal is a day of which nobody said anything, by the normals of its month.
// Its temperature strays by their spread, its wind by the keeper's number, and a
// share of its kind is rainy: hours and chance are integrated over all three, as
// [profile.expected] states.
func (y *Yard) ofNormal(d calendar.Day, n book.WeatherNormal) (Flight, bool) {
	u, ok := y.usualDay(d, n)
	if !ok {
		return Flight{}, false
	}
	h, chance := u.expected(&y.limits, 0, u.spread)
	_, month, _ := d.Date()
	return Flight{Hours: h, Chance: chance, Layer: Typical, Why: fmt.Sprintf("usual for the date (%s): %s to %s °C give or take %s °C, wind %s m/s, sun %s, rain on %s of days; over that spread %s h, %s for at least 1 h",
		month, figure(u.low), figure(u.high), figure(u.spread), figure(u.wind), percent(u.sun), percent(u.rainy), figure(h), percent(chance))}, true
}

// usualDay is a day as the normals of a month make it.
type usualDay struct {
	told
	profile
	spread, rainy float64
}

func (y *Yard) usualDay(d calendar.Day, n book.WeatherNormal) (u usualDay, ok bool) {
	t, ok := y.fillIn(book.WeatherSeen{Low: n.Low, High: n.High, Wind: n.Wind, Rain: book.Said(0), Sky: n.Sky}, n)
	if !ok {
		return u, false
	}
	return usualDay{t, y.profile(t, y.length(d)), n.Spread.Or(y.limits.strays), n.Rainy.Or(0)}, true
}

// expected are its fit hours and the chance of one at least, where it is warmer than usual by so
// many °C and strays from that by a standard deviation.
func (u usualDay) expected(l *limits, warmer, strays float64) (hours, chance float64) {
	return u.profile.expected(l, warmer, strays, l.windStrays, part{1 - u.rainy, 1}, part{u.rainy, l.rainyDay})
}

// normal is what is usual in the month of a day, empty where nobody said.
func (y *Yard) normal(d calendar.Day) book.WeatherNormal {
	_, month, _ := d.Date()
	return y.yard.Normals[month-1]
}

// length is for how many hours the sun is up.
func (y *Yard) length(d calendar.Day) float64 {
	return SunOn(d, y.yard.Zone, y.place).Length().Hours()
}
