package view

import (
	"math"
	"slices"
	"strconv"
	"unicode/utf8"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// layers writes the map's layers up to x, or only the one shown, which opens the
// list of all, where they have no room from there on; it gives where they begin.
func (p *sheet) layers(x, y, from float64) float64 {
	if p.l.Window.W < fewLayers || p.layersWidth() > x-from {
		return p.layerChoice(x, y)
	}
	for _, l := range slices.Backward(state.MapLayers) {
		f := ink2(13)
		on := p.s.Layer == l.Layer
		if on {
			f = f.semi()
		}
		left := x - p.width(l.Word, f)
		p.link(left, y, l.Word, ink2(13), l.Command, on)
		x = left - layersApart
	}
	return x
}

// layersWidth is how wide all layers are side by side.
func (p *sheet) layersWidth() (w float64) {
	for _, l := range state.MapLayers {
		w += p.width(l.Word, ink2(13).semi()) + layersApart
	}
	return w
}

const (
	layersApart = 16.0
	// fewLayers is the width of the window, dp, below which the layers of the map
	// are in one list.
	fewLayers = 1440.0
)

// layerChoice writes the layer shown, which opens the list of layers.
func (p *sheet) layerChoice(x, y float64) float64 {
	p.add(scene.Poly{Points: []scene.Point{at(x-9, y-8), at(x, y-8), at(x-4.5, y-2)}, Fill: scene.Ink2})
	from := p.right(x-15, y, p.layerWord(), ink(13).semi())
	p.command(target(scene.Area{X: from - 6, Y: y - 14, W: x - from + 12, H: 20}), "layers")
	return from - 16
}

// layerWord names the layer of the map.
func (p *sheet) layerWord() string {
	i := slices.IndexFunc(state.MapLayers, func(l state.MapLayer) bool { return l.Layer == p.s.Layer })
	return state.MapLayers[i].Word
}

// choiceWidth is how wide the list of layers is while it is closed.
func (p *sheet) choiceWidth() float64 { return 15 + p.width(p.layerWord(), ink(13).semi()) + 16 }

// layered makes a lid what the layer shows of its nuc.
func (g *ground) layered(n *state.Nuc, l *scene.Lid) {
	switch g.s.Layer {
	case state.ByBatch:
		l.Blank = true
	case state.ByDue:
		l.NeedsYou, l.Paint, l.Caught, l.Blank, l.Condition = false, scene.NoPaint, false, true, scene.Empty
		if n.Due != nil {
			l.Wash, _ = g.dueLook(n)
		}
	case state.BySureness:
		l.Blank, l.NeedsYou, l.Paint, l.Timed = true, false, scene.NoPaint, false
	case state.ByRobbing:
		l.NeedsYou, l.Paint = false, scene.NoPaint
		if l.Condition != scene.Empty {
			l.Blank, l.Condition, l.Caught, l.Timed = true, scene.Empty, false, false
			l.Wash = g.robbingLook(n)
		}
	case state.ByStrength:
		l.Weak, l.Robbing, l.NeedsYou, l.Paint = n.Weak(), n.Robbers(), false, scene.NoPaint
		if l.Condition != scene.Empty {
			l.Blank, l.Condition, l.Wash, l.Caught, l.Timed = true, scene.Empty, strengthLook(n).fill, false, false
		}
	}
}

// figureLid is the least lid that carries a figure, dp.
const figureLid = 18.0

// layerFigure writes on a lid what its layer says in figures: its batch, the days
// to what is due, the sides with bees.
func (g *ground) layerFigure(n *state.Nuc, l *scene.Lid) {
	if l.Size < figureLid || l.Faded {
		return
	}
	g.figures = true
	text, role, plate := "", scene.Ink, false
	if l.Seen {
		role = l.Condition.Letter()
	}
	switch {
	case g.s.Layer == state.ByBatch && !n.Holds.Batch.IsZero():
		text = strconv.Itoa(g.r.View.Batch(n.Holds.Batch).Number)
	case g.s.Layer == state.ByDue && n.Due != nil:
		text = minus(n.Days())
		_, role = g.dueLook(n)
	case g.s.Layer == state.BySureness && n.Sureness().Known:
		text, plate = strconv.Itoa(int(math.Round(100*n.Sureness().Chance))), !l.Seen && l.Condition != scene.Empty
	case g.s.Layer == state.ByStrength && l.Blank && n.Bees.Said():
		text, role = figure(n.Bees.Value), strengthLook(n).figure
	default:
		return
	}
	size := l.Size * 0.46
	if utf8.RuneCountInString(text) > 2 {
		size = l.Size * 0.42
	}
	if plate {
		w := g.width(text, font{size, scene.Bold, role}) + size*0.24
		g.rect(scene.Area{X: l.At.X - w/2, Y: l.At.Y - size*0.52, W: w, H: size * 1.04}, scene.Paper)
	}
	g.add(scene.Text{At: l.At, Text: text, Size: size, Weight: scene.Bold, Anchor: scene.Centre, Middle: true, Role: role})
}

// strengthShade is how strong a nuc looks in the layer of strength.
type strengthShade struct {
	fill, figure scene.Role
	word         string
}

// strengthShades are the steps of the layer of strength by the share of its sides
// of comb that bees were last seen on: none seen, under a half, under three
// quarters, more.
var strengthShades = [...]strengthShade{
	{scene.None, scene.Ink2, "not seen"},
	{scene.Paper, scene.Ink, "under half"},
	{scene.BarLight, scene.Ink, "half and more"},
	{scene.Bar, scene.Black, "three quarters and more"},
}

// strengthLook is the step of a nuc.
func strengthLook(n *state.Nuc) strengthShade {
	switch share := n.Bees.Value / float64(max(n.NucNamed.Sides, 1)); {
	case !n.Bees.Said():
		return strengthShades[0]
	case share < 0.5:
		return strengthShades[1]
	case share < 0.75:
		return strengthShades[2]
	default:
		return strengthShades[3]
	}
}

// layerLegend says what the map shows, from x on no further than to, as much as
// there is room for.
func (g *ground) layerLegend(x, y, to float64) {
	switch g.s.Layer {
	case state.ByDue:
		g.legendWords(x, y, to, g.figureWord("days left, − past due"), "rim: time used")
	case state.ByBatch:
		g.legendWords(x, y, to, g.figureWord("number of the batch"), "colour: condition")
	case state.BySureness:
		g.shades(x, y, to, surenessSteps())
	case state.ByRobbing:
		g.shades(x, y, to, g.robbingSteps())
	case state.ByStrength:
		g.shades(x, y, to, strengthSteps())
	default:
		g.conditionLegend(x, y, to)
	}
}

// dueLook is how a nuc with work looks in the layer of what is due: that which is
// past due stands out.
func (g *ground) dueLook(n *state.Nuc) (fill, figure scene.Role) {
	if n.PastDue() > 0 {
		tone, tint := g.alarm()
		return tint, tone
	}
	return scene.Paper, scene.Ink
}

// figureWord says what the figures on lids are, or how to see them.
func (g *ground) figureWord(word string) string {
	if g.figures {
		return "figure: " + word
	}
	return "zoom in to see figures"
}

// conditionLegend says what the lids beside the map do not.
func (g *ground) conditionLegend(x, y, to float64) {
	words := g.largerWords()
	if g.hollow {
		words = append([]string{"hollow: " + g.s.UnseenWord()}, words...)
	}
	g.legendWords(x, y, to, words...)
}

// legendWords writes as many of the words as fit, up to to.
func (g *ground) legendWords(x, y, to float64, words ...string) {
	all := ""
	for _, w := range words {
		if all != "" {
			w = all + "; " + w
		}
		if g.width(w, ink2(12)) > to-x {
			break
		}
		all = w
	}
	g.right(to, y, all, ink2(12))
}
