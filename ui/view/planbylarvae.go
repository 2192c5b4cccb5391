package view

import (
	"fmt"
	"math"

	"lidmark/domain/plan"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// sure draws how sure the wish is: a hundred such plans as dots, by larvae as bars, or
// both below each other where they have room.
func (d *planDraw) sure(a scene.Area) {
	dots, larvae := d.s.PlanSure(a)
	switch {
	case dots && larvae:
		above, below := cutFoot(a, math.Max(larvaeTall, a.H*larvaeShare))
		d.trials(above, trialsHead)
		d.byLarvae(below, below.Right(), below.Bottom()-larvaeFoot)
	case larvae:
		to := d.turnSure(a, "how many queens")
		foot := a.Bottom() - promisesTall
		d.byLarvae(a, to, foot-larvaeFoot)
		d.promises(a.X+state.Edge, a.W-2*state.Edge, foot)
	case len(d.all.ByLarvae) > 0:
		head := trialsHead
		if d.turnSure(a, "by larvae")-a.X-state.Edge < d.width(head, ink(15).semi())+12 {
			head = "Queens, 100 trials"
		}
		d.trials(a, head)
	default:
		d.trials(a, trialsHead)
	}
}

// Sizes of the bars by larvae, dp.
const (
	larvaeTall  = 168.0 // where both are shown
	larvaeShare = 0.38
	larvaeFoot  = 30.0 // below the bars: how many larvae
)

// cutFoot parts an area above its foot, which is so high.
func cutFoot(a scene.Area, high float64) (above, foot scene.Area) {
	above, foot = a, a
	above.H -= high
	foot.Y, foot.H = above.Bottom(), high
	return above, foot
}

// trialsHead stands over a hundred such plans.
const trialsHead = "Queens, 100 times this plan"

// turnSure writes at the head of the part the word that turns it around, and gives where
// that begins.
func (d *planDraw) turnSure(a scene.Area, word string) float64 {
	f := ink(13.5).as(scene.Pen)
	x := a.Right() - 10 - d.width(word, f)
	d.link(x, a.Y+24, word, f, "by larvae", false)
	return x
}

// byLarvae draws a bar for each amount of larvae, as high as the wish is sure: green where
// that is enough. Its head stands at the top of an area, up to a place, the bars on a line.
func (d *planDraw) byLarvae(a scene.Area, to, line float64) {
	head := "How sure by larvae" + d.eachGraft()
	if f := ink(15).semi(); a.X+state.Edge+d.width(head, f) > to-12 {
		head = "How sure" + d.eachGraft()
	}
	y := d.partHead(a, head, fmt.Sprintf("of 100, in %s; click an amount to try it", plural(d.all.Nucs, "nuc", "nucs")))
	x, w := a.X+state.Edge, a.W-2*state.Edge
	const figure = 18.0 // above the bars
	bars := scene.Area{X: x, Y: y + figure, W: w / float64(len(d.all.ByLarvae)), H: line - y - figure}
	for i, n := range d.all.ByLarvae {
		column := bars
		column.X += float64(i) * bars.W
		d.larvaeBar(n, column)
	}
	d.rule(x, line, x+w, line, scene.Ink3)
	wished := line - d.all.Sure*bars.H
	d.add(scene.Line{From: at(x, wished), To: at(x+w, wished), Stroke: stroke(scene.Pen, 1.6)})
	d.wishedWord(bars)
	for i, n := range d.all.ByLarvae {
		d.larvaeFigures(n, bars.X+(float64(i)+0.5)*bars.W, bars.Y-5, line+16)
	}
}

// eachGraft is said where an amount is that of each of several grafts.
func (d *planDraw) eachGraft() string {
	if d.several() {
		return ", each graft"
	}
	return ""
}

// larvaeBar draws one amount in its column, that which is grafted as chosen.
func (d *planDraw) larvaeBar(n plan.ByLarvae, a scene.Area) {
	ref := state.LarvaeOf(n.Larvae)
	box := scene.Rect{
		Area: scene.Area{X: a.X + 0.5, Y: a.Y - 19, W: a.W - 1, H: a.H + 19 + larvaeFoot - 8}, Radius: 5,
		Tag: scene.Tag{Ref: ref, Reason: d.larvaeSays(n)},
	}
	switch {
	case n.Grafted:
		box.Fill, box.Stroke = scene.PenTint, stroke(scene.Pen, 1.5)
	case d.hovers(ref):
		box.Fill = scene.Sunk
	}
	d.add(box)
	fill := scene.Bar
	if n.Enough {
		fill = scene.Good
	}
	high, wide := max(1, n.Chance*a.H), min(22, a.W*0.6)
	d.rect(scene.Area{X: a.X + (a.W-wide)/2, Y: a.Bottom() - high, W: wide, H: high}, fill)
}

// larvaeSays is an amount in one line.
func (d *planDraw) larvaeSays(n plan.ByLarvae) string {
	says := fmt.Sprintf("%s%s, %s get a cell: %s", plural(n.Larvae, "larva", "larvae"), d.eachGraft(), plural(n.Nucs, "nuc", "nucs"), plan.OfHundred(n.Chance))
	switch {
	case n.Fewest:
		return says + "; no fewer are as sure as you wish"
	case n.Grafted:
		return says + ", as it stands"
	default:
		return says
	}
}

// larvaeFigures writes the chance of an amount above its bar, and how many larvae below.
func (d *planDraw) larvaeFigures(n plan.ByLarvae, x, above, below float64) {
	f, g := ink(12.5), ink2(12.5)
	if n.Grafted {
		f, g = f.semi(), ink(13).semi()
	}
	d.centre(x, above, chanceFigure(n.Chance), f)
	d.centre(x, below, fmt.Sprint(n.Larvae), g)
}

// chanceFigure is a chance of a hundred as a figure over a bar.
func chanceFigure(chance float64) string {
	n := int(100*chance + 0.5)
	if n == 0 {
		return "<1"
	}
	return fmt.Sprint(min(n, 99))
}

// wishedWord says what the line of the wish is, below it where the first bars are low
// enough; in the place of the first one.
func (d *planDraw) wishedWord(a scene.Area) {
	const high = 18.0
	f := ink(12.5).semi().as(scene.Pen)
	says := fmt.Sprintf("%.0f wished", 100*d.all.Sure)
	columns := int(math.Ceil((d.width(says, f) + 4) / a.W))
	for _, n := range d.all.ByLarvae[:min(columns, len(d.all.ByLarvae))] {
		if (d.all.Sure-n.Chance)*a.H < high || n.Grafted {
			return
		}
	}
	d.text(a.X, a.Bottom()-d.all.Sure*a.H+14, says, f)
}
