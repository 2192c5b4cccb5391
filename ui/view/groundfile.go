package view

import (
	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// broughtParts writes what a file has of a ground, before it is kept, and what its lines
// and points are that do not say it.
func (d *layingDraw) broughtParts(g *state.GroundBrought, x, y, w float64) float64 {
	d.fit(x, y+16, "From "+g.Name, ink(16).semi().as(scene.Pen), x+w)
	y += 40
	if g.Wrong != "" {
		y = d.wrap(x, y, sentence(g.Wrong), ink(14).as(scene.Act), w, whole) + 6
	} else {
		y = d.wrap(x, y, "Nothing is written yet. The map shows it in dashes.", ink2(13.5), w, 3) + 4
	}
	for _, l := range g.Lines {
		y = d.wrap(x, y, "• "+l, ink(13.5), w, 3)
	}
	lines, points := state.GroundMeanings()
	y = d.meanings(x, y+10, w, "Lines that say nothing are", lines)
	y = d.meanings(x, y, w, "Points that say nothing are", points) + 4
	for i, name := range g.Buttons {
		c, _ := state.CommandNamed(name)
		x = d.button(x, y, c.Word, name, i == 0) + 8
	}
	return y + 52
}

// meanings writes what something may be as words, that which it is underlined.
func (d *layingDraw) meanings(x, y, w float64, head string, commands []string) float64 {
	d.fit(x, y+4, head, ink2(13), x+w)
	y += 26
	at := x
	for _, name := range commands {
		c, _ := state.CommandNamed(name)
		wide := d.width(c.Word, ink2(14).medium())
		if at > x && at+wide > x+w {
			at, y = x, y+26
		}
		at = d.link(at, y, c.Word, ink2(14), name, d.s.GroundMeant(name)) + 14
	}
	return y + 24
}

// brought draws what a file has of a ground, before it is kept.
func (m *layoutMap) brought() {
	g := m.s.GroundBrought()
	if g == nil {
		return
	}
	for _, fact := range g.Facts {
		switch f := fact.(type) {
		case book.FeatureDrawn:
			points := m.points(f)
			if len(points) == 1 {
				m.add(scene.Circle{At: points[0], Radius: max(5, m.camera.Length(f.Width)/2), Stroke: penDash(2)})
				continue
			}
			m.add(scene.Poly{Points: points, Open: true, Stroke: penDash(2)})
		case book.StandSet:
			p := m.camera.Screen(state.OnGround(f.At))
			m.add(scene.Circle{At: p, Radius: 9, Fill: scene.Panel, Stroke: stroke(scene.Pen, 1.6)})
			m.centre(p.X, p.Y+4.5, f.Letter, ink(12).semi().as(scene.Pen))
		}
	}
}
