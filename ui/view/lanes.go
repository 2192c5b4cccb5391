package view

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// lanes draws a lane for each batch that has room.
func (p *sheet) lanes() {
	a := p.l.Lanes
	p.clipped(a, scene.Tag{}, func() {
		p.rect(a, scene.Ground)
		for i, b := range p.s.Lanes(p.l) {
			p.lane(b, p.laneArea(i))
		}
		for i, b := range p.s.PlannedLanes(p.l) {
			p.plannedLane(b, p.laneArea(i+len(p.s.Lanes(p.l))))
		}
	})
	p.hiddenLanes(a)
	above, below := p.s.LanesHidden(p.l)
	p.scrollBar(a, p.l.Lane*float64(above), a.H+p.l.Lane*float64(above+below))
	p.rule(a.X, a.Bottom()-1, a.Right(), a.Bottom()-1, scene.Rule)
}

// laneArea is where a lane in sight lies.
func (p *sheet) laneArea(i int) scene.Area {
	a := p.l.Lanes
	return scene.Area{X: a.X, Y: a.Y + float64(i)*p.l.Lane, W: a.W, H: p.l.Lane}
}

// hiddenLanes says at the right how many batches lie above and below, and
// leads there.
func (p *sheet) hiddenLanes(a scene.Area) {
	x := a.Right() - 22 // clear of the bar that scrolls
	above, below := p.s.LanesHidden(p.l)
	p.hiddenLane(above, at(x, a.Y+14), -4, "lanes up")
	p.hiddenLane(below, at(x, a.Bottom()-12), 4, "lanes down")
}

// hiddenLane is one of them: a figure and a tip that is so high.
func (p *sheet) hiddenLane(n int, c scene.Point, tip float64, command string) {
	if n == 0 {
		return
	}
	w := p.width("+"+thousands(n), ink(12).semi())
	p.rect(scene.Area{X: c.X - 14 - w, Y: c.Y - 9, W: w + 24, H: 18}, scene.Ground) // over the stream
	p.add(scene.Poly{Points: []scene.Point{c.Add(at(-5, -tip/2)), c.Add(at(5, -tip/2)), c.Add(at(0, tip))}, Fill: scene.Ink})
	from := p.right(c.X-8, c.Y+4.5, "+"+thousands(n), ink(12).semi())
	p.command(scene.Area{X: min(from, c.X+8-leastTarget) - 4, Y: c.Y - 12, W: max(c.X+12-from, leastTarget), H: 24}, command)
}

// lane is one batch: its name, its stream under the days of the ribbon, and
// what the counts were or are expected to be.
type lane struct {
	*sheet
	stream
	name   string // "Batch 4"
	ref    scene.Ref
	area   scene.Area
	r      *state.Reading
	ribbon state.Ribbon
	zone   *time.Location
	now    float64
	top    float64 // above the stream, for the name or what batches want at once
	middle float64
	k      float64 // dp a queen
	ground scene.Role
	taken  []scene.Area
}

func (p *sheet) lane(b *book.Batch, a scene.Area) {
	r := p.s.Present()
	g := p.laneOf(streamOf(r, b), a)
	g.name, g.ref = fmt.Sprintf("Batch %d", b.Number), state.RefOf(b.Batch.Subject())
	p.hit(a, g.ref, strings.TrimRight(g.name+"  "+b.Line, " "))
	days := scene.Area{X: g.ribbon.X, Y: a.Y, W: a.W - g.ribbon.X, H: a.H}
	p.clipped(days, scene.Tag{}, func() {
		g.windows()
		g.fan()
		g.pieces()
	})
	p.names = append(p.names, func() { p.clipped(days, scene.Tag{}, g.written) })
	g.title()
	p.rule(0, a.Bottom()-1, a.W, a.Bottom()-1, scene.Hair)
}

// laneOf is a lane that is begun: its ground, which tells what is selected.
func (p *sheet) laneOf(f stream, a scene.Area) lane {
	r := p.s.Present()
	g := lane{sheet: p, stream: f, r: r, area: a, ribbon: p.l.Ribbon, zone: r.View.Zone(), ground: scene.Ground}
	if p.s.OnSeason() || p.l.Narrow {
		g.top = laneTop
	}
	g.middle = a.Y + (g.top+a.H-12)/2
	g.k = (a.H - g.top - 15) / max(34, float64(f.Larvae))
	g.now = instantX(g.ribbon, r.View.On(), g.zone)
	if p.s.Selection.Has(f.Batch.Batch.Subject()) {
		g.ground = scene.PenTint
		p.rect(a, g.ground)
	}
	return g
}

