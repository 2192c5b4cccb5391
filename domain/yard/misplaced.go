package yard

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// OfFacts is the layout of the stands that facts set, with the nucs that they place on
// them: what is about to be added to a yard.
func OfFacts(facts []book.Fact) (l Layout) {
	at := map[book.StandID]int{}
	for _, f := range facts {
		switch f := f.(type) {
		case book.StandSet:
			at[f.Stand] = len(l.Stands)
			l.Stands = append(l.Stands, StandOf(f))
		case book.NucPlaced:
			if i, ok := at[f.Stand]; ok {
				l.Stands[i].Nucs = append(l.Stands[i].Nucs, Nuc{ID: f.Nuc, Place: f.Place})
			}
		}
	}
	return l
}

// Misplaced says which stands of a layout lie where no box can stand: "3 stands lie in
// water: K, L, M"; nothing where all lie well.
func Misplaced(l Layout, g Ground, n practice.Numbers) (words []string) {
	j := judge{layout: l, ground: &g, numbers: n}
	var order []string
	of := map[string][]string{}
	for i := range l.Stands {
		s := &l.Stands[i]
		for _, where := range j.misplaced(s) {
			if of[where] == nil {
				order = append(order, where)
			}
			of[where] = append(of[where], s.Letter)
		}
	}
	for _, where := range order {
		lie := " stands lie "
		if len(of[where]) == 1 {
			lie = " stand lies "
		}
		words = append(words, fmt.Sprint(len(of[where]), lie, where, ": ", strings.Join(of[where], ", ")))
	}
	return words
}

// misplaced is where a stand lies that cannot be there.
func (j *judge) misplaced(s *Stand) (where []string) {
	at := j.places(s)
	for _, k := range solid {
		if j.lies(at, k.what, j.touching()) {
			where = append(where, "in "+k.name)
		}
	}
	if _, is := j.outside(s); is {
		where = append(where, "outside the boundary")
	}
	return where
}
