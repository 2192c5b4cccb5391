package state

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/plan"
)

// tool is how a kind of feature is drawn: its key, whether it is one point, and the
// usual height and width in metres, which the keeper may type otherwise.
type tool struct {
	what          book.FeatureKind
	word          string
	point         bool
	least         int // points
	height, width float64
	closed        bool // an outline: its last point is its first
	mass          bool // its word has no article
}

// tools are what is drawn, in the order of the toolbar. Usual heights and widths are
// common practice, no source; the keeper measures.
var tools = []tool{
	{what: book.Boundary, word: "boundary", least: 3, closed: true},
	{what: book.Hedge, word: "hedge", least: 2, height: 2, width: 1},
	{what: book.Wall, word: "wall", least: 2, height: 1, width: 0.5},
	{what: book.Tree, word: "tree", point: true, least: 1, height: 6, width: 4},
	{what: book.Water, word: "water", least: 1, width: 1.5, mass: true}, // one point is a pond
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

// The fields of what is drawn: its next point, m of height, m of width, and its name.
// The wind's is the bearing from which it mostly blows.
const (
	DrawPoint  = LayoutField + "point"
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
			Name: "draw " + t.word, Does: "draw " + t.one() + " on the ground", Word: plan.Sentence(t.word), Why: noDraw,
			Do: func(s State) (State, []Effect) { return s.drawingBegun(t.what) },
		})
	}
	return append(all,
		Command{Name: "finish drawing", Does: "write down what was drawn", Word: "Done", Keys: "F", Why: noFinish, Do: State.drawn},
		Command{Name: "add point", Does: "", Word: "Add", Why: noTyped, Do: State.pointTyped},
		Command{Name: "point back", Does: "take the last point back", Word: "Point back", Keys: "BackSpace", Why: noPoint, Do: pure(State.pointBack)},
		Command{Name: "wipe feature", Does: "wipe the chosen thing off the ground", Word: "Wipe it off", Keys: "Delete", Why: noFeature, Do: State.wiped},
		Command{Name: "change feature", Does: "change the chosen thing on the ground", Word: "Change", Why: noChange, Do: State.changedFeature},
		Command{Name: "set wind", Does: "say from where the wind mostly blows", Word: "Set", Why: noWind, Do: State.windSaid},
	)
}

// one is the word with its article.
func (t tool) one() string {
	if t.mass {
		return t.word
	}
	return "a " + t.word
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
		return toolOf(s.Drawing.What).one() + " takes " + pointsWord(toolOf(s.Drawing.What).least) + " at least: click on the ground"
	}
	return ""
}

// pointsWord counts points.
func pointsWord(n int) string {
	if n == 1 {
		return "one point"
	}
	return fmt.Sprintf("%d points", n)
}

func noTyped(s State) string {
	if why := noDraw(s); why != "" {
		return why
	}
	if s.Drawing.What == 0 {
		return "choose what to draw first"
	}
	if _, ok := pointOf(s.Typed(DrawPoint)); !ok {
		return "write metres to the east and to the north of 0,0, such as 12 4.5"
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
