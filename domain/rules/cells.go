package rules

import (
	"fmt"

	"lidmark/domain/practice"
)

// cellsOut: the cells must be apart some hours before the first virgin is to
// be feared.
func (p *pass) cellsOut(b *batchCase) {
	if b.stale || !b.Walking.IsZero() {
		return
	}
	first := b.clock.FirstOut(p.numbers.Get(practice.HardChance))
	p.add(b.yard, Finding{
		Rule: CellsOut, Of: b.Batch.Batch.Subject(), Act: ActCollectCells, Amount: float64(b.left),
		Since: b.At.Instant, From: p.from(b), Best: b.best, By: b.hard, Hard: true,
		What: fmt.Sprintf("%s of %s must be out", count(b.left, "cell"), batchWord(b.Batch)),
		Why: fmt.Sprintf("grafted %s; by %s the chance that a virgin walks is 1 in %.0f",
			b.At.In(b.yard.zone), hour(first, b.yard.zone), 1/p.numbers.Get(practice.HardChance)),
		Do:   fmt.Sprintf("Collect %s of %s: into nucs or cages", count(b.left, "ripe cell"), batchWord(b.Batch)),
		Sure: sureCalendar,
		Used: []practice.Key{
			practice.QueenEmerges, practice.LarvaAgeAtGraft, practice.EmergenceSpread, practice.SharedShiftSpread,
			practice.OverAgedShare, practice.HardChance, practice.HardMargin, practice.BestAheadOfHard,
		},
	})
}

// virginWalks: the first virgin out destroys the others.
func (p *pass) virginWalks(b *batchCase) {
	if b.stale || b.Walking.IsZero() {
		return
	}
	grace := p.numbers.Duration(practice.GraceOfFirstVirgin)
	p.add(b.yard, Finding{
		Rule: VirginWalks, Severity: Pressing, Of: b.Batch.Batch.Subject(), Act: ActCollectCells, Amount: float64(b.left),
		Since: b.Walking.Instant, From: b.Walking.Instant, Best: b.Walking.Instant, By: b.Walking.Instant.Add(grace), Hard: true,
		What: fmt.Sprintf("a virgin is out among %s of %s", count(b.left, "cell"), batchWord(b.Batch)),
		Why: fmt.Sprintf("seen %s; within hours she opens the other cells and kills those in them",
			b.Walking.In(b.yard.zone)),
		Do:   "Find and cage the virgin, then see to each cell",
		Sure: sureSeen,
		Used: []practice.Key{practice.GraceOfFirstVirgin},
	})
}

// nobodyReady: more cells than nucs.
func (p *pass) nobodyReady(b *batchCase) {
	short := b.left - b.ready
	capped := (b.graft + p.days(practice.GraftToCapped)).Start(b.yard.zone)
	if b.stale || !b.Walking.IsZero() || short <= 0 || p.now.Before(capped) {
		return
	}
	p.add(b.yard, Finding{
		Rule: NobodyReady, Of: b.Batch.Batch.Subject(), Amount: float64(short),
		From: capped, Best: b.best, By: b.hard, Hard: true,
		What: fmt.Sprintf("%s of %s, %s ready for them", count(b.left, "cell"), batchWord(b.Batch), count(b.ready, "nuc")),
		Why:  fmt.Sprintf("half emerge by %s", hour(p.course.Emerges(b.Batch.Batch), b.yard.zone)),
		Do:   fmt.Sprintf("Make up %s, or have %s at hand", count(short, "nuc"), count(short, "cage")),
		Sure: sureRecorded,
		Used: []practice.Key{practice.QueenEmerges, practice.HardChance, practice.HardMargin},
	})
}
