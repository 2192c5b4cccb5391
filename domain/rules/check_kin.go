package rules

import (
	"fmt"

	"lidmark/domain/pedigree"
	"lidmark/domain/practice"
)

// kin warns of a graft whose queens would mate with drones of their kin, so that
// brood is lost: in the yard that was said, else in every yard with nucs.
func (c *checker) kin(i Graft) {
	if i.Mother.IsZero() {
		return
	}
	for _, yard := range pedigree.MatingYards(c.view, i.Yard) {
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