// written is what stands over the stream: the counts, and the marks, which none
// of those may cover.
func (g *lane) written() {
	marks := g.r.LaneMarks(g.Batch.Batch)
	for _, m := range marks {
		if x := g.x(m.At); x > g.ribbon.X && m.Clash {
			g.taken = append(g.taken, scene.Area{X: x - 8, Y: g.area.Bottom() - 15, W: 16, H: 12})
		}
	}
	g.labels()
	for i, m := range marks {
		g.mark(i, m)
	}
}

// windows are the times in which a virgin flies out to mate, and in which eggs
// are looked for, as bands behind the stream.
func (g *lane) windows() {
	for _, w := range []struct {
		from, by time.Time
		says     string
	}{{g.flightFrom, g.flightBy, "mating flights"}, {g.eggsFrom, g.eggsBy, "look for eggs"}} {
		a := scene.Area{X: g.x(w.from), Y: g.area.Y + 1, W: g.x(w.by) - g.x(w.from), H: g.area.H - 2}
		says := fmt.Sprintf("%s, %s to %s", w.says, shortDay(calendar.DayOf(w.from, g.zone)), shortDay(calendar.DayOf(w.by, g.zone)))
		g.add(scene.Rect{Area: a, Fill: scene.Sunk, Clear: 0.35, Tag: g.tag(w.says, says)})
	}
}

// tag is that of a part of the lane: a click on it takes the batch.
func (g *lane) tag(part, says string) scene.Tag {
	ref := g.ref
	ref.Part = part
	return scene.Tag{Ref: ref, Reason: g.name + "  " + says}
}

// mark draws the tick of a deadline through the stream, or the sign of a clash
// at the foot of the lane.
func (g *lane) mark(i int, m state.LaneMark) {
	x := g.x(m.At)
	role, width := scene.Ink, 1.6
	if m.Hard || m.Clash {
		role, width = scene.Act, 2.4
	}
	top, bottom := g.area.Y+g.top+3, g.area.Bottom()-15
	if m.Clash {
		c := at(x, g.area.Bottom()-9)
		g.add(scene.Poly{Points: []scene.Point{c.Add(at(-6, 0)), c.Add(at(0, -6)), c.Add(at(6, 0)), c.Add(at(0, 6))}, Fill: scene.Panel, Stroke: stroke(role, 1.8)},
			scene.Line{From: c.Add(at(0, -3)), To: c.Add(at(0, 1)), Stroke: stroke(role, 1.6)}, scene.Circle{At: c.Add(at(0, 3)), Radius: 0.9, Fill: role})
	} else {
		g.add(scene.Line{From: at(x, top), To: at(x, bottom), Stroke: stroke(role, width)})
	}
	g.add(scene.Rect{Area: scene.Area{X: x - 7, Y: top, W: 14, H: g.area.Bottom() - top}, Tag: g.tag(fmt.Sprint("mark ", i), m.Says)})
}

func (g *lane) x(t time.Time) float64 { return instantX(g.ribbon, t, g.zone) }

// until is where a stage ends.
func (g *lane) until(i int) float64 {
	if i+1 < len(g.stages) {
		return g.x(g.stages[i+1].at)
	}
	return g.x(g.ends)
}

// fan draws the range of what is expected, 10 to 90 per cent.
func (g *lane) fan() {
	var up, low []scene.Point
	for i, s := range g.stages {
		if s.low == s.high && len(up) == 0 {
			continue
		}
		from, to := g.x(s.at), g.until(i)
		up = append(up, at(from, g.middle-s.high*g.k/2), at(to, g.middle-s.high*g.k/2))
		low = append(low, at(from, g.middle+s.high*g.k/2), at(to, g.middle+s.high*g.k/2))
	}
	if len(up) == 0 {
		return
	}
	shape := append([]scene.Point{}, up...)
	for i := len(low) - 1; i >= 0; i-- {
		shape = append(shape, low[i])
	}
	g.add(scene.Poly{Points: shape, Fill: scene.Sunk},
		scene.Poly{Points: up, Open: true, Stroke: dashed}, scene.Poly{Points: low, Open: true, Stroke: dashed})
}

