package state

import (
	"fmt"
	"math"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
)

// photoCommands lay a photograph of the ground under the map and scale it.
var photoCommands = []Command{
	{Name: "lay photograph", Does: "lay a photograph of the ground under the map", Word: "Photograph …", Why: noDraw, Do: func(s State) (State, []Effect) {
		return s, []Effect{ChooseFile{For: "lay photograph", Kinds: []string{".jpg", ".jpeg", ".png"}}}
	}},
	{Name: "scale photograph", Does: "scale the photograph by what was measured", Word: "Scale it", Why: noScale, Do: State.photoScaled},
	{Name: "take photograph off", Does: "take the photograph off the map", Word: "Take it off", Why: noPhoto, Do: State.photoOff},
}

// PhotoLength is the field of how long, in m, what was measured really is.
const PhotoLength = LayoutField + "length"

func noPhoto(s State) string {
	if why := noDraw(s); why != "" {
		return why
	}
	if len(s.groundPhoto().JPEG) == 0 {
		return "no photograph lies under the map"
	}
	return ""
}

func noScale(s State) string {
	switch why := noPhoto(s); {
	case why != "":
		return why
	case len(s.Laying.Ruler) != 2:
		return "measure something on the photograph first, with R and two clicks"
	}
	if v, ok := metresOf(s.Typed(PhotoLength)); !ok || v == 0 {
		return "write how long that really is, in metres"
	}
	return ""
}

func (s State) groundPhoto() book.GroundPictured { return s.Present().View.Yard(s.Laying.Yard).Picture }

type (
	// ReadPhoto reads a photograph; [PhotoRead] comes back.
	ReadPhoto struct{ Path string }
	// PhotoRead brings a photograph made small, or why there is none.
	PhotoRead struct {
		Name       string // of the file
		JPEG       []byte
		Wide, High int
		Wrong      string
	}
)

func (ReadPhoto) effect() {}
func (PhotoRead) msg()    {}

// photoRead is the window with a photograph laid under the map, as wide as all that
// is seen of the yard, to be scaled then.
func (s State) photoRead(m PhotoRead) (State, []Effect) {
	s.Busy = nil
	switch {
	case m.Wrong != "":
		s.Note = Note{m.Wrong, true}
		return s, nil
	case !s.OnLayout() || m.Wide == 0:
		return s, nil
	}
	sight := s.layingSight(groundMargin)
	return s.write("photograph "+m.Name+" laid under the map", calendar.Instantly(s.Now), book.GroundPictured{
		Yard: s.Laying.Yard, JPEG: m.JPEG, Wide: m.Wide, High: m.High,
		At: book.Point{X: sight.X, Y: -sight.Bottom()}, Scale: sight.W / float64(m.Wide),
	})
}

// photoScaled is the photograph as large as what was measured on it says; the first
// of the two points stays where it is.
func (s State) photoScaled() (State, []Effect) {
	really, _ := metresOf(s.Typed(PhotoLength))
	p, a, b := s.groundPhoto(), s.Laying.Ruler[0], s.Laying.Ruler[1]
	drawn := math.Hypot(b.X-a.X, b.Y-a.Y)
	if drawn == 0 {
		s.Note = Note{Text: "the two points are one: measure from one to another"}
		return s, nil
	}
	k := really / drawn
	p.Scale *= k
	p.At = book.Point{X: a.X + (p.At.X-a.X)*k, Y: a.Y + (p.At.Y-a.Y)*k}
	s = s.WithField(PhotoLength, Field{}).laid(func(l *Laying) { l.Ruler = nil })
	return s.write(fmt.Sprintf("photograph scaled: what was measured is %g m", really), calendar.Instantly(s.Now), p)
}

func (s State) photoOff() (State, []Effect) {
	return s.write("photograph taken off the map", calendar.Instantly(s.Now), book.GroundPictured{Yard: s.Laying.Yard})
}

// photoClear is how much of the ground shows through a photograph, so that what is
// drawn on it is seen.
const photoClear = 0.35

// PhotoOf is a photograph of the ground as a mark, looked at so.
func PhotoOf(p book.GroundPictured, c scene.Camera) scene.Photo {
	sin, cos := math.Sincos(p.Turn * math.Pi / 180)
	wide, high := c.Length(p.Scale*float64(p.Wide)), c.Length(p.Scale*float64(p.High))
	return scene.Photo{
		JPEG: p.JPEG, At: c.Screen(OnGround(p.At)), Clear: photoClear,
		Side: scene.Point{X: cos, Y: sin}.Mul(wide), Up: scene.Point{X: sin, Y: -cos}.Mul(high),
	}
}
