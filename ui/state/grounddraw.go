package state

import (
	"fmt"
	"math"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
)

// Drawing is something being drawn on a yard's ground, point by point, beside its
// try-out. The zero Drawing is none.
type Drawing struct {
	What   book.FeatureKind
	Points []book.Point
}

// drawingBegun is the window with something to be drawn; what was drawn before is
// written if it is whole. The same again puts the tool down.
func (s State) drawingBegun(k book.FeatureKind) (State, []Effect) {
	same := s.Drawing.What == k
	s, effects := s.drawingLeft()
	if same {
		return s, effects
	}
	s.Drawing, s.Selection = Drawing{What: k}, Selection{}
	t := toolOf(k)
	for field, usual := range map[string]float64{DrawHeight: t.height, DrawWidth: t.width} {
		text := ""
		if usual > 0 {
			text = fmt.Sprint(usual)
		}
		s = s.WithField(field, FieldOf(text))
	}
	return s.picked(false).stilled(), effects
}

// drawingLeft puts the tool down and writes what is drawn if it is whole; else it says
// that it is not kept.
func (s State) drawingLeft() (State, []Effect) {
	var effects []Effect
	if noFinish(s) == "" {
		s, effects = s.drawn()
	}
	return s.drawingDropped(), effects
}

// drawingDropped puts the tool down; what is drawn so far is not kept, which is said.
func (s State) drawingDropped() State {
	if n := len(s.Drawing.Points); n > 0 {
		s.Note = Note{Text: fmt.Sprintf("%s of %s not kept", s.DrawWord(), pointsWord(n))}
	}
	s.Drawing = Drawing{}
	for _, name := range []string{DrawPoint, DrawHeight, DrawWidth, DrawLabel} {
		if s.InField() == name {
			s.Focus = scene.Ref{}
		}
		s = s.WithField(name, Field{})
	}
	return s
}

// DrawAsks are the fields that what is drawn has.
func (s State) DrawAsks() []string { return toolOf(s.Drawing.What).asks() }

func (t tool) asks() (fields []string) {
	if t.height > 0 {
		fields = append(fields, DrawHeight)
	}
	if t.width > 0 {
		fields = append(fields, DrawWidth)
	}
	return append(fields, DrawLabel)
}

// groundClicked adds a point to what is drawn.
func (s State) groundClicked(at scene.Point) (State, []Effect) {
	p := s.onTry(at)
	return s.pointAdded(book.Point{X: decimetres(p.X), Y: decimetres(p.Y)})
}

// pointAdded adds a point to what is drawn. A tree or a vehicle has one: the next
// begins another, and the one before is written.
func (s State) pointAdded(p book.Point) (State, []Effect) {
	var effects []Effect
	if toolOf(s.Drawing.What).point && len(s.Drawing.Points) > 0 {
		s, effects = s.drawn()
	}
	s.Drawing.Points = append(s.Drawing.Points[:len(s.Drawing.Points):len(s.Drawing.Points)], p)
	return s, effects
}

// pointTyped adds the point that is typed, and brings it into sight.
func (s State) pointTyped() (State, []Effect) {
	p, _ := pointOf(s.Typed(DrawPoint))
	s, effects := s.WithField(DrawPoint, Field{}).pointAdded(p)
	try := s.LayingAreas().Try
	c := s.LayingCamera(try)
	if on := OnGround(p); !try.Contains(c.Screen(on)) {
		sight := c.WorldArea(try)
		c = scene.Fit(around([]scene.Point{{X: sight.X, Y: sight.Y}, {X: sight.Right(), Y: sight.Bottom()}, on}, sightMargin), try)
		s = s.laid(func(l *Laying) { l.Camera = c })
	}
	return s.focused(FieldNamed(DrawPoint)), effects
}

// pointOf is a typed point, m to the east and to the north: "12 4.5", "12,4.5" or with
// decimal commas "12,5 4,5".
func pointOf(typed string) (p book.Point, ok bool) {
	parts := strings.FieldsFunc(typed, func(r rune) bool { return r == ' ' || r == ';' })
	if len(parts) == 1 {
		parts = strings.Split(parts[0], ",")
	}
	if len(parts) != 2 {
		return p, false
	}
	x, east := measureOf(strings.TrimSuffix(parts[0], ","))
	y, north := measureOf(parts[1])
	return book.Point{X: x, Y: y}, east && north
}

// enterDrawing is what Enter does in a field of what is drawn: a typed point is added,
// else it is done.
func (s State) enterDrawing() (State, []Effect) {
	if s.Typed(DrawPoint) != "" {
		return run(s, "add point")
	}
	return run(s, "finish drawing")
}

// drawn writes down what was drawn, and keeps the tool for the next.
func (s State) drawn() (State, []Effect) {
	t := toolOf(s.Drawing.What)
	s.Pen.IDs.Deed()
	f := book.FeatureDrawn{
		Feature: book.FeatureID(s.Pen.IDs.Next()), Yard: s.Laying.Yard, What: t.what, Points: s.Drawing.Points, Label: s.Typed(DrawLabel),
		Height: t.height, Width: t.width,
	}
	if t.closed && f.Points[0] != f.Points[len(f.Points)-1] {
		f.Points = append(f.Points[:len(f.Points):len(f.Points)], f.Points[0])
	}
	for field, to := range map[string]*float64{DrawHeight: &f.Height, DrawWidth: &f.Width} {
		if v, ok := metresOf(s.Typed(field)); ok {
			*to = v
		}
	}
	s.Drawing.Points = nil
	s = s.WithField(DrawLabel, Field{})
	return s.write(strings.TrimSpace(t.word+" "+f.Label)+" drawn", calendar.Instantly(s.Now), f)
}

func (s State) pointBack() State {
	s.Drawing.Points = s.Drawing.Points[:len(s.Drawing.Points)-1]
	return s
}

// stilled is the window with the map of the try-out looked at as it is now, however
// what is drawn grows; released it shows all again, unless it was moved by hand.
func (s State) stilled() State {
	if s.Laying.Camera != (scene.Camera{}) {
		return s
	}
	c := s.LayingCamera(s.LayingAreas().Try)
	return s.laid(func(l *Laying) { l.Camera, l.Still = c, true })
}

func (s State) unstilled() State {
	if !s.Laying.Still {
		return s
	}
	return s.laid(func(l *Laying) { l.Camera, l.Still = scene.Camera{}, false })
}

// DrawPointer is where the pointer is on the ground while something is drawn there, and
// how far that is from the last point, m; not ok where it is elsewhere.
func (s State) DrawPointer() (at book.Point, long float64, ok bool) {
	if !s.OnLayout() || s.Drawing.What == 0 || !s.LayingAreas().Try.Contains(s.Pointer) {
		return at, 0, false
	}
	at = s.onTry(s.Pointer)
	if n := len(s.Drawing.Points); n > 0 {
		last := s.Drawing.Points[n-1]
		long = math.Hypot(at.X-last.X, at.Y-last.Y)
	}
	return at, long, true
}
