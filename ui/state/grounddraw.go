package state

import (
	"fmt"
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

// tool is how a kind of feature is drawn: its key, whether it is one point, and the
// usual height and width in metres, which the keeper may type otherwise.
type tool struct {
	what          book.FeatureKind
	word          string
	point         bool
	least         int // points
	height, width float64
	closed        bool // an outline: its last point is its first
}

// tools are what is drawn, in the order of the toolbar. Usual heights and widths are
// common practice, no source; the keeper measures.
var tools = []tool{
	{what: book.Boundary, word: "boundary", least: 3, closed: true},
	{what: book.Hedge, word: "hedge", least: 2, height: 2, width: 1},
	{what: book.Wall, word: "wall", least: 2, height: 1, width: 0.5},
	{what: book.Tree, word: "tree", point: true, least: 1, height: 6, width: 4},
	{what: book.Water, word: "water", least: 2, width: 1.5},
	{what: book.Track, word: "track", least: 2, width: 2.5},
	{what: book.VehicleSpot, word: "vehicle spot", point: true, least: 1},
	{what: book.Dwelling, word: "dwelling", least: 3, height: 5, closed: true},
	{what: book.ColdHollow, word: "cold hollow", least: 3, closed: true},
}

func toolOf(k book.FeatureKind) tool {
	for _, t := range tools {
		if t.what == k {
			return t
		}
	}
	return tool{}
}

// The fields of what is drawn: m of height, m of width, and its name. The wind's is
// the bearing from which it mostly blows.
const (
	DrawHeight = LayoutField + "height"
	DrawWidth  = LayoutField + "width"
	DrawLabel  = LayoutField + "label"
	DrawWind   = LayoutField + "wind"
)

// drawCommands draw the ground.
var drawCommands = allDraws()

func allDraws() (all []Command) {
	for _, t := range tools {
		all = append(all, Command{
			Name: "draw " + t.word, Does: "draw " + article(t.word) + " on the ground", Word: strings.ToUpper(t.word[:1]) + t.word[1:], Why: noDraw,
			Do: pure(func(s State) State { return s.drawingBegun(t.what) }),
		})
	}
	return append(all,
		Command{Name: "finish drawing", Does: "write down what was drawn", Word: "Done", Keys: "F", Why: noFinish, Do: State.drawn},
		Command{Name: "point back", Does: "take the last point back", Word: "Point back", Keys: "BackSpace", Why: noPoint, Do: pure(State.pointBack)},
		Command{Name: "wipe feature", Does: "wipe the chosen thing off the ground", Word: "Wipe it off", Keys: "Delete", Why: noFeature, Do: State.wiped},
		Command{Name: "set wind", Does: "say from where the wind mostly blows", Word: "Set", Why: noWind, Do: State.windSaid},
	)
}

func article(word string) string {
	if strings.ContainsRune("aeiou", rune(word[0])) {
		return "an " + word
	}
	return "a " + word
}

func noDraw(s State) string {
	if why := noTryOut(s); why != "" {
		return why
	}
	return noPen(s)
}

func noFinish(s State) string {
	switch why := noDraw(s); {
	case why != "":
		return why
	case s.Drawing.What == 0:
		return "choose what to draw first"
	case len(s.Drawing.Points) < toolOf(s.Drawing.What).least:
		return fmt.Sprintf("%s takes %d points at least: click on the ground", article(s.Drawing.What.String()), toolOf(s.Drawing.What).least)
	}
	return ""
}

func noPoint(s State) string {
	if why := noTryOut(s); why != "" {
		return why
	}
	if len(s.Drawing.Points) == 0 {
		return "no point is drawn"
	}
	return ""
}

func noFeature(s State) string {
	if why := noDraw(s); why != "" {
		return why
	}
	if _, ok := s.featureChosen(); !ok {
		return "choose what is drawn on the ground first"
	}
	return ""
}

func noWind(s State) string {
	if why := noDraw(s); why != "" {
		return why
	}
	if _, ok := degreesOf(s.Typed(DrawWind)); !ok {
		return "write the bearing from which it blows, degrees from north: 240"
	}
	return ""
}

// drawingBegun is the window with something to be drawn; the same again puts the tool
// down.
func (s State) drawingBegun(k book.FeatureKind) State {
	if s.Drawing.What == k {
		s.Drawing = Drawing{}
		return s
	}
	s.Drawing = Drawing{What: k}
	t := toolOf(k)
	for field, usual := range map[string]float64{DrawHeight: t.height, DrawWidth: t.width} {
		text := ""
		if usual > 0 {
			text = fmt.Sprint(usual)
		}
		s = s.WithField(field, FieldOf(text))
	}
	return s.picked(false)
}

// DrawAsks are the fields that what is drawn has.
func (s State) DrawAsks() (fields []string) {
	t := toolOf(s.Drawing.What)
	if t.height > 0 {
		fields = append(fields, DrawHeight)
	}
	if t.width > 0 {
		fields = append(fields, DrawWidth)
	}
	return append(fields, DrawLabel)
}

// groundClicked adds a point to what is drawn: a tree and the vehicle are done with
// one.
func (s State) groundClicked(at scene.Point) (State, []Effect) {
	p := s.onTry(at)
	points := append(s.Drawing.Points[:len(s.Drawing.Points):len(s.Drawing.Points)], book.Point{X: decimetres(p.X), Y: decimetres(p.Y)})
	s.Drawing.Points = points
	if toolOf(s.Drawing.What).point {
		return s.drawn()
	}
	return s, nil
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

// featureChosen is the feature of the yard that is selected.
func (s State) featureChosen() (book.FeatureDrawn, bool) {
	id := s.Selection.Last()
	for _, f := range s.Present().View.Yard(s.Laying.Yard).Features {
		if f.Feature.Subject() == id && !id.IsZero() {
			return f, true
		}
	}
	return book.FeatureDrawn{}, false
}

func (s State) wiped() (State, []Effect) {
	f, _ := s.featureChosen()
	s.Selection = Selection{}
	return s.write(strings.TrimSpace(f.What.String()+" "+f.Label)+" wiped off the ground", calendar.Instantly(s.Now), book.FeatureDrawn{Feature: f.Feature, Yard: f.Yard, What: f.What})
}

func (s State) windSaid() (State, []Effect) {
	from, _ := degreesOf(s.Typed(DrawWind))
	s = s.WithField(DrawWind, Field{})
	return s.write(fmt.Sprintf("wind mostly from %.0f°", from), calendar.Instantly(s.Now), book.WindSaid{Yard: s.Laying.Yard, From: from})
}
