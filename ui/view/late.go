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
	lateNames = 200.0 // the names of the curves
	lateTwo   = 700.0 // a strip narrower has two lines
	lateLow   = 560.0 // a card lower than this has one row of buttons
	lateHigh  = 700.0 // and one as high as this a line below its title
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
	g := d.wayPlaces(a)
	y := a.Y + 26
	from := d.right(g.kept, y, fmt.Sprintf("kept of %d", d.Cells), ink2(13))
	title := "Ways out, the best first"
	if g.x+d.width(title, ink(14).semi()) > from-8 {
		title = "Ways out"
	}
	d.text(g.x, y, title, ink(14).semi())
	taken := "accepted by nucs in the end"
	if g.bar.X+d.width(taken, ink2(13)) > g.work-70 {
		taken = "accepted"
	}
	d.fit(g.bar.X, y, taken, ink2(13), g.work-70)
	d.right(g.work, y, "min now", ink2(13))
	if g.costs > 0 {
		d.text(g.costs, y, "what it costs", ink2(13))
	}
	y += 10
	for i, w := range d.Ways {
		d.way(i, w, scene.Area{X: a.X, Y: y, W: a.W, H: state.LateRow}, g)
		y += state.LateRow
	}
}

// wayPlaces are where the columns of the ways out lie.
type wayPlaces struct {
	x, kept, work float64
	bar           scene.Area
	costs, to     float64 // costs: 0 where it has no room
}

func (d lateDraw) wayPlaces(a scene.Area) wayPlaces {
	const costs, least = 200.0, 1000.0
	g := wayPlaces{x: a.X + state.Edge, to: a.Right() - state.Edge}
	g.work = g.to
	if a.W >= least {
		g.costs = g.to - costs
		g.work = g.costs - 24
	}
	g.kept = g.x + max(210, min(430, (g.work-a.X)*0.42))
	g.bar = scene.Area{X: g.kept + 44, W: max(50, g.work-g.kept-200)}
	return g
}

// way draws one way out in a row.
func (d lateDraw) way(i int, w bee.WayOut, row scene.Area, g wayPlaces) {
	middle := row.Y + row.H/2
	tone, f := scene.Bar, ink(14).medium()
	switch {
	case i == 0:
		d.add(scene.Rect{Area: scene.Area{X: row.X + 8, Y: row.Y + 1, W: row.W - 16, H: row.H - 2}, Radius: 5, Fill: scene.PenTint, Stroke: stroke(scene.Pen, 1.5)})
		tone, f = scene.Good, ink(14).semi()
	case w.Way == bee.Wait:
		tone = scene.Act
	default:
		d.rule(g.x, row.Bottom(), g.to, row.Bottom(), scene.Hair)
	}
	d.text(g.x, middle+5, letter(i), ink(15).bold())
	from := d.right(g.kept, middle+5, d.Kept[i].String(), ink(15).semi())
	d.fit(g.x+24, middle-1, sentence(w.Way.String()), f, from-10)
	d.fit(g.x+24, middle+15, wayNote(w, d.Kept[i]), ink2(13), from-10)
	d.takenBar(d.Taken[i], g.bar, middle, tone)
	d.right(g.work, middle+5, fmt.Sprintf("%.0f", w.Work.Minutes()), ink(14))
	if g.costs > 0 {
		d.fit(g.costs, middle+5, d.cost(i, w), ink2(13), g.to)
	}
}

// takenBar draws from how many to how many are accepted: a bar on a hairline that
// leads to it.
func (d lateDraw) takenBar(n state.Span, bar scene.Area, middle float64, tone scene.Role) {
	const least = 10.0
	k := bar.W / float64(max(d.Cells, 1))
	low, high := bar.X+k*n.Low, bar.X+k*n.High
	if high-low < least {
		low = max(bar.X, (low+high-least)/2)
		high = low + least
	}
	d.rule(bar.X, middle, low, middle, scene.Hair)
	d.add(scene.Rect{Area: scene.Area{X: low, Y: middle - 6, W: high - low, H: 12}, Radius: 2, Fill: tone})
	d.text(high+10, middle+5, n.String(), ink(14).semi())
}

