package paint

import (
	"image/color"
	"math"

	"lidmark/ui/scene"
)

// lettered paints letter and name, on plates of paper where the lid is hatched.
func (g *lidBrush) lettered() {
	named := g.Name != "" && g.Size >= scene.NameInside
	size := letterSize(g.Size, named)
	y := 0.0
	if named {
		y = -g.half * 0.40
	}
	plated := !g.Seen && !small(g.Lid) && g.Condition != scene.Empty
	colour := g.theme.Colour(g.Condition.Letter())
	if !g.Seen && g.Condition != scene.Empty {
		colour = g.theme.Colour(scene.Ink)
	}
	sign := g.Condition.Sign()
	if plated {
		w := max(g.painter.Width(sign, size, scene.Bold)+size*0.34, size*0.86)
		g.plate(y, w, size, size*0.18)
	}
	switch g.Condition {
	case scene.Empty:
		g.circle(g.away.Add(scene.Point{Y: y}), max(1.2, g.Size*0.05), g.Condition.Line(), scene.Stroke{})
	case scene.NoQueen:
		if g.Caught {
			y -= g.half * 0.10
		}
		x := g.away.X
		if g.NeedsYou && g.Size < roomy { // the corner is on its left
			x = max(x, g.Size*0.06)
		}
		g.path.round(g.deviceArea(scene.Area{X: x - size*0.28, Y: y + g.away.Y - size*0.075, W: size * 0.56, H: size * 0.15}), 0, false)
		g.fill(colour)
	default:
		g.word(sign, y, size, scene.Bold, colour)
	}
	if named {
		g.named(colour)
	}
}

// letterSize returns the size of a lid's letter.
func letterSize(size float64, named bool) float64 {
	switch {
	case named && size < 80:
		return size * 0.34
	case named:
		return size * 0.30
	case size < 15:
		return size * 0.56
	case size < 20:
		return size * 0.62
	case size < 34:
		return size * 0.50
	}
	return size * 0.46
}

// named paints the name on the body, in the band of a nuc just caught.
func (g *lidBrush) named(colour color.RGBA) {
	size := max(11, g.Size*0.20)
	y := g.half * 0.34
	if !g.Seen && g.Condition != scene.Empty {
		g.plate(y, g.painter.Width(g.Name, size, scene.SemiBold)+size*0.4, size*1.04, size*0.2)
	}
	switch {
	case g.Condition == scene.Empty:
		colour = g.theme.Colour(scene.Ink2)
	case g.Caught && g.Seen:
		y, colour = g.half*0.70, g.theme.Colour(scene.GoodBrood.Letter())
	}
	g.word(g.Name, y, size, scene.SemiBold, colour)
}

// plate paints a piece of paper about the lid's middle line at height y.
func (g *lidBrush) plate(y, w, h, radius float64) {
	g.path.round(g.deviceArea(scene.Area{X: g.away.X - w/2, Y: g.away.Y + y - h/2, W: w, H: h}), radius*g.scale, false)
	g.fill(g.theme.Colour(scene.Paper))
}

// word paints text in the lid's middle line with the middle of its capitals at
// height y, to a fraction of a pixel, as sprites are painted once. On a small lid
// it gives way to corner and notch.
func (g *lidBrush) word(text string, y, size float64, weight scene.Weight, c color.RGBA) {
	f := g.painter.faces[weight]
	aside := 0.0
	if g.NeedsYou && small(g.Lid) {
		aside = min(1, g.Size*0.06)
	}
	at := g.device(scene.Point{X: g.away.X + aside - f.width(text)*size/2, Y: g.away.Y + aside + y + size*0.352})
	em, last := size*g.scale, rune(0)
	for _, r := range text {
		at.X += f.kern(last, r) * em
		g.path.glyph(f.glyph(r), at, em)
		at.X += f.glyph(r).width * em
		last = r
	}
	g.fill(c)
}

// codes holds the keeper's strokes, in units of a fifth of the lid's size.
var codes = [...][][2]scene.Point{
	scene.NoPaint: nil,
	scene.Settled: {{{X: -0.6, Y: 0.6}, {X: 0.6, Y: -0.6}}},
	scene.Watch:   {{{X: -0.95, Y: 0.6}, {X: 0.15, Y: -0.6}}, {{X: -0.15, Y: 0.6}, {X: 0.95, Y: -0.6}}},
	scene.ActSoon: {{{X: -0.65, Y: 0.65}, {X: 0.65, Y: -0.65}}, {{X: -0.65, Y: -0.65}, {X: 0.65, Y: 0.65}}},
}

