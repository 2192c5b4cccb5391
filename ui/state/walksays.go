package state

import (
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// LineSays is what the line of the walk says so far.
type LineSays struct {
	Line  TypedLine
	Back  string
	Of    string // of whom it tells, where that is not the row it is typed in
	Next  string // what follows for the nuc
	After *Nuc   // how its lid would become; nil where nobody can tell
	Rows  string // whose rows alone Enter shows; "" where it does not
}

// says is the window with the line of the walk read.
func (s State) says() State {
	if letters, narrows := s.Walk.narrowing(s.Typed(WalkField)); narrows {
		return s.withWalk(func(w *Walk) { w.Says = LineSays{Rows: w.rowsWord(letters)} })
	}
	t := s.walkLine()
	says := LineSays{Line: t}
	row, _ := s.Walk.Row()
	for i, section := range t.Sections {
		if i > 0 {
			says.Back += "; "
		}
		if len(t.Sections) > 1 {
			says.Back += section.Subject + ": "
		}
		says.Back += section.Back
	}
	if len(t.Sections) == 1 && (len(row.Nucs) != 1 || !slices.Equal(t.Sections[0].Nucs, row.Nucs)) {
		says.Of = t.Sections[0].Subject
	}
	if len(t.Sections) > 0 && len(t.Sections[0].Nucs) > 0 {
		id := t.Sections[0].Nucs[0]
		says.After = s.trial(id, t)
		says.Next = next(says.After)
	}
	return s.withWalk(func(w *Walk) { w.Says = says })
}

// next is what follows for a nuc, by its clock.
func next(n *Nuc) string {
	p := n.Presumed
	v := n.reading.View
	day := func(t time.Time) string { return calendar.DayOf(t, v.Yard(n.Yard).Zone).Short() }
	switch {
	case (p.Calendar == book.Laying || p.ReadyOnce() != "") && !p.LookBest.IsZero():
		return "look for capped brood " + day(p.LookBest)
	case p.Calendar == book.GoodBrood && p.ReadyAt.After(v.On()):
		return "ready to hand over from " + day(p.ReadyAt)
	case p.Calendar == book.GoodBrood:
		return "ready to hand over"
	case p.Calendar == book.NoQueen && !p.OwnFrom.IsZero():
		return "a virgin of its own from " + day(p.OwnFrom)
	case p.Calendar == book.NoQueen:
		return "a cell, a virgin, or unite"
	case p.Calendar == book.DroneLayer || p.Calendar == book.LayingWorkers:
		return p.Calendar.String()
	case !p.LookBest.IsZero():
		return "look for eggs " + day(p.LookBest)
	}
	return ""
}
