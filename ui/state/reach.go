package state

import (
	"slices"

	"lidmark/domain/book"
)

// cursor is the nuc the keys stand on: the ring's, else the one taken last.
func (s State) cursor() *Nuc {
	if id, ok := s.Ring.Nuc(); ok {
		return s.Reading().Nuc(book.NucID(id))
	}
	return s.chosen()
}

// RingAt tells whether the ring of the keys is about a subject.
func (s State) RingAt(sub book.Subject) bool {
	if s.Ring.IsZero() {
		return s.Selection.Len() > 1 && sub == s.Selection.Last()
	}
	return sub == s.Ring
}

// ranged selects the nucs from the one a range begins at to another, in walking
// order; add keeps what was selected.
func (s State) ranged(to book.Subject, add bool) State {
	all := s.walk()
	place := func(sub book.Subject) int {
		return slices.IndexFunc(all, func(n *Nuc) bool { return n.Nuc.Nuc.Subject() == sub })
	}
	from, end := place(s.Selection.from), place(to)
	if from < 0 || end < 0 {
		return s.pointed(to, true)
	}
	step := 1
	if end < from {
		step = -1
	}
	var nucs []book.Subject
	for i := from; ; i += step {
		nucs = append(nucs, all[i].Nuc.Nuc.Subject())
		if i == end {
			break
		}
	}
	next := Selection{from: s.Selection.from}
	if add {
		next = s.Selection
	}
	s.Selection, s.Ring = next.With(nucs...), book.Subject{}
	return s
}

// toggled selects the nuc the keys stand on, or not; they stay on it.
func (s State) toggled() State {
	sub := s.cursor().Nuc.Nuc.Subject()
	s.Selection, s.Ring = s.Selection.Toggled(sub), sub
	return s
}

func noCursor(s State) string {
	if why := noNucs(s); why != "" {
		return why
	}
	if s.Room != Yard || s.cursor() == nil {
		return "choose a nuc first"
	}
	return ""
}

// ring moves the ring of the keys and leaves the selection as it is.
func ring(dx, dy int) func(State) (State, []Effect) {
	return pure(func(s State) State {
		if n := s.besides(dx, dy); n != nil {
			s.Ring = n.Nuc.Nuc.Subject()
		}
		return s.revealed()
	})
}

// reachCommands select by keys.
var reachCommands = []Command{
	{Name: "select", Does: "select it or not", Keys: "Space", Why: noCursor, Do: pure(State.toggled)},
	{Name: "ring right", Does: "go there, selecting nothing", Keys: "Ctrl+Right", Why: noCursor, Do: ring(+1, 0)},
	{Name: "ring left", Does: "", Keys: "Ctrl+Left", Why: noCursor, Do: ring(-1, 0)},
	{Name: "ring down", Does: "", Keys: "Ctrl+Down", Why: noCursor, Do: ring(0, +1)},
	{Name: "ring up", Does: "", Keys: "Ctrl+Up", Why: noCursor, Do: ring(0, -1)},
}
