package view

import (
	"fmt"
	"slices"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// layingDraw is a layout that is worked at being drawn.
type layingDraw struct {
	*sheet
	is     *state.LayoutSheet
	steady steadyLetters // where the letters of its stands lie
	state.LayingAreas
}

// layoutRoom draws today's layout and the try-out side by side, what they come to, and
// what the try-out changes.
func (p *sheet) layoutRoom() {
	is := p.s.LayoutSheet()
	if is == nil {
		p.days()
		return
	}
	d := &layingDraw{sheet: p, is: is, LayingAreas: p.s.LayingAreas()}
	p.rect(p.l.Main, scene.Ground)
	if !d.Turns.Empty() {
		d.layingTurns()
	}
	d.maps()
	if !d.Figures.Empty() {
		d.figuresPane(d.Figures)
	}
	if !d.Panel.Empty() {
		d.panel()
	}
	p.days()
}

// maps draws the tools and one map or both.
func (d *layingDraw) maps() {
	if d.Try.Empty() {
		return
	}
	d.tools(d.Tools)
	if !d.Now.Empty() {
		d.todayHead(d.Now)
		d.layoutMap(d.Now, &d.is.Now, false)
	} else {
		d.lettersToday()
	}
	d.tryHead(d.Try)
	d.layoutMap(d.Try, &d.is.Try, true)
}

// lettersToday finds the sides of the letters as the map of today has them, where it has
// no room itself.
func (d *layingDraw) lettersToday() {
	unseen := *d.sheet
	unseen.marks = nil
	only := *d
	only.sheet = &unseen
	only.layoutMap(d.Try, &d.is.Now, false)
}

// layingTurns gives the turn to the maps or to what the try-out changes.
func (d *layingDraw) layingTurns() {
	a := d.Turns
	d.rect(a, scene.Ground)
	d.rule(a.X, a.Bottom()-1, a.Right(), a.Bottom()-1, scene.Hair)
	x := d.link(a.X+state.Edge, a.Y+22, "Maps", ink2(14), "part main", d.s.Part != state.SidePart) + 20
	d.link(x, a.Y+22, "What it changes", ink2(14), "part side", d.s.Part == state.SidePart)
}

// todayHead is the title over the yard as it stands, with what an arrow is.
func (d *layingDraw) todayHead(a scene.Area) {
	y := a.Y - 14
	title, idle := "Today's layout", d.is.Now.Layout.Idle()
	if idle {
		title = "Not set up yet"
	}
	x := d.text(a.X+10, y, title, ink(15).semi()) + 12
	words := plural(d.is.Now.Layout.Nucs(), "nuc", "nucs")
	if !d.is.Since.IsZero() && !idle {
		words = "since " + shortDay(d.is.Since) + ", " + words
	}
	x = d.fit(x, y, words, ink2(13), a.Right())
	d.arrowLegend(x+16, y, a.Right())
}

// arrowLegend says what an arrow is, up to a right edge, where there is room.
func (d *layingDraw) arrowLegend(from, y, to float64) {
	least, most := 1.0, 0.0
	for _, a := range slices.Concat(d.is.Now.Arrows, d.is.Try.Arrows) {
		least, most = min(least, a.Share), max(most, a.Share)
	}
	if most == 0 {
		return
	}
	short := fmt.Sprintf("drift, %.0f to %.0f %%", 100*least, 100*most)
	if one := fmt.Sprintf("drift, %.0f %%", 100*most); one == fmt.Sprintf("drift, %.0f %%", 100*least) {
		short = one
	}
	words := short + " of returning bees"
	const shaft = 26.0
	if from+shaft+8+d.width(words, ink2(13)) > to {
		words = short
	}
	x := to - d.width(words, ink2(13))
	if x-shaft-8 < from {
		return
	}
	d.text(x, y, words, ink2(13))
	d.shaft([]scene.Point{at(x-shaft-8, y-4.5), at(x-shaft/2-8, y-4.5), at(x-8, y-4.5)}, 2.4)
}

// tryHead is the title over the try-out, with what a dot is.
func (d *layingDraw) tryHead(a scene.Area) {
	y := a.Y - 14
	x := d.fit(a.X+10, y, "Try-out “"+d.s.Laying.Name+"”", ink(15).semi().as(scene.Pen), a.Right()) + 12
	x = d.fit(x, y, d.movedWords(), ink2(13), a.Right())
	if d.is.Carried == 0 {
		return
	}
	for _, word := range []string{"where it stands today", "place today", "today"} {
		if left := a.Right() - d.width(word, ink2(13)); left-14 > x+12 {
			d.text(left, y, word, ink2(13))
			d.add(scene.Circle{At: at(left-9, y-4.5), Radius: 3.2, Fill: scene.Pen})
			return
		}
	}
}

// movedWords say how many nucs stand otherwise.
func (d *layingDraw) movedWords() string {
	switch {
	case d.is.Carried > 0:
		return plural(d.is.Carried, "nuc", "nucs") + " moved"
	case d.is.SetUp > 0:
		return plural(d.is.SetUp, "nuc", "nucs") + " to set up"
	case d.is.Fronts > 0:
		return plural(d.is.Fronts, "front", "fronts") + " marked"
	case len(d.is.Changes) > 0:
		return plural(len(d.is.Changes), "stand", "stands") + " more"
	}
	if len(d.is.Try.Layout.Stands) == 0 {
		return ""
	}
	return "as it stands: drag a stand"
}
