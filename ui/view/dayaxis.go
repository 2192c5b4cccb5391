package view

import (
	"math"
	"time"

	"lidmark/domain/rules"
	"lidmark/ui/scene"
)

// dayAxis is the axis on which the windows of tasks lie: ten days, today the
// fourth.
type dayAxis struct {
	x, w  float64
	first float64 // days since 1970
}

const (
	axisDays    = 10
	axisBefore  = 3
	axisMinutes = 58.0 // the column of minutes, and the gap before the axis
)

func (g dayAxis) at(days float64) float64 {
	return g.x + min(max(days-g.first, 0), axisDays)*g.w/axisDays
}

// day is an instant in days on the axis.
func (r routeDraw) day(t time.Time) float64 {
	d := r.r.DayOf(t)
	return float64(d) + t.Sub(d.Start(r.r.View.Zone())).Hours()/24
}

// window draws from when, best and by when something is to be done.
func (r routeDraw) window(t rules.Task, y float64) {
	switch {
	case t.From.IsZero():
		return
	case t.By.IsZero():
		r.openWindow(t, y)
		return
	case r.day(t.By) < r.axis.first:
		return
	}
	role := scene.Ink2
	act := (t.Hard || t.By.Before(r.r.View.On())) && !r.s.Away()
	if act {
		role = scene.Act
	}
	from, by := r.axis.at(r.day(t.From)), r.axis.at(r.day(t.By))
	by = max(by, from+2)
	bar := func(x1, y1, x2, y2 float64) {
		r.add(scene.Line{From: at(x1, y1), To: at(x2, y2), Stroke: stroke(role, 2)})
	}
	bar(from, y, by, y)
	if r.day(t.From) >= r.axis.first {
		bar(from, y-5, from, y+5)
	}
	best := math.NaN()
	if !t.Best.IsZero() {
		best = r.axis.at(r.day(t.Best))
	}
	if !(act && by-best < 9) && !math.IsNaN(best) {
		r.add(scene.Circle{At: at(best, y), Radius: 4.2, Fill: scene.Panel, Stroke: stroke(role, 2)})
	}
	if act {
		r.rect(scene.Area{X: by - 4, Y: y - 8, W: 4, H: 16}, role)
	} else {
		bar(by, y-5, by, y+5)
	}
}

// openWindow draws since when something is to be done that has no last day: up to
// the day, without an end.
func (r routeDraw) openWindow(t rules.Task, y float64) {
	role := scene.Ink2
	if t.NeedsYou && !r.s.Away() {
		role = scene.Act
	}
	from := r.axis.at(r.day(t.From))
	to := max(from+2, r.axis.at(float64(r.r.Day)+0.5))
	r.add(scene.Line{From: at(from, y), To: at(to, y), Stroke: stroke(role, 2)})
	if r.day(t.From) >= r.axis.first {
		r.add(scene.Line{From: at(from, y-5), To: at(from, y+5), Stroke: stroke(role, 2)})
	}
}
