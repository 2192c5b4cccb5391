package view

import (
	"fmt"
	"math"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// batchDraw is the batch that fills the room being drawn.
type batchDraw struct {
	*sheet
	r *state.Reading
	b *book.Batch
}

// batchRoom draws a batch in the whole room: its stream, its clock in hours, the
// evidence, its nucs and what comes.
func (p *sheet) batchRoom() {
	id, ok := p.s.FillOf.Batch()
	d := batchDraw{sheet: p, r: p.s.Reading()}
	a := p.l.Main
	p.rect(a, scene.Panel)
	if ok {
		d.b = d.r.View.Batch(id)
	}
	if !ok || d.b.At.IsZero() {
		p.wrap(a.X+state.Edge, a.Y+48, "This batch was not grafted yet on the day you are looking at.", ink(15), a.W-2*state.Edge, 2)
		p.days()
		return
	}
	d.title(scene.Area{X: a.X, Y: a.Y, W: a.W, H: state.BatchHead})
	stream := scene.Area{X: a.X, Y: a.Y + state.BatchHead, W: a.W, H: p.l.BatchStream()}
	p.rect(stream, scene.Ground)
	p.streamOn(d.b, stream)
	p.rule(a.X, stream.Bottom(), a.Right(), stream.Bottom(), scene.Rule)
	d.columns(scene.Area{X: a.X, Y: stream.Bottom(), W: a.W, H: a.Bottom() - stream.Bottom()})
	if p.s.Form != nil {
		p.card()
	}
	p.days()
}

// title names the batch and gives the room back, both over the frame of the day, which
// runs through the days below them.
func (d batchDraw) title(a scene.Area) {
	d.rect(a, scene.Ground)
	to := a.Right() - state.Edge
	from := to - d.width("Esc", ink2(12)) - 10 - d.width(backWord, ink(14).semi())
	d.names = append(d.names, func() {
		d.onPaper(scene.Area{X: from, Y: a.Y, W: to - from, H: a.H}, func() float64 { return d.back(from, to, a.Y+27) })
		called := scene.Area{X: a.X + state.Edge, Y: a.Y, W: from - 20 - a.X - state.Edge, H: a.H}
		d.onPaper(called, func() float64 { return d.called(called) })
	})
}

const backWord = "back to the yard"

// back writes the way back to the yard, with its key at the end.
func (d batchDraw) back(from, to, y float64) float64 {
	d.link(from, y, backWord, ink(14).semi().as(scene.Pen), "give back", false)
	d.right(to, y, "Esc", ink2(12))
	return to
}

// onPaper writes words that begin at the left of an area, and lays paper under them as far
// as they go.
func (d batchDraw) onPaper(a scene.Area, write func() float64) {
	at := len(d.marks)
	end := write()
	paper := scene.Rect{Area: scene.Area{X: a.X - 4, Y: a.Y, W: end - a.X + 8, H: a.H - 8}, Fill: scene.Ground}
	d.marks = slices.Insert(d.marks, at, scene.Mark(paper))
}

// called writes the batch's name, line and counts, and gives where they end.
func (d batchDraw) called(a scene.Area) float64 {
	x := d.text(a.X, a.Y+27, fmt.Sprintf("Batch %d", d.b.Number), ink(20).bold())
	x = d.fit(x+12, a.Y+27, d.b.Line, ink2(16), a.Right())
	return d.fit(x+16, a.Y+27, d.counted(), ink2(14), a.Right())
}

// counted says how many were grafted and what became of them.
func (d batchDraw) counted() string {
	now := d.r.CellsNow(d.b)
	if now != "" {
		return d.sinceGraft(now)
	}
	said := fmt.Sprintf("grafted %s", d.b.At.In(d.r.View.Zone()))
	if now = d.stageNow(); now != "" && d.b.Larvae > 0 {
		said = d.sinceGraft(now)
	}
	if left := d.b.Left(); left > 0 {
		said += fmt.Sprintf("; %s still together", plural(left, "cell", "cells"))
	}
	if way := d.b.OnTheWay(); way > 0 {
		said += fmt.Sprintf("; %s on the way", plural(way, "cell", "cells"))
	}
	return said
}

// sinceGraft sets what is now, or on the day looked at, beside what was grafted.
func (d batchDraw) sinceGraft(now string) string {
	when := ", now"
	if !d.r.UnderWay {
		when = "; " + d.r.Day.Short() + ":"
	}
	return fmt.Sprintf("%d grafted%s %s", d.b.Larvae, when, now)
}

// stageNow is what the stream shows now, or on the day looked at: how many, and of what.
func (d batchDraw) stageNow() (said string) {
	for _, g := range streamOf(d.s.Present(), d.b).stages {
		if g.at.After(d.r.View.On()) {
			break
		}
		said = thousands(int(math.Round(g.n))) + " " + g.word
		if g.low != g.high {
			said += " expected"
		}
	}
	return said
}

// streamOn draws the batch's stream under the days of the ribbon, in an area of
// its own.
func (p *sheet) streamOn(b *book.Batch, a scene.Area) {
	r := p.s.Present()
	g := lane{sheet: p, stream: streamOf(r, b), r: r, area: a, ribbon: p.l.Ribbon, zone: r.View.Zone(), middle: a.Y + a.H/2 - 8}
	g.k, g.ground = (a.H-44)/max(34, float64(b.Larvae)), scene.Ground
	g.now = instantX(g.ribbon, r.View.On(), g.zone)
	days := scene.Area{X: g.ribbon.X, Y: a.Y, W: a.W - g.ribbon.X, H: a.H}
	p.clipped(days, scene.Tag{}, func() {
		g.windows()
		g.fan()
		g.pieces()
	})
	p.names = append(p.names, func() { p.clipped(days, scene.Tag{}, g.written) })
	g.probable()
	if !p.l.Narrow {
		p.text(state.Edge, g.middle-2, "cells, virgins", ink2(12))
		p.text(state.Edge, g.middle+13, "and queens", ink2(12))
	}
}

// probable says at the end of a stream how many of it there will be, if it has room.
func (g *lane) probable() {
	s := g.stages[len(g.stages)-1]
	if s.low == s.high {
		return
	}
	said := fmt.Sprintf("most probably %.0f, 10–90 %%: %.0f to %.0f", s.n, s.low, s.high)
	if x := g.x(g.ends) + 8; x+g.width(said, ink2(13)) <= g.area.Right()-8 {
		g.text(x, g.middle+4.5, said, ink2(13))
	} else if g.l.Ribbon.Left(g.s.Looked()+2) < g.area.Right()-g.width(said, ink2(13))-state.Edge {
		to := g.area.Right() - state.Edge
		g.right(to, g.middle-g.highest(to-g.width(said, ink2(13)))*g.k/2-8, said, ink2(13))
	}
}

// highest is how many the stream counts at most from x on.
func (g *lane) highest(x float64) (most float64) {
	for i, s := range g.stages {
		if g.until(i) > x {
			most = max(most, s.high)
		}
	}
	return most
}

// columns draws clock, evidence and nucs side by side, or in a small room the
// clock with the nucs below it.
func (d batchDraw) columns(a scene.Area) {
	if a.W < state.BatchWide {
		clock, rest := scene.Area{X: a.X, Y: a.Y, W: a.W * state.BatchSplit, H: a.H}, scene.Area{X: a.X + a.W*state.BatchSplit, Y: a.Y, W: a.W * (1 - state.BatchSplit), H: a.H}
		d.clock(clock)
		d.inNucs(rest)
		d.rule(rest.X, a.Y, rest.X, a.Bottom(), scene.Rule)
		return
	}
	c1, c2 := a.X+a.W*0.486, a.Right()-state.CardWidth
	d.clock(scene.Area{X: a.X, Y: a.Y, W: c1 - a.X, H: a.H})
	d.evidence(scene.Area{X: c1, Y: a.Y, W: c2 - c1, H: a.H})
	d.inNucs(scene.Area{X: c2, Y: a.Y, W: a.Right() - c2, H: a.H})
	d.rule(c1, a.Y, c1, a.Bottom(), scene.Rule)
	d.rule(c2, a.Y, c2, a.Bottom(), scene.Rule)
}

// clock draws the steps of the batch with their hours.
func (d batchDraw) clock(a scene.Area) {
	x, to := a.X+state.Edge, a.Right()-state.Edge
	hours, cal := x+max(a.W*0.31, 210), x+max(a.W*0.33, 218)
	const calendar = 156.0 // "by Wed 25 Nov 18:18"
	seen := min(x+a.W*0.64, cal+calendar)
	if d.l.SeenBelow() {
		seen = to
	}
	end := d.text(x, a.Y+28, "The clock, in hours", ink(14).semi())
	d.fit(end+10, a.Y+28, "from the graft", ink2(13), to)
	y := a.Y + 54
	d.text(x, y, "step", ink2(13))
	d.right(hours, y, "hours", ink2(13))
	d.fit(cal, y, "by the calendar", ink2(13), seen-8)
	d.fit(seen, y, "seen", ink2(13), to)
	y += 8
	d.rule(x, y, to, y, scene.Ink)
	steps := d.r.ClockOf(d.b)
	body := scene.Area{X: a.X, Y: y, W: a.W, H: a.Bottom() - y}
	high, below := max(d.l.ClockRow(), (body.H-10)/float64(len(steps))), d.s.BatchBelow(d.l, d.b)
	high = min(high, max(56, d.l.ClockRow()))
	all := high * float64(len(steps))
	if below > 0 {
		all = d.l.ClockHigh(steps) + below
	}
	offset := min(d.s.FillOffset(d.l), max(0, all-body.H))
	d.wholeLines(body, func() {
		y -= offset
		for _, s := range steps {
			tall := high
			if below > 0 {
				tall = d.l.StepHigh(s)
			}
			d.step(s, scene.Area{X: a.X, Y: y, W: a.W, H: tall}, [4]float64{x, hours, cal, seen})
			y += tall
		}
		if below > 0 {
			d.below(x, y, to-x)
		}
	})
	d.scrollBar(body, offset, all)
}

// below draws the evidence and what comes below the clock.
func (d batchDraw) below(x, y, w float64) {
	d.text(x, y+28, "Evidence", ink(14).semi())
	y = d.flying(x, y+50, w)
	y = d.holds(x, y, w)
	y = d.links(x, y, w)
	y = d.incubator(x, y, w, state.BatchLog)
	d.comes(scene.Area{X: x, Y: y + 6, W: w, H: math.Inf(1)})
}

// step draws one step of the clock.
func (d batchDraw) step(s state.ClockStep, row scene.Area, at [4]float64) {
	base, to := row.Y+row.H/2+5, row.Right()-state.Edge
	if d.l.SeenBelow() && s.Seen != "" {
		base -= 8
		d.fit(at[0], base+18, s.Seen, ink2(13), to)
	}
	when := ink2(14)
	word := ink(14).medium()
	switch {
	case s.Now:
		d.add(scene.Rect{Area: scene.Area{X: row.X + 8, Y: row.Y + 1, W: row.W - 8 - besideBar, H: row.H - 2}, Radius: 5, Fill: scene.PenTint, Stroke: stroke(scene.Pen, 1.5)})
		word, when = ink(14).semi(), ink(14)
	case s.Hard && !d.r.Ahead:
		word, when = ink(14).semi(), ink(14).semi().as(scene.Act)
	}
	if !s.Now {
		d.rule(at[0], row.Bottom(), to, row.Bottom(), scene.Hair)
	}
	d.fit(at[0], base, s.Word, word, at[1]-d.width(d.hoursOf(s), ink(14).semi())-8)
	d.right(at[1], base, d.hoursOf(s), ink(14).semi())
	d.fit(at[2], base, d.whenOf(s), when, at[3]-8)
	if !d.l.SeenBelow() {
		d.fit(at[3], base, s.Seen, ink(13.5), to)
	}
	if s.Key != 0 {
		n := practice.Of(s.Key)
		d.hit(row, scene.Ref{Kind: "note"}, fmt.Sprintf("%s: %s", n.Title, n.Source))
	}
}

// hoursOf are the hours of a step from the graft.
func (d batchDraw) hoursOf(s state.ClockStep) string {
	h := s.Hours(d.b.At.Instant)
	switch {
	case !s.Till.IsZero():
		return fmt.Sprintf("%.0f–%.0f", h, s.Till.Sub(d.b.At.Instant).Hours())
	case s.By:
		return fmt.Sprintf("to %.0f", h)
	case s.Spread > 0:
		return fmt.Sprintf("%.0f ± %.0f", h, s.Spread)
	}
	return fmt.Sprintf("%.0f", h)
}

// whenOf is a step by the calendar.
func (d batchDraw) whenOf(s state.ClockStep) string {
	zone := d.r.View.Zone()
	switch {
	case !s.Till.IsZero():
		return shortDay(d.r.DayOf(s.At)) + " to " + shortDay(d.r.DayOf(s.Till))
	case s.By:
		return "by " + hour(s.At, zone)
	case s.ByDay, s.At.Sub(d.r.View.On()).Abs() > toTheMinute:
		return d.r.DayOf(s.At).Short()
	}
	return hour(s.At, zone)
}

// toTheMinute is how far from now a step of the clock is said with its hour.
const toTheMinute = 4 * 24 * time.Hour
