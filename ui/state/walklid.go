package state

import "lidmark/domain/book"

// Lid is a nuc as it stands with all that was written; of a row of several the
// first of those that stand as most of them do.
func (w *Walk) Lid(row WalkRow) *Nuc {
	n := w.view.Nuc(row.like)
	return &Nuc{Nuc: n, Presumed: w.course.Of(n), reading: w.Before}
}

// likeMost is the first of nucs that stand as most of them do.
func (m rowMaker) likeMost(nucs []book.NucID) book.NucID {
	type look struct {
		condition book.Condition
		seen      bool
	}
	var most look
	count, first := map[look]int{}, map[look]book.NucID{}
	for _, id := range nucs {
		p := m.course.Of(m.view.Nuc(id))
		l := look{p.Condition, p.Seen}
		if count[l]++; count[l] == 1 {
			first[l] = id
		}
		if count[l] > count[most] {
			most = l
		}
	}
	return first[most]
}
