package paint

import (
	"image"
	"image/color"
	"math"

	"lidmark/ui/scene"

	"golang.org/x/image/font/sfnt"
)

// capital is the height of capitals and figures in ems, so that half of it below
// the middle is their baseline.
const capital = 0.70

// quarters is at how many places within a pixel a glyph is painted sideways.
const quarters = 4

// mostMasks is how many masks of glyphs are kept; beyond it all are dropped.
const mostMasks = 1 << 14

// maskKey says which picture of a glyph a mask is.
type maskKey struct {
	r       rune
	weight  scene.Weight
	quarter uint8
	size    float32 // device pixels for an em
}

// mask is how much of each pixel a glyph covers, placed from its origin.
type mask struct {
	pix  []uint8
	rect image.Rectangle
}

// Width returns the width in dp of one line of text. It makes a Painter a
// [scene.Measurer].
func (p *Painter) Width(text string, size float64, weight scene.Weight) float64 {
	return p.faces[weight].width(text) * size
}

// text paints a line of text whose baseline begins at the device pixel at, size
// device pixels for an em.
func (p *Painter) text(cv *canvas, at scene.Point, text string, size float64, weight scene.Weight, c color.RGBA) {
	f := p.faces[weight]
	x, last := at.X, rune(0)
	y := int(math.Round(at.Y))
	for _, r := range text {
		x += f.kern(last, r) * size
		q := math.Floor(x*quarters + 0.5)
		whole := math.Floor(q / quarters)
		m := p.mask(maskKey{r, weight, uint8(q - whole*quarters), float32(size)})
		cv.stampMask(m, image.Pt(int(whole), y), c)
		x += f.glyph(r).width * size
		last = r
	}
}

// mask returns the picture of a glyph, painting it if it is not there yet.
func (p *Painter) mask(k maskKey) *mask {
	if m, ok := p.masks[k]; ok {
		return m
	}
	if len(p.masks) >= mostMasks {
		clear(p.masks)
	}
	t := &p.tools
	t.path.reset()
	t.path.glyph(p.faces[k.weight].glyph(k.r), scene.Point{X: float64(k.quarter) / quarters}, float64(k.size))
	m := &mask{}
	if lo, hi := t.path.bounds(); lo.X <= hi.X {
		m.rect = image.Rect(int(math.Floor(lo.X)), int(math.Floor(lo.Y)), int(math.Ceil(hi.X)), int(math.Ceil(hi.Y)))
		cv := canvas{tools: t}
		cv.rasterise(m.rect)
		m.pix = append([]uint8(nil), t.mask.Pix...)
	}
	t.path.reset()
	p.masks[k] = m
	return m
}

// stampMask paints a mask with its origin at the pixel at.
func (cv *canvas) stampMask(m *mask, at image.Point, c color.RGBA) {
	whole := m.rect.Add(at)
	r := whole.Intersect(cv.clip)
	if r.Empty() {
		return
	}
	w := m.rect.Dx()
	for y := r.Min.Y; y < r.Max.Y; y++ {
		o := (y-whole.Min.Y)*w - whole.Min.X
		over(cv.row(r.Min.X, r.Max.X, y), m.pix[o+r.Min.X:o+r.Max.X], c)
	}
}

// glyph adds the outlines of g at the origin o, size device pixels for an em.
func (p *path) glyph(g *glyph, o scene.Point, size float64) {
	at := func(q scene.Point) scene.Point { return o.Add(q.Mul(size)) }
	var pen scene.Point
	open := false
	for _, s := range g.outlines {
		switch s.op {
		case sfnt.SegmentOpMoveTo:
			if open {
				p.close()
			}
			open, pen = true, at(s.args[0])
			p.add(pen)
		case sfnt.SegmentOpLineTo:
			pen = at(s.args[0])
			p.add(pen)
		case sfnt.SegmentOpQuadTo:
			pen = p.curve(pen, at(s.args[0]), at(s.args[1]))
		}
	}
	if open {
		p.close()
	}
}

// curve adds the quadratic curve from a past b to c, and returns c. TrueType
// outlines, the only ones there are, have no other curves.
func (p *path) curve(a, b, c scene.Point) scene.Point {
	d := a.Sub(b.Mul(2)).Add(c)
	n := max(1, int(math.Ceil(math.Sqrt(math.Hypot(d.X, d.Y)/0.2))))
	for i := 1; i <= n; i++ {
		t := float64(i) / float64(n)
		u := 1 - t
		p.add(a.Mul(u * u).Add(b.Mul(2 * u * t)).Add(c.Mul(t * t)))
	}
	return c
}
