package paint

import (
	"image"
	"math"

	"lidmark/ui/scene"
)

// Painter paints scenes. It is not for use by several goroutines at a time.
type Painter struct {
	faces   [scene.Italic + 1]*face
	masks   map[maskKey]*mask
	sprites sprites
	tools   tools
	photos  photos
	last    painted
}

// New returns a Painter with empty caches. It fails only if the typeface built
// into the program is damaged.
func New() (*Painter, error) {
	faces, err := newFaces()
	if err != nil {
		return nil, err
	}
	return &Painter{faces: faces, masks: map[maskKey]*mask{}, sprites: newSprites()}, nil
}

// Paint paints s on dst, scale device pixels for a dp. The scene's origin is the
// upper left corner of dst; what reaches beyond it is cut off, and what no mark
// covers stays as it was.
func (p *Painter) Paint(dst *image.RGBA, s scene.Scene, theme Theme, scale float64) {
	g := p.brush(dst, theme, scale)
	g.marks(s.Marks)
}

// brush returns a brush for all of dst.
func (p *Painter) brush(dst *image.RGBA, theme Theme, scale float64) brush {
	b := dst.Bounds()
	return brush{
		painter: p, canvas: canvas{dst: dst, clip: b, sight: b, tools: &p.tools}, theme: theme, scale: scale,
		origin: scene.Point{X: float64(b.Min.X), Y: float64(b.Min.Y)},
	}
}

// marks paints marks one over the other.
func (g *brush) marks(marks []scene.Mark) {
	for _, m := range marks {
		if g.culls && !g.bounds(m).Overlaps(g.clip) {
			continue
		}
		switch m := m.(type) {
		case scene.Rect:
			g.rect(&m)
		case scene.Line:
			g.line(g.camera.Screen(m.From), g.camera.Screen(m.To), m.Stroke)
		case scene.Poly:
			g.poly(&m)
		case scene.Circle:
			g.circle(g.camera.Screen(m.At), g.camera.Length(m.Radius), m.Fill, m.Stroke)
		case scene.Text:
			g.text(&m)
		case scene.Icon:
			g.icon(&m)
		case scene.Lid:
			g.lid(&m)
		case scene.Photo:
			g.photo(&m)
		case scene.Pane:
			g.pane(&m)
		}
	}
}

// pane paints the marks of a pane through its camera, cut to its clip.
func (g *brush) pane(m *scene.Pane) {
	clip, sight, camera := g.clip, g.sight, g.camera
	g.clip, g.sight = g.paneClip(m), g.sight.Intersect(g.panePixels(m))
	g.camera = m.Camera.Then(camera)
	if !g.clip.Empty() {
		g.marks(m.Marks)
	}
	g.clip, g.sight, g.camera = clip, sight, camera
}

// panePixels returns the pixels that a pane takes.
func (g *brush) panePixels(m *scene.Pane) image.Rectangle {
	return g.pixels(g.camera.ScreenArea(m.Clip))
}

// paneClip returns the pixels of a pane that may be touched.
func (g *brush) paneClip(m *scene.Pane) image.Rectangle { return g.clip.Intersect(g.panePixels(m)) }

// text paints a line of text.
func (g *brush) text(m *scene.Text) {
	g.painter.text(&g.canvas, g.device(g.textAt(m)), m.Text, m.Size*g.scale, m.Weight, g.theme.Colour(m.Role))
}

// textAt returns where a line of text begins, in dp.
func (g *brush) textAt(m *scene.Text) scene.Point {
	at := g.camera.Screen(m.At).Add(m.Shift)
	if m.Middle {
		at.Y += m.Size * capital / 2
	}
	switch m.Anchor {
	case scene.Centre:
		at.X -= g.painter.Width(m.Text, m.Size, m.Weight) / 2
	case scene.Right:
		at.X -= g.painter.Width(m.Text, m.Size, m.Weight)
	}
	return at
}

// pixels returns the whole pixels that a, in dp, comes nearest to. What is not
// empty has at least one.
func (g *brush) pixels(a scene.Area) image.Rectangle {
	edge := func(v float64) int { return int(math.Round(v)) }
	lo, hi := g.device(scene.Point{X: a.X, Y: a.Y}), g.device(scene.Point{X: a.Right(), Y: a.Bottom()})
	r := image.Rect(edge(lo.X), edge(lo.Y), edge(hi.X), edge(hi.Y))
	if a.W > 0 && r.Dx() == 0 {
		r.Max.X++
	}
	if a.H > 0 && r.Dy() == 0 {
		r.Max.Y++
	}
	return r
}
