package state

import (
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/yard"
	"lidmark/ui/scene"
)

// LayingAreas is how the room is divided while a try-out is worked at: the yard as
// it stands beside the try-out, the figures below, what it changes on the right. An
// empty area has no room, or has not its turn.
type LayingAreas struct {
	Turns   scene.Area // the words that give the turn to one part, where not all have room
	Tools   scene.Area // what is done with the stands
	Now     scene.Area // the frame of the yard as it stands
	Try     scene.Area // that of the try-out
	Figures scene.Area
	Panel   scene.Area
}

// Measures of a layout that fills the room, dp.
const (
	layingHead    = 38.0 // above a map: its title
	layingTools   = 44.0
	layingTools2  = 72.0  // in two rows
	layingToolRow = 900.0 // from so wide on they stand in one
	layingFigures = 220.0
	layingFigLow  = 190.0 // in a low window
	layingFigPart = 0.33  // of the height that the figures take at most
	layingScale   = 24.0  // under a map: its scale
	layingMapLow  = 300.0
	layingBoth    = 860.0 // from so wide on both maps stand side by side
	layingGap     = 14.0
)

// emptySight is how far around its origin a yard shows on whose ground nothing is, m.
const emptySight = 15.0

// LayingAreas are where the parts of a layout stand.
func (s State) LayingAreas() (a LayingAreas) {
	l := s.Layout()
	main := l.Main
	a.Panel = l.Card
	if l.Card.Empty() {
		a.Turns, main = cutTop(main, HeadHeight)
		if s.Part == SidePart {
			a.Panel = main
			return a
		}
	}
	tools, low := layingTools, s.underBand(main).H // what has room has it on every day
	if main.W < layingToolRow && low > layingMapLow {
		tools = layingTools2
	}
	a.Tools, main = cutTop(main, tools)
	figures := min(max(layingFigLow, layingFigPart*(low-tools)), layingFigures)
	if low-tools-figures >= layingMapLow {
		main.H -= figures
		a.Figures = scene.Area{X: main.X, Y: main.Bottom(), W: main.W, H: figures}
	}
	frame := scene.Area{X: main.X + MapSide, Y: main.Y + layingHead, W: main.W - 2*MapSide, H: max(0, main.H-layingHead-layingScale)}
	if main.W < layingBoth {
		a.Try = frame
		return a
	}
	half := (frame.W - layingGap) / 2
	a.Now = scene.Area{X: frame.X, Y: frame.Y, W: half, H: frame.H}
	a.Try = scene.Area{X: frame.X + half + layingGap, Y: frame.Y, W: half, H: frame.H}
	return a
}

// LayingCamera looks at the try-out in its frame; that of the yard as it stands is
// the same, moved to its own.
func (s State) LayingCamera(frame scene.Area) scene.Camera {
	try := s.LayingAreas().Try
	c := s.Laying.Camera
	if c == (scene.Camera{}) {
		return s.steady(s.layingSight(groundMargin), s.layingSight(wholeMargin), frame)
	}
	return scene.Camera{Scale: c.Scale, Shift: c.Shift.Add(scene.Point{X: frame.X - try.X, Y: frame.Y - try.Y})}
}

// layingSight is all that stands, now and in the try-out, and what is drawn with a margin.
// While a stand is dragged the ground stays where it is.
func (s State) layingSight(margin float64) scene.Area {
	try := s.Laying.Try
	if d := s.Drag.Laying; d != nil {
		try = d.Try
	}
	all := s.Present().within(s.Laying.Yard, margin)
	if all.Empty() {
		all = scene.Between(scene.Point{X: -emptySight, Y: -emptySight}, scene.Point{X: emptySight, Y: emptySight})
	}
	far := scene.Point{X: sightMargin, Y: sightMargin}
	points := append(make([]scene.Point, 0, 2*len(try.Stands)+2), scene.Point{X: all.X, Y: all.Y}, scene.Point{X: all.Right(), Y: all.Bottom()})
	for _, st := range try.Stands {
		p := OnGround(st.At)
		points = append(points, p.Sub(far), p.Add(far))
	}
	return around(points, 0)
}

// onTry is the point of the ground under a point of the try-out's frame.
func (s State) onTry(p scene.Point) book.Point {
	w := s.LayingCamera(s.LayingAreas().Try).World(p)
	return book.Point{X: w.X, Y: -w.Y}
}

// triedHeld is the window as a stand of the try-out is taken hold of.
func (s State) triedHeld() State {
	if _, ok := standOf(s.Drag.Tag.Ref); !ok || !s.OnLayout() || s.Measuring() || noEdit(s) != "" || s.Drawing.What != 0 {
		s.Drag.Kind = Held
		return s
	}
	s.Drag.Laying = s.Laying
	return s
}

func (l *Laying) has(id book.StandID) bool {
	return slices.Contains(l.Pick, id)
}

// triedDragged is the window with the picked stands as far from where they were as
// the pointer went; on the grid by the one that is held, which is picked alone if it
// was not.
func (s State) triedDragged() State {
	s.Laying = s.Drag.Laying
	id, _ := standOf(s.Drag.Tag.Ref)
	if !s.Drag.far() {
		return s
	}
	if !s.Laying.has(id) {
		s = s.picked(false, id)
	}
	from := s.Laying
	a, b := s.onTry(s.Drag.From), s.onTry(s.Drag.To)
	east, north := b.X-a.X, b.Y-a.Y
	if from.Grid > 0 {
		at := standAt(from.Try, id)
		snap := func(x float64) float64 { return math.Round(x/from.Grid) * from.Grid }
		east, north = snap(at.X+east)-at.X, snap(at.Y+north)-at.Y
	}
	return s.stoodSo(from.Try.Moved(from.Pick, east, north))
}

func standAt(l yard.Layout, id book.StandID) book.Point {
	for _, st := range l.Stands {
		if st.ID == id {
			return st.At
		}
	}
	return book.Point{}
}

// triedBanded picks the stands of the try-out in the rubber band.
func (s State) triedBanded(d Drag) State {
	band := s.LayingCamera(s.LayingAreas().Try).WorldArea(scene.Between(d.From, d.To))
	var ids []book.StandID
	for _, st := range s.Laying.Try.Stands {
		if band.Contains(OnGround(st.At)) {
			ids = append(ids, st.ID)
		}
	}
	pick := s.Laying.Pick
	s = s.picked(false, ids...)
	if d.Add {
		s = s.laid(func(l *Laying) { l.Pick = append(append(yard.Pick{}, pick...), l.Pick...) })
	}
	return s
}

// inTry tells whether a thing of the scene belongs to the try-out: its ground or a
// stand of it.
func inTry(r scene.Ref) bool { return r.Kind == TriedRef || r == TryGround }

// TryGround is the ground of the try-out.
var TryGround = scene.Ref{Kind: PaneRef, ID: "try-out"}

// panned is the window with the map looked at so, or the try-out where one is worked
// at.
func (s State) panned(c scene.Camera) State {
	if s.OnLayout() {
		return s.laid(func(l *Laying) { l.Camera, l.Still = c, false })
	}
	return s.looking(c)
}

// wheeledTry brings the try-out nearer or further.
func (s State) wheeledTry(m Wheeled) State {
	factor := zoomStep
	if m.DY > 0 {
		factor = 1 / zoomStep
	}
	return s.zoomedTry(m.At, factor)
}

func (s State) zoomedTry(at scene.Point, factor float64) State {
	c := s.LayingCamera(s.LayingAreas().Try).Zoom(at, factor)
	return s.laid(func(l *Laying) { l.Camera, l.Still = c, false })
}
