package weather

import (
	"math"
	"time"
)

// Place is a place on Earth in degrees (WGS 84), north and east positive.
type Place struct{ Lat, Lon float64 }

// Sky is where the sun stands, in degrees: its altitude above the horizon as
// seen through standard air, and its azimuth from north eastward.
type Sky struct{ Altitude, Azimuth float64 }

// Air is what bends light near the horizon: pressure in mbar and temperature in °C.
type Air struct{ Pressure, Celsius float64 }

// StandardAir is that of sea level (ICAO standard atmosphere, pressure; 10 °C as
// almanacs take it).
var StandardAir = Air{1013.25, 10}

// SunAt is where the sun stands at an instant: Meeus 1998, Astronomical
// Algorithms, chapters 12, 13, 16, 22 and 25 (low accuracy), better than 0.01°.
func SunAt(t time.Time, p Place, air Air) Sky {
	s := sunOf(t)
	hour, lat := rad(s.hourAngle(p.Lon)), rad(p.Lat)
	dec := rad(s.dec)
	sin := math.Sin(lat)*math.Sin(dec) + math.Cos(lat)*math.Cos(dec)*math.Cos(hour)
	h := deg(math.Asin(min(1, max(-1, sin))))
	h -= parallax * math.Cos(rad(h))
	azimuth := deg(math.Atan2(math.Sin(hour), math.Cos(hour)*math.Sin(lat)-math.Tan(dec)*math.Cos(lat))) + 180
	return Sky{Altitude: h + refraction(h, air), Azimuth: turn(azimuth)}
}

// SolarTime is the true solar time at an instant, in hours from 0 to 24: the sun
// stands in the meridian at 12.
func SolarTime(t time.Time, p Place) float64 {
	return 12 + wrap(sunOf(t).hourAngle(p.Lon))/degreesAnHour
}

const (
	degreesAnHour = 15.0
	parallax      = 8.794 / 3600 // ° of the sun at the horizon, Meeus chapter 40
	epoch2000     = 2451545.0    // the Julian day of 2000 January 1, 12 h
	unixEpoch     = 2440587.5    // that of 1970 January 1, 0 h
	clockLag      = 69.0         // s that clocks are behind even time (delta T), 2020s; 60 s are 0.0007° of the sun
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

// refraction is by how much air lifts what stands at a true altitude: Bennett's
// formula turned round, Meeus chapter 16, formula 16.4, in degrees. Below the
// horizon's own lift the sun is not seen and nothing is added.
func refraction(h float64, air Air) float64 {
	if h < -1 {
		return 0
	}
	r := 1.02 / math.Tan(rad(h+10.3/(h+5.11))) / 60
	return r * air.Pressure / 1010 * 283 / (273 + air.Celsius)
}

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
