package pedigree

import (
	"slices"

	"lidmark/domain/book"
)

// MatingYards are the yards in which the daughters of a mother mate: the one that was
// said, else those in which nucs stand, else the home yard. None where the book has no
// yard.
func MatingYards(v *book.View, said book.YardID) (all []book.YardID) {
	if !said.IsZero() {
		return []book.YardID{said}
	}
	for n := range v.Nucs() {
		if !n.Yard.IsZero() && !slices.Contains(all, n.Yard) {
			all = append(all, n.Yard)
		}
	}
	if home := v.HomeYard(); len(all) == 0 && home != nil {
		all = append(all, home.Yard)
	}
	return all
}
