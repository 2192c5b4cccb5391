package view

import (
	"strconv"

	"lidmark/domain/calendar"
	"lidmark/ui/scene"
)

// flyLine is the line on which the flying hours stand.
func (g courseBand) flyLine() float64 { return g.Bottom() + bandFlyGap + g.fly }

// flying draws the hours of a day as the ribbon does: seen solid, forecast
// lighter, typical and assumed outlined; pale before she was old enough to mate.
func (g courseBand) flying(d calendar.Day) {
	f := g.r.FlightOn(g.n.Yard, d)
	h := min(1, f.Hours/g.r.FullDay()*1.3) * g.fly
	air := min(3, g.column*0.22)
	bar := scene.Rect{Area: scene.Area{X: g.x(d) + air/2, Y: g.flyLine() - h, W: g.column - air, H: h}, Fill: scene.Bar}
	switch {
	case f.Usual():
		bar.Fill, bar.Stroke = scene.None, stroke(scene.BarLight, 1)
	case d < g.old:
		bar.Fill = scene.Rule
	case f.Forecast():
		bar.Fill = scene.BarLight
	}
	if h > 0 {
		g.add(bar)
	}
}

// hours are the hours of a day in words.
func (g courseBand) hours(d calendar.Day) string {
	f := g.r.FlightOn(g.n.Yard, d)
	return figure(f.Hours) + " h fit to fly, " + f.Layer.String()
}

// days writes the numbers of the days: of today, of the first, and of those that
// begin a week, with the month where it changes.
func (g courseBand) days() {
	last := g.c.Days[len(g.c.Days)-1].Day
	y := g.flyLine() + bandDays - 3
	var taken []scene.Area
	write := func(d calendar.Day, month bool, f font) {
		_, m, number := d.Date()
		text := strconv.Itoa(number)
		if month {
			text += " " + m.String()[:3]
		}
		w := g.width(text, f)
		x := min(max(g.x(d)+g.column/2-w/2, g.X-bandScale), g.Right()-w)
		for _, t := range taken {
			if x < t.Right()+6 && t.X-6 < x+w {
				return
			}
		}
		g.rule(g.x(d)+g.column/2, g.flyLine(), g.x(d)+g.column/2, g.flyLine()+3, scene.Ink2)
		g.text(x, y, text, f)
		taken = append(taken, scene.Area{X: x, W: w})
	}
	if t := g.s.Today(); t >= g.first && t <= last {
		write(t, true, ink(12).semi())
	}
	if g.s.Away() {
		write(g.r.Day, true, ink(12).semi().as(scene.Pen))
	}
	write(g.first, true, ink2(12))
	for d := g.first + 1; d <= last; d++ {
		if _, _, number := d.Date(); d.Weekday() == g.s.Week.Day() {
			write(d, number <= 7, ink2(12))
		}
	}
}
