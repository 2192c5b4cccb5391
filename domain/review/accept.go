package review

import (
	"fmt"
	"slices"

	"lidmark/domain/book"
)

// plansOf are the plans of the kinds of way.
var plansOf = map[Kind]book.Plan{
	Leave: book.PlanLook, LookFirst: book.PlanLook, GiveCell: book.PlanGiveCell, PutInVirgin: book.PlanPutInVirgin, BreakDown: book.PlanBreakDown,
	TakeOut: book.PlanTakeOut, ShakeOut: book.PlanShakeOut, MakeUp: book.PlanMakeUp, GiveBrood: book.PlanGiveBrood, AddBees: book.PlanAddBees,
	Feed: book.PlanFeed, Narrow: book.PlanNarrow, Unite: book.PlanUnite, Catch: book.PlanCatch,
}

// Accept turns ways with nucs into decisions to be written: of each nuc, by its
// place in [Review.Nucs], the place in its ways. Of virgins in cages each goes
// to one nuc, those in the hand first. Leaving a nuc that no look is worth while
// for is nothing to decide.
func (r *Review) Accept(chosen map[int]int) (all []book.Planned) {
	next := make([]int, len(r.Hand.Wares)) // by ware, how many queens are dealt out
	places := make([]int, 0, len(chosen))
	for i := range chosen {
		places = append(places, i)
	}
	slices.Sort(places)
	for _, i := range places {
		n := r.Nucs[i]
		w := n.Ways[chosen[i]]
		if w.Kind == Leave && w.On == 0 {
			continue
		}
		f := book.Planned{Nuc: n.NucNamed.Nuc, What: plansOf[w.Kind], Day: max(w.On, r.Day), With: w.With, Why: r.reason(n, w)}
		if w.Gives() {
			ware := r.Hand.Wares[w.Ware-1]
			f.Batch, f.Virgin = ware.Batch, ware.Virgin
			if k := next[w.Ware-1]; k < len(ware.Queens) {
				f.Queen = ware.Queens[k]
			}
			next[w.Ware-1]++
			if w.Kind == LookFirst {
				f.What = book.PlanLookOrGive
			}
		}
		all = append(all, f)
	}
	return all
}

// Ways are the ways of a use that do something, to be accepted at once.
func (u Use) Ways() map[int]int {
	ways := map[int]int{}
	for i, j := range u.Chosen {
		if j > 0 {
			ways[i] = j
		}
	}
	return ways
}

// reason is why a way was chosen, in short.
func (r *Review) reason(n Nuc, w Way) string {
	if w.Kind == Leave {
		return fmt.Sprintf("left until then: %d of 100 such nucs have a laying queen by %s", percent(w.Lays), r.By.Short())
	}
	if w.Kind == Catch {
		return fmt.Sprintf("the queen is caught; %d of 100 such nucs lay again by %s", percent(w.Lays), r.By.Short())
	}
	text := fmt.Sprintf("%d of 100 such nucs have a laying queen by %s so, %d if left", percent(w.Lays), r.By.Short(), percent(n.Ways[0].Lays))
	if own := n.Ways[0].Doubtful; own > w.Doubtful {
		text += fmt.Sprintf("; of its own raising %d, %d if left", percent(w.Doubtful), percent(own))
	}
	return text
}
