package state

import (
	"slices"

	"lidmark/domain/calendar"
)

// parted is the walk with its lines of a part of the day. A key that sets clears
// nothing: what is lit stays lit.
func parted(p calendar.Part) func(State) (State, []Effect) {
	return pure(func(s State) State {
		return s.withWalk(func(w *Walk) {
			w.Part = p
		}).says()
	})
}

// allNucs is the walk with rows for all nucs, or again only for those of the day.
func (s State) allNucs() State {
	s = s.withWalk(func(w *Walk) {
		w.All = !w.All
		w.Rows = w.rows(s.Pen, s.Now)
		w.counted()
	})
	if !s.Walk.has(s.Walk.At) {
		return s.rowOpened(s.Walk.nextOpen(RowName{}))
	}
	return s.rowShown()
}

// nextReader is the window with the next person of the book reading aloud, behind
// the last one nobody.
func (s State) nextReader() State {
	names := []string{""}
	for p := range s.Present().View.People() {
		if p.Name != s.Pen.Writer {
			names = append(names, p.Name)
		}
	}
	at := slices.Index(names, s.Walk.Reader)
	return s.withWalk(func(w *Walk) { w.Reader = names[(at+1)%len(names)] })
}

// Readers tells whether there is somebody to choose who reads aloud.
func (s State) Readers() bool {
	for p := range s.Present().View.People() {
		if p.Name != s.Pen.Writer {
			return true
		}
	}
	return false
}
