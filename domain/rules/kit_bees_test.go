package rules_test

import (
	"math"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// TestBeesToCheckBeesWith: who checks nucs whose bees fly home takes cups along, as many as
// are to be expected to be wanted: most where they are reckoned to be few, none where no
// look could find few.
func TestBeesToCheckBeesWith(t *testing.T) {
	for cups, want := range map[float64]bool{2: true, 20: false} {
		p := pen(t)
		for _, name := range []string{"A1", "A2", "A3"} {
			p.At("2027-05-01 18:00").Write(book.NucPlaced{Nuc: booktest.Nuc(name), Yard: atHome},
				book.NucMadeUp{Nuc: booktest.Nuc(name), Cups: cups, Food: 900, From: booktest.Colony("S2")})
		}
		day := rules.Day(p.View("2027-05-02 07:30"), calendar.Date(2027, 5, 2))
		checks, packed := 0, 0.0
		for _, task := range tasks(day.Stops) {
			if task.Act == rules.ActCheckBees {
				checks += len(task.Of)
			}
		}
		for _, k := range day.Kit {
			if strings.HasSuffix(k.Goods, "of bees") && strings.Contains(k.Note, "in case") {
				packed += k.Amount
			}
		}
		if checks != 3 || (packed > 0) != want || packed > 3 {
			t.Errorf("made up with %v cups: %d checks, %v cups along", cups, checks, packed)
		}
	}
}

// TestTriageTakesTime: where a virgin walks she is caught and every cell is looked at, however
// many nucs are ready: by hand 4 min and a minute a cell, and the caging.
func TestTriageTakesTime(t *testing.T) {
	for _, cells := range []int{24, 320} {
		p := pen(t)
		p.At("2027-05-05 18:00").Write(graft(4, cells))
		p.At("2027-05-17 07:00").Write(book.ClockSeen{Batch: batch(4), Sign: book.SeenWalking})
		v := p.View("2027-05-17 07:10")
		n := v.Numbers()
		least := n.Get(practice.MinutesCatch) + n.Get(practice.MinutesEmergenceCheck)*float64(cells)
		got := 0.0
		for _, task := range tasks(rules.Day(v, v.Today()).Stops) {
			if task.Act == rules.ActCollectCells {
				got += task.Minutes
			}
		}
		if got < least {
			t.Errorf("%d cells take %v min, want %v at least", cells, got, least)
		}
	}
}

// TestTimeToCageGrowsWithTheCages: whatever is caged by the kit of a day takes its time.
func TestTimeToCageGrowsWithTheCages(t *testing.T) {
	was := -1.0
	for _, cells := range []int{6, 12, 24} {
		p := pen(t)
		p.At("2027-05-04 18:00").Write(graft(4, cells))
		p.At("2027-05-09 18:00").Write(book.CappedCounted{Batch: batch(4), Capped: cells})
		p.At("2027-05-12 18:00").Write(madeUp("A1", "A2")...).Write(book.BatchReadied{Batch: batch(4), Step: book.NucsReady})
		v := p.View("2027-05-14 07:30")
		day := rules.Day(v, v.Today())
		minutes, cages := 0.0, 0.0
		for _, task := range tasks(day.Stops) {
			if task.Act == rules.ActCollectCells {
				minutes += task.Minutes
			}
		}
		for _, k := range day.Kit {
			if strings.HasPrefix(k.Goods, "cage") {
				cages += k.Amount
			}
		}
		if want := cages * v.Numbers().Get(practice.MinutesCageCell); math.Abs(minutes-want) > 1e-9 || minutes <= was {
			t.Errorf("%d cells, %v cages take %v min, want %v", cells, cages, minutes, want)
		}
		was = minutes
	}
}
