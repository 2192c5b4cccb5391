package state

import "lidmark/ui/scene"

// LettersGone tells whether the list of the letters of the line has no room beside the
// rows of the walk.
func (l Layout) LettersGone() bool { return l.lettersGone }

// OverLetters tells whether that list lies over the rows.
func (l Layout) OverLetters() bool { return l.lettersGone && !l.Card.Empty() }

// lettersSheet is where it lies over the rows: at the right, in a low window twice as
// wide where that has room.
func lettersSheet(rest scene.Area) scene.Area {
	const one = 590.0 // high enough for all letters in one column
	w := CardWidth
	if rest.H < one && 2*w <= rest.W {
		w *= 2
	}
	sheet, _ := cutRight(rest, min(w, rest.W))
	return sheet
}

// lettersBeside says why the list of letters is not opened over the rows.
func lettersBeside(s State) string {
	switch why := notWalking(s); {
	case why != "":
		return why
	case s.Form != nil:
		return "leave the form first with Esc"
	case !s.Layout().lettersGone:
		return "the letters stand beside the rows"
	}
	return ""
}

// lettersTurned opens the list of letters over the rows, or closes it.
func (s State) lettersTurned() State {
	s.Sheet = !s.Sheet
	return s
}
