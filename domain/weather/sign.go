package weather

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// signs are the signs from the best day to the worst, and signHours what a day
// of each counts.
var (
	signs     = [...]book.Sign{book.Flying, book.HalfFit, book.NoFlight}
	signHours = [...]practice.Key{
		book.Flying:   practice.FitHoursPlus,
		book.HalfFit:  practice.FitHoursHalf,
		book.NoFlight: practice.FitHoursMinus,
	}
)

// ofSign is a day told in one stroke: it has the hours of its sign. One to come
// comes true less often the further ahead it is; if not, it is one of the other
// two, the nearer twice as likely as the further.
func (y *Yard) ofSign(w book.WeatherSeen) Flight {
	f := Flight{Hours: y.numbers.Get(signHours[w.Sign]), Layer: Seen}
	if !w.Forecast {
		f.Chance = atLeastOne(f.Hours)
		f.Why = fmt.Sprintf("%s typed: %s h", w.Sign, figure(f.Hours))
		return f
	}
	ahead := y.ahead(w.Day)
	right := max(1.0/3, y.limits.right-y.limits.fades*float64(ahead-1))
	f = Flight{Layer: Forecast}
	for _, s := range signs {
		p, h := comes(w.Sign, s, right), y.numbers.Get(signHours[s])
		f.Hours += p * h
		f.Chance += p * atLeastOne(h)
	}
	f.Why = fmt.Sprintf("forecast %s, %s ahead it is right in %s: %s h, %s for at least 1 h",
		w.Sign, days(ahead), percent(right), figure(f.Hours), percent(f.Chance))
	return f
}

// comes is the chance that a sign is foretold and another is what comes.
func comes(told, came book.Sign, right float64) float64 {
	switch {
	case told == came:
		return right
	case told == book.HalfFit:
		return (1 - right) / 2
	case came == book.HalfFit:
		return (1 - right) * 2 / 3
	}
	return (1 - right) / 3
}

// assumed is a day of which nobody said anything: as many flying days and days
// without as give the hours the keeper assumes.
func (y *Yard) assumed() Flight {
	h := y.numbers.Get(practice.FitHoursUntold)
	return Flight{
		Hours: h, Chance: min(1, h/y.numbers.Get(practice.FitHoursPlus)), Layer: Assumed, Guess: true,
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
