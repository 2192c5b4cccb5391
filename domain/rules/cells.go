package rules

import (
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// cellsOut: the cells must be apart some hours before the first virgin is to
// be feared.
func (p *pass) cellsOut(b *batchCase) {
	if b.over || b.loose || !b.Walking.IsZero() {
		return
	}
	first := b.clock.FirstOut(p.numbers.Get(practice.HardChance))
	p.add(b.yard, Finding{
		Rule: CellsOut, Of: b.Batch.Batch.Subject(), Act: ActCollectCells, Amount: float64(p.ripe(b)),
		Since: b.At.Instant, From: p.from(b), Best: b.best, By: b.hard, Hard: true,
		What: fmt.Sprintf("%s of %s must be out%s", count(b.left, "cell"), batchWord(b.Batch), p.asFarAsKnown(b)),
		Why: fmt.Sprintf("grafted %s; by %s the chance that a virgin walks is 1 in %.0f",
			b.At.InFrom(p.today, b.yard.zone), hour(p.today, first, b.yard.zone), 1/p.numbers.Get(practice.HardChance)),
		Do:   p.collect(b),
		Sure: sureCalendar,
		Used: []practice.Key{
			practice.QueenEmerges, practice.LarvaAgeAtGraft, practice.EmergenceSpread, practice.SharedShiftSpread,
			practice.OverAgedShare, practice.HardChance, practice.HardMargin, practice.BestAheadOfHard,
			practice.Take, practice.RipeOfTakes, practice.PriorWeight,
		},
	})
}

// asFarAsKnown says how many of the cells that must be out live where only the
// larvae were counted, and how many are on the way.
func (p *pass) asFarAsKnown(b *batchCase) (words string) {
	if b.Uncounted() {
		words = fmt.Sprintf(" (as grafted; about %d live)", p.ripe(b))
	}
	if way := b.OnTheWay(); way > 0 {
		words += fmt.Sprintf("; %d on the way", way)
	}
	return words
}

// collect is what to do with the cells: to count them first where nobody did.
func (p *pass) collect(b *batchCase) string {
	if b.Left() == 0 {
		return fmt.Sprintf("Place %s of %s, on the way: into nucs or cages", count(b.left, "cell"), batchWord(b.Batch))
	}
	return collectSome(b.Batch, p.ripe(b)) + ": into nucs or cages"
}

// collectSome is to collect so many cells of a batch.
func collectSome(b *book.Batch, cells int) string {
	if b.Uncounted() {
		return fmt.Sprintf("Count the take first, then collect about %s of %s", count(cells, "ripe cell"), batchWord(b))
	}
	return fmt.Sprintf("Collect %s of %s", count(cells, "ripe cell"), batchWord(b))
}

// InPart tells whether a task is to collect cells of which some may be collected, and the
// others stay together: none of them is on the way alone, and no virgin is loose.
func InPart(v *book.View, t Task) bool {
	id, is := t.Of[0].Batch()
	return is && t.Findings[0].Rule == CellsOut && v.Batch(id).Left() > 0
}

// Collecting is a task that collects cells, of which so many are collected.
func Collecting(v *book.View, t Task, cells int) Task {
	id, _ := t.Of[0].Batch()
	t.Findings = slices.Clone(t.Findings)
	f := &t.Findings[0]
	f.Amount, f.Do = float64(cells), collectSome(v.Batch(id), cells)
	t.Title = f.Do
	return t
}

// ripeWords are the cells to be expected: "24 cells", "about 18 cells (24 as grafted)".
func (p *pass) ripeWords(b *batchCase) string {
	words := count(p.ripe(b), "cell")
	if b.Uncounted() {
		return fmt.Sprintf("about %s (%d as grafted)", words, b.left)
	}
	return words
}

func (p *pass) ripe(b *batchCase) int { return p.reared().RipeOf(b.Batch) }

// virginWalks: the first virgin out destroys the others.
func (p *pass) virginWalks(b *batchCase) {
	walks := b.Walking.Instant
	seen := !b.Walking.IsZero()
	if b.stale || !seen && (!b.loose || b.over) {
		return
	}
	f := Finding{
		Rule: VirginWalks, Severity: Pressing, Of: b.Batch.Batch.Subject(), Act: ActCollectCells, Amount: float64(b.left), Hard: true,
		What: fmt.Sprintf("a virgin is out among %s of %s", count(b.left, "cell"), batchWord(b.Batch)),
		Why:  fmt.Sprintf("seen %s; within hours she opens the other cells and kills those in them", b.Walking.InFrom(p.today, b.yard.zone)),
		Do:   fmt.Sprintf("Cage the virgin, then see to each cell of %s", batchWord(b.Batch)),
		Sure: sureSeen,
		Used: []practice.Key{practice.GraceOfFirstVirgin},
	}
	if !seen {
		walks = b.clock.Even()
		f.What = fmt.Sprintf("expect a virgin loose among %s of %s", count(b.left, "cell"), batchWord(b.Batch))
		f.Why = fmt.Sprintf("as likely as not since %s; %s", hour(p.today, walks, b.yard.zone), triage())
		f.Do, f.Sure = fmt.Sprintf("Find and cage a virgin, look at each cell of %s", batchWord(b.Batch)), sureCalendar
	}
	f.Since, f.From, f.Best, f.By = walks, walks, walks, walks.Add(p.numbers.Duration(practice.GraceOfFirstVirgin))
	if !seen {
		f.From, f.Best, f.By = b.hard, b.hard, b.hard // the hour that was told before stays until the cells are seen to
	}
	p.add(b.yard, f)
}

// triage is what the cells show after a virgin has walked, in one line.
func triage() string {
	steps := bee.Triage()
	words := make([]string, 0, len(steps)-1)
	for _, s := range steps[1:] {
		words = append(words, s.Seen+": "+s.Means)
	}
	return strings.Join(words, "; ")
}
