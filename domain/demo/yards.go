package demo

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// The three yards of the valley of Aldervane.
const (
	home  = "Marrowick"
	ledge = "Hollin Ledge"
	moor  = "Pellam Moor"
)

// The valley lies on open sea, so that it is nobody's; its longitude follows
// the zone, so that the sun stands where the clock says.
const (
	latitude      = 54.6
	degreesAnHour = 15
)

var yards = []struct {
	name     string
	home     bool
	lat, lon float64 // degrees from the valley's middle
	drive    float64 // min
}{
	{home, true, 0, 0, 0},
	{ledge, false, .071, .052, 17},
	{moor, false, -.085, .118, 26},
}

func (v *valley) settleYards() {
	begun := v.in(bookBegun, calendar.Morning)
	for _, y := range yards {
		v.yards[y.name] = book.YardID(v.name())
		v.write(v.hand(y.name, begun), begun, book.YardDescribed{
			Yard: v.yards[y.name], Name: y.name, Home: y.home,
			Lat: latitude + y.lat, Lon: v.longitude() + y.lon,
			Zone: v.zone.String(), Drive: y.drive,
		})
	}
	for _, g := range ground {
		v.write(v.hand(g.yard, begun), begun, book.FeatureDrawn{
			Feature: book.FeatureID(v.name()), Yard: v.yards[g.yard], What: g.what,
			Points: g.points, Height: g.height, Width: g.width, Label: g.label,
		})
	}
}

// longitude is where the sun is highest at noon by the winter's clock.
func (v *valley) longitude() float64 {
	year, _, _ := v.today.Date()
	_, winter := calendar.Date(year, time.January, 1).At(12, 0, v.zone).Zone()
	_, summer := calendar.Date(year, time.July, 1).At(12, 0, v.zone).Zone()
	return float64(min(winter, summer)) / time.Hour.Seconds() * degreesAnHour
}
