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
	mapLine = 32.0 // the line of reason, in the foot
	// How much shows around what is drawn in a yard, at least, and around what stands in
	// it, m.
	groundMargin = 1.0
	wholeMargin  = 0.2
	sightMargin  = 3.0
	// PlaceApart is how far apart the places of a row are drawn at first, m, since
	// nobody measured them.
	PlaceApart = 1.0
)

// Measures of the signs beside a map that stands alone, dp.
const (
	MapLegendColumn = 166.0
	MapLegendRow    = 21.0 // of a sign where there is room,
	MapLegendLeast  = 17.0 // and at least
	mapLegendAll    = 17   // signs that there may be
	mapLegendFrom   = 420.0
	mapLegendTwo    = 760.0 // a pane from so wide on has two columns where one is too low
)

// MapLegend is where the signs on a map that has no lids beside it are explained, in
// columns; empty where lids explain them, or there is no room. It depends on no day: the
// ground beside it stays where it is.
func (l Layout) MapLegend() scene.Area {
	if l.MapTurns() || l.Map.W < mapLegendFrom || !l.Main.Empty() || l.Ribbon.Empty() { // a picture of a new yard has no days
		return scene.Area{}
	}
	a := scene.Area{Y: l.Map.Y + MapHead, H: max(0, l.Map.H-MapHead-mapLine), W: MapLegendColumn}
	if a.H < mapLegendAll*MapLegendLeast && l.Map.W >= mapLegendTwo {
		a.W *= 2
	}
	a.X = l.Map.Right() - a.W
	return a
}

// MapTurns tells whether the map has its turn: its head is that of the turns, and one row
// below it holds both the signs and what is pointed at.
func (l Layout) MapTurns() bool { return !l.Turns.Empty() && !l.Map.Empty() }

// MapRow is the row below a map that has its turn.
func (l Layout) MapRow() scene.Area {
	_, row := cutTop(l.Map, l.Map.H-mapLine)
	return row
}

// MapFrame is where the ground shows in the map's pane: all of it where the map has its
// turn.
func (l Layout) MapFrame() scene.Area {
	if l.MapTurns() {
		frame, _ := cutTop(l.Map, max(0, l.Map.H-mapLine))
		return frame
	}
	return scene.Area{
		X: l.Map.X + MapSide, Y: l.Map.Y + MapHead,
		W: max(0, l.Map.W-2*MapSide-l.MapLegend().W), H: max(0, l.Map.H-MapHead-MapFoot),
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

func (r *Reading) readGround(yard book.YardID) scene.Area { return r.within(yard, groundMargin) }

// within is the area of a yard around all that stands in it, and what is drawn in it with
// a margin.
func (r *Reading) within(yard book.YardID, margin float64) scene.Area {
	var points []scene.Point
	reaches := func(p scene.Point, far float64) {
		d := scene.Point{X: far, Y: far}
		points = append(points, p.Sub(d), p.Add(d))
	}
	for _, p := range r.stood(yard) {
		reaches(p, sightMargin)
	}
	for _, f := range r.View.Yard(yard).Features {
		for _, p := range f.Points {
			reaches(OnGround(p), f.Width/2+margin)
		}
	}
	return around(points, 0)
}

// Drawn is the area of a yard from edge to edge of what is drawn in it, in the metres of
// [OnGround].
func (r *Reading) Drawn(yard book.YardID) scene.Area {
	var points []scene.Point
	for _, f := range r.View.Yard(yard).Features {
		for _, p := range f.Points {
			points = append(points, OnGround(p))
		}
	}
	return around(points, 0)
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
	for _, s := range r.Standing(yard) {
		half := s.rowEnd()
		points = append(points, s.On.Add(half), s.On.Sub(half))
	}
	for _, c := range r.Colonies(yard) {
		points = append(points, OnGround(c.At))
	}
	return points
}

// rowEnd is where the row of a stand's places in use ends, from its middle, m.
func (s *Standing) rowEnd() scene.Point {
	if !s.Row() {
		return scene.Point{}
	}
	first, last := s.InUse()
	sin, cos := math.Sincos(s.Turn * math.Pi / 180)
	return scene.Point{X: cos, Y: sin}.Mul(float64(last-first+1) * PlaceApart / 2)
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
	return s.fit(yard, s.Layout().MapFrame())
}

// fit is the camera that shows a yard in a frame, with all that is drawn in it: but for
// what is drawn so far off that what stands would be less than half as large.
func (s State) fit(yard book.YardID, frame scene.Area) scene.Camera {
	const half = 0.5
	ground, sight := s.Reading().Ground(yard), s.Reading().Sight(yard)
	all, stood := s.steady(ground, s.Reading().within(yard, wholeMargin), frame), s.steady(sight, sight, frame)
	if all.Scale >= half*stood.Scale {
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
	return pure(func(s State) State {
		if s.OnLayout() {
			return s.zoomedTry(s.LayingAreas().Try.Centre(), factor)
		}
		return s.zoomed(s.Layout().MapFrame().Centre(), factor)
	})
}

// fitted is the map back at the whole yard.
func (s State) fitted() State {
	if s.OnLayout() {
		return s.laid(func(l *Laying) { l.Camera, l.Still = scene.Camera{}, false })
	}
	s.Map = maps.Clone(s.Map)
	delete(s.Map, s.MapYard())
	return s
}
