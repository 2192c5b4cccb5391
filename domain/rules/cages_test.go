package rules_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// cellsAndCages are the ripe cells and the cages for cells of a kit.
func cellsAndCages(kit []rules.KitLine) (cells, cages float64) {
	for _, k := range kit {
		switch {
		case strings.HasPrefix(k.Goods, "ripe cell"):
			cells += k.Amount
		case strings.HasPrefix(k.Goods, "cage"):
			cages += k.Amount
		}
	}
	return cells, cages
}

// TestEveryCellIsCountedOnce: of six cells four have nucs that are still to be made up, or are
// made up already. Two go into cages, and each of the six takes its minutes once: as told a
// day ahead and on the day, and by whoever does which part.
func TestEveryCellIsCountedOnce(t *testing.T) {
	on := calendar.Date(2027, 5, 15)
	for made := range 5 {
		p := nucsWanted(4).At("2027-05-13 10:00")
		for i := range made {
			p.Write(book.NucMadeUp{Nuc: booktest.Nuc(fmt.Sprint("B", i+1)), Cups: 3})
		}
		for _, at := range []string{"2027-05-13 12:00", "2027-05-15 07:00"} {
			v := p.View(at)
			j := rules.Judge(v)
			plan := j.Day(on)
			minutes, parts := 0.0, [][]rules.Finding(nil)
			for _, task := range tasks(plan.Stops) {
				switch task.Act {
				case rules.ActCollectCells, rules.ActGiveCell:
					minutes += task.Minutes
				}
				parts = append(parts, task.Findings)
			}
			cells, cages := cellsAndCages(plan.Kit)
			n := v.Numbers()
			want := 4*n.Get(practice.MinutesGiveCell) + 2*n.Get(practice.MinutesCageCell)
			if cells != 4 || cages != 2 || math.Abs(minutes-want) > 1e-9 {
				t.Errorf("%d made up, %s: %v cells and %v cages take %v min, want 4 and 2 in %v", made, at, cells, cages, minutes, want)
			}
			cells, cages = 0, 0
			for _, kit := range j.Kits(parts, on) {
				of, in := cellsAndCages(kit)
				cells, cages = cells+of, cages+in
			}
			if cells != 4 || cages != 2 {
				t.Errorf("%d made up, %s, each for himself: %v cells and %v cages", made, at, cells, cages)
			}
		}
	}
}

// TestCagesWhereNobodyMakesUp: where nobody makes the nucs up on the day, all cells want cages.
func TestCagesWhereNobodyMakesUp(t *testing.T) {
	v := nucsWanted(4).View("2027-05-15 07:00")
	j := rules.Judge(v)
	var parts [][]rules.Finding
	for _, task := range tasks(j.Day(v.Today()).Stops) {
		if task.Act == rules.ActCollectCells {
			parts = append(parts, task.Findings)
		}
	}
	if kits := j.Kits(parts, v.Today()); len(kits) != 1 {
		t.Fatalf("%d tasks to collect cells", len(kits))
	} else if cells, cages := cellsAndCages(kits[0]); cells != 0 || cages != 6 {
		t.Errorf("%v cells and %v cages, want 6 cages", cells, cages)
	}
}
