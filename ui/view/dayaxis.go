package view

import (
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

// at is where a day lies; beyond the axis it is its end.
func (g dayAxis) at(days float64) float64 {
	return g.x + min(max(days-g.first, 0), axisDays)*g.w/axisDays
}

// beyond tells on which side of the axis a day lies: before it -1, after it 1, else 0.
func (g dayAxis) beyond(days float64) int {
	switch {
	case days < g.first:
		return -1
	case days > g.first+axisDays:
		return 1
	default:
		return 0
	}
}

// day is an instant in days on the axis.
func (r routeDraw) day(t time.Time) float64 {
	d := r.r.DayOf(t)
	return float64(d) + t.Sub(d.Start(r.r.View.Zone())).Hours()/24
}

// window draws from when, best and by when something is to be done. What lies beyond the
// axis is a tip at its end that points there.
func (r routeDraw) window(t rules.Task, y float64) {
	if t.From.IsZero() {
		return
	}
	if t.By.IsZero() {
		r.openWindow(t, y)
		return
	}
	role := scene.Ink2
	act := (t.Hard || t.By.Before(r.r.View.On())) && !r.s.Away()
	if act {
		role = scene.Act
	}
	from, by := r.axis.at(r.day(t.From)), r.axis.at(r.day(t.By))
	if side := r.axis.beyond(r.day(t.From)); side > 0 || r.axis.beyond(r.day(t.By)) < 0 { // all of it lies there
		r.tip(from, y, side, role)
		return
	}
	by = max(by, from+2)
	r.add(scene.Line{From: at(from, y), To: at(by, y), Stroke: stroke(role, 2)})
	r.edge(r.day(t.From), from, y, role)
	switch {
	case r.axis.beyond(r.day(t.By)) > 0:
		r.tip(by, y, 1, role)
	case act:
		r.rect(scene.Area{X: by - 4, Y: y - 8, W: 4, H: 16}, role)
	default:
		r.edge(r.day(t.By), by, y, role)
	}
	if !t.Best.IsZero() {
		r.best(r.day(t.Best), by, y, act, role)
	}
}

// best draws the best day as a ring; where it lies beyond the axis as a hollow tip, and
// not at all so near a hard end that it would hide it.
func (r routeDraw) best(day, by, y float64, act bool, role scene.Role) {
	const room = 9.0
	x := r.axis.at(day)
	if side := float64(r.axis.beyond(day)); side != 0 {
		r.add(scene.Poly{
			Points: []scene.Point{at(x-side*2, y-5), at(x+side*6, y), at(x-side*2, y+5)},
			Fill:   scene.Panel, Stroke: stroke(role, 1.6),
		})
	} else if !act || by-x >= room {
		r.add(scene.Circle{At: at(x, y), Radius: 4.2, Fill: scene.Panel, Stroke: stroke(role, 2)})
	}
}

// edge draws the end of a window: a stroke, or where it lies beyond the axis a tip.
func (r routeDraw) edge(day, x, y float64, role scene.Role) {
	if side := r.axis.beyond(day); side != 0 {
		r.tip(x, y, side, role)
		return
	}
	r.add(scene.Line{From: at(x, y-5), To: at(x, y+5), Stroke: stroke(role, 2)})
}

// tip points beyond the axis to a side of it.
func (r routeDraw) tip(x, y float64, side int, role scene.Role) {
	k := float64(side)
	r.add(scene.Poly{Points: []scene.Point{at(x-k*2, y-4.5), at(x+k*5, y), at(x-k*2, y+4.5)}, Fill: role})
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
	r.edge(r.day(t.From), from, y, role)
}
