package state

import (
	"fmt"

	"lidmark/domain/book"
)

// groundTools is the window with the tools of the ground in the place of those of the
// stands, or the other way round.
func (s State) groundTools() (State, []Effect) {
	s, effects := s.drawingLeft()
	s.Selection, s.Brought = Selection{}, nil
	s = s.laid(func(l *Laying) { l.Ground = !l.Ground })
	if s.Laying.Ground {
		return s.stilled(), effects
	}
	return s.unstilled(), effects
}

// GroundAsk is what is asked of the ground: a field, or none, and the command that takes
// it.
type GroundAsk struct {
	Word, Unit    string
	Field         string
	Now           string // what stands there while nothing is typed
	Command, Does string
	Says          string // what to type
	Wrong         string // why what is typed cannot be taken
	Short         bool   // the field is short though it has no unit
}

// DrawWord is what is being drawn; "" where nothing is.
func (s State) DrawWord() string { return toolOf(s.Drawing.What).word }

// GroundSays is what to do with the tool of the ground that is taken up.
func (s State) GroundSays() string {
	switch t := toolOf(s.Drawing.What); {
	case t.what == 0 && s.GroundChosen() != "":
		return "Chosen: " + s.GroundChosen() + ". Write what is to be otherwise, then Enter; undo takes it back."
	case t.what == 0:
		return "Choose above what to draw, then click on the right-hand map; or click on what is drawn there to change it. It goes into the book; undo takes it back."
	case t.point:
		return "Click where its middle is and say its measures; Enter or the next click writes it down. Esc puts the tool down."
	case t.least == 1:
		return "Click its points one after the other, then Enter; one alone is a pond. Backspace takes a point back, Esc puts the tool down."
	default:
		return fmt.Sprintf("Click its points one after the other, %d at least, then Enter. Backspace takes a point back, Esc puts the tool down.", t.least)
	}
}

// GroundAsks are the fields of what is drawn, of the wind and of the photograph.
func (s State) GroundAsks() (asks []GroundAsk) {
	if s.Drawing.What != 0 {
		asks = append(asks, GroundAsk{Word: "next point, m", Short: true, Field: DrawPoint, Now: s.pointerWords(), Command: "add point", Does: "Add", Says: "metres to the east and to the north of 0,0, such as 12 4.5; Enter adds the point"})
		for _, f := range s.DrawAsks() {
			asks = append(asks, s.drawAsk(f, s.Drawing.What))
		}
		return asks
	}
	if f, ok := s.featureChosen(); ok {
		asks = s.featureAsks(f)
	}
	wind := GroundAsk{Word: "wind mostly from", Field: DrawWind, Command: "set wind", Does: "Set", Short: true, Says: "from where it mostly blows: W, SSW, or degrees from north such as 240"}
	if from := s.Present().View.Yard(s.Laying.Yard).Wind; from.Said() {
		wind.Now = windWords(from.Value)
	}
	if s.Typed(DrawWind) != "" {
		wind.Wrong = noWind(s)
	}
	asks = append(asks, wind)
	if len(s.groundPhoto().JPEG) > 0 {
		asks = append(asks, GroundAsk{Word: "measured is really", Unit: "m", Field: PhotoLength, Command: "scale photograph", Does: "Scale"})
	}
	return asks
}

// drawAsk is what is asked of a kind of feature.
func (s State) drawAsk(field string, k book.FeatureKind) GroundAsk {
	words := map[string][2]string{DrawHeight: {"height", "m"}, DrawWidth: {"width", "m"}, DrawLabel: {"name", ""}}
	a := GroundAsk{Word: words[field][0], Unit: words[field][1], Field: field}
	if field == DrawWidth && k == book.Tree {
		a.Word = "crown, across"
	}
	return a
}

// pointerWords are where the pointer is on the ground, m to the east and to the north.
func (s State) pointerWords() string {
	at, _, ok := s.DrawPointer()
	if !ok {
		return "12 4.5"
	}
	return fmt.Sprintf("%.1f %.1f", at.X, at.Y)
}

// Drawn are the points that are drawn so far.
func (s State) Drawn() []book.Point { return s.Drawing.Points }

// DrawsPoint tells whether what is drawn is one point, DrawsOutline whether its last
// point is joined to its first.
func (s State) DrawsPoint() bool { return toolOf(s.Drawing.What).point }

// DrawsOutline see [State.DrawsPoint].
func (s State) DrawsOutline() bool { return toolOf(s.Drawing.What).closed }

// DrawnWide is how wide what is drawn is where it is but one point, m; 0 where that is
// no width.
func (s State) DrawnWide() float64 {
	wide, _ := metresOf(s.Typed(DrawWidth))
	return wide
}

// GroundChosen is what is chosen on the ground, in words; "" where nothing is.
func (s State) GroundChosen() string {
	f, ok := s.featureChosen()
	if !ok {
		return ""
	}
	if f.Label != "" {
		return f.What.String() + " “" + f.Label + "”"
	}
	return f.What.String()
}
