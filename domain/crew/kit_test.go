package crew_test

import (
	"fmt"
	"slices"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/crew"
	"lidmark/domain/demo"
	"lidmark/domain/rules"
)

// TestKitsOfPeople: however a day is dealt out, what all people take along together is what
// the same work needs in one hand, and who has no work takes nothing. What each of them
// has to have, one is not enough of: a pen, a sheet to shake out on, spare cups, and a
// reducer for a nuc whose entrance two come by.
func TestKitsOfPeople(t *testing.T) {
	day := calendar.Date(2027, time.May, 11)
	s := book.NewSeason(time.LoadLocation, demo.Season(day, time.UTC))
	v := s.At(day.At(7, 30, time.UTC))
	j := rules.Judge(v)
	shared := []string{"marking pen", "sheet to shake out on", "cup of bees", "cups of bees", "entrance reducer", "entrance reducers"}
	several := 0
	for n := range 16 {
		vans, hours := 1+n%4, []float64{0.75, 2, 4.5, 9}[n/4]
		d, err := crew.Plan(j, day, crew.HandsOf(v, day, vans, hours))
		if err != nil {
			t.Fatal(err)
		}
		sum, with := map[string]float64{}, 0
		for i, kit := range d.Kits(j) {
			if len(d.Sheets[i].Visits) == 0 && len(kit) > 0 {
				t.Fatalf("%s has nothing to do, and takes %v along", d.Sheets[i].Name, kit)
			}
			with += min(1, len(kit))
			for _, k := range kit {
				sum[one(k.Goods)] += k.Amount
			}
		}
		if with > 1 {
			several++
		}
		var stops []rules.Stop
		for _, sheet := range d.Sheets {
			for _, visit := range sheet.Visits {
				for _, w := range visit.Work {
					task := w.Task
					task.Of, task.Findings = []book.Subject{w.Of}, rules.FindingsOf(w.Task.Findings, map[book.Subject]bool{w.Of: true})
					stops = append(stops, rules.Stop{Yard: visit.Yard, Tasks: []rules.Task{task}})
				}
			}
		}
		for _, k := range j.Kit(stops, day) {
			if got := sum[one(k.Goods)]; !slices.Contains(shared, k.Goods) && got != k.Amount {
				t.Fatalf("%g %s for all, %g on the sheets", k.Amount, k.Goods, got)
			}
			delete(sum, one(k.Goods))
		}
		if len(sum) > 0 {
			t.Fatalf("taken along for no work: %v", sum)
		}
	}
	if several == 0 {
		t.Error("no day on which two people take something along")
	}
}

// one is the same goods whether one or several of them are packed.
func one(goods string) string {
	for _, g := range [][2]string{{"queen cages", "queen cage"}, {"cages for cells", "cage for cells"}, {"ripe cells", "ripe cell"}, {"cell protectors", "cell protector"}, {"portions of fondant", "portion of fondant"}, {"combs of brood", "comb of brood"}} {
		if goods == g[0] {
			return g[1]
		}
	}
	return goods
}

// TestWhoMakesUpTakesBees: the bees that nucs are made up with stand on the sheet of who
// makes them up, the cells on that of who gives them.
func TestWhoMakesUpTakesBees(t *testing.T) {
	day := calendar.Date(2027, time.May, 11)
	s := book.NewSeason(time.LoadLocation, demo.Season(day, time.UTC))
	v := s.At(day.At(7, 30, time.UTC))
	j := rules.Judge(v)
	d, err := crew.Plan(j, day, crew.HandsOf(v, day, 3, 0))
	if err != nil {
		t.Fatal(err)
	}
	seen := 0
	for i, kit := range d.Kits(j) {
		makes, gives := does(d.Sheets[i], rules.ActMakeUp), does(d.Sheets[i], rules.ActGiveCell)
		cups := slices.ContainsFunc(kit, func(k rules.KitLine) bool { return k.Goods == "cups of bees" })
		cells := slices.ContainsFunc(kit, func(k rules.KitLine) bool { return k.Goods == "ripe cells" })
		if cups != makes || cells != gives {
			t.Errorf("%s makes up: %t, gives: %t; kit %s", d.Sheets[i].Name, makes, gives, fmt.Sprint(kit))
		}
		if makes || gives {
			seen++
		}
	}
	if seen < 2 {
		t.Errorf("%d people make up nucs or give cells, want two", seen)
	}
}

func does(s crew.Sheet, act rules.Act) bool {
	return slices.ContainsFunc(s.Visits, func(v crew.Visit) bool {
		return slices.ContainsFunc(v.Work, func(w crew.Work) bool { return w.Task.Act == act })
	})
}
