package view

import (
	"fmt"
	"math"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// routeDraw is the day's route being drawn.
type routeDraw struct {
	*sheet
	r      *state.Reading
	area   scene.Area
	axis   dayAxis
	line   float64 // x of the route's line
	y      float64
	number int // of the next line
}

// routeEnd is kept for the windows, minutes and end of a line, dp.
const routeEnd = 216.0

// route draws the day's work as a line with stops, each task with its window.
func (p *sheet) route(a scene.Area) {
	r := routeDraw{sheet: p, r: p.s.Reading(), area: a, line: a.X + 78}
	r.axis = dayAxis{x: a.Right() - routeEnd + 36, w: axisWidth, first: float64(r.r.Day) - axisBefore}
	plan := r.r.Plan()
	p.clipped(a, scene.Tag{Ref: scene.Ref{Kind: state.PaneRef, ID: "route"}}, func() {
		p.rect(a, scene.Panel)
		top := a.Y
		if len(plan.Hard) > 0 {
			p.hardStrip(plan.Hard, scene.Area{X: a.X, Y: a.Y, W: a.W, H: state.HardHeight})
			top += state.HardHeight
		}
		r.head(top)
		body := scene.Area{X: a.X, Y: top + state.RouteHead, W: a.W, H: a.Bottom() - top - state.RouteHead}
		p.clipped(body, scene.Tag{}, func() { r.stops(plan, body) })
	})
}

// head draws the names of the columns.
func (r routeDraw) head(y float64) {
	r.text(r.area.X+state.Edge, y+22, "Route", ink(14).semi())
	_, month, _ := r.r.Day.Date()
	r.right(r.axis.x-12, y+22, "from, best, by; "+month.String()[:3], ink2(12))
	for i := 0; i <= axisDays-1; i += axisBefore {
		d := r.r.Day + calendar.Day(i-axisBefore)
		_, _, number := d.Date()
		f := ink2(12)
		if i == axisBefore {
			f = ink(12).semi()
		}
		r.centre(r.axis.x+(float64(i)+0.5)*r.axis.w/axisDays, y+22, fmt.Sprint(number), f)
	}
	r.right(r.area.Right()-state.Edge, y+22, "min", ink2(12))
}

// stops draws the stops and their tasks.
func (r routeDraw) stops(plan rules.DayPlan, a scene.Area) {
	r.rect(scene.Area{X: r.axis.x + axisBefore*r.axis.w/axisDays, Y: a.Y, W: r.axis.w / axisDays, H: a.H}, scene.Sunk)
	if len(plan.Stops) == 0 {
		r.nothing(a)
		return
	}
	scroll := min(r.s.Scroll[state.RoutePlace], max(0, r.s.RouteHeight()-r.area.H))
	r.y = a.Y - scroll
	end := r.y
	for _, s := range plan.Stops {
		end += state.RouteLine*float64(1+len(s.Tasks)) + state.RouteGap
	}
	r.add(scene.Line{From: at(r.line, r.y+15), To: at(r.line, end+8), Stroke: stroke(scene.Ink, 3)})
	for _, s := range plan.Stops {
		r.stop(s)
		for _, t := range s.Tasks {
			if r.y+state.RouteLine > a.Y && r.y < a.Bottom() {
				r.task(t)
			}
			r.y += state.RouteLine
			r.number++
		}
		r.y += state.RouteGap
	}
	r.add(scene.Circle{At: at(r.line, r.y+10), Radius: 6.5, Fill: scene.Ink})
	r.text(r.line+18, r.y+15, "Write it all in tonight, in this order", ink2(13))
	r.scrollBar(a, scroll, r.s.RouteHeight()-(r.area.H-a.H))
}

// nothing says that there is no work, and what comes next.
func (r routeDraw) nothing(a scene.Area) {
	y := a.Y + 40
	r.fit(a.X+state.Edge, y, "Nothing to do on "+r.r.Day.Short(), ink(16).semi(), r.axis.x)
	if f, ok := r.next(); ok {
		said := fmt.Sprintf("Next is %s: %s, %s", r.r.BestDay(f).Short(), f.Act, rules.Name(r.r.View, f.Of))
		r.fit(a.X+state.Edge, y+26, said, ink2(14), r.axis.x)
	}
}

// next is what is to be done first on a later day.
func (r routeDraw) next() (next rules.Finding, ok bool) {
	for _, f := range r.r.Findings {
		if f.Act != rules.ActNone && f.Best.After(r.r.View.On()) && (!ok || f.Best.Before(next.Best)) {
			next, ok = f, true
		}
	}
	return next, ok
}

// stop draws one stop: when it begins, where it is, the way there.
func (r *routeDraw) stop(s rules.Stop) {
	if !s.Start.IsZero() {
		r.text(r.area.X+state.Edge, r.y+20, s.Start.In(r.r.View.Zone()).Format("15:04"), ink(14).semi())
	}
	r.add(scene.Circle{At: at(r.line, r.y+15), Radius: 6.5, Fill: scene.Panel, Stroke: stroke(scene.Ink, 3)})
	name := r.r.View.Yard(s.Yard).Name
	if s.Round != "" {
		name += ", " + s.Round
	}
	end := r.fit(r.line+18, r.y+20, name, ink(15).semi(), r.axis.x-80)
	if s.Drive > 0 {
		r.fit(end+12, r.y+20, fmt.Sprintf("%.0f min drive", s.Drive), ink2(13), r.axis.x-12)
	}
	r.y += state.RouteLine
}

// task draws one line of work: who, what, why, by when, how long.
func (r *routeDraw) task(t rules.Task) {
	const h = state.RouteLine
	y := r.y + h/2
	row := scene.Area{X: r.line + 10, Y: r.y, W: r.area.Right() - r.line - 22, H: h}
	rect := scene.Rect{Area: row}
	if len(t.Of) > 0 {
		rect.Tag = scene.Tag{Ref: state.TaskOf(r.number), Reason: t.Why}
		if r.s.TaskChosen(t) {
			rect.Radius, rect.Fill, rect.Stroke = 5, scene.PenTint, stroke(scene.Pen, 1.5)
		}
	}
	r.add(rect, scene.Line{From: at(r.line, y), To: at(r.line+9, y), Stroke: stroke(scene.Ink, 2)})
	end := r.by(t, y)
	x := r.who(t, y)
	x = r.fit(x, y+5, t.Title, ink(14).medium(), end-10)
	if end-x > 50 {
		r.fit(x+10, y+5, t.Why, ink2(13), end-10)
	}
	r.window(t, y)
	if t.Minutes > 0 {
		r.right(r.area.Right()-state.Edge, y+5, fmt.Sprintf("%.0f", math.Ceil(t.Minutes)), ink(14).medium())
	}
	r.rule(r.line+14, r.y+h-1, r.area.Right()-state.Edge, r.y+h-1, scene.Hair)
}

// by writes the last day or hour and gives where it begins.
func (r *routeDraw) by(t rules.Task, y float64) float64 {
	if t.By.IsZero() {
		return r.axis.x - 12
	}
	zone := r.r.View.Zone()
	past := t.By.Before(r.r.View.On())
	switch {
	case past && !r.r.Ahead:
		return r.right(r.axis.x-12, y+5, "past "+r.r.DayOf(t.By).Short()[:3], ink(13).semi().as(scene.Act))
	case t.Hard && !r.r.Ahead:
		return r.right(r.axis.x-12, y+5, "by "+weekdayHour(t.By, zone), ink(13).semi().as(scene.Act))
	case r.r.DayOf(t.By).Sub(r.r.Day) > 6, past:
		return r.right(r.axis.x-12, y+5, "by "+shortDay(r.r.DayOf(t.By)), ink2(13))
	default:
		return r.right(r.axis.x-12, y+5, "by "+r.r.DayOf(t.By).Short()[:3], ink2(13))
	}
}

// most lids that stand before a task; the others are named.
const mostLids = 4

// who draws the lids and names of a task's nucs, or the sign of a colony, and
// gives where the words begin.
func (r *routeDraw) who(t rules.Task, y float64) float64 {
	x := r.line + 30
	var names []string
	for i, s := range t.Of {
		id, isNuc := s.Nuc()
		n := r.r.Nuc(id)
		switch {
		case isNuc && n != nil:
			names = append(names, n.Name)
			if i < mostLids {
				l := small(r.lidOf(n, at(x, y), 24))
				l.Tag = scene.Tag{} // the line is what is clicked
				r.add(l)
				x += 30
			}
		case s.Kind == book.KindColony:
			r.add(scene.Rect{Area: scene.Around(at(x, y), 18), Radius: 2, Stroke: stroke(scene.Ink, 1.6)},
				scene.Rect{Area: scene.Around(at(x, y), 10), Radius: 1, Stroke: stroke(scene.Ink, 1.01)})
			names = append(names, rules.Name(r.r.View, s))
			x += 28
		default:
			names = append(names, sentence(rules.Name(r.r.View, s)))
		}
	}
	if len(names) == 0 {
		return r.line + 20
	}
	return r.fit(x-10, y+5, strings.Join(names, " "), ink(14).bold(), x+180) + 10
}
