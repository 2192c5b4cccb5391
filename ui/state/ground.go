package state

import (
	"maps"
	"math"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// OnGround is a place of a yard as a scene's world has it: metres, x to the
// east, y to the south.
func OnGround(p book.Point) scene.Point { return scene.Point{X: p.X, Y: -p.Y} }

// Margins of the map in its pane, dp: its head, its scale, the line below.
const (
	MapSide = 10.0
	MapHead = HeadHeight
	MapFoot = 66.0
	// How much shows around what is in a yard, and around what stands in it, m.
	groundMargin = 2.5
	sightMargin  = 3.0
	// PlaceApart is how far apart the places of a row are drawn at first, m, since
	// nobody measured them.
	PlaceApart = 1.0
)

// MapFrame is where the ground shows in the map's pane.
func (l Layout) MapFrame() scene.Area {
	return scene.Area{
		X: l.Map.X + MapSide, Y: l.Map.Y + MapHead,
		W: max(0, l.Map.W-2*MapSide), H: max(0, l.Map.H-MapHead-MapFoot),
	}
}

// MapYard is the yard the map shows: the room's, or that of the nuc chosen, or
// the one with the most nucs.
func (s State) MapYard() book.YardID {
	if yard := s.Filled(); !yard.IsZero() {
		return yard
	}
	if n := s.chosen(); n != nil {
		return n.Yard
	}
	return s.Reading().largestYard()
}

// largestYard is the yard with the most nucs, the first of equals.
func (r *Reading) largestYard() (largest book.YardID) {
	most := -1
	for y := range r.View.Yards() {
		if n := len(r.In(y.Yard)); n > most {
			largest, most = y.Yard, n
		}
	}
	return largest
}

// Ground is the area of a yard around all that stands and is drawn in it, in
// the metres of [OnGround].
func (r *Reading) Ground(yard book.YardID) scene.Area { return r.ground(yard) }

func (r *Reading) readGround(yard book.YardID) scene.Area {
	points := r.stood(yard)
	for _, f := range r.View.Yard(yard).Features {
		for _, p := range f.Points {
			points = append(points, OnGround(p))
		}
	}
	return around(points, groundMargin)
}

// Sight is what the map of a yard shows at first: all that stands in it, or where
// nothing does, all that is drawn.
func (r *Reading) Sight(yard book.YardID) scene.Area { return r.sight(yard) }

func (r *Reading) readSight(yard book.YardID) scene.Area {
	points := r.stood(yard)
	if len(points) == 0 {
		return r.Ground(yard)
	}
	return around(points, sightMargin)
}

// stood are the ends of all stands of a yard, and its colonies.
func (r *Reading) stood(yard book.YardID) (points []scene.Point) {
	for s := range r.View.Stands(yard) {
		half := rowEnd(s)
		points = append(points, OnGround(s.At).Add(half), OnGround(s.At).Sub(half))
	}
	for _, c := range r.Colonies(yard) {
		points = append(points, OnGround(c.At))
	}
	return points
}

// rowEnd is where the row of a stand's places ends, from its middle, m.
func rowEnd(s *book.Stand) scene.Point {
	if !isRow(s) {
		return scene.Point{}
	}
	sin, cos := math.Sincos(s.Turn * math.Pi / 180)
	return scene.Point{X: cos, Y: sin}.Mul(float64(s.Places) * PlaceApart / 2)
}

// around is the least area around points with a margin; without any it is empty.
func around(points []scene.Point, margin float64) scene.Area {
	if len(points) == 0 {
		return scene.Area{}
	}
	lo, hi := points[0], points[0]
	for _, p := range points {
		lo = scene.Point{X: min(lo.X, p.X), Y: min(lo.Y, p.Y)}
		hi = scene.Point{X: max(hi.X, p.X), Y: max(hi.Y, p.Y)}
	}
	return scene.Between(lo, hi).Inset(-margin)
}

// MapCamera is how the map looks at its yard.
func (s State) MapCamera() scene.Camera {
	yard := s.MapYard()
	if c, ok := s.Map[yard]; ok {
		return c
	}
	return s.Reading().fit(yard, s.Layout().MapFrame())
}

// fit is the camera that shows a yard in a frame: with all that is drawn in it where
// that makes what stands in it little smaller and the frame is not low, else what
// stands.
func (r *Reading) fit(yard book.YardID, frame scene.Area) scene.Camera {
	const little, low = 0.75, 320.0
	all, stood := scene.Fit(r.Ground(yard), frame), scene.Fit(r.Sight(yard), frame)
	if frame.H >= low && all.Scale >= little*stood.Scale {
		return all
	}
	return stood
}

// looking is the window with the map's camera at c.
func (s State) looking(c scene.Camera) State {
	next := maps.Clone(s.Map)
	if next == nil {
		next = map[book.YardID]scene.Camera{}
	}
	next[s.MapYard()] = s.inSight(c)
	s.Map = next
	return s
}

// inSight is a camera moved so that the ground does not leave the frame: the
// middle of the frame stays on it.
func (s State) inSight(c scene.Camera) scene.Camera {
	ground, middle := s.Reading().Ground(s.MapYard()), s.Layout().MapFrame().Centre()
	if ground.Empty() {
		return c
	}
	at := c.World(middle)
	kept := scene.Point{X: min(max(at.X, ground.X), ground.Right()), Y: min(max(at.Y, ground.Y), ground.Bottom())}
	return c.Pan(c.Screen(at).Sub(c.Screen(kept)))
}

// Limits of the map's scale, dp a metre.
const (
	leastScale = 2.0
	mostScale  = 120.0
)

// zoomed is the map zoomed about a point of the screen.
func (s State) zoomed(p scene.Point, factor float64) State {
	c := s.MapCamera()
	factor = min(max(c.Scale*factor, min(leastScale, c.Scale)), max(mostScale, c.Scale)) / c.Scale
	return s.looking(c.Zoom(p, factor))
}

func zoom(factor float64) func(State) (State, []Effect) {
	return pure(func(s State) State { return s.zoomed(s.Layout().MapFrame().Centre(), factor) })
}

// fitted is the map back at the whole yard.
func (s State) fitted() State {
	s.Map = maps.Clone(s.Map)
	delete(s.Map, s.MapYard())
	return s
}
