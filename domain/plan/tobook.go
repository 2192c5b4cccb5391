package plan

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
)

// ToBook are the grafts of an answer as they are planned in the book, each with its share of
// the nucs and of the queens; whose larvae they are of and for which orders is not said.
func (p *Planner) ToBook(a Answer) []book.BatchPlanned {
	all, expected := make([]book.BatchPlanned, len(a.Batches)), make([]float64, len(a.Batches))
	for i, b := range a.Batches {
		at := b.Ladder.Graft.In(p.view.Zone())
		all[i] = book.BatchPlanned{
			Day: b.Day, Minute: at.Hour()*60 + at.Minute(), Line: a.Line, Yard: a.Yard, Virgins: a.Rates.Virgins,
			Larvae: b.Graft.Larvae, Nucs: b.Graft.Nucs, By: a.By, Laying: a.Laying, Sure: a.Sure,
		}
		expected[i] = b.Size.Queens * (1 - b.Late)
	}
	for i, n := range Shares(a.Queens, expected) {
		all[i].Queens = n
	}
	return all
}

// Shares parts queens among grafts by how many are to be expected of each: whole ones, and
// all of them together as many as there are.
func Shares(queens int, expected []float64) []int {
	all, sum, before, given := make([]int, len(expected)), 0.0, 0.0, 0
	for _, e := range expected {
		sum += e
	}
	for i, e := range expected {
		before += e
		to := queens
		if sum > 0 && i < len(expected)-1 {
			to = int(float64(queens)*before/sum + 0.5)
		}
		all[i], given = to-given, to
	}
	return all
}

// OneWish tells whether two planned batches are grafts of one wish, whose queens are wished
// together: for the same order, or with none for the same day, line, yard and certainty.
func OneWish(a, b book.BatchPlan) bool {
	if a.By != b.By || a.Laying != b.Laying || a.Virgins != b.Virgins {
		return false
	}
	if len(a.Orders)+len(b.Orders) > 0 {
		return slices.ContainsFunc(a.Orders, func(o book.OrderID) bool { return slices.Contains(b.Orders, o) })
	}
	return !a.By.IsZero() && a.Line == b.Line && a.Yard == b.Yard && a.Sure == b.Sure && a.Queens > 0 && b.Queens > 0
}

// oneWish is [OneWish], an order being that of a batch only where it takes the batch's line.
func (p *Planner) oneWish(a, b book.BatchPlan) bool {
	a.Orders, b.Orders = p.view.Awaiting(a.BatchPlanned), p.view.Awaiting(b.BatchPlanned)
	return OneWish(a, b)
}

// WishOf are the planned batches that are grafts of one wish with a batch, that one among them
// as it is told, by the day of their grafts.
func (p *Planner) WishOf(b book.BatchPlan) (all []book.BatchPlan) {
	all = append(all, b)
	for o := range p.view.ToGraft() {
		if o.Batch != b.Batch && p.oneWish(o, b) {
			all = append(all, o)
		}
	}
	byGraft(all)
	return all
}

// byGraft puts planned batches into the order of their grafts.
func byGraft(all []book.BatchPlan) {
	slices.SortStableFunc(all, func(a, b book.BatchPlan) int {
		return cmp.Or(cmp.Compare(a.Day, b.Day), cmp.Compare(a.Minute, b.Minute))
	})
}
