package crew_test

import (
	"fmt"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/crew"
	"lidmark/domain/rules"
)

// courierTuesday is a book of 840 nucs in one yard on a Tuesday: 320 ripe cells for
// as many nucs, which must be out in the small hours of Wednesday, 120 queens for
// Wednesday's courier and 400 nucs to be looked into for eggs; four people who have 450
// min each on Tuesdays and Thursdays.
func courierTuesday() *booktest.Pen {
	home, far := booktest.Yard("home"), booktest.Yard("far")
	p := (&booktest.Pen{}).At("2027-03-01 08:00").Write(
		book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"},
		book.YardDescribed{Yard: far, Name: "Far", Zone: "UTC", Drive: 33},
	)
	free := [7]book.FreeHours{}
	free[time.Tuesday] = book.FreeHours{From: 8 * 60, Until: 15*60 + 30}
	free[time.Thursday] = free[time.Tuesday]
	for _, name := range []string{"Ida", "Jon", "Rieke", "Tilda"} {
		p.Write(book.PersonDescribed{Person: booktest.Person(name), Name: name, Free: free})
	}
	nuc := func(name string, day string) book.NucID {
		n := booktest.Nuc(name)
		p.At(day+" 18:00").Write(book.NucNamed{Nuc: n, Name: name, Sides: 6, Side: 2}, book.NucPlaced{Nuc: n, Yard: far}, book.NucMadeUp{Nuc: n, Cups: 4, Food: 900})
		return n
	}
	ripe := booktest.Batch("ripe")
	p.At("2027-05-16 14:00").Write(book.Grafted{Batch: ripe, Number: 9, Larvae: 400, LarvaAge: 18})
	for i := range 320 {
		nuc(fmt.Sprintf("R%d", i+1), "2027-05-21")
	}
	p.At("2027-05-24 08:00").Write(book.RipeCounted{Batch: ripe, Ripe: 320})
	for i := range 120 {
		n := nuc(fmt.Sprintf("Q%d", i+1), "2027-04-20")
		p.At("2027-05-08 10:00").Write(book.Looked{Nuc: n, Eggs: book.SingleEggs, Queen: book.QueenSeen})
		p.At("2027-05-22 10:00").Write(book.Looked{Nuc: n, Queen: book.QueenSeen, Brood: book.Said(4), Eggs: book.SingleEggs})
	}
	early := booktest.Batch("early")
	p.At("2027-04-28 08:00").Write(book.Grafted{Batch: early, Number: 8, Larvae: 500, LarvaAge: 18})
	for i := range 400 {
		n := nuc(fmt.Sprintf("L%d", i+1), "2027-05-07")
		p.At("2027-05-09 08:00").Write(book.CellGiven{Nuc: n, Batch: early})
	}
	wednesday := calendar.Date(2027, time.May, 26)
	return p.At("2027-05-20 08:00").Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Customer: "Corin", Queens: 120, By: wednesday, Sent: true})
}

// doneBy is how many pieces of work of each kind are done on a day.
func doneBy(day crew.Day) map[rules.Act]int {
	done := map[rules.Act]int{}
	for _, s := range day.Sheets {
		for _, visit := range s.Visits {
			for _, w := range visit.Work {
				done[w.Task.Act]++
			}
		}
	}
	return done
}

// All 320 cells and 120 catches are done by the three who come; of 1350 min they drive 198
// and have 352 left; the courier is served when they are back, 5 min for each of the three
// in the van, so there is time for 168 looks, and 232 wait until Thursday. The price
// is that of nucs without a laying queen, which stand idle two days more.
func TestAHandIsMissingOnTheDayOfTheCourier(t *testing.T) {
	v := courierTuesday().View("2027-05-25 07:00")
	day, err := crew.Plan(rules.Judge(v), v.Today(), crew.HandsOf(v, v.Today(), 1, 0, booktest.Person("Tilda")))
	if err != nil {
		t.Fatal(err)
	}
	done, waits := doneBy(day), map[rules.Act]int{}
	for _, w := range day.Waits {
		waits[w.Task.Act]++
	}
	if len(day.Sheets) != 3 || done[rules.ActGiveCell] != 320 || done[rules.ActCatchQueen] != 120 {
		t.Errorf("%d people, %d cells and %d catches", len(day.Sheets), done[rules.ActGiveCell], done[rules.ActCatchQueen])
	}
	if looks, later := done[rules.ActLookForEggs], waits[rules.ActLookForEggs]; done[rules.ActHandOver] != 1 || looks != 168 || later != 232 || later != len(day.Waits) {
		t.Errorf("%d looks, %d wait, of %d pieces of work that do", looks, later, len(day.Waits))
	}
	if thursday := v.Today() + 2; calendar.DayOf(day.Next, v.Zone()) != thursday || day.Loss < 1 || day.Loss > 4 {
		t.Errorf("somebody comes again at %v, and %.1f queens are lost by then", day.Next, day.Loss)
	}
}

// The floor is the judging of the day that the choice starts from.
func BenchmarkTheDayOfTheCourier(b *testing.B) {
	v := courierTuesday().View("2027-05-25 07:00")
	j := rules.Judge(v)
	hands := crew.HandsOf(v, v.Today(), 1, 0, booktest.Person("Tilda"))
	b.Run("plan", func(b *testing.B) {
		for b.Loop() {
			if _, err := crew.Plan(j, v.Today(), hands); err != nil {
				b.Fatal(err)
			}
		}
	})
	b.Run("floor", func(b *testing.B) {
		for b.Loop() {
			rules.Judge(v).Day(v.Today())
		}
	})
}
