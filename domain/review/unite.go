package review

import (
	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// nearby is how many places along the walk a neighbour to unite with may be.
const nearby = 4

// unite offers every nuc that has nobody to wait for its nearest neighbour with
// a queen, or one to come, in the same yard.
func (r *Review) unite(cases []*nucCase) {
	for i, k := range cases {
		if !k.hopeless() {
			continue
		}
		for by := 1; by <= nearby; by++ {
			if j := i - by; j >= 0 && k.joins(cases[j]) {
				k.uniteWith(cases[j])
				break
			}
			if j := i + by; j < len(cases) && k.joins(cases[j]) {
				k.uniteWith(cases[j])
				break
			}
		}
	}
}

// hopeless tells whether nobody is to be waited for. Laying workers would kill
// a neighbour's queen.
func (k *nucCase) hopeless() bool {
	return k.held.From != 0 && (k.holds.Calendar == book.NoQueen || k.holds.Calendar == book.DroneLayer)
}

// joins tells whether a nuc may be united with a neighbour that has a queen, or one to come.
func (k *nucCase) joins(n *nucCase) bool {
	return n.held.From != 0 && !rules.PlanStands(n.nuc, k.today, k.numbers) && n.nuc.Yard == k.nuc.Yard && n.nuc.RobbedAt.IsZero() && (n.awaited() || n.nuc.Holds.Condition.Queenright()) && k.mayJoin(n)
}

// mayJoin tells whether the rules allow it, but for what bars it until a day and is told
// there.
func (k *nucCase) mayJoin(n *nucCase) bool {
	return k.view.Yard(k.nuc.Yard).Standstill != nil || k.judged.Check(rules.Unite{Nuc: k.nuc.Nuc, With: n.nuc.Nuc.Subject()}).OK()
}

// uniteWith adds the bees to a neighbour's: they are kept as its own are.
func (k *nucCase) uniteWith(n *nucCase) {
	w := k.weighed(Way{Kind: Unite, With: n.nuc.Nuc, On: k.today, Dusk: k.duskOf(Way{Kind: Unite, On: k.today})}, figure{}, 0)
	w.parts.bees = k.cups * n.held.figures[wayKey{kind: Leave}].kept * k.numbers.Get(practice.PriceCup)
	w.Worth += w.parts.bees
	k.ways = append(k.ways, w)
}
