package view

import (
	"fmt"
	"strings"

	"lidmark/domain/rules"
	"lidmark/ui/scene"
)

// Measures of the kit, dp: from its head to the first line, and from line to line.
const (
	kitHead = 28.0
	kitLine = 27.0
	kitLow  = 22.0 // where all lines have room only so
	kitRow  = 20.0 // of several things, where not even so
	kitGap  = 14.0 // between two of them
)

// kit draws what to pack, a line each: closer together where all of it has room only so,
// and where not even so several things in a row, without their notes.
func (p *sheet) kit(all []rules.KitLine, a scene.Area) {
	room := a.H - kitHead - 6
	if len(all) == 0 || room < 0 {
		return
	}
	p.text(a.X, a.Y, "Kit to pack", ink(16).semi())
	body := scene.Area{X: a.X, Y: a.Y + kitHead, W: a.W, H: room}
	if kitLow*float64(len(all)-1) > room {
		p.kitRows(all, body)
		return
	}
	wide := 42.0
	for _, k := range all {
		wide = max(wide, p.width(kitAmount(k), ink(16).semi()))
	}
	y, line := body.Y, min(kitLine, max(kitLow, room/float64(max(1, len(all)-1))))
	for _, k := range all {
		p.right(a.X+wide, y, kitAmount(k), ink(16).semi())
		x := p.fit(a.X+wide+12, y, k.Goods, ink(14), a.Right())
		if a.Right()-x > 40 {
			p.fit(x+8, y, k.Note, ink2(13), a.Right())
		}
		p.rule(a.X, y+6, a.Right(), y+6, scene.Hair)
		y += line
	}
}

// kitAmount is how much of it to pack.
func kitAmount(k rules.KitLine) string { return strings.TrimSpace(figure(k.Amount) + " " + k.Unit) }

// kitRows draws several things to pack in a row, as many rows as there is room for; what
// has none is counted. Beside the pointer all stand with their notes.
func (p *sheet) kitRows(all []rules.KitLine, a scene.Area) {
	amount, goods := ink(14).semi(), ink(13)
	x, y, said := a.X, a.Y, make([]string, len(all))
	for i, k := range all {
		said[i] = strings.TrimSpace(kitAmount(k) + " " + k.Goods + " " + k.Note)
	}
	for i, k := range all {
		wide := p.width(kitAmount(k), amount) + 4 + p.width(k.Goods, goods)
		more := fmt.Sprintf("and %d more", len(all)-i)
		last, next := y+kitRow > a.Bottom(), a.Right()
		if last && i < len(all)-1 {
			next -= kitGap + p.width(more, ink2(13))
		}
		if x > a.X && x+wide > next {
			if last {
				p.fit(x, y, more, ink2(13), a.Right())
				break
			}
			x, y = a.X, y+kitRow
		}
		x = p.text(x, y, kitAmount(k), amount) + 4
		x = p.fit(x, y, k.Goods, goods, a.Right()) + kitGap
	}
	p.hit(scene.Area{X: a.X, Y: a.Y - 14, W: a.W, H: max(leastTarget, y-a.Y+kitRow)}, scene.Ref{Kind: kitRef}, "kit  "+strings.Join(said, ", "))
}

// kitRef is the kind of a reference to the kit that stands close.
const kitRef = "kit"
