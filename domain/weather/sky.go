package weather

import (
	"math"
	"time"
)

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

// parallax is that of the sun at the horizon in degrees, Meeus chapter 40.
const parallax = 8.794 / 3600

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
