package review

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// giveDays is the span over which a colony gives so many bees and no more, as
// [practice.ColonyGives] counts.
const giveDays calendar.Day = 7

// Bees is how many whole cups of bees the book's brood sources can give on the
// day, and their names: what strong colonies give in a week, less what they gave.
func (r *Review) Bees() (cups int, from []string) {
	a := r.numbers.Get(practice.BeesPerCup)
	each := r.numbers.Get(practice.ColonyGives) * r.numbers.Get(practice.BeesPerKilogram) / a
	for c := range r.view.Colonies() {
		if !c.Is(book.BroodSource) {
			continue
		}
		left := each
		for _, t := range c.Gave {
			if t.At.Day(r.view.Zone()) > r.Day-giveDays {
				left -= t.Cups
			}
		}
		if n := int(math.Floor(max(0, left))); n > 0 {
			cups, from = cups+n, append(from, c.Name)
		}
	}
	return cups, from
}
