package weather

import (
	"fmt"
	"math"
	"strings"
	"time"

	"lidmark/domain/book"
)

// byHour is a day told by the hour; it fails where the temperature of more than
// half of its flight time is missing.
func (y *Yard) byHour(h book.WeatherHours) (Flight, bool) {
	p, seen := y.hourly(h)
	if seen.told*2 < seen.all || seen.told == 0 {
		return Flight{}, false
	}
	return y.told(p, h.Day, h.Forecast, "by the hour, "+seen.words(y.limits), seen.taken()), true
}

// flightTime is what was told of the hours in which they fly.
type flightTime struct {
	all, told     float64 // hours worth to fliers
	low, high     float64 // °C
	wind          float64 // m/s, the most of it
	wet           int     // hours with rain
	missing       int     // hours without temperature
	noWind, noSky bool
}

// hourly is the day as fliers have it. An hour whose temperature is missing
// counts as the others do; gaps of up to bridged hours are bridged.
func (y *Yard) hourly(h book.WeatherHours) (profile, flightTime) {
	l := &y.limits
	usual := y.normal(h.Day)
	start, noon := h.Day.Start(y.yard.Zone), SunOn(h.Day, y.yard.Zone, y.place).Noon
	end := (h.Day + 1).Start(y.yard.Zone)
	seen := flightTime{low: math.Inf(1), high: math.Inf(-1)}
	var p profile
	for i := 0; start.Add(time.Duration(i) * time.Hour).Before(end); i++ {
		worth := l.hour(12 + start.Add(time.Duration(i)*time.Hour).Sub(noon).Hours())
		if worth == 0 {
			continue
		}
		seen.all += worth
		c, said := bridge(h.Celsius, i).Get()
		if !said {
			seen.missing++
			continue
		}
		wind, sky := bridge(h.Wind, i), bridge(h.Sky, i)
		seen.take(c, worth, wind, sky)
		if bridge(h.Rain, i).Or(0) >= wet {
			seen.wet++
			worth = 0
		}
		p = append(p, sample{
			worth * l.sky(sky.Or(usual.Sky.Or(l.usualSun))), c,
			At2m(wind.Or(usual.Wind.Or(l.usualWind)), stationHeight),
		})
	}
	for i := range p {
		p[i].worth *= seen.all / seen.told
	}
	return p, seen
}

// wet is the rain in mm that a gauge can tell (WMO-No. 8), and so an hour of it.
const wet = 0.1

// hour is what the hour that begins at a time of the day by the sun is worth to
// fliers if all else is right.
func (l *limits) hour(begins float64) (worth float64) {
	const cuts = 4
	for i := range cuts {
		worth += l.time(begins+(float64(i)+0.5)/cuts) / cuts
	}
	return worth
}

func (s *flightTime) take(c, worth float64, wind, sky book.Amount) {
	s.told += worth
	s.low, s.high = min(s.low, c), max(s.high, c)
	s.wind = max(s.wind, wind.Or(0))
	s.noWind, s.noSky = s.noWind || wind.IsZero(), s.noSky || sky.IsZero()
}

// bridged is how many hours in a row may be missing between two that are told.
const bridged = 2

// bridge is the value of an hour, or where it is missing what lies on the straight
// line between the ones before and after it.
func bridge(list []book.Amount, i int) book.Amount {
	if i < len(list) && !list[i].IsZero() {
		return list[i]
	}
	for before := 1; before <= bridged && i-before >= 0; before++ {
		if i-before >= len(list) || list[i-before].IsZero() {
			continue
		}
		for after := 1; before+after <= bridged+1 && i+after < len(list); after++ {
			if a, b := list[i-before].Or(0), list[i+after]; !b.IsZero() {
				return book.Said(a + (b.Or(0)-a)*float64(before)/float64(before+after))
			}
		}
	}
	return book.Amount{}
}

// words are what was told of the flight time.
func (s flightTime) words(l limits) string {
	words := fmt.Sprintf("%s to %s °C from %s to %s h by the sun", figure(s.low), figure(s.high), figure(l.from), figure(l.until))
	if !s.noWind {
		words += ", wind up to " + figure(s.wind) + " m/s"
	}
	if s.wet > 0 {
		words += fmt.Sprintf(", rain in %d h", s.wet)
	}
	return words
}

// taken names what was not told, to end a sentence.
func (s flightTime) taken() string {
	var all []string
	if s.missing > 0 {
		all = append(all, fmt.Sprintf("%d h without temperature", s.missing))
	}
	if s.noWind {
		all = append(all, "wind")
	}
	if s.noSky {
		all = append(all, "sky")
	}
	if len(all) == 0 {
		return ""
	}
	return "; " + strings.Join(all, ", ") + " not told, taken as usual"
}
