package season_test

import (
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// In a spring of which few days are fit to fly no graft is too late for a search that is in
// time for the wish of as many queens: whom the weather lets never lay is not late.
func TestWhatIsInTimeForAWishIsForASearch(t *testing.T) {
	pen := world{nucs: 40}.pen()
	for m, high := range []float64{2, 4, 9, 12, 15, 22, 24, 24, 19, 13, 7, 3} {
		pen.Write(book.WeatherNormal{Yard: booktest.Yard("home"), Month: m + 1, Low: book.Said(high - 10), High: book.Said(high), Rainy: book.Said(0.5)})
	}
	p := plannerOf(pen)
	inTime, cold := 0, 0
	for by := day(t, "2027-05-10"); by <= day(t, "2027-06-03"); by += 2 {
		a := p.Possible(plan.Wish{Queens: 2, By: by})
		f := season.Search(p, season.Wanted{Larvae: []int{48}, Window: 3, Promises: []season.Promise{{Name: "order 1", Queens: 2, By: by}}}, nil)
		late := slices.ContainsFunc(f.Short, func(s season.Short) bool { return slices.Contains(s.Limits, season.TooLate) })
		if a.InTime && late {
			t.Errorf("by %s: the wish grafts on %s, and the search says %s", by, a.Graft, f.Short[0].Why)
		}
		if a.InTime {
			inTime++
			if a.Batches[0].Laid.InTime(by, false) < 0.6 {
				cold++
			}
		}
	}
	if inTime == 0 || cold == 0 {
		t.Errorf("%d days are in time, of %d of them the weather takes much", inTime, cold)
	}
}
