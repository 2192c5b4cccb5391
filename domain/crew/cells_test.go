package crew_test

import (
	"fmt"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/crew"
	"lidmark/domain/rules"
)

// ripeTonight is a book with ripe cells that may stay together until tomorrow night, so many nucs that
// wait for one, and four cells more. The cells are so many minutes
// away from home, and the nucs too.
func ripeTonight(nucs int, cellsFar, nucsFar float64) *book.View {
	return ripeFor(nucs, 4, cellsFar, nucsFar, "2027-05-10 17:30")
}

// ripeFor is that book at an instant, with so many cells more.
func ripeFor(nucs, more int, cellsFar, nucsFar float64, at string) *book.View {
	home, rears, out := booktest.Yard("home"), booktest.Yard("rears"), booktest.Yard("out")
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(
		book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"},
		book.YardDescribed{Yard: rears, Name: "Rears", Zone: "UTC", Drive: cellsFar},
		book.YardDescribed{Yard: out, Name: "Out", Zone: "UTC", Drive: nucsFar},
	)
	if cellsFar == 0 {
		rears = home
	}
	host := booktest.Colony("H1")
	p.Write(book.ColonyDescribed{Colony: host, Name: "H1", Yard: rears, Roles: []book.Role{book.Finisher}})
	for i := range nucs {
		n := booktest.Nuc(fmt.Sprint("A", i))
		p.At("2027-05-09 18:00").Write(book.NucNamed{Nuc: n, Name: fmt.Sprint("A", i), Sides: 6}, book.NucPlaced{Nuc: n, Yard: out}, book.NucMadeUp{Nuc: n, Cups: 4, Food: 900})
	}
	id := booktest.Batch("b")
	p.At("2027-05-01 17:00").Write(book.Grafted{Batch: id, Number: 4, Larvae: 40, LarvaAge: 18})
	p.At("2027-05-02 17:00").Write(book.CellsMoved{Batch: id, To: host})
	p.At("2027-05-10 08:00").Write(book.RipeCounted{Batch: id, Ripe: nucs + more})
	return p.View(at)
}

// What is done costs no more than to stay at home: cells that may stay together until somebody
// comes again go into no cage while a nuc waits for them. And no cell is given that nobody
// collected: each person collects those that he gives.
func TestCellsAreCollectedAsGiven(t *testing.T) {
	const nucs = 12
	for _, far := range [][2]float64{{0, 25}, {0, 0}, {15, 0}, {15, 25}} {
		v := ripeTonight(nucs, far[0], far[1])
		j := rules.Judge(v)
		home, err := crew.Plan(j, v.Today(), nil)
		if err != nil {
			t.Fatal(err)
		}
		if home.Must > 0 {
			t.Fatalf("%v: %v min have a hard end", far, home.Must)
		}
		given, least := 0, home.Loss
		for minutes := 0.0; minutes <= 180; minutes += 3 {
			hands := crew.Hands{{{Name: "Ida", Minutes: minutes}, {Name: "Emil", Minutes: minutes}}}
			day, err := crew.Plan(j, v.Today(), hands)
			if err != nil {
				t.Fatal(err)
			}
			if day.Loss > home.Loss+1e-9 {
				t.Fatalf("%v: %v min cost %.3f queens, staying at home %.3f", far, minutes, day.Loss, home.Loss)
			}
			least = min(least, day.Loss)
			gives, collects := 0, 0
			for _, s := range day.Sheets {
				for _, visit := range s.Visits {
					for _, w := range visit.Work {
						switch w.Task.Act {
						case rules.ActGiveCell:
							gives++
						case rules.ActCollectCells:
							collects += int(w.Task.Findings[0].Amount)
						}
					}
				}
			}
			given = max(given, gives)
			waits := 0
			for _, w := range day.Waits {
				if w.Task.Act == rules.ActCollectCells {
					waits += int(w.Task.Findings[0].Amount)
				}
			}
			if collects < gives || collects+waits != nucs+4 {
				t.Fatalf("%v: %v min: %d cells are given, %d collected, %d stay together", far, minutes, gives, collects, waits)
			}
			taken := 0.0
			for _, kit := range day.Kits(j) {
				for _, k := range kit {
					if k.Goods == "ripe cells" || k.Goods == "ripe cell" {
						taken += k.Amount
					}
				}
			}
			if int(taken) < gives || gives < nucs && int(taken) != gives {
				t.Fatalf("%v: %v min: %d cells are given, %v taken along", far, minutes, gives, taken)
			}
		}
		if given != nucs || least > home.Loss/2 {
			t.Errorf("%v: with time for all %d of %d cells are given, for %.3f of %.3f queens", far, given, nucs, least, home.Loss)
		}
	}
}

// What is done never costs more than to stay at home, whether cells must be apart before
// somebody comes again or not, wherever they are and whether nucs wait for them.
func TestWhatIsDoneCostsNoMoreThanStaying(t *testing.T) {
	hard := 0
	for _, nucs := range [][2]int{{12, 4}, {0, 16}, {12, 0}} {
		for _, far := range [][2]float64{{0, 25}, {15, 0}, {15, 25}} {
			for _, at := range []string{"2027-05-10 22:30", "2027-05-11 03:30", "2027-05-11 17:30"} {
				v := ripeFor(nucs[0], nucs[1], far[0], far[1], at)
				j := rules.Judge(v)
				home, err := crew.Plan(j, v.Today(), nil)
				if err != nil {
					t.Fatal(err)
				}
				if home.Must > 0 {
					hard++
				}
				for minutes := 10.0; minutes <= 130; minutes += 20 {
					day, err := crew.Plan(j, v.Today(), crew.Hands{{{Name: "Ida", Minutes: minutes}}})
					if err != nil {
						t.Fatal(err)
					}
					if day.Loss > home.Loss+1e-9 {
						t.Errorf("%v nucs and cells more, %v away, %s: %v min cost %.3f queens, staying at home %.3f", nucs, far, at, minutes, day.Loss, home.Loss)
					}
				}
			}
		}
	}
	if hard == 0 {
		t.Error("no cells had to be apart")
	}
}
