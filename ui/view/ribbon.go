package view

import (
	"math"
	"strconv"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// strip is the ribbon being drawn: where its rows stand, and what it shows.
type strip struct {
	*sheet
	state.Ribbon
	r     *state.Reading // the book read now
	today calendar.Day

	names   float64 // baseline of the days' numbers
	fly     float64 // line on which flying hours stand
	flyHigh float64
	work    float64 // line on which the minutes of work stand
	high    float64
	most    float64    // minutes that fill the row of work
	told    bool       // somebody said when people are free
	flagAt  scene.Area // where the flag stands
}

// ribbon draws the days: flying hours, work against time, deadlines.
func (p *sheet) ribbon() {
	g := strip{sheet: p, Ribbon: p.l.Ribbon, r: p.s.Present(), today: p.s.Today()}
	g.place()
	g.told = g.r.View.HoursTold()
	g.most = g.mostMinutes()
	g.flagAt = p.flag().area
	p.rect(g.Area, scene.Panel)
	p.clipped(g.Area, scene.Tag{}, func() {
		for d := g.First; d <= g.Last(); d++ {
			g.ground(d)
		}
		for d := g.First; d <= g.Last(); d++ {
			g.day(d)
		}
		g.rows()
	})
	p.rule(0, g.Bottom()-1, g.W, g.Bottom()-1, scene.Rule)
}

// place sets the rows of the ribbon; in a narrow window there are two.
func (g *strip) place() {
	body := g.H - 36
	g.names = g.Y + daysLine
	g.fly, g.flyHigh = math.Floor(g.Y+36+body*0.36), body*0.34
	g.work, g.high = math.Floor(g.Y+36+body*0.76), body*0.30
	if g.l.Narrow {
		g.fly, g.flyHigh = g.Bottom()-7, 17
		g.work, g.high = g.fly, 19
	}
}

// mostMinutes are the minutes that fill the row of work: somewhat more than
// the most that any day in sight holds from today on, or the time there is as far as the
// bars do not become small. What is more fills the row: days past, and time there is.
func (g *strip) mostMinutes() float64 {
	const room = 1.4
	most, free := leastMinutes, 0.0
	for d := max(g.First, g.today); d <= g.Last(); d++ {
		w := g.r.WorkOn(d)
		most, free = max(most, w.Minutes), max(free, w.Free)
	}
	if g.told {
		most = max(most, min(free, most*room))
	}
	return most * 1.1
}

// leastBar is how high any work stands above its line, dp.
const leastBar = 2.0

// leastMinutes keeps the bars of a quiet time low.
const leastMinutes = 240.0

// ground shades the days on which people rest or nobody is free.
func (g *strip) ground(d calendar.Day) {
	x := g.Left(d)
	if w := d.Weekday(); w == time.Saturday || w == time.Sunday {
		g.rect(scene.Area{X: x, Y: g.Y, W: g.Column, H: g.H}, scene.Ground)
	}
	if g.told && g.r.WorkOn(d).Free == 0 && !g.l.Narrow {
		g.add(scene.Rect{
			Area:  scene.Area{X: x + 1, Y: g.Y + 36, W: g.Column - 2, H: g.H - 40},
			Hatch: scene.Hatch{Role: scene.Hair, Pitch: 5, Weight: 1},
		})
	}
}

// day draws one column.
func (g *strip) day(d calendar.Day) {
	_, _, number := d.Date()
	x := g.Left(d)
	switch {
	case number == 1:
		g.rule(x, g.Y, x, g.Bottom(), scene.Rule)
		g.month(d)
	case d == g.First:
		g.month(d)
	case d.Weekday() == g.s.Week.Day() && !g.l.Narrow:
		g.rule(x, g.Y+20, x, g.Bottom(), scene.Hair)
	}
	if g.numbered(d) {
		g.centre(g.At(d), g.names, strconv.Itoa(number), g.numberFont(d))
	}
	if !g.empty() {
		g.flying(d)
	}
	g.minutes(d)
	g.hit(scene.Area{X: x, Y: g.Y, W: g.Column, H: g.H}, scene.Ref{Kind: state.DayRef, ID: d.String()}, g.said(d))
}

// month writes the name of the month of d from that day on, always at the same place,
// beside that of "now": not under the flag, which names a month itself, nor where it has
// no room before the next month.
func (g *strip) month(d calendar.Day) {
	if word, at := g.monthPlace(d); word != "" && (at.X >= g.flagAt.Right()+4 || g.flagAt.X-4 >= at.Right()) {
		g.text(at.X, g.Y+14, word, monthFont)
	}
}

var monthFont = ink(12.5).semi()

// monthPlace is the name of the month of d and where it stands from that day on: whole or in three letters
// before the word "now", else behind that; "" if it has no room before the next month.
func (p *sheet) monthPlace(d calendar.Day) (word string, a scene.Area) {
	r, now := p.l.Ribbon, p.nowPlace()
	year, m, _ := d.Date()
	to, left := min(r.W, r.Left(calendar.Date(year, m+1, 1)))-2, r.Left(d)+4
	for _, x := range []float64{left, now.Right() + 6} {
		for _, word = range []string{m.String(), m.String()[:3]} {
			a = scene.Area{X: x, Y: r.Y + 1, W: p.width(word, monthFont), H: flagHigh}
			if a.X >= left && a.Right() <= to && (a.X >= now.Right()+4 || now.X-4 >= a.Right()) {
				return word, a
			}
		}
	}
	return "", scene.Area{}
}

// flying draws the hours fit for mating flights: seen solid, forecast lighter,
// typical and assumed outlined.
func (g *strip) flying(d calendar.Day) {
	f := g.r.FlightOn(g.yard(), d)
	most := g.r.FullDay()
	h := min(1, f.Hours/most) * g.flyHigh
	bar := scene.Area{X: g.Left(d) + g.Column*0.22, Y: g.fly - h, W: g.Column * 0.56, H: h}
	if g.l.Narrow {
		bar.X, bar.W = g.Left(d)+g.Column*0.16, g.Column*0.3
	}
	switch {
	case f.Usual():
		bar = scene.Area{X: math.Floor(bar.X), Y: math.Floor(bar.Y), W: math.Ceil(bar.W), H: math.Floor(bar.H)}
		g.add(scene.Rect{Area: bar, Stroke: stroke(scene.BarLight, 1)})
	case f.Forecast() || d > g.today:
		g.rect(bar, scene.BarLight)
	default:
		g.rect(bar, scene.Bar)
	}
	if f.Sign != 0 && d <= g.today {
		g.sign(scene.Point{X: bar.Centre().X, Y: max(bar.Y-6, g.names+7)}, f.Sign)
	}
}

// yard is the yard whose weather the ribbon shows.
func (g *strip) yard() book.YardID { return g.r.WeatherYard(g.s.Filled()) }

// minutes draws the work of a day against the time there is, and its
// deadlines.
func (g *strip) minutes(d calendar.Day) {
	w := g.r.WorkOn(d)
	past := d < g.today
	k := g.high / g.most
	bar := scene.Area{X: g.Left(d) + g.Column*0.22, W: g.Column * 0.56, H: min(w.Minutes, g.most) * k}
	if g.l.Narrow {
		bar.X, bar.W = g.Left(d)+g.Column*0.52, g.Column*0.3
	}
	if w.Minutes > 0 {
		bar.H = max(bar.H, leastBar)
	}
	bar.Y = g.work - bar.H
	switch {
	case past:
		g.rect(bar, scene.Rule)
	default:
		g.rect(bar, scene.Ink2)
		if over := min(w.Over()*k, bar.H); over > 0 && w.Free > 0 && g.told {
			g.rect(scene.Area{X: bar.X, Y: bar.Y, W: bar.W, H: over}, scene.Act)
		}
		if y := g.work - min(w.Free, g.most)*k; !g.l.Narrow && g.told && w.Free > 0 {
			g.rule(g.Left(d)+g.Column*0.06, y, g.Left(d)+g.Column*0.94, y, scene.Ink3)
		}
	}
	g.deadlines(d, w)
}

func (g *strip) deadlines(d calendar.Day, w state.Work) {
	role, width := scene.Ink, 1.6
	switch {
	case d < g.today && !w.Missed:
		role = scene.Rule
	case w.Hard:
		role, width = scene.Act, 2.4
	}
	top, foot := 3.0, 4.0
	if g.l.Narrow { // below the line on which the bars stand
		top, foot = 0, 1
	}
	n := min(w.Deadlines, 3)
	for i := range n {
		x := g.At(d) + (float64(i)-float64(n-1)/2)*5
		g.add(scene.Line{From: at(x, g.work+top), To: at(x, g.Bottom()-foot), Stroke: stroke(role, width)})
	}
}

// emptyDays stands in the ribbon of a book without nucs and batches.
const emptyDays = "The days fill up with weather, work and deadlines once a yard has a place and a batch has a date."

// empty tells whether there is nothing that the days could be about.
func (g *strip) empty() bool { return len(g.r.Nucs) == 0 && len(g.r.Batches()) == 0 }

// rows draws the lines of the rows and their names.
func (g *strip) rows() {
	x := g.X
	g.rule(x, g.fly, g.W, g.fly, scene.Rule)
	if g.empty() {
		y := g.fly + 13
		if g.l.Narrow {
			y = g.fly - 4
		}
		from := g.Left(g.s.Looked()+1) + 12 // beside the handle
		w := min(g.width(emptyDays, ink2(14)), g.W-state.Edge-from)
		from = min(max(from, g.Left(g.s.Looked()+4)), g.W-state.Edge-w)
		g.rect(scene.Area{X: from - 6, Y: y - 19, W: w + 12, H: 28}, scene.Panel)
		g.fit(from, y, emptyDays, ink2(14), g.W-state.Edge)
	}
	if g.l.Narrow {
		return
	}
	g.rule(x, g.work, g.W, g.work, scene.Rule)
	g.text(state.Edge, g.fly-g.flyHigh*0.28, "flying hours", ink2(12))
	g.text(state.Edge, g.work-g.high*0.24, "work, min", ink2(12))
	g.text(state.Edge, g.Bottom()-4, "deadlines", ink2(12))
}
