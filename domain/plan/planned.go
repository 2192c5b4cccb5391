package plan

import "lidmark/domain/book"

// Planned is a planned batch with all that follows from it.
type Planned struct {
	book.BatchPlan
	Ladder     Ladder
	Size       Size
	Needs      []Need
	Gifts      []Gift  // who gives the bees and brood of its nucs
	ShortCups  float64 // cups of bees that nobody can give
	ShortCombs float64 // combs of brood that nobody can give
	Minutes    []Minutes
	Stages     []Stage // how many are left after each link
	Chances    Chances // of how many queens there are by its day; of how many ever, where it has none
}

// Planned reckons a planned batch with the keeper's numbers and rates as they stand.
func (p *Planner) Planned(b book.BatchPlan) Planned {
	d := Planned{BatchPlan: b, Ladder: p.LadderOf(b), Size: p.SizeOf(b)}
	d.Needs, d.Minutes = p.Needs(d.Ladder, d.Size), p.Minutes(d.Ladder, d.Size)
	d.Gifts, d.ShortCups, d.ShortCombs = p.Gifts(d.Ladder.Rung(MakeUpNucs).Best, d.amount(CupsOfBees), d.amount(BroodCombs))
	rates, graft := RatesOf(p.view), Graft{Larvae: b.Larvae, Nucs: b.Nucs}
	rates.Laying, rates.Virgins = b.Laying, b.Virgins
	if !b.By.IsZero() {
		graft.Late = 1 - d.Ladder.Laid.InTime(b.By, b.Laying)
	}
	d.Stages = rates.Along(graft)
	d.Chances = d.Stages[len(d.Stages)-1].Chances
	return d
}

// amount is how much of a good it needs.
func (d Planned) amount(g Good) float64 {
	for _, n := range d.Needs {
		if n.Good == g {
			return n.Amount
		}
	}
	return 0
}
