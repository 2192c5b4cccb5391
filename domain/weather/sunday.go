package weather

import (
	"math"
	"time"

	"lidmark/domain/calendar"
)

// Light is how a day goes: by turns light and dark, or one of them all through.
type Light int

// The kinds of day. AlwaysUp is polar day, NeverUp polar night.
const (
	RisesAndSets Light = iota
	AlwaysUp
	NeverUp
)

// SunDay is the sun of one civil day: when it stands highest, and when its upper
// edge rises before and sets after that. Rise and Set are zero where it does
// neither. Where the clocks are far from the sun they may lie on the day before
// or after.
type SunDay struct {
	Rise, Noon, Set time.Time
	Light           Light
}

// Length is how long the sun is up.
func (s SunDay) Length() time.Duration {
	switch s.Light {
	case AlwaysUp:
		return 24 * time.Hour
	case NeverUp:
		return 0
	default:
		return s.Set.Sub(s.Rise)
	}
}

// horizon is the altitude in degrees of the sun's middle when its edge is on the
// horizon: its half width 16' and the air's lift 34', Meeus 1998 chapter 15.
const horizon = -0.8333

// SunOn is the sun of a day at a place whose clocks are those of zone. It is
// solved from the noon of the place, not from midnight in Greenwich.
func SunOn(d calendar.Day, zone *time.Location, p Place) SunDay {
	noon := passing(d.At(12, 0, zone), p)
	s := SunDay{Noon: noon}
	if s.Rise, s.Light = crossing(noon, p, -1); s.Light != RisesAndSets {
		return SunDay{Noon: noon, Light: s.Light}
	}
	if s.Set, s.Light = crossing(noon, p, 1); s.Light != RisesAndSets {
		return SunDay{Noon: noon, Light: s.Light}
	}
	return s
}

// passing is when the sun passes the meridian, the time nearest to t.
func passing(t time.Time, p Place) time.Time {
	for range 3 {
		t = t.Add(-hours(wrap(sunOf(t).hourAngle(p.Lon)) / degreesAnHour))
	}
	return t
}

// crossing is when the sun crosses the horizon on a side of its noon, -1 before
// and 1 after.
func crossing(noon time.Time, p Place, side float64) (time.Time, Light) {
	t := noon
	for range 4 {
		s := sunOf(t)
		lat, dec := rad(p.Lat), rad(s.dec)
		cos := (math.Sin(rad(horizon)) - math.Sin(lat)*math.Sin(dec)) / (math.Cos(lat) * math.Cos(dec))
		switch {
		case cos <= -1:
			return time.Time{}, AlwaysUp
		case cos >= 1:
			return time.Time{}, NeverUp
		}
		// As the sun moves among the stars too, half day and noon are solved anew
		// with where it stands at the crossing.
		past := wrap(s.hourAngle(p.Lon) - side*deg(math.Acos(cos)))
		t = t.Add(-hours(past / degreesAnHour))
	}
	return t, RisesAndSets
}

func hours(h float64) time.Duration { return time.Duration(h * float64(time.Hour)) }
