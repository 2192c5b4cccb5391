package plan_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
)

// A step that nobody wrote down is missed from the day after its last one on, as the plan has that day, and
// the graft can be moved to the first day before which none of them is past.
func TestWhatWasMissedMovesTheGraftNoFurtherThanItMust(t *testing.T) {
	graft, asked := day(t, "2027-05-20"), 0
	for today := graft - 8; today <= graft+1; today++ {
		at := func(on calendar.Day) (*plan.Planner, book.BatchPlan) {
			pen := yardOf(12)
			pen.At("2027-04-01 08:00").Write(book.BatchPlanned{Batch: booktest.Batch("b"), Day: on, Minute: 9 * 60, Larvae: 40, Nucs: 12, Yard: booktest.Yard("home")})
			p := plannerOf(pen, today.At(8, 0, time.UTC).Format("2006-01-02 15:04"))
			b, _ := p.View().BatchPlan(booktest.Batch("b"))
			return p, b
		}
		p, b := at(graft)
		first, steps := p.Missed(b)
		ladder, missed := p.Ladder(graft.At(9, 0, time.UTC), 40, b.Yard), 0
		for _, s := range []plan.Step{plan.Confine, plan.SetUpStarter} {
			if due := ladder.Rung(s); due.By < today {
				if missed >= len(steps) || steps[missed].Step != s || steps[missed].By != due.By || steps[missed].From != due.From || steps[missed].Best != due.Best {
					t.Errorf("%s: %v was due by %s, missed are %+v", today, s, due.By, steps)
				}
				missed++
			}
		}
		if len(steps) != missed || first.IsZero() != (missed == 0) {
			t.Errorf("%s: %d steps are missed, the graft moves to %s; want %d", today, len(steps), first, missed)
		}
		if missed == 0 {
			continue
		}
		asked++
		past := func(on calendar.Day) bool {
			l := p.Ladder(on.At(9, 0, time.UTC), 40, b.Yard)
			return l.Rung(plan.Confine).By < today || l.Rung(plan.SetUpStarter).By < today
		}
		if past(first) || first > today+1 && !past(first-1) {
			t.Errorf("%s: the graft moves to %s", today, first)
		}
	}
	if asked < 3 {
		t.Errorf("on %d days a step is missed", asked)
	}
}

// The cells of a grafted batch are taken as given on the days behind their best one in the zone of the yard to
// which they go, looked at from before; not on the day itself, and not once a virgin was seen.
func TestCellsAreTakenAsGivenInTheZoneOfTheirYard(t *testing.T) {
	id := booktest.Batch("4")
	for zone, best := range map[string]string{"UTC": "2027-05-14", "Pacific/Auckland": "2027-05-15"} {
		pen := yardOf(8)
		pen.Write(book.YardDescribed{Yard: booktest.Yard("away"), Name: "Away", Zone: zone},
			book.BatchPlanned{Batch: id, Day: day(t, "2027-05-05"), Larvae: 24, Nucs: 8, Yard: booktest.Yard("away")})
		pen.At("2027-05-05 06:00").Write(book.Grafted{Batch: id, Number: 4, Larvae: 24})
		taken := func(on, from string) bool {
			p := plan.New(course.New(book.NewSeason(booktest.Zones, pen.Entries).Ahead(day(t, on).At(12, 0, time.UTC), day(t, from))))
			b := p.View().Batch(id)
			if l := p.Left(b); p.CellsTaken(b) && l.Cells != b.Unplaced() {
				t.Errorf("%s: %d cells are left of %d that are taken as given", on, l.Cells, b.Unplaced())
			}
			return p.CellsTaken(b)
		}
		next := (day(t, best) + 1).At(12, 0, time.UTC).Format("2006-01-02")
		if taken(best, "2027-05-11") || !taken(next, "2027-05-11") || taken(next, next) {
			t.Errorf("%s: taken on the best day %v, on the next %v, without looking ahead %v", zone, taken(best, "2027-05-11"), taken(next, "2027-05-11"), taken(next, next))
		}
		pen.At("2027-05-11 08:00").Write(book.ClockSeen{Batch: id, Sign: book.SeenWalking})
		if taken(next, "2027-05-11") {
			t.Errorf("%s: cells are taken as given of which a virgin was seen", zone)
		}
	}
}