// strokes paints the keeper's strokes at the lower left, cased with paper: outside a
// small lid, or they would cover the letter.
func (g *lidBrush) strokes() {
	brush := g.Brush
	if brush == scene.None {
		brush = scene.Ink
	}
	width, casing, long := max(2, g.Size*0.055), max(2.4, g.Size*0.07), g.Size*0.2
	at := g.at(-0.36, 0.36)
	if g.Size < roomy {
		width, casing, long = min(width, g.Size*0.11), 1.5, max(g.Size*0.17, 2.6)
		far := (g.edgeAt(225) + 0.72*long) / math.Sqrt2
		at = scene.Point{X: -far, Y: far}
	}
	for _, s := range [2]scene.Stroke{solid(scene.Paper, width+casing), solid(brush, width)} {
		s.Round = true
		for _, q := range codes[g.Paint] {
			g.line(at.Add(q[0].Mul(long)), at.Add(q[1].Mul(long)), s)
		}
	}
}

// corner paints the sign that the nuc needs the keeper: filled, or on a day
// ahead hollow.
func (g *lidBrush) corner() {
	out := g.Size * 0.5
	if small(g.Lid) || g.NoRim {
		out = g.Size * 0.47
	}
	leg, casing := max(7, g.Size*0.36), 2*max(1.2, g.Size*0.035)+1
	if small(g.Lid) { // or it would cover the letter
		leg, casing = max(4, g.Size*0.34), 2.4
	}
	triangle := []scene.Point{{X: -out, Y: -out}, {X: -out + leg, Y: -out}, {X: -out, Y: -out + leg}}
	g.part(triangle, scene.Paper, solid(scene.Paper, casing), true)
	if g.Ahead {
		g.part(triangle, scene.Paper, solid(scene.Ink3, 1.3), true)
		return
	}
	g.part(triangle, scene.Act, scene.Stroke{}, true)
}

// wedge paints the sign of a weak nuc.
func (g *lidBrush) wedge() {
	k, at := max(3, g.Size*0.10), g.at(0.36, 0.36)
	g.part([]scene.Point{
		at.Add(scene.Point{X: -1.15 * k, Y: -0.8 * k}),
		at.Add(scene.Point{X: 1.15 * k, Y: -0.8 * k}),
		at.Add(scene.Point{Y: k}),
	}, scene.Paper, solid(scene.Ink, max(1.2, g.Size*0.03)), true)
}

// chevrons paints the sign of robbers, pointing into the entrance.
func (g *lidBrush) chevrons() {
	out := g.inward.Mul(-1)
	side := scene.Point{X: -out.Y, Y: out.X}
	k := max(3, g.Size*0.10)
	tip := out.Mul(g.Size/2 - g.Size*0.07)
	if math.Abs(out.X) > 0.5 && math.Abs(out.Y) > 0.5 {
		tip = out.Mul(g.Size * 0.52)
	}
	s := solid(scene.Act, max(1.6, g.Size*0.045))
	s.Round = true
	for range 2 {
		arm := tip.Add(out.Mul(0.8 * k))
		g.part([]scene.Point{arm.Add(side.Mul(k)), tip, arm.Sub(side.Mul(k))}, scene.None, s, false)
		tip = tip.Add(out.Mul(0.95 * k))
	}
}

// front paints a front mark of the given radius about the point at, in dp.
func (g *brush) front(at scene.Point, r float64, f scene.Front) {
	s := solid(scene.Ink, max(1, r*0.22))
	box := func(w, h float64) {
		a := g.deviceArea(scene.Area{X: at.X - r*w, Y: at.Y - r*h, W: 2 * r * w, H: 2 * r * h})
		g.shape(cornersOf(a), true, f.Role, scene.Hatch{}, s)
	}
	switch f.Shape {
	case scene.Disc:
		g.circle(at, r, f.Role, s)
	case scene.Square:
		box(0.88, 0.88)
	case scene.Triangle:
		g.shape([]scene.Point{
			g.device(at.Add(scene.Point{Y: -1.05 * r})),
			g.device(at.Add(scene.Point{X: 1.05 * r, Y: 0.8 * r})),
			g.device(at.Add(scene.Point{X: -1.05 * r, Y: 0.8 * r})),
		}, true, f.Role, scene.Hatch{}, s)
	case scene.LevelBar:
		box(1.1, 0.5)
	case scene.Post:
		box(0.5, 1.1)
	case scene.Cross:
		g.shape(g.cross(at, r), true, f.Role, scene.Hatch{}, s)
	case scene.Ring:
		g.circle(at, r*0.75, scene.Panel, solid(scene.Ink, s.Width*0.8+r*0.5))
		g.circle(at, r*0.75, scene.None, solid(f.Role, r*0.42))
	}
}

// cross is the outline of an upright cross about the point at, its arms as long as r.
func (g *brush) cross(at scene.Point, r float64) (outline []scene.Point) {
	const arm = 0.38
	a, l := arm*r, 1.05*r
	for _, c := range [12][2]float64{{-a, -l}, {a, -l}, {a, -a}, {l, -a}, {l, a}, {a, a}, {a, l}, {-a, l}, {-a, a}, {-l, a}, {-l, -a}, {-a, -a}} {
		outline = append(outline, g.device(at.Add(scene.Point{X: c[0], Y: c[1]})))
	}
	return outline
}
