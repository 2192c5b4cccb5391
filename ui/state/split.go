package state

import (
	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// SplitRef is the kind of a [scene.Ref] of what divides panes and can be dragged;
// the pointer over it is one that moves things sideways.
const SplitRef = "split"

// Measures of the division between map and lids, dp.
const (
	splitWidth = 6.0   // of what can be dragged
	splitMap   = 260.0 // the map is never narrower
	splitStep  = 57.0  // by which keys move it
)

// split divides a room between map and lids: where that lies by the room there
// is, moved as far as the keeper dragged it and there is room for.
func (l *Layout) split(s State, rest scene.Area) {
	columns := gridColumns(rest.W, l.Window.W)
	most := rest.W - gridWidth(block)
	width := min(max(rest.W-gridWidth(columns)+s.splitNow(), min(splitMap, most)), most)
	l.Map, l.Main = cutLeft(rest, width)
	l.Columns = block
	for gridWidth(l.Columns+block) <= l.Main.W {
		l.Columns += block
	}
}

// splitNow is how far the division is dragged, as it is while it is dragged.
func (s State) splitNow() float64 {
	if s.Drag.Kind != SplitDrag {
		return s.Split
	}
	return s.Drag.Split + s.Drag.To.X - s.Drag.From.X
}

// Splitter is where the division between map and lids can be taken; empty where
// there is none.
func (l Layout) Splitter() scene.Area {
	if l.Map.Empty() || l.Main.Empty() {
		return scene.Area{}
	}
	return scene.Area{X: l.Main.X - splitWidth/2, Y: l.Main.Y, W: splitWidth, H: l.Main.H}
}

// kept is the window whose division stays where it is seen, so that what goes
// beyond the room there is is forgotten.
func (s State) kept() State {
	l := s.Layout()
	rest := l.Map.W + l.Main.W
	s.Split = l.Map.W - (rest - gridWidth(gridColumns(rest, l.Window.W)))
	return s
}

// divided is the window after the division was let go; after a double click it
// is back where it lies by itself.
func (s State) divided(d Drag, m Released) State {
	if m.Clicks > 1 {
		s.Split = 0
		return s
	}
	if !d.far() {
		return s
	}
	s.Drag = d
	s = s.kept()
	s.Drag = Drag{}
	return s
}

// wider is the command that moves the division.
func wider(by float64) func(State) (State, []Effect) {
	return pure(func(s State) State {
		s.Split += by
		return s.kept()
	})
}

func noSplit(s State) string {
	if s.Book == nil || s.Layout().Splitter().Empty() {
		return "map and lids do not stand side by side"
	}
	return ""
}

// clickedTwice does what a double click means: on the head of a pane it fills the
// room, or gives it back; on a batch its room opens.
func (s State) clickedTwice(d Drag, m Released) (next State, effects []Effect, took bool) {
	if m.Clicks != 2 || d.Tag.Ref != m.Tag.Ref || s.Book == nil || s.Room != Yard || s.Fill != NoFill || s.Menu != NoMenu || s.Keys {
		return s, nil, false
	}
	if sub := SubjectOf(m.Tag.Ref); sub.Kind == book.KindBatch && s.Layout().Lanes.Contains(m.At) {
		s.Selection = Select(sub)
		next, effects = run(s, "batch room")
		return next, effects, true
	}
	pane, ok := s.headAt(m.At)
	if !ok || m.Tag.Ref.Kind != PaneRef && m.Tag.Ref != (scene.Ref{}) {
		return s, nil, false
	}
	next, effects = divide(pane)(s)
	return next, effects, true
}

// headAt is the pane whose head lies at a point.
func (s State) headAt(p scene.Point) (Pane, bool) {
	l := s.Layout()
	head := func(a scene.Area) bool { top, _ := cutTop(a, HeadHeight); return top.Contains(p) }
	switch {
	case !l.Turns.Empty():
		return 0, false
	case head(l.Map):
		return Map, true
	case head(l.Main) && s.Pane == Split:
		return Lids, true
	case head(l.Main):
		return s.Pane, true
	default:
		return 0, false
	}
}
