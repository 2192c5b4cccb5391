package state

import (
	"fmt"

	"lidmark/domain/book"
)

// groundTools is the window with the tools of the ground in the place of those of the
// stands, or the other way round.
func (s State) groundTools() State {
	s.Drawing = Drawing{}
	return s.laid(func(l *Laying) { l.Ground = !l.Ground })
}

// GroundAsk is what is asked of the ground: a field, or none, and the command that takes
// it.
type GroundAsk struct {
	Word, Unit    string
	Field         string
	Now           string // what stands there while nothing is typed
	Command, Does string
}

// DrawWord is what is being drawn; "" where nothing is.
func (s State) DrawWord() string { return toolOf(s.Drawing.What).word }

// GroundSays is what to do with the tool of the ground that is taken up.
func (s State) GroundSays() string {
	switch t := toolOf(s.Drawing.What); {
	case t.what == 0:
		return "Choose above what to draw, then click on the right-hand map. What is drawn goes into the book; undo takes it back."
	case t.point:
		return "Click where its middle is. Esc puts the tool down."
	default:
		return fmt.Sprintf("Click its points one after the other, %d at least, then Done. Esc puts the tool down.", t.least)
	}
}

// GroundAsks are the fields of what is drawn, of the wind and of the photograph.
func (s State) GroundAsks() (asks []GroundAsk) {
	if s.Drawing.What != 0 {
		words := map[string][2]string{DrawHeight: {"height", "m"}, DrawWidth: {"width", "m"}, DrawLabel: {"name", ""}}
		for _, f := range s.DrawAsks() {
			asks = append(asks, GroundAsk{Word: words[f][0], Unit: words[f][1], Field: f})
		}
		return asks
	}
	wind := GroundAsk{Word: "wind mostly from", Unit: "°", Field: DrawWind, Command: "set wind", Does: "Set"}
	if from := s.Present().View.Yard(s.Laying.Yard).Wind; from.Said() {
		wind.Now = fmt.Sprintf("%.0f", from.Value)
	}
	asks = append(asks, wind)
	if len(s.groundPhoto().JPEG) > 0 {
		asks = append(asks, GroundAsk{Word: "measured is really", Unit: "m", Field: PhotoLength, Command: "scale photograph", Does: "Scale"})
	}
	return asks
}

// Drawn are the points that are drawn so far.
func (s State) Drawn() []book.Point { return s.Drawing.Points }

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
