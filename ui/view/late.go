package view

import (
	"fmt"
	"time"

	"lidmark/domain/bee"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// lateDraw is the late day being drawn.
type lateDraw struct {
	*sheet
	state.Late
	zone *time.Location
}

// Measures of the late day, dp.
const (
	lateWhy   = 260.0 // the words beside the curves
	lateNames = 190.0 // the names of the curves
	lateTwo   = 700.0 // a strip narrower has two lines
	lateLow   = 560.0 // a card lower than this says each step in two lines
)

// late draws the late day: what is lost by the hour, the ways out side by side,
// and what to do once a virgin has walked.
func (p *sheet) late() {
	l, ok := p.s.FilledLate()
	d := lateDraw{sheet: p, Late: l, zone: p.s.Reading().View.Zone()}
	a := p.l.Main
	p.rect(a, scene.Panel)
	if !ok {
		p.wrap(a.X+state.Edge, a.Y+48, "The cells of this batch are together no more, or their hard hour is far. Esc gives the room back.", ink(15), a.W-2*state.Edge, 3)
	} else {
		head, rest := scene.Area{X: a.X, Y: a.Y, W: a.W, H: state.LateHead}, scene.Area{X: a.X, Y: a.Y + state.LateHead, W: a.W, H: a.H - state.LateHead}
		d.strip(head)
		d.scrolling(rest)
	}
	switch {
	case p.s.Form != nil:
		p.card()
	case !p.l.Card.Empty():
		p.clipped(p.l.Card, scene.Tag{Ref: scene.Ref{Kind: "card"}}, func() { d.triage(p.l.Card, ok) })
		p.rule(p.l.Card.X, p.l.Card.Y, p.l.Card.X, p.l.Card.Bottom(), scene.Rule)
	}
	p.days()
}

// strip says how late it is.
func (d lateDraw) strip(a scene.Area) {
	tone, tint := d.alarm()
	d.rect(a, tint)
	d.rect(scene.Area{X: a.X, Y: a.Y, W: 6, H: a.H}, tone)
	said := fmt.Sprintf("It is %s and %s of batch %d are together", d.Now.In(d.zone).Format("15:04"), plural(d.Cells, "cell", "cells"), d.Number)
	y, two := a.Y+28, a.W < lateTwo
	if two {
		y = a.Y + 19
	}
	x := d.fit(a.X+state.Edge, y, said, ink(16).bold().as(tone), a.Right()-state.Edge)
	hard := "hard by "
	if d.Hard.Before(d.Now) {
		hard = "the hard hour was "
	}
	more := fmt.Sprintf("%s%s, half out by %s. %s.", hard, weekdayHour(d.Hard, d.zone), weekdayHour(d.Middle, d.zone), readyWords(d.Fit))
	if two {
		d.fit(a.X+state.Edge, y+18, more, ink(13), a.Right()-state.Edge)
		return
	}
	d.fit(x+16, y, more, ink(14), a.Right()-state.Edge)
}

// readyWords says how many nucs take a cell now.
func readyWords(n int) string {
	switch n {
	case 0:
		return "No nuc is ready for a cell"
	case 1:
		return "1 nuc is ready for a cell"
	default:
		return thousands(n) + " nucs are ready for a cell"
	}
}

// scrolling draws curves and ways, which scroll where the room is low.
func (d lateDraw) scrolling(a scene.Area) {
	all, _ := d.s.FillHeight(d.l)
	offset := d.s.FillOffset(d.l)
	d.clipped(a, scene.Tag{}, func() {
		y := a.Y - offset
		d.curves(scene.Area{X: a.X, Y: y, W: a.W, H: state.LateChart})
		d.ways(scene.Area{X: a.X, Y: y + state.LateChart, W: a.W, H: all - state.LateChart})
	})
	d.scrollBar(a, offset, all)
}

// ways draws the ways out, the best first.
func (d lateDraw) ways(a scene.Area) {
	d.rule(a.X, a.Y, a.Right(), a.Y, scene.Rule)
	x, to := a.X+state.Edge, a.Right()-state.Edge
	kept := x + max(200, min(430, a.W*0.42))
	work := to
	bar := scene.Area{X: kept + 44, W: max(60, work-kept-190)}
	y := a.Y + 26
	from := d.right(kept, y, fmt.Sprintf("kept of %d", d.Cells), ink2(13))
	title := "Ways out, the best first"
	if x+d.width(title, ink(14).semi()) > from-8 {
		title = "Ways out"
	}
	d.text(x, y, title, ink(14).semi())
	taken := "taken in by nucs in the end"
	if bar.X+d.width(taken, ink2(13)) > work-70 {
		taken = "taken in"
	}
	d.fit(bar.X, y, taken, ink2(13), work-70)
	d.right(work, y, "min now", ink2(13))
	y += 10
	for i, w := range d.Ways {
		d.way(i, w, scene.Area{X: a.X, Y: y, W: a.W, H: state.LateRow}, x, kept, work, bar)
		y += state.LateRow
	}
}

// way draws one way out in a row.
func (d lateDraw) way(i int, w bee.WayOut, row scene.Area, x, kept, work float64, bar scene.Area) {
	middle := row.Y + row.H/2
	tone, f := scene.Bar, ink(14).medium()
	switch {
	case i == 0:
		d.add(scene.Rect{Area: scene.Area{X: row.X + 8, Y: row.Y + 1, W: row.W - 16, H: row.H - 2}, Radius: 5, Fill: scene.PenTint, Stroke: stroke(scene.Pen, 1.5)})
		tone, f = scene.Good, ink(14).semi()
	case w.Way == bee.Wait:
		tone = scene.Act
	default:
		d.rule(x, row.Bottom(), work, row.Bottom(), scene.Hair)
	}
	d.text(x, middle+5, letter(i), ink(15).bold())
	end := kept - d.width("kept of 24", ink2(13)) + 20
	d.fit(x+24, middle-1, sentence(w.Way.String()), f, end)
	d.fit(x+24, middle+15, wayNote(w), ink2(13), end)
	d.right(kept, middle+5, fmt.Sprintf("%.0f", w.Kept), ink(15).semi())
	k := bar.W / float64(max(d.Cells, 1))
	d.add(scene.Rect{Area: scene.Area{X: bar.X, Y: middle - 6, W: k * w.Accepted, H: 12}, Radius: 2, Fill: tone})
	after := d.text(bar.X+k*w.Accepted+10, middle+5, fmt.Sprintf("%.0f", w.Accepted), ink(14).semi()) + 10
	if to := bar.X + bar.W; after < to {
		d.rule(after, middle, to, middle, scene.Hair)
	}
	d.right(work, middle+5, fmt.Sprintf("%.0f", w.Work.Minutes()), ink(14))
}

// letter names a way out, A for the best.
func letter(i int) string { return string(rune('A' + i)) }

// wayNote says how the cells are parted.
func wayNote(w bee.WayOut) string {
	switch {
	case w.LastResort:
		return "last resort, rests on a single study"
	case w.Placed > 0 && w.Caged > 0:
		return fmt.Sprintf("%d placed, %d caged", w.Placed, w.Caged)
	case w.Placed > 0:
		return fmt.Sprintf("%d placed, %d left together", w.Placed, w.Left)
	case w.Caged > 0:
		return fmt.Sprintf("%d caged; virgins are taken in less than cells", w.Caged)
	}
	return fmt.Sprintf("%.0f expected destroyed until then", w.Lost)
}

// triage draws what to do once a virgin has walked, the counts so far, and the
// buttons.
func (d lateDraw) triage(a scene.Area, late bool) {
	d.rect(a, scene.Panel)
	x, w, y := a.X+state.Edge, a.W-2*state.Edge, a.Y+32
	title := "If the first virgin has walked"
	if d.Walking {
		title = "A virgin has walked"
	}
	d.fit(x, y, title, ink(17).semi(), x+w)
	y += 16
	low := a.H < lateLow
	if !low {
		d.fit(x, y+6, "then in this order, within the hour", ink2(14), x+w)
		y += 24
	}
	for i, step := range bee.Triage() {
		y = d.triageStep(i, step, x, y, w, low)
	}
	bottom := a.Bottom() - 98
	if low {
		bottom = a.Bottom() - 54
	}
	if late && y+90 < bottom {
		d.countBoxes(x, y+24, w)
	}
	d.rect(scene.Area{X: a.X + 1, Y: bottom, W: a.W - 1, H: a.Bottom() - bottom}, scene.Panel)
	d.rule(x, bottom, x+w, bottom, scene.Hair)
	end := d.mainWay(x, bottom+12)
	if low {
		d.button(end+8, bottom+12, "A virgin walked", "virgin walked", false)
		return
	}
	d.button(end+8, bottom+12, "A virgin walked", "virgin walked", false)
	end = d.button(x, bottom+54, "Cage cells", "cage cells", false)
	end = d.button(end+8, bottom+54, "Print", "print batch", false)
	d.button(end+8, bottom+54, "Back", "give back", false)
}

// triageStep draws one thing to do, and gives where the next begins.
func (d lateDraw) triageStep(i int, step bee.TriageStep, x, y, w float64, low bool) float64 {
	d.text(x, y+20, fmt.Sprint(i+1), ink(20))
	said := step.Means + ": " + step.Do
	if low {
		d.fit(x+28, y+14, sentence(step.Seen), ink(14).semi(), x+w)
		d.fit(x+28, y+31, said, ink2(13), x+w)
		d.hit(scene.Area{X: x, Y: y, W: w, H: 38}, scene.Ref{Kind: "note"}, said)
		y += 38
	} else {
		top := d.wrap(x+28, y+14, sentence(step.Seen), ink(14).semi(), w-28, 2)
		y = d.wrap(x+28, top, said, ink2(13), w-28, 2) - 4
	}
	d.rule(x, y, x+w, y, scene.Hair)
	return y + 4
}

// mainWay draws the button of what comes first: cells given to the nucs that are
// ready, or where none is, each cell caged.
func (d lateDraw) mainWay(x, y float64) float64 {
	if len(d.Ready) == 0 {
		return d.button(x, y, "Cage them all", "cage cells", true)
	}
	return d.button(x, y, d.giveWord(), "give ready", true)
}

func (d lateDraw) giveWord() string {
	if n := min(len(d.Ready), d.Cells); n > 0 {
		return fmt.Sprintf("Give %s", plural(n, "cell", "cells"))
	}
	return "Give cells"
}

// countBoxes draws what became of the cells so far.
func (d lateDraw) countBoxes(x, y, w float64) {
	boxes := state.FateOf(d.s.Reading().View.Batch(d.Batch))
	all := 0
	for _, c := range boxes {
		all += c.N
	}
	d.text(x, y, fmt.Sprintf("Count as you go, of %d", all), ink(14).semi())
	step := w / float64(len(boxes))
	for i, c := range boxes {
		box := scene.Area{X: x + float64(i)*step + 1, Y: y + 10, W: step - 8, H: 34}
		d.add(scene.Rect{Area: box, Radius: 4, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1)})
		d.centre(box.Centre().X, box.Y+23, thousands(c.N), ink(16).semi())
		d.centre(box.Centre().X, box.Y+52, c.Word, ink2(13))
	}
}
