package view

import (
	"math"
	"slices"
	"strconv"

	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// courseBand is the band chart of a nuc being drawn: the days along, the chances
// of what it holds one on the other, its looks above, its weather below.
type courseBand struct {
	*sheet
	scene.Area // of the bands
	r          *state.Reading
	n          *state.Nuc
	c          *state.NucCourse
	shown      []state.CourseDay // the days of the bands: those of the course, or what is known of them now
	column     float64
	fly        float64      // how high the hours of a fine day are
	words      bool         // parts are named in words
	first, old calendar.Day // the first, and that on which she was old enough to mate
}

// Measures of the band chart, dp.
const (
	bandScale  = 28.0 // left of it, for figures
	bandTicks  = 16.0 // above it, for looks
	bandFlyGap = 6.0
	bandDays   = 16.0 // below that, for the days
)

// bandHeight is how high a chart is whose bands and flying hours are so high.
func bandHeight(bands, fly float64) float64 {
	return bandTicks + bands + bandFlyGap + fly + bandDays + 4
}

// newBand is the chart of a nuc in an area, with flying hours so high.
func (p *sheet) newBand(r *state.Reading, n *state.Nuc, a scene.Area, fly float64) courseBand {
	g := courseBand{sheet: p, r: r, n: n, c: r.CourseOf(n.Nuc.Nuc), fly: fly}
	g.Area = scene.Area{X: a.X + bandScale, Y: a.Y + bandTicks, W: a.W - bandScale, H: a.H - bandHeight(0, fly)}
	g.shown = g.c.Days
	g.column = g.W / float64(len(g.c.Days))
	g.first, g.old = g.c.Days[0].Day, r.DayOf(n.Presumed.OldEnoughFrom)
	return g
}

// x is where a day begins.
func (g courseBand) x(d calendar.Day) float64 { return g.X + g.column*float64(d-g.first) }

// y is how high a chance reaches.
func (g courseBand) y(chance float64) float64 { return g.Bottom() - g.H*chance }

func (g courseBand) draw() {
	g.bands()
	for _, d := range g.c.Days {
		g.flying(d.Day)
	}
	g.rule(g.X, g.flyLine(), g.Right(), g.flyLine(), scene.Rule)
	g.days()
	g.now(g.Y-bandTicks+2, g.flyLine())
	g.looks()
	for _, d := range g.c.Days {
		g.hit(scene.Area{X: g.x(d.Day), Y: g.Y, W: g.column, H: g.flyLine() - g.Y}, g.dayRef(d.Day), d.Says()+"; "+g.hours(d.Day))
	}
}

// bands draws the chances of the days that are shown, with their scale.
func (g courseBand) bands() {
	g.scale()
	known := slices.IndexFunc(g.shown, func(d state.CourseDay) bool { return d.Day >= g.ahead() })
	if known < 0 {
		known = len(g.shown)
	}
	for part := range partLooks {
		g.band(state.CoursePart(part), g.shown[:known], false)
		g.band(state.CoursePart(part), g.shown[known:], true)
	}
	for part := range partLooks {
		g.letter(state.CoursePart(part))
	}
	all := g.Area
	all.W = g.x(g.shown[len(g.shown)-1].Day+1) - g.X
	g.add(scene.Rect{Area: all, Stroke: stroke(scene.Ink2, 1)})
}

// nowKnown draws the days by what is known of them now, in an area of its own below the
// same hours of the days.
func (g courseBand) nowKnown(days []state.CourseDay, a scene.Area) {
	g.Area, g.shown = scene.Area{X: g.X, Y: a.Y, W: g.W, H: a.H}, days
	g.bands()
	g.now(g.Y, g.Bottom())
	for _, d := range days {
		g.hit(scene.Area{X: g.x(d.Day), Y: g.Y, W: g.column, H: g.H}, g.dayRef(d.Day), "As known now, "+d.Says())
	}
}

// dayRef is a day of the chart: a click looks at that day.
func (g courseBand) dayRef(d calendar.Day) scene.Ref {
	return scene.Ref{Kind: state.DayRef, ID: d.String(), Part: "course"}
}

// scale writes none, half and all at the left.
func (g courseBand) scale() {
	for _, k := range []float64{0, 0.5, 1} {
		y := g.y(k)
		g.rule(g.X-4, y, g.X, y, scene.Ink2)
		g.right(g.X-6, min(max(y+4, g.Y+8), g.Bottom()), strconv.Itoa(int(100*k)), ink2(12))
	}
}

// under is how much lies below a part on a day.
func under(parts state.CourseParts, part state.CoursePart) (sum float64) {
	for i := range part {
		sum += parts[i]
	}
	return sum
}

// band draws a part as steps, a day each: solid where it is known what was done and
// seen, hatched on paper where the days have not come.
func (g courseBand) band(part state.CoursePart, days []state.CourseDay, ahead bool) {
	if !slices.ContainsFunc(days, func(d state.CourseDay) bool { return d.Shown(part) }) {
		return
	}
	n := len(days)
	points := make([]scene.Point, 4*n)
	for i, d := range days {
		low := under(d.CourseParts, part)
		y, x, end := g.y(low+d.CourseParts[part]), g.x(d.Day), g.x(d.Day+1)
		points[2*i], points[2*i+1] = at(x, y), at(end, y)
		y = g.y(low)
		points[4*n-1-2*i], points[4*n-2-2*i] = at(x, y), at(end, y)
	}
	look := partLooks[part]
	poly := scene.Poly{Points: points, Fill: look.like.Fill(), Hatch: look.hatch, Stroke: stroke(scene.Ink, 0.8)}
	if ahead {
		poly.Fill, poly.Hatch, poly.Stroke = scene.Panel, notYet(look), stroke(scene.Ink2, 0.8)
	}
	g.add(poly)
}

// notYet is the hatch of a part that is only expected: its own, or else lines that rise;
// where there is no queen the paper stays bare.
func notYet(l partLook) scene.Hatch {
	h := scene.Hatch{Role: l.like.Line(), Pitch: 5, Weight: 1.3}
	switch {
	case l.like == scene.NoQueen:
		return scene.Hatch{}
	case l.hatch.Role != scene.None:
		h.Pitch, h.Falling = l.hatch.Pitch, true
	}
	return h
}

// ahead is the first day of which nothing is known yet.
func (g courseBand) ahead() calendar.Day { return min(g.r.Day, g.s.Today()) + 1 }

// letter writes a part's letter where its band has most room.
func (g courseBand) letter(part state.CoursePart) {
	const size = 13.0
	text := partLooks[part].letter
	if g.words {
		text = part.String()
	}
	wide := int(math.Ceil((g.width(text, ink(size).bold()) + 4) / g.column))
	best, from, middle := size+2, -1, 0.0
	for i := 0; text != "" && i+wide <= len(g.shown); i++ {
		if d := g.shown[i].Day; d < g.ahead() && d+calendar.Day(wide) >= g.ahead() {
			continue // it would lie on the line of now
		}
		low, high := 0.0, 1.0
		for _, d := range g.shown[i : i+wide] {
			u := under(d.CourseParts, part)
			low, high = max(low, u), min(high, u+d.CourseParts[part])
		}
		if room := (high - low) * g.H; room > best+0.5 {
			best, from, middle = room, i, (low+high)/2
		}
	}
	if from < 0 {
		return
	}
	d, look := g.shown[from].Day, partLooks[part]
	f, plate := ink(size).bold(), scene.Panel
	if d < g.ahead() {
		f, plate = f.as(look.like.Letter()), look.like.Fill()
	}
	o := at(g.x(d)+float64(wide)*g.column/2, g.y(middle))
	if d >= g.ahead() || look.hatch.Role != scene.None {
		w := g.width(text, f) + 6
		g.rect(scene.Area{X: o.X - w/2, Y: o.Y - size*0.6, W: w, H: size * 1.2}, plate)
	}
	g.add(scene.Text{At: o, Text: text, Size: f.size, Weight: f.weight, Role: f.role, Anchor: scene.Centre, Middle: true})
}

// now draws the day of the clock, and in the keeper's colour another that is
// looked at.
func (g courseBand) now(from, to float64) {
	line := func(d calendar.Day, role scene.Role) {
		if d < g.first || d > g.c.Days[len(g.c.Days)-1].Day {
			return
		}
		x := g.x(d) + g.column/2
		g.add(scene.Line{From: at(x, from), To: at(x, to), Stroke: stroke(role, 2)})
	}
	line(g.s.Today(), scene.Ink)
	if g.s.Away() {
		line(g.r.Day, scene.Pen)
	}
}

// looks marks the days on which somebody looked; what it was worth stands below
// in words, and beside the pointer.
func (g courseBand) looks() {
	for _, l := range g.c.Looks {
		x := g.x(l.Day) + g.column/2
		if l.Day < g.first {
			continue
		}
		g.add(scene.Poly{Points: []scene.Point{at(x-4.5, g.Y-11), at(x+4.5, g.Y-11), at(x, g.Y-2)}, Fill: scene.Ink})
		g.hit(scene.Area{X: x - 7, Y: g.Y - bandTicks, W: 14, H: bandTicks}, g.dayRef(l.Day), l.Day.Short()+": "+l.Words)
	}
}
