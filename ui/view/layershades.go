package view

import (
	"lidmark/domain/strength"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// shade is a step of a layer: a lid that looks so, and what it means.
type shade struct {
	lid  scene.Lid
	word string
}

// shades names the steps of a layer up to a right edge: with words before them
// where there is room, with short ones where there is none for the long.
func (g *ground) shades(x, y, to float64, of layerSteps) {
	const swatch = 22.0
	f, lead, steps := ink2(12), of.lead, of.steps
	words := make([]string, len(steps))
	need := 0.0
	for i, s := range steps {
		words[i] = s.word
		need += swatch + g.width(s.word, f) + 12
	}
	if need+g.width(lead, f)+10 <= to-x {
		x = g.text(to-need-g.width(lead, f)-10, y, lead, f) + 10
	} else if need > to-x {
		words = of.short
	}
	for i, s := range steps {
		if x+swatch+g.width(words[i], f) > to {
			return
		}
		l := s.lid
		l.At, l.Size, l.Entrance, l.NoRim, l.Blank = at(x+8, y-4), max(16, l.Size), 180, true, true
		g.add(l)
		x = g.text(x+swatch-2, y, words[i], f) + 12
	}
}

// robbingShades are the fills of the layer of robbers by their level.
var robbingShades = [...]scene.Role{strength.Quiet: scene.Paper, strength.Watch: scene.BarLight, strength.ActNow: scene.Bar}

// robbingLook is the fill of a nuc in the layer of robbers: one to act on now
// stands out.
func (g *ground) robbingLook(n *state.Nuc) scene.Role {
	level := n.Robbing().Level
	if level == strength.ActNow && !g.s.Away() {
		_, tint := g.alarm()
		return tint
	}
	return robbingShades[level]
}
