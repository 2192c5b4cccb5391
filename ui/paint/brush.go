package paint

import (
	"image"
	"image/color"
	"math"

	"lidmark/ui/scene"
)

// brush paints shapes given in dp: it knows theme, scale and where the origin of
// dp lies on the canvas.
type brush struct {
	canvas
	painter *Painter
	theme   Theme
	scale   float64      // device pixels for a dp
	origin  scene.Point  // of dp, in device pixels
	camera  scene.Camera // of the pane being painted
	culls   bool         // what lies outside the clip is not even begun
}

// device returns p, in dp, in device pixels.
func (g *brush) device(p scene.Point) scene.Point { return p.Mul(g.scale).Add(g.origin) }

// deviceArea returns a, in dp, in device pixels.
func (g *brush) deviceArea(a scene.Area) scene.Area {
	p := g.device(scene.Point{X: a.X, Y: a.Y})
	return scene.Area{X: p.X, Y: p.Y, W: a.W * g.scale, H: a.H * g.scale}
}

// hairline returns the width of a hairline in whole device pixels.
func (g *brush) hairline() int { return max(1, int(math.Round(g.scale))) }

// rect paints a rectangle.
func (g *brush) rect(m *scene.Rect) {
	a := g.camera.ScreenArea(m.Area)
	c := g.theme.Colour(m.Fill)
	if m.Clear > 0 {
		c.A = uint8(math.Round(float64(c.A) * (1 - min(1, m.Clear))))
	}
	hair := m.Stroke.Role != scene.None && m.Stroke.Width == 1
	switch {
	case m.Radius == 0:
		g.block(g.pixels(a), c)
	case hair:
		g.path.round(areaOf(g.pixels(a)), m.Radius*g.scale, false)
		g.fill(c)
	default:
		g.path.round(g.deviceArea(a), m.Radius*g.scale, false)
		g.fill(c)
	}
	if m.Hatch.Role != scene.None {
		g.hatch(cornersOf(g.deviceArea(a)), m.Hatch)
	}
	if m.Stroke.Role != scene.None {
		g.edge(a, m.Radius, m.Stroke)
	}
}

// edge paints the outline of a rectangle: a hairline on the pixels just inside,
// any other line on the edge.
func (g *brush) edge(a scene.Area, radius float64, s scene.Stroke) {
	outer, w := g.deviceArea(a), s.Width*g.scale
	if s.Width == 1 && radius == 0 && s.Dash == ([2]float64{}) {
		g.ring(g.pixels(a), g.hairline(), g.theme.Colour(s.Role))
		return
	}
	if s.Width == 1 {
		outer, w = areaOf(g.pixels(a)), float64(g.hairline())
		outer = outer.Inset(w / 2)
	}
	r := radius * g.scale
	if s.Dash != ([2]float64{}) {
		ring := path{}
		ring.round(outer, r, false)
		g.outline(ring.points, true, w, s)
		return
	}
	g.path.round(outer.Inset(-w/2), r+w/2*sign(r), false)
	if hole := outer.Inset(w / 2); !hole.Empty() {
		g.path.round(hole, r-w/2, true)
	}
	g.fill(g.theme.Colour(s.Role))
}

// ring paints the w outermost pixels of r.
func (g *brush) ring(r image.Rectangle, w int, c color.RGBA) {
	hole := r.Inset(w)
	if hole.Empty() {
		g.block(r, c)
		return
	}
	g.block(image.Rect(r.Min.X, r.Min.Y, r.Max.X, hole.Min.Y), c)
	g.block(image.Rect(r.Min.X, hole.Max.Y, r.Max.X, r.Max.Y), c)
	g.block(image.Rect(r.Min.X, hole.Min.Y, hole.Min.X, hole.Max.Y), c)
	g.block(image.Rect(hole.Max.X, hole.Min.Y, r.Max.X, hole.Max.Y), c)
}

// sign returns 1 for v above zero, else 0: a square corner stays square.
func sign(v float64) float64 {
	if v > 0 {
		return 1
	}
	return 0
}

// line paints a line between two points in dp.
func (g *brush) line(a, b scene.Point, s scene.Stroke) {
	if s.Role == scene.None {
		return
	}
	p, q := g.device(a), g.device(b)
	if s.Width == 1 && (a.X == b.X || a.Y == b.Y) && s.Dash == ([2]float64{}) {
		g.hair(p, q, g.theme.Colour(s.Role))
		return
	}
	ends := [2]scene.Point{p, q}
	g.outline(ends[:], false, s.Width*g.scale, s)
}

