package crew

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// food: a nuc that is light is lost with the days, one whose food is out far sooner. By
// the end of the days that it may bear without any it is lost as often as a light nuc that
// nobody feeds, as the review reckons it too; common practice, no source.
func (p *pricer) food(s book.Subject) Price {
	lost := p.numbers.Get(practice.LightLost)
	price := p.share(lost, p.numbers.Get(practice.LightBelow), "light: %.0f of 100 such nucs are lost in %.1f d")
	without := p.without(s)
	if starved := lost * min(1, without/max(1, p.numbers.Get(practice.StarvedAfter))); starved > price.Queens {
		return Price{starved, fmt.Sprintf("%.0f d without food by then: %.0f of 100 such nucs are lost", without, 100*starved)}
	}
	return price
}

// without is for how many days a nuc is without food when somebody comes again; 0 where it
// has some, or nobody knows.
func (p *pricer) without(s book.Subject) float64 {
	id, ok := s.Nuc()
	if !ok {
		return 0
	}
	n := p.view.Nuc(id)
	switch has := p.judged.Strength(n.Yard).Of(n); {
	case !has.FoodKnown:
		return 0
	case has.FoodOut != 0:
		return max(0, p.next.Sub(has.FoodOut.Start(p.judged.Course().Zone(n.Yard))).Hours()/24)
	default:
		return max(0, p.days-has.FoodDays)
	}
}

// isOut tells whether the food of a nuc is out.
func (p *pricer) isOut(s book.Subject) bool {
	id, ok := s.Nuc()
	if !ok {
		return false
	}
	n := p.view.Nuc(id)
	has := p.judged.Strength(n.Yard).Of(n)
	return has.FoodKnown && has.FoodOut != 0
}
