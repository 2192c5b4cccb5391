package state

import (
	"cmp"
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
)

// GroundOptions say how a file of a yard's ground is meant.
type GroundOptions struct {
	Lines  book.FeatureKind // lines and outlines that do not say what they are
	Points book.FeatureKind // points that do not
	Stands bool             // points that do not are stands
	Swap   bool             // latitude and longitude stand in each other's place
	Far    bool             // it may lie far from the yard
}

type (
	// ReadGround reads a file of a yard's ground, GeoJSON or GPX; [GroundRead] comes back.
	ReadGround struct {
		Path    string
		Yard    book.YardID
		Options GroundOptions
	}
	// GroundRead is what a file has that the book does not hold yet, new things without
	// an id; or why nothing was read, as a sentence.
	GroundRead struct {
		ReadGround
		Facts   []book.Fact
		Notes   []string
		Wrong   string
		Swapped bool // it lies near with latitude and longitude changed over
		MayFar  bool // it lies far, and may
	}
)

func (ReadGround) effect() {}
func (GroundRead) msg()    {}

// groundKinds are what lines and points of a file may be that do not say it; zero are
// stands.
var (
	lineKinds  = []book.FeatureKind{book.Boundary, book.Hedge, book.Wall, book.Water, book.Track, book.Dwelling, book.ColdHollow}
	pointKinds = []book.FeatureKind{book.Tree, 0, book.VehicleSpot}
)

// groundFileCommands take a ground in and look at it first.
var groundFileCommands = allGroundFiles()

func allGroundFiles() []Command {
	all := []Command{
		{Name: "take in ground", Does: "take in what is drawn of a yard: GeoJSON, or tracks and waypoints of GPX", Word: "Take in a ground", Why: noGroundFile, Do: func(s State) (State, []Effect) {
			return s, []Effect{ChooseFile{For: "take in ground", Kinds: groundEndings}}
		}},
		{Name: "keep ground", Does: "", Word: "Take it in", Why: noGroundKept, Do: State.groundKept},
		{Name: "leave ground", Does: "", Word: "Leave it", Why: noGroundRead, Do: pure(State.groundLeft)},
		{Name: "swap ground", Does: "", Word: "Swap them", Why: noGroundRead, Do: rereading(func(o *GroundOptions) { o.Swap = !o.Swap })},
		{Name: "far ground", Does: "", Word: "It is far away", Why: noGroundRead, Do: rereading(func(o *GroundOptions) { o.Far = true })},
	}
	for _, k := range lineKinds {
		all = append(all, Command{Name: "lines are " + k.String(), Does: "", Word: k.String(), Why: noGroundRead, Do: rereading(func(o *GroundOptions) { o.Lines = k })})
	}
	for _, k := range pointKinds {
		all = append(all, Command{Name: "points are " + pointWord(k), Does: "", Word: pointWord(k), Why: noGroundRead, Do: rereading(func(o *GroundOptions) { o.Points, o.Stands = k, k == 0 })})
	}
	return all
}

func pointWord(k book.FeatureKind) string {
	if k == 0 {
		return "stand"
	}
	return k.String()
}

// groundEndings are how files end that have a ground.
var groundEndings = []string{".geojson", ".gpx", ".json"}

// isGround tells whether a file is one of a ground by its name.
func isGround(path string) bool {
	path = strings.ToLower(path)
	return strings.HasSuffix(path, groundEndings[0]) || strings.HasSuffix(path, groundEndings[1])
}

func noGroundFile(s State) string {
	if why := noLayout(s); why != "" {
		return why
	}
	return noPen(s)
}

func noGroundRead(s State) string {
	if why := noGroundFile(s); why != "" {
		return why
	}
	if !s.OnLayout() || s.Brought == nil {
		return "no file of a ground is being looked at"
	}
	return ""
}

func noGroundKept(s State) string {
	switch why := noGroundRead(s); {
	case why != "":
		return why
	case s.Brought.Wrong != "":
		return s.Brought.Wrong
	case len(s.Brought.Facts) == 0:
		return "the book has all of it"
	}
	return ""
}

// choseGround has a file of a ground read for the yard that the map shows.
func (s State) choseGround(path string) (State, []Effect) {
	if why := noGroundFile(s); why != "" {
		s.Note = Note{"a ground is drawn in a book: " + why, true}
		return s, nil
	}
	s.Busy, s.Note = &Busy{"the ground is read", -1}, Note{}
	return s, []Effect{ReadGround{Path: path, Yard: s.MapYard(), Options: GroundOptions{Lines: book.Boundary, Points: book.Tree}}}
}