var dashed = scene.Stroke{Role: scene.Ink3, Width: 1, Dash: [2]float64{2, 2}}

// least draws over a stage that is only expected how thin the stream is at least,
// nine times in ten.
func (g *lane) least(s stage, from, to float64) {
	if s.low == s.high || to <= from {
		return
	}
	for _, side := range []float64{-1, 1} {
		y := g.middle + side*s.low*g.k/2
		g.add(scene.Line{From: at(from, y), To: at(to, y), Stroke: scene.Stroke{Role: scene.Ink2, Width: 1.2, Dash: [2]float64{2, 2}}})
	}
}

// says is a stage in one line.
func (s stage) says() string {
	n := thousands(int(math.Round(s.n)))
	switch {
	case s.counted:
		return n + " " + s.word
	case s.low == s.high:
		return n + " expected: " + s.word
	}
	return fmt.Sprintf("%s expected, %.0f to %.0f in 10–90 %%: %s", n, s.low, s.high, s.word)
}

// pieces draws the stages, and in the one in which some were seen laying those
// who were.
func (g *lane) pieces() {
	for i := range g.stages {
		g.piece(i)
	}
	g.seenLaying()
}

// seenLaying draws the queens seen laying as a core that widens with each, up to
// now.
func (g *lane) seenLaying() {
	if len(g.laying) == 0 {
		return
	}
	var up, low []scene.Point
	to := func(x, n float64) {
		up, low = append(up, at(x, g.middle-n*g.k/2)), append(low, at(x, g.middle+n*g.k/2))
	}
	for i, t := range g.laying {
		if i == 0 || !t.Equal(g.laying[i-1]) {
			to(g.x(t), float64(i))
		}
		if i+1 == len(g.laying) || !t.Equal(g.laying[i+1]) {
			to(g.x(t), float64(i+1))
		}
	}
	to(g.now, float64(len(g.laying)))
	slices.Reverse(low)
	says := thousands(len(g.laying)) + " queens seen laying"
	g.add(scene.Poly{Points: append(up, low...), Fill: scene.Laying.Fill(), Stroke: stroke(scene.Laying.Line(), 0.6), Tag: g.tag("laying", says)})
}

// piece draws one stage: solid up to now where it was counted, hatched after it
// and where nobody counted. It begins with a short slope from the stage before.
func (g *lane) piece(i int) {
	s := g.stages[i]
	from, to := g.x(s.at), g.until(i)
	if to <= from {
		return
	}
	before := s.n
	if i > 0 {
		before = g.stages[i-1].n
	}
	slope := min(from+g.ribbon.Column*0.35, to)
	height := func(x float64) float64 {
		n := s.n
		if x < slope {
			n = before + (s.n-before)*(x-from)/(slope-from)
		}
		return n * g.k / 2
	}
	known := from // up to where it is
	if s.counted {
		known = max(from, min(to, g.now))
	}
	if from < known {
		g.part(s, []float64{from, min(slope, known), known}, height, false)
	}
	if known < to {
		g.part(s, []float64{known, max(slope, known), to}, height, true)
		g.least(s, max(slope, known), to)
	}
}

// part draws a piece of the stream through the given x.
func (g *lane) part(s stage, xs []float64, height func(float64) float64, hatched bool) {
	shape := make([]scene.Point, 0, 2*len(xs))
	for _, x := range xs {
		shape = append(shape, at(x, g.middle-height(x)))
	}
	for i := len(xs) - 1; i >= 0; i-- {
		shape = append(shape, at(xs[i], g.middle+height(xs[i])))
	}
	poly := scene.Poly{Points: shape, Fill: s.fill, Stroke: stroke(s.line, 0.6), Tag: g.tag("stage "+s.word, s.says())}
	if hatched {
		poly.Fill, poly.Stroke = scene.Panel, stroke(s.line, 0.8)
		poly.Hatch = scene.Hatch{Role: s.line, Pitch: 5, Weight: 1.3}
	}
	g.add(poly)
}
