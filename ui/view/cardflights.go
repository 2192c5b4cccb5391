package view

import (
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// mostFlights is how many days of flying hours the card shows, usualFlights how
// many fill its width.
const (
	mostFlights  = 24
	usualFlights = 18
)

// flights draws the flying hours since a virgin emerged, from when she was old
// enough to mate.
func (c *cardDraw) flights(n *state.Nuc) {
	p := n.Presumed
	virgin := p.Condition == book.Virgin || p.Condition == book.Due
	if !virgin || p.OldEnoughFrom.IsZero() {
		return
	}
	old := c.r.DayOf(p.OldEnoughFrom)
	c.y += 2
	c.fit(c.x, c.y, "Flying hours a day; old enough from "+shortDay(old), ink2(13), c.x+c.w)
	count := min(max(c.r.Day.Sub(c.r.DayOf(p.Emerged))+1, 1), mostFlights)
	first := c.r.Day - calendar.Day(count-1)
	base := c.y + 40
	pitch := min(c.w/usualFlights, c.w/float64(count))
	for i := range count {
		d := first + calendar.Day(i)
		x := c.x + float64(i)*pitch
		c.flight(n.Yard, d, old, scene.Area{X: x, Y: base, W: pitch - 3})
		if i == 0 || d == old || i == count-1 {
			_, _, number := d.Date()
			c.centre(x+(pitch-3)/2, base+14, strconv.Itoa(number), ink2(12))
		}
	}
	c.rule(c.x, base, c.x+float64(count)*pitch-3, base, scene.Ink2)
	c.y = base + 34
}

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
