package weather

import (
	"math"
	"time"
)

// Place is a place on Earth in degrees (WGS 84), north and east positive.
type Place struct{ Lat, Lon float64 }

const (
	degreesAnHour = 15.0
	epoch2000     = 2451545.0 // the Julian day of 2000 January 1, 12 h
	unixEpoch     = 2440587.5 // that of 1970 January 1, 0 h
	clockLag      = 69.0      // s that clocks are behind even time (delta T), 2020s; 60 s are 0.0007° of the sun
	secondsADay   = 86400.0
)

// sun is where it stands among the stars: its apparent right ascension and
// declination, and the sidereal time of Greenwich, all in degrees.
type sun struct{ ra, dec, sidereal float64 }

func sunOf(at time.Time) sun {
	days := (float64(at.UnixMilli())/1000)/secondsADay + unixEpoch - epoch2000
	t := (days + clockLag/secondsADay) / 36525
	mean := 280.46646 + t*(36000.76983+t*0.0003032)
	anomaly := rad(357.52911 + t*(35999.05029-t*0.0001537))
	centre := (1.914602-t*(0.004817+t*0.000014))*math.Sin(anomaly) +
		(0.019993-t*0.000101)*math.Sin(2*anomaly) + 0.000289*math.Sin(3*anomaly)
	node := rad(125.04 - 1934.136*t)
	longitude := rad(mean + centre - 0.00569 - 0.00478*math.Sin(node))
	tilt := rad(23.439291 - t*(0.0130042+t*0.00000016) + 0.00256*math.Cos(node))
	return sun{
		ra:       deg(math.Atan2(math.Cos(tilt)*math.Sin(longitude), math.Cos(longitude))),
		dec:      deg(math.Asin(math.Sin(tilt) * math.Sin(longitude))),
		sidereal: 280.46061837 + 360.98564736629*days - 0.00478*math.Sin(node)*math.Cos(tilt),
	}
}

// hourAngle is how far the sun is past the meridian of a longitude, in degrees,
// not wrapped.
func (s sun) hourAngle(lon float64) float64 { return s.sidereal + lon - s.ra }

func rad(d float64) float64 { return d * math.Pi / 180 }

func deg(r float64) float64 { return r * 180 / math.Pi }

// turn is an angle from 0 to 360.
func turn(d float64) float64 {
	if d = math.Mod(d, 360); d < 0 {
		d += 360
	}
	return d
}

// wrap is an angle from -180 to 180.
func wrap(d float64) float64 { return turn(d+180) - 180 }
