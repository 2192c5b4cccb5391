package view

import (
	"fmt"

	"lidmark/domain/yard"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// panel draws what the try-out changes, which scrolls, and below it what can be done
// with it, which stays.
func (d *layingDraw) panel() {
	a := d.Panel
	d.rect(a, scene.Panel)
	if !d.l.Card.Empty() {
		d.rule(a.X, a.Y, a.X, a.Bottom(), scene.Rule)
	}
	offset, most := d.panelScroll()
	body := d.panelBody()
	d.wholeLines(body, func() { d.panelParts(body.Y - offset) })
	d.scrollBar(body, offset, body.H+most)
	d.panelFoot(body.Bottom())
}

func (d *layingDraw) panelBody() scene.Area {
	a := d.Panel
	a.X, a.W, a.H = a.X+1, a.W-1, max(0, a.H-d.panelFootHigh())
	return a
}

// panelScroll is how far the parts are scrolled, and can be.
func (d *layingDraw) panelScroll() (offset, most float64) {
	alone := *d.sheet
	alone.marks = nil
	only := *d
	only.sheet = &alone
	body := d.panelBody()
	most = max(0, only.panelParts(body.Y)-body.Bottom())
	return min(d.s.Scroll[state.CardPlace], most), most
}

// layoutScroll is how far the panel of a layout is scrolled, and can be.
func (p *sheet) layoutScroll() (offset, most float64) {
	is := p.s.LayoutSheet()
	d := &layingDraw{sheet: p, is: is, LayingAreas: p.s.LayingAreas()}
	if is == nil || d.Panel.Empty() {
		return 0, 0
	}
	return d.panelScroll()
}

// panelParts writes the parts from y on and gives where they end.
func (d *layingDraw) panelParts(y float64) float64 {
	x, w := d.Panel.X+state.Edge, d.Panel.W-2*state.Edge
	if d.s.Laying.Ground {
		y = d.groundParts(x, y+12, w)
	}
	y = d.pickedFields(x, y+8, w) + 24
	for i, part := range d.s.LayoutParts() {
		f, below := ink(14).semi(), 20.0
		switch {
		case i == 0:
			f, below = ink(16).semi(), 24
		case part.Alarm:
			tone, _ := d.alarm()
			f = f.as(tone)
		}
		d.wrap(x, y, part.Title, f, w, 2)
		y += below + float64(len(scene.Wrap(d.measure, d.say(part.Title), f.size, f.weight, w))-1)*scene.LineHeight(f.size)
		for _, line := range part.Lines {
			y = d.wrap(x, y, line, ink2(13.5), w, 12)
		}
		if part.Ruled {
			d.rule(x, y-6, x+w, y-6, scene.Hair)
			y += 6
		}
		if y += 10; i == 0 && d.Figures.Empty() {
			y = d.figureRows(x, y, w)
		}
	}
	return d.tries(x, y, w)
}

// figureRows writes the figures where they have no room below the maps.
func (d *layingDraw) figureRows(x, y, w float64) float64 {
	title := "Figures, today → try-out"
	if d.is.Full {
		title = "Figures, as if a virgin flew from each"
	}
	d.fit(x, y, title, ink(14).semi(), x+w)
	y += 21
	for _, f := range d.s.LayoutFigures() {
		values := f.Now + " → " + f.Try
		if f.Now == f.Try {
			values = f.Now
		}
		word := f.Word
		if d.width(word, ink2(13.5)) > w-8-d.width(values, ink(13.5)) {
			word = f.Short
		}
		d.fit(x, y, word, ink2(13.5), x+w-8-d.width(values, ink(13.5)))
		d.right(x+w, y, values, ink(13.5))
		y += 19
	}
	d.rule(x, y-6, x+w, y-6, scene.Hair)
	return y + 16
}

// pickedFields draws where the picked stand is and how it is turned, to be typed.
func (d *layingDraw) pickedFields(x, y, w float64) float64 {
	first, n := d.s.PickedStand()
	if n == 0 {
		return y
	}
	title := "Stand " + first.Letter
	if n > 1 {
		title = fmt.Sprintf("%d stands, the first is %s", n, first.Letter)
	}
	if first.Fixed {
		title += ", held where it is"
	}
	d.fit(x, y+16, title, ink(14).semi().as(scene.Pen), x+w)
	const gap = 10.0
	wide := (w - 2*gap) / 3
	for i, f := range []struct{ name, word, now, says string }{
		{state.LayoutEast, "east, m", fmt.Sprintf("%.1f", first.At.X), "metres to the east of the yard's origin; Enter moves"},
		{state.LayoutNorth, "north, m", fmt.Sprintf("%.1f", first.At.Y), "metres to the north of the yard's origin; Enter moves"},
		{state.LayoutTurn, "turned, °", fmt.Sprintf("%.0f", yard.Bearing(first.Turn)), "degrees clockwise from north; Enter turns"},
	} {
		left := x + float64(i)*(wide+gap)
		d.text(left, y+36, f.word, ink2(12))
		d.input(scene.Area{X: left, Y: y + 42, W: wide, H: 30}, f.name, fieldLook{size: 14, empty: f.now, reason: f.says})
	}
	y = d.facesField(x, y+82, w, n)
	d.rule(x, y, x+w, y, scene.Hair)
	return y
}

// facesField draws which way the boxes on the picked stands face, and the rows in which
// several stands are set, to be typed.
func (d *layingDraw) facesField(x, y, w float64, picked int) float64 {
	word := "entrances face"
	if !d.s.Laying.Nuc.IsZero() {
		word = "the entrance of the nuc faces"
	}
	d.text(x, y+12, word, ink2(12))
	d.link(x+w-d.width("outwards", ink(13.5)), y+12, "outwards", ink(13.5).as(scene.Pen), "face out", false)
	d.input(scene.Area{X: x, Y: y + 18, W: w, H: 30}, state.LayoutFaces, fieldLook{size: 14, empty: d.s.FacesSaid(), reason: "S, or N E W S by place, or degrees, or out; Enter turns the boxes on their places"})
	if y += 62; picked < 2 {
		return y
	}
	d.text(x, y+8, "rows × in a row, m along, m from row to row", ink2(12))
	d.input(scene.Area{X: x, Y: y + 14, W: w, H: 30}, state.LayoutRows, fieldLook{size: 14, empty: "4 × 4, 6 m, 5 m", reason: "from where the first stands, rows from north to south, each from west to east; Enter sets them so"})
	return y + 58
}

// tries draws the name of the try-out, to be typed, and the ones that were kept.
func (d *layingDraw) tries(x, y, w float64) float64 {
	end := d.text(x, y+6, "Name of the try-out", ink(14).semi())
	d.link(max(end+16, x+w-d.width("begin another", ink(13.5))), y+6, "begin another", ink(13.5).as(scene.Pen), "new layout", false)
	d.input(scene.Area{X: x, Y: y + 18, W: w, H: 30}, state.LayoutName, fieldLook{size: 14, empty: d.s.Laying.Name, reason: "what this try-out is called; Enter names it"})
	y += 60
	for _, l := range d.s.TriesLines() {
		row := scene.Area{X: x - 6, Y: y - 4, W: w + 12, H: 40}
		r := scene.Rect{Area: row, Radius: buttonRadius, Tag: scene.Tag{Ref: l.Ref, Reason: "take it up, beside the yard as it stands"}}
		if d.hovers(l.Ref) {
			r.Fill = scene.Sunk
		}
		d.add(r)
		d.fit(x, y+12, l.Name, ink(14).as(scene.Pen), x+w)
		d.fit(x, y+29, l.Says, ink2(12.5), x+w)
		y += 44
	}
	return y
}

// panelFoot draws how it can be made better, and what is done with the try-out.
func (d *layingDraw) panelFoot(y float64) {
	x, w := d.Panel.X+state.Edge, d.Panel.W-2*state.Edge
	d.rule(x, y, x+w, y, scene.Hair)
	if f := d.s.LayoutSearch(); f.Looking() {
		d.looking(f, scene.Area{X: x, Y: y + 12, W: w, H: d.panelFootHigh()})
		return
	}
	d.improve(x, y+10, w)
	y += 82
	d.rule(x, y, x+w, y, scene.Hair)
	d.button(x, y+12, d.s.LayoutPlanWord(), "plan layout", true)
	d.smallButtons(x, y+54, w)
	y += 108
	for _, why := range d.whyNot() {
		y = d.wrap(x, y, why, footWhy, w, 2)
	}
}

// improve draws what may be looked for: words that begin it, each with its key.
func (d *layingDraw) improve(x, y, w float64) {
	half := (w - 8) / 2
	d.choice(scene.Area{X: x, Y: y, W: half, H: 30}, "Turn and mark", "turn layout")
	d.choice(scene.Area{X: x + half + 8, Y: y, W: half, H: 30}, "Move stands", "move layout")
	field, more := 44.0, d.width("more boxes", ink(13.5).medium())+20
	if field+6+more > half {
		field = 40
	}
	more = max(more, half-field-6)
	too := x + field + 6 + more + 8
	d.input(scene.Area{X: x, Y: y + 36, W: field, H: 30}, state.LayoutMore, fieldLook{size: 14, empty: "12", wrong: !d.s.MoreRight(), reason: "for how many more boxes places are to be found"})
	d.choice(scene.Area{X: x + field + 6, Y: y + 36, W: more, H: 30}, "more boxes", "more boxes")
	one := "One too many"
	if d.width(one, ink(13.5).medium()) > x+w-too-18 {
		one = "Too many"
	}
	d.choice(scene.Area{X: too, Y: y + 36, W: x + w - too, H: 30}, one, "too many")
}

// choice is a small button with its key.
func (d *layingDraw) choice(a scene.Area, word, command string) {
	d.wideButton(a, "", command, false)
	c, _ := state.CommandNamed(command)
	f := ink(13.5).medium()
	if c.Reason(d.s) != "" {
		f = f.as(scene.Ink3)
	}
	key := firstKey(c.Keys)
	end := d.fit(a.X+10, a.Y+20, word, f, a.Right()-8)
	if end+6+d.width(key, ink2(12)) < a.Right()-6 {
		d.right(a.Right()-10, a.Y+20, key, ink2(12))
	}
}

// looking draws how far a search is, and what stops it.
func (d *layingDraw) looking(f *state.LayoutSearch, a scene.Area) {
	bar := scene.Area{X: a.X, Y: a.Y + 4, W: a.W, H: 5}
	d.rect(bar, scene.Sunk)
	bar.W *= float64(f.Tries) / float64(max(1, f.Of))
	d.rect(bar, scene.Pen)
	d.wrap(a.X, a.Y+30, "The best so far is on the map. Esc stops and keeps it; undo takes it back.", ink2(13), a.W, 3)
	d.button(a.X, a.Y+70, "Stop", "stop layout", true)
}
