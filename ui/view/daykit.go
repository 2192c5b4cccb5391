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
	kitLow  = 22.0 // where all lines have room only so, or there is none for all
)

// kit draws what to pack, a line each: closer together where all of it has room only so,
// and where not even so, as many as there is room for and how many more there are.
func (p *sheet) kit(all []rules.KitLine, a scene.Area) {
	room := a.H - kitHead - 6
	if len(all) == 0 || room < 0 {
		return
	}
	amounts, wide := make([]string, len(all)), 42.0
	for i, k := range all {
		amounts[i] = strings.TrimSpace(figure(k.Amount) + " " + k.Unit)
		wide = max(wide, p.width(amounts[i], ink(16).semi()))
	}
	line := kitLine
	if n := float64(len(all) - 1); n*line > room {
		line = max(kitLow, room/n)
	}
	shown := len(all)
	if most := 1 + int(room/line+0.01); most < shown {
		shown = most - 1
	}
	p.text(a.X, a.Y, "Kit to pack", ink(16).semi())
	y := a.Y + kitHead
	for i, k := range all[:shown] {
		p.right(a.X+wide, y, amounts[i], ink(16).semi())
		x := p.fit(a.X+wide+12, y, k.Goods, ink(14), a.Right())
		if a.Right()-x > 40 {
			p.fit(x+8, y, k.Note, ink2(13), a.Right())
		}
		p.rule(a.X, y+6, a.Right(), y+6, scene.Hair)
		y += line
	}
	if left := all[shown:]; len(left) > 0 {
		p.kitMore(left, amounts[shown:], at(a.X, y))
	}
}

// kitMore says how many lines of the kit have no room; what they are stands beside the
// pointer, and on the sheet.
func (p *sheet) kitMore(left []rules.KitLine, amounts []string, o scene.Point) {
	said := make([]string, len(left))
	for i, k := range left {
		said[i] = amounts[i] + " " + k.Goods
	}
	end := p.text(o.X, o.Y, fmt.Sprintf("and %d more", len(left)), ink2(13))
	p.hit(target(scene.Area{X: o.X, Y: o.Y - 14, W: end - o.X, H: 20}), scene.Ref{Kind: kitRef}, "kit  "+strings.Join(said, ", "))
}

// kitRef is the kind of a reference to the kit that has no room.
const kitRef = "kit"
