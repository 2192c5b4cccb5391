package paint

import (
	"math"

	"lidmark/ui/scene"
)

// lid paints a lid: a sprite stamped on whole pixels, and its name beneath where
// it does not stand on the body.
func (g *brush) lid(l *scene.Lid) {
	at := g.camera.Screen(l.At)
	if l.Size <= 0 {
		return
	}
	g.stamp(g.painter.sprite(l, g.theme, g.scale), g.device(at))
	if label, ok := nameOf(l); ok {
		g.text(&label)
	}
}

// nameOf returns the name beneath a lid, where it has one there.
func nameOf(l *scene.Lid) (scene.Text, bool) {
	if l.Name == "" || l.Size >= scene.NameInside {
		return scene.Text{}, false
	}
	label := scene.Text{
		At: l.At, Shift: scene.Point{Y: l.Size/2 + nameBelow}, Text: l.Name, Size: nameSize,
		Weight: scene.Medium, Anchor: scene.Centre, Role: scene.Ink,
	}
	if l.Selected {
		label.Weight = scene.SemiBold
	}
	if l.Faded {
		label.Role = scene.Ink3
	}
	return label, true
}

// nameSize is the size of a name under its lid, and nameBelow how far under the
// lid's edge its baseline is, both in dp.
const (
	nameSize  = 13.0
	nameBelow = 15.0
)

// lidBrush paints the parts of one lid about the brush's origin, in dp.
type lidBrush struct {
	brush
	*scene.Lid
	body
}

// whole paints the lid, from what lies beneath it to what lies on top.
func (g *lidBrush) whole() {
	g.state()
	g.filled()
	if g.Timed && !g.NoRim && !small(g.Lid) {
		g.rim()
	}
	if !g.Blank && g.Size >= 12 {
		g.lettered()
	}
	if g.Paint != scene.NoPaint && g.Size >= scene.LidStroked {
		g.strokes()
	}
	if g.NeedsYou {
		g.corner()
	}
	if !small(g.Lid) {
		at := g.at(0.37, -0.37)
		g.front(at, max(3.2, g.Size*0.10), g.Front)
	}
	if g.Weak && g.Size >= 16 {
		g.wedge()
	}
	if g.Robbing && g.Size >= 16 {
		g.chevrons()
	}
}

// at returns the point x and y lid sizes from the centre.
func (g *lidBrush) at(x, y float64) scene.Point { return scene.Point{X: x * g.Size, Y: y * g.Size} }

// part paints a shape given in dp about the centre.
func (g *lidBrush) part(points []scene.Point, fill scene.Role, s scene.Stroke, closed bool) {
	out := g.points[:0]
	for _, p := range points {
		out = append(out, g.device(p))
	}
	g.points = out
	g.shape(out, closed, fill, scene.Hatch{}, s)
}

// solid returns a full line.
func solid(role scene.Role, width float64) scene.Stroke {
	return scene.Stroke{Role: role, Width: width + fine}
}

// fine keeps a width that comes out as exactly 1 from being taken for a hairline,
// as parts of a lid stand where they stand.
const fine = 1e-6

// state paints the square of selection or hover and the brackets of focus.
func (g *lidBrush) state() {
	frame := func(extra, radius float64, fill scene.Role, s scene.Stroke) {
		side := g.Size + extra
		m := scene.Rect{Area: scene.Around(scene.Point{}, side), Radius: g.Size*0.2 + radius, Fill: fill, Stroke: s}
		g.rect(&m)
	}
	switch {
	case g.Selected:
		frame(6, 3, scene.PenTint, solid(scene.Pen, 2.5))
	case g.Hover:
		frame(5, 2, scene.None, solid(scene.Ink2, 1.5))
	}
	if !g.Focus {
		return
	}
	out, arm := g.Size/2+7, max(5, g.Size*0.16)
	for _, c := range [4]scene.Point{{X: -1, Y: -1}, {X: 1, Y: -1}, {X: 1, Y: 1}, {X: -1, Y: 1}} {
		g.part([]scene.Point{
			{X: c.X * out, Y: c.Y * (out - arm)},
			{X: c.X * out, Y: c.Y * out},
			{X: c.X * (out - arm), Y: c.Y * out},
		}, scene.None, solid(scene.Pen, 2), false)
	}
}

