package paint

import (
	"image"
	"math"

	"lidmark/ui/scene"
)

// mostBytes is how many bytes of sprites are kept; beyond it all are dropped and
// those in use painted again.
const mostBytes = 48 << 20

// sprites are the pictures of lids painted so far, by look.
type sprites struct {
	by    map[look]*sprite
	bytes int
}

// newSprites returns an empty store.
func newSprites() sprites { return sprites{by: map[look]*sprite{}} }

// look is all that a lid's picture depends on.
type look struct {
	lid   scene.Lid
	theme Theme
	scale float64
}

// sprite is a picture with its transparent border cut off. Colours are
// premultiplied.
type sprite struct {
	pix  []uint8
	rect image.Rectangle // about the lid's centre
	runs []run
}

// run is a row of neighbouring pixels that are all opaque, or all partly so.
type run struct {
	x, y, n int // about the lid's centre
	opaque  bool
}

// plainLook returns the look of l, free of all that does not show, so that lids
// which look alike share a sprite.
func plainLook(l *scene.Lid, theme Theme, scale float64) look {
	k := look{lid: *l, theme: theme, scale: scale}
	d := &k.lid
	d.At, d.Tag = scene.Point{}, scene.Tag{}
	d.Entrance, d.Turn = degrees(l.Entrance, 360), degrees(l.Turn, 90)
	if l.Size < scene.NameInside {
		d.Name = ""
	}
	if small(l) || l.NoRim || !l.Timed {
		d.Timed, d.Used = false, 0
	}
	if d.Seen || small(l) {
		d.Doubt = 0
	}
	if d.Used > 1 {
		d.Used = 2
	} else {
		d.Used = math.Round(d.Used*usedSteps) / usedSteps
	}
	return k
}

// usedSteps is in how many steps the rim goes round: finer than a pixel on all
// but the largest lids.
const usedSteps = 128

// sprite returns the picture of l, painting it if it is not there yet.
func (p *Painter) sprite(l *scene.Lid, theme Theme, scale float64) *sprite {
	k := plainLook(l, theme, scale)
	s, ok := p.sprites.by[k]
	if !ok {
		s = p.paintLid(k)
		if p.sprites.bytes += len(s.pix); p.sprites.bytes > mostBytes {
			clear(p.sprites.by)
			p.sprites.bytes = len(s.pix)
		}
		p.sprites.by[k] = s
	}
	return s
}

// reach is how far from its centre a lid's picture can go, dp. The signs that
// reach furthest are the chevrons, 0.73 of the size, and the brackets of focus,
// 8 dp beyond the edge.
func reach(l *scene.Lid) float64 { return l.Size*0.75 + 9 }

// paintLid paints the picture of a lid.
func (p *Painter) paintLid(k look) *sprite {
	out := int(math.Ceil(reach(&k.lid) * k.scale))
	dst := image.NewRGBA(image.Rect(-out, -out, out, out))
	g := lidBrush{
		brush: brush{painter: p, canvas: canvas{dst: dst, clip: dst.Rect, sight: dst.Rect, tools: &p.tools}, theme: k.theme, scale: k.scale},
		Lid:   &k.lid, body: newBody(&k.lid),
	}
	g.whole()
	if k.lid.Faded {
		fade(dst.Pix)
	}
	return newSprite(dst)
}

// fade makes a lid step back: 58 % of what it stands on shows through.
func fade(pix []uint8) {
	for i, v := range pix {
		pix[i] = uint8(div255(uint32(v) * 107))
	}
}

// newSprite cuts the picture to what is not transparent and finds its runs.
func newSprite(m *image.RGBA) *sprite {
	s := &sprite{}
	for y := m.Rect.Min.Y; y < m.Rect.Max.Y; y++ {
		for x := m.Rect.Min.X; x < m.Rect.Max.X; x++ {
			if m.Pix[m.PixOffset(x, y)+3] != 0 {
				s.rect = s.rect.Union(image.Rect(x, y, x+1, y+1))
			}
		}
	}
	for y := s.rect.Min.Y; y < s.rect.Max.Y; y++ {
		o := m.PixOffset(s.rect.Min.X, y)
		row := m.Pix[o : o+4*s.rect.Dx()]
		s.pix = append(s.pix, row...)
		s.runs = appendRuns(s.runs, row, s.rect.Min.X, y)
	}
	return s
}

// appendRuns appends the runs of a row of pixels that begins at x, y.
func appendRuns(runs []run, row []uint8, x, y int) []run {
	for i := 0; i < len(row); {
		a, from := row[i+3], i
		for i < len(row) && (row[i+3] == 0) == (a == 0) && (row[i+3] == 0xFF) == (a == 0xFF) {
			i += 4
		}
		if a != 0 {
			runs = append(runs, run{x + from/4, y, (i - from) / 4, a == 0xFF})
		}
	}
	return runs
}

// stamp paints s with its centre at the whole pixel next to the device point at.
func (cv *canvas) stamp(s *sprite, at scene.Point) {
	to := image.Pt(int(math.Round(at.X)), int(math.Round(at.Y)))
	whole := s.rect.Add(to)
	if !whole.Overlaps(cv.clip) {
		return
	}
	inside := whole.In(cv.clip)
	w := s.rect.Dx()
	for _, r := range s.runs {
		x0, x1, y := r.x+to.X, r.x+to.X+r.n, r.y+to.Y
		if !inside {
			if y < cv.clip.Min.Y || y >= cv.clip.Max.Y {
				continue
			}
			x0, x1 = max(x0, cv.clip.Min.X), min(x1, cv.clip.Max.X)
			if x0 >= x1 {
				continue
			}
		}
		o := 4 * ((r.y-s.rect.Min.Y)*w + x0 - to.X - s.rect.Min.X)
		src, dst := s.pix[o:o+4*(x1-x0)], cv.row(x0, x1, y)
		if r.opaque {
			copy(dst, src)
		} else {
			lay(dst, src)
		}
	}
}

// lay paints premultiplied pixels over others.
func lay(dst, src []uint8) {
	for i := 0; i+3 < len(src) && i+3 < len(dst); i += 4 {
		b := 255 - uint32(src[i+3])
		dst[i] = src[i] + uint8(div255(uint32(dst[i])*b))
		dst[i+1] = src[i+1] + uint8(div255(uint32(dst[i+1])*b))
		dst[i+2] = src[i+2] + uint8(div255(uint32(dst[i+2])*b))
		dst[i+3] = src[i+3] + uint8(div255(uint32(dst[i+3])*b))
	}
}
