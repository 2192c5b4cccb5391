package review

import (
	"fmt"

	"lidmark/domain/practice"
)

// besidesTold is what a way is worth besides its laying queens, in queens, from which it
// is told. Common practice, no source.
const besidesTold = 0.1

// Outweighs says in few words what makes a way worth more than leaving a nuc, where the
// chances of a laying queen do not show it: with the way they are less, or what else it
// gains is a tenth of a queen or more. The greatest of that is told: a queen of the nuc's
// own raising counts less, one caught counts as well, bees are kept, a box is free. Else
// it is "".
func (r *Review) Outweighs(n Nuc, w Way) string {
	left := n.Ways[0]
	gain := w.Worth - left.Worth
	fewer := percent(w.Lays) < percent(left.Lays)
	if gain <= 0 || w.Kind == Leave || !fewer && gain-(w.Lays-left.Lays) < besidesTold {
		return ""
	}
	if w.Kind == Catch {
		return "she counts as well"
	}
	a, b := r.besides(w), r.besides(left)
	most := 0
	for i := range a {
		if a[i]-b[i] > a[most]-b[most] {
			most = i
		}
	}
	return r.besideWords(most, w, left, a[most]-b[most])
}

// What a way is worth besides its laying queens.
const (
	byDescent = iota // less what queens of the nuc's own raising count less
	bySooner         // less the days until queens are ready
	byBees
	byBox // free sooner
	byNextLook
	besideCount
)

// besides is what a way is worth besides its laying queens, in queens, but for what it
// costs.
func (r *Review) besides(w Way) (all [besideCount]float64) {
	p, less := w.parts, 1-r.numbers.Get(practice.WorthOwnQueen)
	all[byDescent] = -less * w.Doubtful
	all[bySooner] = (1-p.lost)*p.queens - w.Lays - all[byDescent]
	all[byBees], all[byBox], all[byNextLook] = (1-p.lost)*p.bees, p.found, p.again
	return all
}

// besideWords is what a way gains against leaving a nuc besides its laying queens.
func (r *Review) besideWords(what int, w, left Way, gain float64) string {
	switch {
	case what == byDescent:
		own := r.numbers.Get(practice.WorthOwnQueen)
		return fmt.Sprintf("own queen counts %g: %d as %d", own, percent(left.Lays), percent(left.Lays-(1-own)*left.Doubtful))
	case w.Kind == ShakeOut || w.Kind == Unite:
		return fmt.Sprintf("its bees and box count %.2f more", gain)
	case what == bySooner:
		return fmt.Sprintf("ready sooner counts %.2f more", gain)
	case what == byBees:
		return fmt.Sprintf("its bees count %.2f more", gain)
	case what == byBox:
		return fmt.Sprintf("its box free sooner counts %.2f more", gain)
	default:
		return fmt.Sprintf("a cell at the next look counts %.2f more", gain)
	}
}
