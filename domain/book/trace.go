package book

import (
	"slices"
	"time"
)

// Trace is where bees and brood of one unit went since an instant, from hand
// to hand: what an inspector asks for.
type Trace struct {
	Of        Subject
	Since     time.Time
	Transfers []Transfer // in the order of the book
	Receivers []Subject  // every unit reached, in the order it was reached
	Sold      []QueenID  // queens handed over with attendants from units reached
	Yards     []YardID   // yards of the unit and of all it reached
}

// Trace follows bees and brood from a subject, onward through every unit that
// got some, in time: what a unit gave away before it got any does not count.
func (v *View) Trace(of Subject, since time.Time) Trace {
	t := Trace{Of: of, Since: since}
	reached := map[Subject]bool{of: true}
	for e := range v.counted(v.season.all[v.from(since):]) {
		if m, ok := transferOf(e); ok && reached[m.From] {
			t.Transfers = append(t.Transfers, m)
			if !reached[m.To] {
				reached[m.To] = true
				t.Receivers = append(t.Receivers, m.To)
			}
		}
		v.traceSale(&t, e, reached)
	}
	for _, s := range append([]Subject{of}, t.Receivers...) {
		if y := v.yardOf(s); !y.IsZero() && !slices.Contains(t.Yards, y) {
			t.Yards = append(t.Yards, y)
		}
	}
	return t
}

// traceSale notes a queen who left with bees of a unit that was reached.
func (v *View) traceSale(t *Trace, e *Entry, reached map[Subject]bool) {
	if f, ok := e.Fact.(QueenHandedOver); ok && f.With && reached[v.Queen(f.Queen).From.Subject()] {
		t.Sold = append(t.Sold, f.Queen)
	}
}
