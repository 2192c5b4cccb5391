package paint

import (
	"image"
	"math"
	"slices"

	"lidmark/ui/scene"
)

// painted is what was painted last, and where.
type painted struct {
	dst   *image.RGBA
	theme Theme
	scale float64
	marks []scene.Mark
}

// Repaint paints s on dst as Paint does, but where p painted dst last it only
// paints what has changed since: the pointer's ring on one of thousands of
// lids, not all of them. Between the two nobody else may touch dst, or change
// what the marks hold. The lowest mark must be opaque.
func (p *Painter) Repaint(dst *image.RGBA, s scene.Scene, theme Theme, scale float64) {
	was, is := p.last, painted{dst, theme, scale, s.Marks}
	p.last = is
	if was.dst != dst || was.theme != theme || was.scale != scale {
		p.Paint(dst, s, theme, scale)
		return
	}
	d := damage{brush: p.brush(dst, theme, scale)}
	d.compare(was.marks, is.marks)
	if d.most() {
		p.Paint(dst, s, theme, scale)
		return
	}
	for _, r := range d.parts {
		g := p.brush(dst, theme, scale)
		g.clip, g.culls = r, true
		g.marks(s.Marks)
	}
}

// damage is where two pictures differ.
type damage struct {
	brush
	parts []image.Rectangle
	marks int // that differ
}

// Beyond so many marks or parts, or such a share of the picture, painting all
// of it is no slower.
const (
	mostMarks = 200
	mostParts = 12
	mostShare = 0.5
)

// most tells that most of the picture differs.
func (d *damage) most() bool {
	pixels, whole := 0, d.dst.Rect.Dx()*d.dst.Rect.Dy()
	for _, r := range d.parts {
		pixels += r.Dx() * r.Dy()
	}
	return d.marks > mostMarks || float64(pixels) > mostShare*float64(whole)
}

// compare walks over two lists of marks side by side. Where they part it looks
// a few marks ahead for where they meet again.
func (d *damage) compare(old, new []scene.Mark) {
	for len(old) > 0 && len(new) > 0 && d.marks <= mostMarks {
		if alike(old[0], new[0]) {
			if was, ok := old[0].(scene.Pane); ok {
				d.within(was, new[0].(scene.Pane))
			}
			old, new = old[1:], new[1:]
			continue
		}
		i, j := meet(old, new)
		d.add(old[:i])
		d.add(new[:j])
		old, new = old[i:], new[j:]
	}
	d.add(old)
	d.add(new)
}

// within compares what two panes show that look at the same place.
func (d *damage) within(was, is scene.Pane) {
	clip, camera := d.clip, d.camera
	d.clip, d.camera = d.paneClip(&is), is.Camera.Then(camera)
	if !d.clip.Empty() {
		d.compare(was.Marks, is.Marks)
	}
	d.clip, d.camera = clip, camera
}

// add notes that marks differ.
func (d *damage) add(marks []scene.Mark) {
	for _, m := range marks {
		if d.marks++; d.marks > mostMarks {
			return
		}
		r := d.bounds(m).Intersect(d.clip)
		for i := 0; i < len(d.parts) && !r.Empty(); i++ {
			if r.Overlaps(d.parts[i]) || len(d.parts) >= mostParts {
				r = r.Union(d.parts[i])
				d.parts = slices.Delete(d.parts, i, i+1)
				i = -1
			}
		}
		if !r.Empty() {
			d.parts = append(d.parts, r)
		}
	}
}

// ahead is how far the comparison looks for where two lists meet again.
const ahead = 12

// meet is how many marks of each list stand before the first that both have.
func meet(old, new []scene.Mark) (i, j int) {
	for both := 1; both <= ahead; both++ {
		for i := range both + 1 {
			if j := both - i; i < len(old) && j < len(new) && alike(old[i], new[j]) {
				return i, j
			}
		}
	}
	return 1, 1
}

// alike tells that two marks paint the same pixels, panes but for what they
// show.
func alike(a, b scene.Mark) bool {
	switch a := a.(type) {
	case scene.Poly:
		b, ok := b.(scene.Poly)
		return ok && a.Open == b.Open && a.Fill == b.Fill && a.Hatch == b.Hatch && a.Stroke == b.Stroke && slices.Equal(a.Points, b.Points)
	case scene.Photo:
		b, ok := b.(scene.Photo)
		return ok && sameBytes(a.JPEG, b.JPEG) && a.At == b.At && a.Side == b.Side && a.Up == b.Up && a.Clear == b.Clear
	case scene.Pane:
		b, ok := b.(scene.Pane)
		return ok && a.Clip == b.Clip && a.Camera == b.Camera
	default:
		return a == b
	}
}

// bounds returns pixels around all that a mark paints.
func (g *brush) bounds(m scene.Mark) image.Rectangle {
	switch m := m.(type) {
	case scene.Rect:
		return g.around(g.camera.ScreenArea(m.Area), m.Stroke.Width)
	case scene.Line:
		return g.around(scene.Between(g.camera.Screen(m.From), g.camera.Screen(m.To)), m.Stroke.Width)
	case scene.Circle:
		return g.around(scene.Around(g.camera.Screen(m.At), 2*g.camera.Length(m.Radius)), m.Stroke.Width)
	case scene.Poly:
		const spike = 10 // in a bend that turns nearly back the inner sides cross far out
		return g.around(g.camera.ScreenArea(hull(m.Points)), spike*m.Stroke.Width)
	case scene.Text:
		return g.textBounds(&m)
	case scene.Icon:
		return g.around(scene.Around(g.camera.Screen(m.At), m.Size), 2)
	case scene.Lid:
		r := g.around(scene.Around(g.camera.Screen(m.At), 2*reach(&m)), 0)
		if label, ok := nameOf(&m); ok {
			r = r.Union(g.textBounds(&label))
		}
		return r
	case scene.Photo:
		return g.around(hull(g.photoCorners(&m)), 0)
	case scene.Pane:
		return g.paneClip(&m)
	}
	return g.clip
}

// around returns the pixels of an area in dp, and of half a line round it.
func (g *brush) around(a scene.Area, line float64) image.Rectangle {
	const spare = 2 // what is laid on whole pixels can come to lie beside
	return g.pixels(a.Inset(-line / 2)).Inset(-spare)
}

// textBounds returns pixels around a line of text: letters can reach over the
// width that they take.
func (g *brush) textBounds(m *scene.Text) image.Rectangle {
	at := g.textAt(m)
	return g.around(scene.Area{X: at.X - m.Size/4, Y: at.Y - 1.2*m.Size, W: g.painter.Width(m.Text, m.Size, m.Weight) + m.Size/2, H: 1.7 * m.Size}, 0)
}

// hull is the smallest area around points.
func hull(points []scene.Point) scene.Area {
	if len(points) == 0 {
		return scene.Area{}
	}
	lo, hi := points[0], points[0]
	for _, p := range points {
		lo = scene.Point{X: math.Min(lo.X, p.X), Y: math.Min(lo.Y, p.Y)}
		hi = scene.Point{X: math.Max(hi.X, p.X), Y: math.Max(hi.Y, p.Y)}
	}
	return scene.Between(lo, hi)
}