// rereading reads the file anew, meant otherwise.
func rereading(change func(*GroundOptions)) func(State) (State, []Effect) {
	return func(s State) (State, []Effect) {
		e := s.Brought.ReadGround
		change(&e.Options)
		return s, []Effect{e}
	}
}

// groundRead is the window with what a file has of a ground to be looked at, on the map
// and in words, before it is kept.
func (s State) groundRead(m GroundRead) State {
	s.Busy = nil
	if noGroundFile(s) != "" || s.MapYard() != m.Yard && !s.OnLayout() {
		return s
	}
	if m.Wrong != "" && !m.Swapped && !m.MayFar {
		s.Note, s.Brought = Note{m.Wrong, true}, nil
		return s
	}
	if !s.OnLayout() {
		s = s.toLayout()
	}
	if s.Laying.Yard != m.Yard {
		return s
	}
	s.Brought, s.Selection = &m, Selection{}
	s = s.drawingDropped().unstilled().laid(func(l *Laying) { l.Ground = true })
	if s.Laying.Camera != (scene.Camera{}) { // it was moved by hand
		return s
	}
	sight := s.layingSight(groundMargin)
	points := []scene.Point{{X: sight.X, Y: sight.Y}, {X: sight.Right(), Y: sight.Bottom()}}
	for _, f := range m.Facts {
		for _, p := range pointsOf(f) {
			points = append(points, OnGround(p))
		}
	}
	c := scene.Fit(around(points, groundMargin), s.LayingAreas().Try)
	return s.laid(func(l *Laying) { l.Camera, l.Still = c, true })
}

// pointsOf are the points of what a file has.
func pointsOf(f book.Fact) []book.Point {
	switch f := f.(type) {
	case book.FeatureDrawn:
		return f.Points
	case book.StandSet:
		return []book.Point{f.At}
	}
	return nil
}

func (s State) groundLeft() State {
	s.Brought = nil
	return s
}

// groundKept writes down what was looked at.
func (s State) groundKept() (State, []Effect) {
	facts := make([]book.Fact, len(s.Brought.Facts))
	s.Pen.IDs.Deed()
	for i, f := range s.Brought.Facts {
		switch f := f.(type) {
		case book.FeatureDrawn:
			f.Feature = cmp.Or(f.Feature, book.FeatureID(s.Pen.IDs.Next()))
			facts[i] = f
		case book.StandSet:
			f.Stand = cmp.Or(f.Stand, book.StandID(s.Pen.IDs.Next()))
			facts[i] = f
		}
		if err := rules.Plausible(facts[i]); err != nil {
			s.Note = Note{err.Error() + "; nothing was taken in", true}
			return s, nil
		}
	}
	name, _ := FileName(s.Brought.Path)
	s.Brought = nil
	return s.write(fmt.Sprintf("ground from %s: %s", name, counted(len(facts), "thing")), calendar.Instantly(s.Now), facts...)
}

// GroundBrought is what a file has of a ground, while it is looked at before it is kept.
type GroundBrought struct {
	Name    string // of the file
	Lines   []string
	Wrong   string
	Options GroundOptions
	Facts   []book.Fact
	Buttons []string // the commands that go on from here
}

// GroundBrought is what comes in, in words; nil where nothing does.
func (s State) GroundBrought() *GroundBrought {
	if !s.OnLayout() || s.Brought == nil {
		return nil
	}
	m := s.Brought
	g := &GroundBrought{Wrong: m.Wrong, Options: m.Options, Facts: m.Facts, Buttons: []string{"keep ground", "leave ground"}}
	g.Name, _ = FileName(m.Path)
	const most = 12
	names := line.In(s.Present().View)
	for i, f := range m.Facts {
		if i == most {
			g.Lines = append(g.Lines, fmt.Sprintf("and %d more", len(m.Facts)-most))
			break
		}
		g.Lines = append(g.Lines, line.Words(f, names))
	}
	if len(m.Facts) == 0 && m.Wrong == "" {
		g.Lines = []string{"nothing that the book does not have"}
	}
	g.Lines = append(g.Lines, m.Notes...)
	if m.Swapped {
		g.Buttons[0] = "swap ground"
	} else if m.MayFar {
		g.Buttons[0] = "far ground"
	}
	return g
}

// GroundMeant tells whether a command says what lines or points of the file are as they
// are read.
func (s State) GroundMeant(command string) bool {
	b := s.Brought
	return b != nil && (command == "lines are "+b.Options.Lines.String() || command == "points are "+pointWord(b.Options.Points))
}

// GroundMeanings are the commands that say what lines and points of the file are.
func GroundMeanings() (lines, points []string) {
	for _, k := range lineKinds {
		lines = append(lines, "lines are "+k.String())
	}
	for _, k := range pointKinds {
		points = append(points, "points are "+pointWord(k))
	}
	return lines, points
}
