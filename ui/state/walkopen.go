package state

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// toWalk is the window with the walk of the day looked at, and the keys going to
// its first open row.
func (s State) toWalk() State {
	yard := s.Yards[Today]
	s = s.entered(Today)
	s.Fill, s.Selection, s.Sheet = RecordFill, Selection{}, false
	s.Walk = nil
	before := s.Reading()
	w := &Walk{Day: s.Looked(), Yard: yard, Before: before, present: s.Present(), since: s.Pen.Deeds}
	if s.Looked() == s.Today() {
		w.Part = partBy(s.Now.In(before.View.Zone()).Hour())
	}
	w.laidOut()
	s.Walk = w
	s = s.walkRead()
	return s.rowOpened(s.Walk.nextOpen(RowName{}))
}

// partBy is the part of the day that is over at an hour, or running.
func partBy(hour int) calendar.Part {
	const noon, afternoon = 12, 15 // common practice, no source
	switch {
	case hour < noon:
		return calendar.Morning
	case hour < afternoon:
		return calendar.Midday
	}
	return calendar.Afternoon
}

// laidOut sets what the walk takes from the book as it was when it was opened.
func (w *Walk) laidOut() {
	w.nucs = driven(w.Before, w.Yard)
	w.ground, w.plan = groundOf(w.Before.View), w.plans()
	w.places, w.ids = map[book.NucID]int{}, nil
	for i, n := range w.nucs {
		w.places[n.Nuc.Nuc] = i
		w.ids = append(w.ids, n.Nuc.Nuc)
	}
}

// driven are the nucs of a yard, of all yards for the zero one in the order in
// which the route drives to them; yards it does not lead to come last.
func driven(r *Reading, yard book.YardID) []*Nuc {
	var order []book.YardID
	for _, stop := range r.Plan().Stops {
		if !slices.Contains(order, stop.Yard) {
			order = append(order, stop.Yard)
		}
	}
	place := func(n *Nuc) int {
		if i := slices.Index(order, n.Yard); i >= 0 {
			return i
		}
		return len(order)
	}
	nucs := slices.Clone(r.In(yard))
	slices.SortStableFunc(nucs, func(a, b *Nuc) int { return cmp.Compare(place(a), place(b)) })
	return nucs
}
