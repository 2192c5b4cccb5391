package plan

import "lidmark/domain/book"

// Planned is a planned batch with all that follows from it.
type Planned struct {
	book.BatchPlan
	Ladder   Ladder
	Size     Size
	Needs    []Need
	Given    []Given // who gives the bees of its starters, and the bees and brood of its nucs
	Minutes  []Minutes
	ByPerson []DayParts // those minutes by day; none where nobody's hours are known
	Stages   []Stage    // how many are left after each link
	Chances  Chances    // of how many queens there are by its day; of how many ever, where it has none
}

// Planned reckons a planned batch with the keeper's numbers and rates as they stand.
func (p *Planner) Planned(b book.BatchPlan) Planned {
	d := Planned{BatchPlan: b, Ladder: p.LadderOf(b), Size: p.SizeOf(b)}
	d.Needs, d.Minutes = p.Needs(d.Ladder, d.Size), p.Minutes(d.Ladder, d.Size)
	d.ByPerson = p.ByPerson(d.Minutes)
	d.Given = p.Given(Wanting{d.Ladder, d.Size})[0]
	rates, graft := RatesOf(p.view), Graft{Larvae: b.Larvae, Nucs: b.Nucs}
	rates.Laying, rates.Virgins = b.Laying, b.Virgins
	if !b.By.IsZero() {
		graft.Late = 1 - d.Ladder.Laid.InTime(b.By, b.Laying)
	}
	d.Stages = rates.Along(graft)
	d.Chances = d.Stages[len(d.Stages)-1].Chances
	return d
}