// cost says what a way out costs besides its minutes.
func (d lateDraw) cost(i int, w bee.WayOut) string {
	n := float64(d.Cells)
	switch w.Way {
	case bee.Wait:
		return state.Span{Low: n - d.Kept[i].High, High: n - d.Kept[i].Low}.String() + " cells"
	case bee.Cool:
		return "rests on a single study"
	case bee.Place:
		return fmt.Sprintf("the risk of the %d left", w.Left)
	case bee.Cage:
		return "virgins are accepted less"
	default:
		return plural(w.Caged, "cage", "cages") + ", each for one cell"
	}
}

// letter names a way out, A for the best.
func letter(i int) string { return string(rune('A' + i)) }

// wayNote says how the cells are parted.
func wayNote(w bee.WayOut, kept state.Span) string {
	switch {
	case w.LastResort:
		return "last resort, rests on a single study"
	case w.Placed > 0 && w.Caged > 0:
		return fmt.Sprintf("%d placed, %d caged", w.Placed, w.Caged)
	case w.Placed > 0:
		return fmt.Sprintf("%d placed, %d left together", w.Placed, w.Left)
	case w.Caged > 0:
		return fmt.Sprintf("%d caged; virgins are accepted less than cells", w.Caged)
	}
	n := float64(w.Left)
	return state.Span{Low: n - kept.High, High: n - kept.Low}.String() + " destroyed until then"
}

// triage draws what to do once a virgin has walked, which scrolls, and below it
// the counts so far and the buttons, which stay.
func (d lateDraw) triage(a scene.Area, late bool) {
	d.rect(a, scene.Panel)
	x, w := a.X+state.Edge, a.W-2*state.Edge
	offset, most := d.triageScroll()
	body := d.triageBody()
	d.clipped(body, scene.Tag{}, func() { d.triageSteps(body.Y - offset) })
	d.scrollBar(body, offset, body.H+most)
	y := body.Bottom()
	if late {
		d.countBoxes(x, y+26, w)
	}
	y += triageCounts
	d.rule(x, y, x+w, y, scene.Hair)
	end := d.mainWay(x, y+12)
	d.button(end+8, y+12, "A virgin walked", "virgin walked", false)
	if a.H < lateLow {
		return
	}
	end = d.button(x, y+54, "Cage cells", "cage cells", false)
	end = d.button(end+8, y+54, "Print", "print batch", false)
	d.button(end+8, y+54, "Back", "give back", false)
}

// triageCounts is how high the counts are, dp.
const triageCounts = 96.0

// triageBody is where the steps stand: above the counts and the buttons.
func (p *sheet) triageBody() scene.Area {
	a, foot := p.l.Card, triageCounts+98
	if a.H < lateLow {
		foot = triageCounts + 54
	}
	a.X, a.W = a.X+1, a.W-1
	a.H = max(0, a.H-foot)
	return a
}

// triageScroll is how far the steps are scrolled, and can be.
func (p *sheet) triageScroll() (offset, most float64) {
	late, _ := p.s.FilledLate()
	alone, body := *p, p.triageBody()
	alone.marks = nil
	end := lateDraw{sheet: &alone, Late: late}.triageSteps(body.Y)
	most = max(0, end-body.Bottom())
	return min(p.s.Scroll[state.CardPlace], most), most
}

// triageSteps draws the steps from y on, none of them cut, and gives where they
// end.
func (d lateDraw) triageSteps(y float64) float64 {
	x, w := d.l.Card.X+state.Edge, d.l.Card.W-2*state.Edge
	title := "If the first virgin has walked"
	if d.Walking {
		title = "A virgin has walked"
	}
	d.text(x, y+32, title, ink(17).semi())
	y += 48
	if d.l.Card.H >= lateHigh {
		d.text(x, y+6, "then in this order, within the hour", ink2(14))
		y += 24
	}
	for i, step := range bee.Triage() {
		d.text(x, y+20, fmt.Sprint(i+1), ink(20))
		top := d.wrap(x+28, y+14, sentence(step.Seen), ink(14).semi(), w-28, 3)
		y = d.wrap(x+28, top, step.Means+": "+step.Do, ink2(13), w-28, 5) - 4
		d.rule(x, y, x+w, y, scene.Hair)
		y += 4
	}
	return y
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
		word := c.Word
		if d.width(word, ink2(13)) > step-6 && c.Word == state.CulledLost {
			word = "gone"
		}
		d.centre(box.Centre().X, box.Y+52, word, ink2(13))
	}
}
