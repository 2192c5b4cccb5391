package state

import (
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/rules"
)

// season is the book, in a walk with all that is on its way into it.
func (s State) season() *book.Season {
	if s.Walk == nil {
		return s.Book.Season
	}
	var under []book.Entry
	for _, d := range slices.Concat(s.Pen.Failed, s.Pen.Sent) {
		under = append(under, d.Entries...)
	}
	if len(under) == 0 {
		return s.Book.Season
	}
	return s.Book.Season.With(under...)
}

// walkRead is the window with the walk read anew from the book and from what is
// on its way into it.
func (s State) walkRead() State {
	w := *s.Walk
	w.season = s.season()
	on := s.Now
	if w.Day < s.Today() {
		on = (w.Day + 1).Start(w.Before.View.Zone()).Add(-time.Second)
	}
	w.view = w.season.At(on)
	w.course = course.Again(w.view, w.Before.Course)
	w.Closing = rules.Close(w.view, w.Day)
	w.Twins = rules.TwinsOn(w.view, w.Day)
	w.Rows = w.rows(s.Pen, s.Now)
	w.counted()
	s.Walk = &w
	return s.says()
}

// moved tells whether something was written, undone or refused since.
func (p Pen) moved(before Pen) bool {
	return p.Deeds != before.Deeds || len(p.Sent) != len(before.Sent) || len(p.Failed) != len(before.Failed) ||
		p.Writer != before.Writer
}

// asBefore is the window with its walk resting on the book as it was without what
// the walk itself wrote, once something written before it is undone or redone.
func (s State) asBefore(before State) State {
	if len(s.Pen.Undone) == len(before.Pen.Undone) {
		return s
	}
	var here []book.Entry
	for _, d := range slices.Concat(s.Pen.Done, s.Pen.Sent, s.Pen.Failed) {
		if d.Number > s.Walk.since && !d.Turns {
			here = append(here, d.Entries...)
		}
	}
	b := &Book{Name: s.Book.Name, Season: s.season().With(unwritten(here)...)}
	r := b.On(s.Now, s.Walk.Day)
	return s.withWalk(func(w *Walk) {
		w.Before = r
		w.laidOut()
	})
}
