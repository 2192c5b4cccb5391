package weather

import "time"

// SolarTime is the true solar time at an instant, in hours from 0 to 24: the sun
// stands in the meridian at 12.
func SolarTime(t time.Time, p Place) float64 {
	return 12 + wrap(sunOf(t).hourAngle(p.Lon))/degreesAnHour
}
