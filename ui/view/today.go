package view

import (
	"fmt"
	"math"
	"strings"
	"time"

	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// today draws the room Today: the day's time and kit, the route, the card.
func (p *sheet) today() {
	l := p.l
	if !l.Turns.Empty() {
		p.turns()
	}
	if !l.Side.Empty() {
		p.daySide(l.Side)
	}
	if !l.Main.Empty() {
		p.route(l.Main)
	}
	p.card()
	p.days()
}

// daySide draws the minutes of the day against the time there is, the kit to
// pack, and the caution.
func (p *sheet) daySide(a scene.Area) {
	plan := p.s.Reading().Plan()
	p.clipped(a, scene.Tag{}, func() {
		const column = 256.0
		x, all := a.X+state.Edge, a.W-2*state.Edge
		w := min(all, column)
		y := a.Y + 30
		p.fit(x, y, longDay(p.s.Looked()), ink(20).semi(), a.Right()-8)
		y = p.wrap(x, y+30, p.workWords(plan), ink(14), all, 3) - scene.LineHeight(14)
		top := y + 14
		y = p.timeBar(plan, scene.Area{X: x, Y: top, W: w, H: 16})
		bottom := p.caution(scene.Area{X: x, Y: y - 20, W: all, H: a.Bottom() - y + 20})
		kit := scene.Area{X: x, Y: y, W: w, H: bottom - y}
		if beside := x + w + 1.5*state.Edge; a.Right()-beside > w*0.75 {
			kit = scene.Area{X: beside, Y: top + 8, W: min(w, a.Right()-beside-state.Edge/2), H: bottom - top - 8}
		}
		p.kit(plan.Kit, kit)
	})
	p.rule(a.Right()-1, a.Y, a.Right()-1, a.Bottom(), scene.Rule)
}

// caution writes at the foot of an area, if it has room, what must not be
// forgotten, and gives where it begins.
func (p *sheet) caution(a scene.Area) float64 {
	const said, foot = "Stings can kill. Phone charged and within reach; whoever comes along knows the plan.", 14.0
	high := scene.LineHeight(13) * float64(len(scene.Wrap(p.measure, said, 13, scene.Regular, a.W)))
	if high+foot > a.H {
		return a.Bottom() - foot
	}
	top := a.Bottom() - foot - high
	p.wrap(a.X, top+13, said, ink2(13), a.W, 4)
	return top - 12
}

// workWords says how long the day's work is and how much time there is. Ahead
// it is the work if nothing is done before; what the ribbon shows of the day is
// said beside it.
func (p *sheet) workWords(plan rules.DayPlan) string {
	said := minutes(plan.Minutes) + " of work"
	if plan.Told {
		said += ", " + minutes(plan.Free) + " of time"
	}
	if !p.s.Ahead() {
		return said
	}
	best := p.s.Present().WorkOn(p.s.Looked()).Minutes
	return said + ", if nothing is done before; " + minutes(best) + " are best done on this day"
}

// timeBar draws work against time and gives where the next thing begins.
func (p *sheet) timeBar(plan rules.DayPlan, a scene.Area) float64 {
	if !plan.Told {
		return a.Y + 24
	}
	tone, tint := p.alarm()
	k := a.W / max(plan.Minutes, plan.Free, 1)
	p.add(scene.Rect{Area: a, Fill: scene.Off})
	p.rect(scene.Area{X: a.X, Y: a.Y, W: min(plan.Minutes, plan.Free) * k, H: a.H}, scene.Ink2)
	word := ""
	switch over := plan.Over(); {
	case over > 0 && plan.Free > 0:
		p.add(scene.Rect{
			Area: scene.Area{X: a.X + plan.Free*k, Y: a.Y, W: over * k, H: a.H}, Fill: tint,
			Hatch: scene.Hatch{Role: tone, Pitch: 5, Weight: 1.4}, Stroke: stroke(tone, 1.01),
		})
		word = minutes(over) + " over"
	case over > 0:
		word = "nobody is free"
	}
	p.right(a.Right(), a.Y+36, word, ink(13).semi().as(tone))
	if !plan.Home.IsZero() && plan.Minutes > 0 {
		p.text(a.X, a.Y+36, "home by "+plan.Home.In(p.s.Reading().View.Zone()).Format("15:04"), ink2(13))
	}
	edge := a.X + plan.Free*k
	p.add(scene.Line{From: at(edge, a.Y-4), To: at(edge, a.Bottom()+6), Stroke: stroke(scene.Ink, 2)})
	return a.Bottom() + 60
}

// kit draws what to pack, one line each, as far as there is room.
func (p *sheet) kit(all []rules.KitLine, a scene.Area) {
	if len(all) == 0 {
		return
	}
	amounts, wide := make([]string, len(all)), 42.0
	for i, k := range all {
		amounts[i] = strings.TrimSpace(figure(k.Amount) + " " + k.Unit)
		wide = max(wide, p.width(amounts[i], ink(16).semi()))
	}
	y := a.Y
	if y+37 > a.Bottom() {
		return
	}
	p.text(a.X, y, "Kit to pack", ink(16).semi())
	y += 10
	for i, k := range all {
		y += 27
		if y+10 > a.Bottom() && i < len(all)-1 {
			p.text(a.X, y, fmt.Sprintf("and %d more", len(all)-i), ink2(13))
			return
		}
		p.right(a.X+wide, y, amounts[i], ink(16).semi())
		x := p.fit(a.X+wide+12, y, k.Goods, ink(14), a.Right())
		if a.Right()-x > 40 {
			p.fit(x+8, y, k.Note, ink2(13), a.Right())
		}
		p.rule(a.X, y+8, a.Right(), y+8, scene.Hair)
	}
}

// turns draws the head by which parts take turns in a small window.
func (p *sheet) turns() {
	a := p.l.Turns
	p.rect(a, scene.Ground)
	p.rule(a.X, a.Bottom()-1, a.Right(), a.Bottom()-1, scene.Hair)
	parts := []struct {
		word, command string
		part          state.Part
	}{{"Route", "part main", state.MainPart}, {"Kit and time", "part side", state.SidePart}}
	if p.s.Room == state.Yard {
		parts[0].word, parts[1].word = "Nucs", "Map"
		parts = append(parts, parts[0])
		parts[2].word, parts[2].command, parts[2].part = "Batches", "part lanes", state.LanePart
	}
	x := a.X + state.Edge
	if p.s.Room == state.Yard && p.s.Part == state.MainPart {
		p.forms(scene.Area{X: a.Right(), Y: a.Y, H: a.H}, "")
	}
	for _, part := range parts {
		x = p.link(x, a.Y+22, part.word, ink2(14), part.command, p.s.Part == part.part) + 20
	}
}

// hardStrip draws the hard deadline that comes first, with how many follow. On
// another day than today it is grey: it is not true now.
func (p *sheet) hardStrip(hard []rules.Finding, a scene.Area) {
	r := p.s.Reading()
	to := a.Right() - state.Edge
	if len(hard) == 0 {
		p.rect(a, scene.Sunk)
		p.fit(a.X+state.Edge, a.Y+a.H/2+5, "No hard deadline in sight", ink2(14), to)
		return
	}
	tone, tint := p.alarm()
	p.rect(a, tint)
	p.rect(scene.Area{X: a.X, Y: a.Y, W: 6, H: a.H}, tone)
	f := hard[0]
	word := "Hard, by "
	switch {
	case f.PastDue(r.View.On()) && r.Ahead:
		word = "Would be past since "
	case f.PastDue(r.View.On()):
		word = "Past since "
	}
	const twoLines, wide = 40.0, 700.0
	two := a.H >= twoLines && a.W < wide
	y := a.Y + a.H/2 + 6
	if two {
		y = a.Y + 18
	}
	end := to
	if len(hard) > 1 {
		end = p.right(end, y, fmt.Sprintf("and %d more", len(hard)-1), ink2(13)) - 12
	}
	x := p.fit(a.X+state.Edge, y, word+hour(f.By, r.View.Zone()), ink(15).bold().as(tone), end)
	said := sentence(f.What)
	if all := said + ". " + f.Do + "."; !two || p.width(all, ink(13)) <= to-a.X-state.Edge {
		said = all
	}
	switch {
	case two:
		p.fit(a.X+state.Edge, y+19, said, ink(13), to)
	case end-x > 60:
		p.fit(x+14, y, said, ink(14), end)
	}
	p.hit(a, state.RefOf(f.Of), "hard: "+f.Why)
}

// dayAxis is the axis on which the windows of tasks lie: ten days, today the
// fourth.
type dayAxis struct {
	x, w  float64
	first float64 // days since 1970
}

const (
	axisDays   = 10
	axisBefore = 3
	axisWidth  = 114.0
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
	if t.From.IsZero() || t.By.IsZero() || r.day(t.By) < r.axis.first {
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
