package state

import (
	"cmp"
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// plans are what stands on the day's sheet for each nuc, in few words: what stood
// on it as the day began, whatever was written since, else what is to be done now.
func (w *Walk) plans() map[book.NucID]string {
	v := w.Before.View
	plans := w.plansOf(rules.Day(v.Season().AsKnown(w.Day.Start(v.Zone()), v.Known()), w.Day))
	for id, plan := range w.plansOf(w.Before.Plan()) {
		if plans[id] == "" {
			plans[id] = plan
		}
	}
	return plans
}

// plansOf are a plan for each nuc in few words: what can be ticked off, and what has
// to be looked at.
func (w *Walk) plansOf(p rules.DayPlan) map[book.NucID]string {
	plans := map[book.NucID]string{}
	sheet := line.Sheet(p)
	ticked := map[book.NucID]bool{}
	for _, n := range w.Before.In(w.Yard) {
		id := n.Nuc.Nuc
		facts := slices.Clone(sheet(id))
		slices.SortStableFunc(facts, func(a, b book.Fact) int { return cmp.Compare(workOrder(a), workOrder(b)) })
		for _, f := range facts {
			plans[id], ticked[id] = listed(plans[id], w.planned(f)), true
		}
	}
	for _, stop := range p.Stops {
		for _, t := range stop.Tasks {
			for _, f := range t.Findings {
				id, ok := f.Of.Nuc()
				// Who gives a cell sees the bees, and does not unite.
				settled := ticked[id] && (f.Act == rules.ActCheckBees || f.Act == rules.ActUnite)
				if ok && !settled && !slices.Contains(unsaid, f.Act) {
					plans[id] = listed(plans[id], f.Act.String())
				}
			}
		}
	}
	return plans
}

// workOrder is when a fact of the sheet is done at a nuc: own cells are broken down
// before a cell is given, which they would tear, and the entrance is set at the end.
func workOrder(f book.Fact) int {
	switch f.(type) {
	case book.BeesAdded:
		return 1
	case book.CellGiven:
		return 2
	case book.Fed:
		return 3
	case book.EntranceSet:
		return 4
	default:
		return 0
	}
}

// unsaid are acts that are not done at the nuc, or that can be ticked off.
var unsaid = []rules.Act{
	rules.ActNone, rules.ActCountAgain, rules.ActSeeToPapers, rules.ActKeep,
	rules.ActGiveCell, rules.ActBreakDownCells, rules.ActFeed, rules.ActAddBees,
	rules.ActNarrowEntrance, rules.ActOpenEntrance,
}

// planned is what a fact of the sheet asks for, in few words.
func (w *Walk) planned(f book.Fact) string {
	switch f := f.(type) {
	case book.CellGiven:
		return fmt.Sprintf("cell from batch %d", w.Before.View.Batch(f.Batch).Number)
	case book.Fed:
		return fedPlan(f)
	case book.BeesAdded:
		return fmt.Sprintf("add %g cups", f.Cups)
	case book.EntranceSet:
		if f.Area == 0 {
			return "shut the entrance"
		}
		return fmt.Sprintf("entrance to %.1f cm²", f.Area)
	default:
		return rules.ActBreakDownCells.String()
	}
}

// fedPlan is a feed in few words; the sheet may leave open how much.
func fedPlan(f book.Fed) string {
	switch {
	case f.Litres > 0:
		return fmt.Sprintf("feed %g l", f.Litres)
	case f.Fondant > 0:
		return fmt.Sprintf("%g g of fondant", f.Fondant)
	}
	return rules.ActFeed.String()
}

// asked is what is planned first at a nuc and cannot be ticked off.
func (w *Walk) asked(id book.NucID) rules.Act {
	for _, stop := range w.Before.Plan().Stops {
		for _, t := range stop.Tasks {
			for _, f := range t.Findings {
				if n, ok := f.Of.Nuc(); ok && n == id && !slices.Contains(unsaid, f.Act) {
					return f.Act
				}
			}
		}
	}
	return rules.ActNone
}
