package weather

import (
	"strings"

	"lidmark/domain/book"
)

// told is a day by its low and high, with all that is not told filled in.
type told struct {
	low, high, wind, sun float64
	dry                  float64 // the share of the day without rain
	taken                []string
}

// fillIn makes a whole day of what is told of one: what is not is taken from the
// normals of the month, and where there are none from what is usual anywhere. It
// fails where nobody told how warm it is.
func (y *Yard) fillIn(w book.WeatherSeen, usual book.WeatherNormal) (t told, ok bool) {
	if w.Low.IsZero() && w.High.IsZero() {
		if w.Low, w.High = usual.Low, usual.High; w.Low.IsZero() && w.High.IsZero() {
			return told{}, false
		}
		t.taken = append(t.taken, "low and high")
	}
	t.low, t.high = y.span(w.Low, w.High, usual)
	switch {
	case w.Low.IsZero():
		t.taken = append(t.taken, "low")
	case w.High.IsZero():
		t.taken = append(t.taken, "high")
	}
	t.wind = t.take("wind", w.Wind, usual.Wind.Or(y.limits.usualWind))
	t.sun = t.take("sky", w.Sky, usual.Sky.Or(y.limits.usualSun))
	rainy := usual.Rainy.Or(0)
	t.dry = 1 - rainy + rainy*y.limits.rainyDay
	if mm, said := w.Rain.Get(); said {
		t.dry = 1 - min(1, max(0, mm)*y.limits.rainLasts/24)
	} else {
		t.taken = append(t.taken, "rain")
	}
	return t, true
}

// span is the low and the high of a day of which one may be missing. A low above
// the high is taken as the high.
func (y *Yard) span(low, high book.Amount, usual book.WeatherNormal) (float64, float64) {
	apart := y.limits.usualRange
	if l, said := usual.Low.Get(); said && !usual.High.IsZero() {
		apart = max(0, usual.High.Or(0)-l)
	}
	h := high.Or(low.Or(0) + apart)
	return min(low.Or(h-apart), h), h
}

// take is an amount, or what is usual, which it notes.
func (t *told) take(what string, a book.Amount, usual float64) float64 {
	v, said := a.Get()
	if !said {
		t.taken = append(t.taken, what)
		return usual
	}
	return v
}

// steps are how many a day's flight time is cut into: half an hour each.
const steps = 12

// profile is the day as fliers have it. Days are as long as they are at the yard.
func (y *Yard) profile(t told, length float64) profile {
	l := &y.limits
	course := NewDiurnal(t.low, t.high, 12-length/2, length, y.numbers) // by the sun it is highest at 12
	each := (l.until - l.from) / steps
	worth, wind := each*l.sky(t.sun)*t.dry, At2m(t.wind, stationHeight)
	p := make(profile, steps)
	for i := range p {
		at := l.from + (float64(i)+0.5)*each
		p[i] = sample{worth * l.time(at), course.At(at), wind}
	}
	return p
}

// words are what is told of a day, with its numbers.
func (t told) words(w book.WeatherSeen) string {
	words := []string{figure(t.low) + " to " + figure(t.high) + " °C"}
	if !w.Wind.IsZero() {
		words = append(words, "wind "+figure(t.wind)+" m/s")
	}
	if mm, said := w.Rain.Get(); said && mm > 0 {
		words = append(words, "rain "+figure(mm)+" mm")
	} else if said {
		words = append(words, "dry")
	}
	if !w.Sky.IsZero() {
		words = append(words, "sun "+percent(t.sun))
	}
	return strings.Join(words, ", ")
}

// takenWords name what was not told, to end a sentence.
func (t told) takenWords() string {
	if len(t.taken) == 0 {
		return ""
	}
	return "; " + strings.Join(t.taken, ", ") + " not told, taken as usual"
}
