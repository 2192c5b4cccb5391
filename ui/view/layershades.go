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
func (g *ground) shades(x, y, to float64, lead string, steps []shade, short []string) {
	const swatch = 22.0
	f := ink2(12)
	words := make([]string, len(steps))
	need := 0.0
	for i, s := range steps {
		words[i] = s.word
		need += swatch + g.width(s.word, f) + 12
	}
	if need+g.width(lead, f)+10 <= to-x {
		x = g.text(to-need-g.width(lead, f)-10, y, lead, f) + 10
	} else if need > to-x {
		words = short
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

// surenessLegend names the steps of the hatch of what nobody saw.
func (g *ground) surenessLegend(x, y, to float64) {
	var steps []shade
	for d, word := range []string{"from 90", "from 60", "under 60"} {
		steps = append(steps, shade{scene.Lid{Condition: scene.Virgin, Size: 20, Doubt: uint8(d) + 1}, word})
	}
	g.shades(x, y, to, "chance, of 100:", steps, []string{"90", "60", "less of 100"})
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

// robbingLegend names the levels.
func (g *ground) robbingLegend(x, y, to float64) {
	var steps []shade
	for level := range strength.Level(len(robbingShades)) {
		fill := robbingShades[level]
		if level == strength.ActNow {
			_, fill = g.alarm()
		}
		steps = append(steps, shade{scene.Lid{Condition: scene.Empty, Wash: fill, Robbing: level > strength.Quiet}, state.RobbingWord(level)})
	}
	g.shades(x, y, to, "robbers:", steps, []string{"quiet", "watch", "act"})
}