// hair paints an upright or level hairline on whole pixels.
func (g *brush) hair(p, q scene.Point, c color.RGBA) {
	w := g.hairline()
	floor := func(v float64) int { return int(math.Floor(v + 1e-6)) }
	x0, x1 := floor(min(p.X, q.X)), int(math.Round(max(p.X, q.X)))
	y0, y1 := floor(min(p.Y, q.Y)), int(math.Round(max(p.Y, q.Y)))
	if p.X == q.X {
		x1 = x0 + w
	}
	if p.Y == q.Y {
		y1 = y0 + w
	}
	g.block(image.Rect(x0, y0, x1, y1), c)
}

// outline paints a line through points in device pixels, w of them wide.
func (g *brush) outline(points []scene.Point, closed bool, w float64, s scene.Stroke) {
	if s.Dash[0] > 0 {
		dash(points, closed, s.Dash[0]*g.scale, s.Dash[1]*g.scale, func(part []scene.Point) {
			g.path.stroke(part, w, false, s.Round)
		})
	} else {
		g.path.stroke(points, w, closed, s.Round)
	}
	g.fill(g.theme.Colour(s.Role))
}

// poly paints a polygon or polyline of the scene.
func (g *brush) poly(m *scene.Poly) {
	points := g.points[:0]
	for _, p := range m.Points {
		points = append(points, g.device(g.camera.Screen(p)))
	}
	g.points = points
	g.shape(points, !m.Open, m.Fill, m.Hatch, m.Stroke)
}

// shape paints fill, hatch and stroke of the points, in device pixels.
func (g *brush) shape(points []scene.Point, closed bool, fill scene.Role, h scene.Hatch, s scene.Stroke) {
	a, isUpright := upright(points)
	switch {
	case fill == scene.None:
	case isUpright:
		g.slab(a, g.theme.Colour(fill))
	default:
		g.path.contour(points)
		g.fill(g.theme.Colour(fill))
	}
	if h.Role != scene.None {
		g.hatch(points, h)
	}
	switch w := s.Width * g.scale; {
	case s.Role == scene.None:
	case isUpright && closed && w <= thinnest && s.Dash == ([2]float64{}):
		g.frame(a.Inset(-w/2), a.Inset(w/2), g.theme.Colour(s.Role))
	default:
		g.outline(points, closed, w, s)
	}
}

// hatch paints lines across the polygon, in device pixels. They start from the
// origin of the pane's world, so that they move along with it and neighbours
// share them.
func (g *brush) hatch(polygon []scene.Point, h scene.Hatch) {
	if h.Pitch <= 0 {
		return
	}
	origin := g.device(g.camera.Shift)
	g.path.hatch(polygon, areaOf(g.sight), origin, h.Pitch*g.scale, h.Weight*g.scale, h.Falling)
	if h.Crossed {
		g.path.hatch(polygon, areaOf(g.sight), origin, h.Pitch*g.scale, h.Weight*g.scale, !h.Falling)
	}
	g.fill(g.theme.Colour(h.Role))
}

// circle paints a circle about the point at, in dp.
func (g *brush) circle(at scene.Point, radius float64, fill scene.Role, s scene.Stroke) {
	c, r := g.device(at), radius*g.scale
	if fill != scene.None {
		g.path.circle(c, r, false)
		g.fill(g.theme.Colour(fill))
	}
	switch w := s.Width * g.scale; {
	case s.Role == scene.None:
	case s.Dash != ([2]float64{}):
		ring := path{}
		ring.circle(c, r, false)
		g.outline(ring.points, true, w, s)
	default:
		g.path.circle(c, r+w/2, false)
		if r > w/2 {
			g.path.circle(c, r-w/2, true)
		}
		g.fill(g.theme.Colour(s.Role))
	}
}

// areaOf returns the area of whole pixels.
func areaOf(r image.Rectangle) scene.Area {
	return scene.Area{X: float64(r.Min.X), Y: float64(r.Min.Y), W: float64(r.Dx()), H: float64(r.Dy())}
}

// cornersOf returns the four corners of a.
func cornersOf(a scene.Area) []scene.Point {
	return []scene.Point{{X: a.X, Y: a.Y}, {X: a.Right(), Y: a.Y}, {X: a.Right(), Y: a.Bottom()}, {X: a.X, Y: a.Bottom()}}
}
