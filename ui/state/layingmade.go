package state

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/yard"
)

// asWritten is the deed that wrote a try-out into the book, and how it stood then.
type asWritten struct {
	deed   int
	stands *yard.Stand
	many   int
}

// layoutWritten is the window with facts of the try-out given to the book: undo takes
// them back before it takes back a step.
func (s State) layoutWritten(words string, facts ...book.Fact) (State, []Effect) {
	s, effects := s.write(words, calendar.Instantly(s.Now), facts...)
	key := s.layoutKey()
	s.laidOut.written = asWritten{deed: s.Pen.Deeds, stands: key.stands, many: key.many}
	return s, effects
}

// asWrote tells whether the try-out is as a deed among these wrote it.
func (s State) asWrote(deeds []Deed) bool {
	w := s.laidOut.written
	if !s.onStands() || len(deeds) == 0 {
		return false
	}
	key := s.layoutKey()
	return w.deed > 0 && w.deed == deeds[len(deeds)-1].Number && w.stands == key.stands && w.many == key.many
}

// noUndo says why nothing can be undone, noRedo why nothing can be done again: neither a
// step of the try-out nor what was written.
func noUndo(s State) string {
	if s.onStands() && !s.asWrote(s.Pen.Done) && !s.asWrote(s.Pen.Sent) {
		return noStepBack(s)
	}
	return nothingDone(s)
}

func noRedo(s State) string {
	if s.onStands() && !s.asWrote(s.Pen.Undone) {
		return noStepOn(s)
	}
	return nothingUndone(s)
}

// undoLast undoes the last step of the try-out or what was written last, redoLast redoes
// it.
func undoLast(s State) (State, []Effect) {
	if s.onStands() && !s.asWrote(s.Pen.Done) && !s.asWrote(s.Pen.Sent) {
		return s.steppedBack(), nil
	}
	return undo(s)
}

func redoLast(s State) (State, []Effect) {
	if s.onStands() && !s.asWrote(s.Pen.Undone) {
		return s.steppedOn(), nil
	}
	return redo(s)
}

// inBook is a try-out as the book has it, and whether all stands so.
func (l *Laying) inBook(v *book.View, now yard.Layout) (kept *book.Layout, same bool) {
	for _, k := range v.Layouts(l.Yard) {
		if k.Layout == l.ID && !l.ID.IsZero() {
			is, was := l.Try.TriedAs(l.ID, l.Name, now), now.Try(k.LayoutTried).TriedAs(l.ID, l.Name, now)
			return &k, is.Same(was)
		}
	}
	return nil, false
}

// unchanged tells whether the book has the try-out as it is.
func (s State) unchanged() bool {
	t := s.LayoutSheet()
	return t != nil && t.InBook != nil && t.AsInBook && t.InBook.Name == s.Laying.Name
}

// LayoutStatus says how the book has the try-out; "" where it never had.
func (s State) LayoutStatus() string {
	t := s.LayoutSheet()
	switch {
	case t == nil || t.InBook == nil:
		return ""
	case s.unchanged() && t.InBook.Planned():
		return "The plan from " + t.InBook.From.Short()
	case s.unchanged():
		return "Kept, not yet the plan"
	case s.renamed() != "":
		return "Not kept under this name; “" + s.renamed() + "” stays as it was kept"
	case t.InBook.Planned():
		return "Changed since it was made the plan from " + t.InBook.From.Short()
	}
	return "Changed since it was kept"
}