// filled paints the body: fill, or hatch on paper, and the outline.
func (g *lidBrush) filled() {
	line := g.Condition.Line()
	switch {
	case g.Wash != scene.None:
		g.part(g.notched, g.Wash, solid(scene.Ink, g.outlineWidth()), true)
	case g.Condition == scene.Empty:
		width := 1.2
		if g.Size >= 60 {
			width = 1.6
		}
		g.part(g.notched, scene.None, solid(line, width), true)
	case g.Condition == scene.NoQueen:
		g.queenless()
	case g.Seen:
		g.part(g.notched, g.Condition.Fill(), solid(scene.Ink, g.outlineWidth()), true)
	case small(g.Lid):
		width := 2.2
		if g.Size < 15 {
			width = 2
		}
		g.part(g.notched, scene.Paper, solid(line, width), true)
	default:
		s := g.Size
		g.part(g.notched, scene.Paper, scene.Stroke{}, true)
		g.hatched(g.notched, 0.965, line, min(8, max(3.6, s*0.105))*g.apart(), min(3.2, max(1.3, s*0.042)))
		g.part(g.notched, scene.None, solid(scene.Ink, g.outlineWidth()), true)
	}
}

// apart is how far the lines of the hatch lie apart, in the usual distance: the
// more doubtful, the nearer.
func (g *lidBrush) apart() float64 { return [...]float64{1, 1.7, 1, 0.66}[g.Doubt&3] }

// queenless paints the body of a nuc without a queen, with the band of a nuc
// just caught.
func (g *lidBrush) queenless() {
	s := g.Size
	g.part(g.notched, scene.Paper, scene.Stroke{}, true)
	if !g.Seen && !small(g.Lid) && !g.Caught {
		g.hatched(g.notched, 1, g.Condition.Line(), s*0.15*g.apart(), max(0.8, s*0.018))
	}
	if g.Caught {
		g.band()
	}
	outline := scene.Ink
	if !g.Seen && small(g.Lid) {
		outline = scene.Ink3
	}
	g.part(g.notched, scene.None, solid(outline, g.outlineWidth()), true)
}

// band paints the foot of a nuc just caught in the colour of the brood left.
func (g *lidBrush) band() {
	foot := make([]scene.Point, len(g.notched))
	for i, p := range g.notched {
		foot[i] = scene.Point{X: p.X, Y: max(p.Y, g.half*0.40)}
	}
	if g.Seen || small(g.Lid) {
		g.part(foot, scene.GoodBrood.Fill(), scene.Stroke{}, true)
		return
	}
	g.hatched(foot, 1, scene.GoodBrood.Fill(), max(3, g.Size*0.09), max(1, g.Size*0.03))
}

// hatched paints lines across a shape shrunk about the centre.
func (g *lidBrush) hatched(shape []scene.Point, shrink float64, role scene.Role, pitch, weight float64) {
	out := g.points[:0]
	for _, p := range shape {
		out = append(out, g.device(p.Mul(shrink)))
	}
	g.points = out
	g.hatch(out, scene.Hatch{Role: role, Pitch: pitch, Weight: weight})
}

// outlineWidth returns the width of the body's outline: heavier where seen,
// heaviest for trouble.
func (g *lidBrush) outlineWidth() float64 {
	switch trouble := g.Condition.Trouble(); {
	case small(g.Lid) && trouble:
		return 1.8
	case small(g.Lid):
		return 1.2
	case trouble:
		return max(1.8, g.Size*0.05)
	case g.Seen:
		return max(1.2, g.Size*0.03)
	}
	return max(1, g.Size*0.018)
}

// rim paints the clock: a track round the lid from the entrance, clockwise, and
// on it the share of the time that is used. Past due it is closed.
func (g *lidBrush) rim() {
	half := g.Size/2 - 0.045*g.Size
	round := walk(square(half, half*0.30, g.Turn, false), g.Entrance)
	gap := g.notch / 2
	span := length(round) - 2*gap
	heavy := max(1.8, g.Size*0.05)
	all := between(round, gap, gap+span)
	g.part(all, scene.None, solid(scene.Rule, max(1, g.Size*0.018)), false)
	switch {
	case g.Used > 1 && g.Ahead:
		g.part(all, scene.None, solid(scene.Ink3, 1.6), false)
	case g.Used > 1:
		g.part(all, scene.None, solid(scene.Act, heavy), false)
	case g.Used > 0.01:
		g.part(between(round, gap, gap+span*g.Used), scene.None, solid(scene.Ink, heavy), false)
	}
}

// degrees returns v as the nearest whole degree from 0 up to period.
func degrees(v, period float64) float64 {
	d := math.Mod(math.Round(v), period)
	if d < 0 {
		d += period
	}
	return d
}
