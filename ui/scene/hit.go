package scene

import (
	"math"
	"slices"
)

// reach is how far from a thin line the pointer may be and still be on it, dp.
const reach = 4.0

// At returns the tag of the uppermost mark at p that stands for something, and
// whether there is one. Marks without a Ref let the pointer through.
func (s Scene) At(p Point) (Tag, bool) { return at(s.Marks, p, Camera{}) }

// at walks marks backwards; p is in their world, which c shows on the screen.
func at(marks []Mark, p Point, c Camera) (Tag, bool) {
	for _, m := range slices.Backward(marks) {
		pane, ok := m.(Pane)
		if ok && !pane.Clip.Contains(p) {
			continue
		}
		if ok {
			if tag, found := at(pane.Marks, pane.Camera.World(p), pane.Camera.Then(c)); found {
				return tag, true
			}
		}
		if tag := m.tag(); tag.Ref != (Ref{}) && m.hit(p, c) {
			return tag, true
		}
	}
	return Tag{}, false
}

// In returns what the marks that touch the area stand for, each once, lowest
// first: for a rubber band. Panes themselves do not count, their marks do.
func (s Scene) In(a Area) []Ref {
	var found []Ref
	seen := map[Ref]bool{}
	collect(s.Marks, a, Camera{}, func(r Ref, _ Area) {
		if !seen[r] {
			seen[r] = true
			found = append(found, r)
		}
	})
	return found
}

// collect calls add for the Ref of every mark that touches a, in painting order,
// with where the mark lies on the screen.
func collect(marks []Mark, a Area, c Camera, add func(Ref, Area)) {
	for _, m := range marks {
		if pane, ok := m.(Pane); ok {
			if part := a.Intersect(pane.Clip); part.W >= 0 && part.H >= 0 {
				collect(pane.Marks, pane.Camera.WorldArea(part), pane.Camera.Then(c), add)
			}
			continue
		}
		if r := m.tag().Ref; r != (Ref{}) && m.extent(c).Overlaps(a) {
			add(r, c.ScreenArea(m.extent(c)))
		}
	}
}

// everywhere is an area about all that a scene shows.
var everywhere = Area{X: -1e6, Y: -1e6, W: 2e6, H: 2e6}

func (Text) tag() Tag { return Tag{} }

func (r Rect) extent(Camera) Area         { return r.Area }
func (r Rect) hit(p Point, _ Camera) bool { return r.Area.Contains(p) }

func (l Line) extent(Camera) Area { return Between(l.From, l.To) }
func (l Line) hit(p Point, c Camera) bool {
	return p.distanceTo(l.From, l.To) <= l.Stroke.reach(c)
}

func (g Poly) extent(Camera) Area { return hull(g.Points) }
func (g Poly) hit(p Point, c Camera) bool {
	if !g.Open {
		return within(p, g.Points)
	}
	for i := 1; i < len(g.Points); i++ {
		if p.distanceTo(g.Points[i-1], g.Points[i]) <= g.Stroke.reach(c) {
			return true
		}
	}
	return false
}

func (o Circle) extent(Camera) Area { return Around(o.At, 2*o.Radius) }
func (o Circle) hit(p Point, _ Camera) bool {
	return math.Hypot(p.X-o.At.X, p.Y-o.At.Y) <= o.Radius
}

func (t Text) extent(Camera) Area     { return Area{t.At.X, t.At.Y, 0, 0} }
func (t Text) hit(Point, Camera) bool { return false }

func (i Icon) extent(c Camera) Area       { return Around(i.At, i.Size/c.scale()) }
func (i Icon) hit(p Point, c Camera) bool { return i.extent(c).Contains(p) }

func (l Lid) extent(c Camera) Area { return Around(l.At, l.Size/c.scale()) }
func (l Lid) hit(p Point, c Camera) bool {
	sin, cos := math.Sincos(-l.Turn * math.Pi / 180)
	d := p.Sub(l.At)
	return l.extent(c).Contains(l.At.Add(Point{d.X*cos - d.Y*sin, d.X*sin + d.Y*cos}))
}

func (f Photo) corners() []Point {
	return []Point{f.At, f.At.Add(f.Side), f.At.Add(f.Side).Add(f.Up), f.At.Add(f.Up)}
}
func (f Photo) extent(Camera) Area         { return hull(f.corners()) }
func (f Photo) hit(p Point, _ Camera) bool { return within(p, f.corners()) }

func (p Pane) extent(Camera) Area         { return p.Clip }
func (p Pane) hit(q Point, _ Camera) bool { return p.Clip.Contains(q) }

// reach returns how far from the stroke's middle p may be in the world seen by c.
func (s Stroke) reach(c Camera) float64 { return max(reach, s.Width/2) / c.scale() }

// Refs are what the marks stand for, each once, in the order in which they were
// painted; what is cut off by its pane is left out.
func (s Scene) Refs() []Ref { return s.In(everywhere) }

// Where is the smallest area that holds a mark that stands for ref; false
// when none does. Of several marks the one painted last counts.
func (s Scene) Where(ref Ref) (Area, bool) { return where(s.Marks, ref, Camera{}) }

func where(marks []Mark, ref Ref, c Camera) (Area, bool) {
	for _, m := range slices.Backward(marks) {
		if pane, ok := m.(Pane); ok {
			if a, found := where(pane.Marks, ref, pane.Camera.Then(c)); found {
				return pane.Camera.ScreenArea(a).Intersect(pane.Clip), true
			}
			continue
		}
		if m.tag().Ref == ref {
			return m.extent(c), true
		}
	}
	return Area{}, false
}
