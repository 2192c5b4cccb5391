package view

import (
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

const panelFootHigh = 146.0

func (d *layingDraw) panelBody() scene.Area {
	a := d.Panel
	a.X, a.W, a.H = a.X+1, a.W-1, max(0, a.H-panelFootHigh)
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

// panelParts writes the parts from y on and gives where they end.
func (d *layingDraw) panelParts(y float64) float64 {
	x, w := d.Panel.X+state.Edge, d.Panel.W-2*state.Edge
	for i, part := range d.s.LayoutParts() {
		switch {
		case i == 0:
			d.fit(x, y+32, part.Title, ink(16).semi(), x+w)
			y += 60
		case part.Alarm:
			tone, _ := d.alarm()
			d.fit(x, y, part.Title, ink(14).semi().as(tone), x+w)
			y += 20
		default:
			d.fit(x, y, part.Title, ink(14).semi(), x+w)
			y += 20
		}
		for _, line := range part.Lines {
			y = d.wrap(x, y, line, ink2(13.5), w, 9)
		}
		if part.Ruled {
			y += 4
			d.rule(x, y-8, x+w, y-8, scene.Hair)
		}
		y += 12
	}
	return y
}

// panelFoot draws what is done with the try-out.
func (d *layingDraw) panelFoot(y float64) {
	x, w := d.Panel.X+state.Edge, d.Panel.W-2*state.Edge
	d.rule(x, y, x+w, y, scene.Hair)
	d.button(x, y+12, d.s.LayoutPlanWord(), "plan layout", true)
	end := d.button(x, y+54, "Keep", "keep layout", false)
	d.button(end+8, y+54, "Throw away", "drop layout", false)
}
