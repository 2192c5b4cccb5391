package view

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
)

// flight draws one day's hours as a bar that stands on a: pale before she was
// old enough, lighter where only forecast, outlined where nobody told.
func (c *cardDraw) flight(yard book.YardID, d, old calendar.Day, a scene.Area) {
	const high = 26
	f := c.r.FlightOn(yard, d)
	a.H = f.Hours / c.r.FullDay() * high
	a.Y -= a.H
	bar := scene.Rect{Area: a, Fill: scene.Bar}
	switch {
	case f.Usual():
		bar.Fill, bar.Stroke = scene.None, stroke(scene.BarLight, 1)
	case d < old:
		bar.Fill = scene.Rule
	case f.Forecast():
		bar.Fill = scene.BarLight
	}
	c.add(bar)
}
