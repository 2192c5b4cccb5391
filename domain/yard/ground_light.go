package yard

import (
	"time"

	"github.com/paulmach/orb"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/weather"
)

// Light is the sun over a ground through one day, by steps of ten minutes; asked
// for a spot it tells when that lies in the sun.
type Light struct {
	casters []shape
	suns    []sun
	noon    sun
}

// sun is where it stands half way through a step: what is lit then is lit for the step.
type sun struct {
	weather.Sky
	hour    float64 // by the clock
	morning bool    // before it is highest
}

const lightStep = 10 * time.Minute

// LightOn is the light of a day.
func (g *Ground) LightOn(d calendar.Day) Light {
	l := Light{casters: g.casters()}
	noon := weather.SunOn(d, g.zone(), g.Place).Noon
	l.noon = sun{Sky: g.Sun(noon)}
	end := (d + 1).At(0, 0, g.zone())
	for at := d.At(0, 0, g.zone()).Add(lightStep / 2); at.Before(end); at = at.Add(lightStep) {
		if sky := g.Sun(at); sky.Altitude > 0 {
			l.suns = append(l.suns, sun{Sky: sky, hour: clockHour(at.In(g.zone())), morning: at.Before(noon)})
		}
	}
	return l
}

func clockHour(at time.Time) float64 {
	return float64(at.Hour()) + float64(at.Minute())/60
}

// Morning is how many hours the sun shines on a spot before it is highest.
func (l Light) Morning(p book.Point) float64 {
	return l.hours(of(p), func(s *sun) bool { return s.morning })
}

// All is how many hours of the day the sun shines on a spot.
func (l Light) All(p book.Point) float64 {
	return l.hours(of(p), func(*sun) bool { return true })
}

// Noon tells whether the sun shines on a spot when it is highest.
func (l Light) Noon(p book.Point) bool { return lit(l.casters, of(p), l.noon.Sky) }

// OnFront tells whether the sun shines on an entrance before an hour of the clock.
func (l Light) OnFront(d Door, before float64) bool {
	at := of(d.At)
	for i := range l.suns {
		s := &l.suns[i]
		if s.hour < before && between(s.Azimuth, d.Bearing) < rightAngle && lit(l.casters, at, s.Sky) {
			return true
		}
	}
	return false
}

func (l Light) hours(p orb.Point, count func(*sun) bool) float64 {
	n := 0
	for i := range l.suns {
		if count(&l.suns[i]) && lit(l.casters, p, l.suns[i].Sky) {
			n++
		}
	}
	return float64(n) * lightStep.Hours()
}

// FrontsInSun is how many entrances of nucs have sun before an hour of the clock.
func (l Light) FrontsInSun(doors []Door, before float64) (n int) {
	for _, d := range doors {
		if !d.Colony && l.OnFront(d, before) {
			n++
		}
	}
	return n
}
