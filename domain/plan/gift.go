package plan

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Gift is what one colony gives for a batch.
type Gift struct {
	Colony *book.Colony
	Cups   float64
	Combs  float64
}

// Gifts says who gives the bees and combs of a day: from those that can give most,
// so that the fewest are opened. What nobody can give is left over.
func (p *Planner) Gifts(on calendar.Day, cups, combs float64) (all []Gift, shortCups, shortCombs float64) {
	cup := p.numbers.Get(practice.BeesPerCup) / p.numbers.Get(practice.BeesPerKilogram)
	for _, g := range p.Givers(on) {
		gift := Gift{g.Colony, min(cups, g.Kilograms/cup), min(combs, g.Combs)}
		if gift.Cups > 0 || gift.Combs > 0 {
			all = append(all, gift)
		}
		cups, combs = cups-gift.Cups, combs-gift.Combs
	}
	return all, cups, combs
}
