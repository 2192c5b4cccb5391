package view

import (
	"fmt"
	"math"
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// routeDraw is the day's route being drawn.
type routeDraw struct {
	*sheet
	state.Route
	r      *state.Reading
	area   scene.Area
	axis   dayAxis
	line   float64 // x of the route's line
	end    float64 // where what stands before windows and minutes ends
	row    int     // of the next line
	chosen int     // the line that is chosen; below 0 for none
	pale   bool    // what is drawn waits for another day
}

// route draws the day's work as a line with stops, each task with its window.
func (p *sheet) route(a scene.Area) {
	r := routeDraw{sheet: p, Route: p.s.Route(p.l), r: p.s.Reading(), area: a, line: a.X + state.RouteText - 10}
	r.end = a.Right() - r.End
	r.axis = dayAxis{x: r.end + 12, w: r.minutesTo() - r.end - axisMinutes, first: float64(r.r.Day) - axisBefore}
	r.chosen = p.s.LineAt()
	plan := r.r.Plan()
	p.clipped(a, scene.Tag{Ref: scene.Ref{Kind: state.PaneRef, ID: "route"}}, func() {
		p.rect(a, scene.Panel)
		if r.Hard > 0 {
			p.hardStrip(plan.Hard, scene.Area{X: a.X, Y: a.Y, W: a.W, H: r.Hard})
		}
		if r.Head > 0 {
			r.head(a.Y + r.Hard)
		}
		body := scene.Area{X: a.X, Y: a.Y + r.Hard + r.Head, W: a.W, H: r.Pane}
		r.stops(p.s.Page(), body)
	})
}

// head draws the names of the columns.
func (r routeDraw) head(y float64) {
	end := r.text(r.area.X+state.Edge, y+22, "Route", ink(14).semi())
	r.right(r.minutesTo(), y+22, "min", ink2(12))
	names := r.end
	if r.Axis && len(r.Stops) > 0 {
		names = r.axisHead(y)
	}
	if shut := r.s.NoTicks(); shut != "" && len(r.Stops) > 0 { // why the boxes are dashed
		r.widest(end+14, y+22, names-14, ink2(12), sentence(shut), sentence(clause(shut)), "")
	}
}

// axisHead names the windows and numbers the days of their axis, and gives where that
// begins.
func (r routeDraw) axisHead(y float64) float64 {
	_, month, _ := r.r.Day.Date()
	begins := r.right(r.end, y+22, "from, best, by; "+month.String()[:3], ink2(12))
	for i := 0; i <= axisDays-1; i += axisBefore {
		d := r.r.Day + calendar.Day(i-axisBefore)
		_, _, number := d.Date()
		f := ink2(12)
		if i == axisBefore {
			f = ink(12).semi()
		}
		r.centre(r.axis.x+(float64(i)+0.5)*r.axis.w/axisDays, y+22, fmt.Sprint(number), f)
	}
	return begins
}

// known draws what is no work but to be known: standstills, and what waits after a
// treatment.
func (r routeDraw) known(top float64, a scene.Area) {
	for i, t := range r.r.Plan().Waits {
		if i == 0 {
			r.fit(r.area.X+state.Edge, top+20, "Waits, not work", ink(15).semi(), r.end)
		}
		line := r.Known[i]
		row := scene.Area{X: r.line + 10, Y: top + line.Y, W: r.area.Right() - r.line - 22, H: line.H}
		if row.Bottom() <= a.Y || row.Y >= a.Bottom() {
			continue
		}
		box := scene.Rect{Area: row, Tag: scene.Tag{Ref: state.RefOf(t.Of[0]), Reason: t.Why}}
		if r.hovers(box.Ref) {
			box.Radius, box.Fill = 5, scene.Sunk
		}
		r.add(box)
		r.task(state.PageLine{Task: t}, row)
		r.rule(r.line+14, row.Bottom()-1, r.area.Right()-state.Edge, row.Bottom()-1, scene.Hair)
	}
}

// nothing says that there is no work, and what comes next.
func (r routeDraw) nothing(a scene.Area) {
	x, w := a.X+state.Edge, a.W-2*state.Edge
	y := a.Y + 30
	y = r.wrap(x, y, "Nothing to do on "+r.r.Day.Short(), ink(16).semi(), w, 2) + 4
	if f, ok := r.next(); ok {
		said := fmt.Sprintf("Next is %s: %s, %s", r.r.BestDay(f).Short(), f.Act, rules.Name(r.r.View, f.Of))
		y = r.wrap(x, y, said, ink2(14), w, 3)
	}
	r.hint(scene.Area{X: x, Y: y + 8, W: w, H: a.Bottom() - y})
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

// lineMiddle is from the top of a line to the middle of what stands on it, dp.
const lineMiddle = 15.0

// entry draws one line: work to do, or what is done of it.
func (r routeDraw) entry(l state.PageLine, row scene.Area) {
	y := row.Y + lineMiddle
	rect := scene.Rect{Area: row}
	if len(l.Of) > 0 {
		rect.Tag = scene.Tag{Ref: state.TaskOf(l.Number), Reason: l.Why}
		if l.Done {
			rect.Tag = scene.Tag{Ref: scene.Ref{Kind: state.DoneRef, ID: strconv.Itoa(r.row)}}
		}
		switch {
		case r.row == r.chosen:
			rect.Radius, rect.Fill, rect.Stroke = 5, scene.PenTint, stroke(scene.Pen, 1.5)
		case r.s.Hover.Ref == rect.Ref:
			rect.Radius, rect.Fill = 5, scene.Sunk
		}
	}
	r.add(rect)
	if !l.Waits {
		r.add(scene.Line{From: at(r.line, y), To: at(r.line+9, y), Stroke: stroke(scene.Ink, 2)})
	}
	switch {
	case l.Done:
		r.done(l, y)
	default:
		r.task(l, row)
	}
	f := ink(14).medium()
	if l.Done || l.Waits {
		f = f.as(scene.Ink3)
	}
	if l.Minutes > 0 {
		r.right(r.minutesTo(), y+5, thousands(int(math.Ceil(l.Minutes))), f)
	}
	r.tickBox(l, y)
	r.rule(r.line+14, row.Bottom()-1, r.area.Right()-state.Edge, row.Bottom()-1, scene.Hair)
}

// task draws one line of work: who, what, why, by when, how long.
func (r routeDraw) task(l state.PageLine, row scene.Area) {
	y := row.Y + lineMiddle
	if r.pale = l.Waits; row.H == state.RouteLine {
		end := r.by(l.Task, y) - 10
		x := r.who(l.Task, y, end-r.width(l.Title, taskFont)-r.width(l.Why, whyFont)-20)
		r.what(l.Task, x, y+5, end)
	} else {
		r.folded(l.Task, y, int((row.H-state.RouteLine)/state.RouteMore))
	}
	if r.Axis {
		r.window(l.Task, y)
	}
}

// toned is a font, paler for what waits.
func (r routeDraw) toned(f font) font {
	if r.pale {
		return f.as(scene.Ink3)
	}
	return f
}

// taskFont is the look of what to do, whyFont of why.
var taskFont, whyFont = ink(14).medium(), ink2(13)

// folded draws a task over more than one line: who and when above what and why.
func (r routeDraw) folded(t rules.Task, y float64, lines int) {
	if len(r.r.TaskNames(t)) == 0 {
		r.unnamed(t, y, lines)
		return
	}
	left, right, second := r.line+20, r.area.Right()-state.Edge, y+5+state.RouteMore+1
	r.who(t, y, r.by(t, y)-10)
	if lines == 1 {
		r.what(t, left, second, right)
		return
	}
	said := r.broken(t.Title, taskFont, right-left)
	next := r.wrapped(left, second, t.Title, r.toned(taskFont), right-left, lines)
	r.wrapped(left, next, t.Why, whyFont, right-left, lines-len(said))
}

// broken is a text in lines as its row is reckoned, so that none of them stays empty.
func (r routeDraw) broken(text string, f font, width float64) []string {
	return scene.Wrap(state.Reckoner{}, r.say(text), f.size, f.weight, width)
}

// wrapped writes lines a further line of a task apart, and gives where the next
// one would stand.
func (r routeDraw) wrapped(x, y float64, text string, f font, width float64, most int) float64 {
	lines := r.broken(text, f, width)
	for i, l := range lines {
		if i >= most {
			break
		}
		if i == most-1 && len(lines) > most {
			l += " …"
		}
		r.fit(x, y, l, f, x+width)
		y += state.RouteMore
	}
	return y
}

// unnamed draws a task over more than one line that names nobody: what to do
// begins on the first one, before when; why stands below.
func (r routeDraw) unnamed(t rules.Task, y float64, lines int) {
	const least = 80.0 // of the columns of minutes and boxes
	left, right := r.line+20, r.area.Right()-state.Edge
	x, end := r.lids(t, y, 0), right-least
	if said, _ := r.byWords(t); said != "" {
		r.by(t, y)
		end = r.area.Right() - r.End - r.r.ByRoom(t)
	}
	room := end - left
	if x > left {
		room -= state.LidRoom
	}
	taken := len(r.broken(t.Title, taskFont, room))
	next := r.wrapped(x, y+5, t.Title, r.toned(taskFont), room, lines) + 1
	r.wrapped(left, next, t.Why, whyFont, right-left, lines+1-taken)
}

// what writes what to do and, as far as there is room, why.
func (r routeDraw) what(t rules.Task, x, y, end float64) {
	x = r.fit(x, y, t.Title, r.toned(taskFont), end)
	r.fit(x+10, y, t.Why, whyFont, end)
}

// byWords are the last day or hour of a task, and their look; of one that has none
// since when it is to be done.
func (r routeDraw) byWords(t rules.Task) (string, font) {
	if t.By.IsZero() {
		return r.sinceWords(t)
	}
	day := r.r.DayOf(t.By)
	past := t.By.Before(r.r.View.On())
	f, word, when := ink2(13), "by ", day.Short()[:3]
	switch {
	case t.Hard && !past:
		when = weekdayHour(t.By, r.r.View.Zone())
	case day.Sub(r.r.Day) > 6, day.Sub(r.r.Day) < -6:
		when = shortDay(day)
	}
	if past {
		word = "past "
	}
	if (past || t.Hard) && !r.s.Away() {
		f = f.semi().as(scene.Act)
	}
	return word + when, f
}

// sinceWords are since when a task without a last day is to be done, and their look.
func (r routeDraw) sinceWords(t rules.Task) (string, font) {
	f := ink2(13)
	if t.From.IsZero() {
		return "", f
	}
	day, word := r.r.DayOf(t.From), "since "
	when := day.Short()[:3]
	if n := day.Sub(r.r.Day); n > 6 || n < -6 {
		when = shortDay(day)
	}
	switch {
	case t.From.After(r.r.View.On()):
		word = "from "
	case t.NeedsYou && !r.s.Away():
		f = f.semi().as(scene.Act)
	}
	return word + when, f
}

// by writes the last day or hour and gives where it begins.
func (r routeDraw) by(t rules.Task, y float64) float64 {
	said, f := r.byWords(t)
	if said == "" {
		return r.end
	}
	return r.right(r.end, y+5, said, f)
}

// mostLids are the most lids that stand before a task; the others are named.
const mostLids = 4

// lidPitch is from lid to lid on a line, dp.
const lidPitch = 30.0

// who draws the lids and names of a task's nucs, or the sign of a colony, no
// further than to, and gives where the words begin.
func (r routeDraw) who(t rules.Task, y, to float64) float64 {
	names, f := r.r.TaskNames(t), ink(14).bold()
	if len(names) == 0 {
		return r.lids(t, y, to)
	}
	if t.Of[0].Kind == book.KindYard {
		f = ink2(14) // bold it would be another stop
	}
	all := book.Names(names, func(string) bool { return true })
	least := book.Names(names, func(string) bool { return false })
	x := r.line + 20
	if x+lidPitch+r.width(least, f)+10 <= to { // in the narrowest panes names come before lids
		x = r.lids(t, y, to-r.width(all, f)-10)
	}
	said := book.Names(names, func(text string) bool { return r.width(text, f) <= to-x-10 })
	return r.text(x, y+5, r.shortName(sentence(said), r.toned(f), to-x-10), r.toned(f)) + 10
}

// lids draws the signs of what a task is about, as many as end before to but
// at least one, and gives where the names begin.
func (r routeDraw) lids(t rules.Task, y, to float64) float64 {
	x := r.line + 30
	for i, s := range t.Of {
		if i == mostLids || i > 0 && x+lidPitch-10 > to {
			break
		}
		id, isNuc := s.Nuc()
		n := r.r.Nuc(id)
		switch {
		case isNuc && n != nil:
			l := small(r.lidOf(n, at(x, y), 24))
			l.Tag = scene.Tag{} // the line is what is clicked
			l.Faded = r.pale
			r.add(l)
		case s.Kind == book.KindColony:
			r.add(scene.Rect{Area: scene.Around(at(x, y), 18), Radius: 2, Stroke: stroke(scene.Ink, 1.6)},
				scene.Rect{Area: scene.Around(at(x, y), 10), Radius: 1, Stroke: stroke(scene.Ink, 1.01)})
		default:
			return x - 10
		}
		x += lidPitch
	}
	return x - 10
}
