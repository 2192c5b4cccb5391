package rules

import (
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/pedigree"
	"lidmark/domain/practice"
)

// kin warns of a graft whose queens would mate with drones of their kin, so that
// brood is lost: in the yard that was said, else in every yard with nucs.
func (c *checker) kin(i Graft) {
	if i.Mother.IsZero() {
		return
	}
	for _, yard := range c.matingYards(i.Yard) {
		lost := pedigree.Daughters(c.view, i.Mother, yard, c.numbers)
		if lost.Kinship == 0 || lost.Share < c.numbers.Get(practice.BroodLostWarned) {
			continue
		}
		c.warn(
			fmt.Sprintf("daughters of %s mated in %s would lose about %.0f of 100 of their brood to like sex alleles, most with the drones of %s",
				Name(c.view, i.Mother.Subject()), Name(c.view, yard.Subject()), 100*lost.Share, Name(c.view, lost.With.Subject())),
			"Graft from another line, or have them mate where other drones fly",
			practice.BroodLostWarned, practice.SexAlleles, practice.MatesOfQueen,
		)
	}
}

// matingYards is the yard that was said, else those in which nucs stand, else the
// home yard.
func (c *checker) matingYards(said book.YardID) (all []book.YardID) {
	if !said.IsZero() {
		return []book.YardID{said}
	}
	for n := range c.view.Nucs() {
		if !n.Yard.IsZero() && !slices.Contains(all, n.Yard) {
			all = append(all, n.Yard)
		}
	}
	if home := c.view.HomeYard(); len(all) == 0 && home != nil {
		all = append(all, home.Yard)
	}
	return all
}
