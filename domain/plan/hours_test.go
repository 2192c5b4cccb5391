package plan_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/plan"
)

// Who is free on Monday evenings alone, and on Sundays, gives cells that must be out by
// Monday noon on Sunday; without the Sunday, nobody is free before the hard hour.
func TestCellsAreGivenWhileSomebodyIsFree(t *testing.T) {
	hours := [7]book.FreeHours{0: {From: 480, Until: 1200}, 1: {From: 1020, Until: 1200}}
	for _, sunday := range []bool{true, false} {
		if !sunday {
			hours[0] = book.FreeHours{}
		}
		pen := yardOf(8)
		pen.Write(book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida M.", Free: hours})
		p := plannerOf(pen, "2027-05-11 08:00")
		d := day(t, "2027-05-28")
		l := p.Ladder(d.At(9, 0, p.View().Zone()), 50, booktest.Yard("home"))
		give := l.Rung(plan.GiveCells)
		if give.By != day(t, "2027-06-07") || give.Hard.Hour() >= 17 {
			t.Fatalf("hard by %s", give.Hard)
		}
		if sunday && (give.Best != day(t, "2027-06-06") || give.NobodyFree) {
			t.Errorf("best %s, nobody free %v", give.Best, give.NobodyFree)
		}
		if !sunday && !give.NobodyFree {
			t.Errorf("somebody is said to be free from %s to %s", give.From, give.Hard)
		}
	}
}
