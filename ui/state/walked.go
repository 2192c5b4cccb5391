package state

import (
	"time"

	"lidmark/ui/scene"
)

// walked is the window after a message, with the walk in step with the book, the
// day and the room.
func (s State) walked(before State) State {
	w := s.Walk
	switch {
	case w == nil:
		return s
	case s.Fill != RecordFill || s.Room != Today || s.Book == nil:
		return s.unwalked()
	case s.Looked() != w.Day || s.Filled() != w.Yard:
		if noWalk(s) != "" {
			return s.unwalked().entered(Today)
		}
		return s.toWalk()
	case s.closed(before):
		return s.walkRead().walkLeft()
	case s.Book != before.Book || s.Pen.moved(before.Pen):
		s = s.asBefore(before).walkRead()
		if !s.Walk.has(s.Walk.At) {
			s = s.rowOpened(s.Walk.openBehind(s.Walk.behind))
		}
		s = s.rowShown()
	case s.Asked != before.Asked || s.Size() != before.Size():
		s = s.rowShown()
	}
	if s.Form == nil && (s.Focus == scene.Ref{} || before.Form != nil) {
		s.Focus = FieldNamed(WalkField)
	}
	return s
}

// tickedTo is the window with the clock moved. A walk stays one of its day when
// that is over.
func (s State) tickedTo(now time.Time) State {
	s.Now = now
	if s.Walk != nil && s.Day.IsZero() && s.Walk.Day != s.Today() {
		s = s.on(s.Walk.Day)
	}
	return s.dried()
}

// unwalked is the window after a walk: with it end the question that waits in it,
// its forms, and its line.
func (s State) unwalked() State {
	s.Walk, s.Asked = nil, nil
	if rec, ok := RecordNamed(s.formName()); ok && rec.ofWalk() {
		s = s.formLeft()
	}
	if s.InField() == WalkField {
		s.Focus = scene.Ref{}
	}
	return s
}

// walkLeft is the window without the walk, and in the foot what is left of it.
func (s State) walkLeft() State {
	s.Note = Note{Text: s.Walk.left()}
	s.Walk = nil
	return s.entered(Today)
}
