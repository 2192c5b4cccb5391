package season_test

import (
	"fmt"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// world is a book with nucs, and colonies that rear, give and have drones, in one yard, and
// of so many places in an incubator.
type world struct {
	nucs, starters, finishers, givers, drones, places int
	breeders                                          []string // their lines
}

const morning = "2027-04-01 08:00"

func (w world) pen() *booktest.Pen {
	home := booktest.Yard("home")
	p := (&booktest.Pen{}).At("2027-03-01 12:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
	for i := range w.nucs {
		n := booktest.Nuc(fmt.Sprint(i))
		p.Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("A%d", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: home})
	}
	colony := func(i int, r book.Role) {
		name := fmt.Sprintf("%s %d", r, i)
		p.Write(book.ColonyDescribed{Colony: booktest.Colony(name), Name: name, Yard: home, Roles: []book.Role{r}, Thousands: 40})
	}
	for i, line := range w.breeders {
		name := fmt.Sprint("breeder ", i)
		p.Write(book.ColonyDescribed{Colony: booktest.Colony(name), Name: name, Yard: home, Roles: []book.Role{book.Breeder}, Line: line, Queen: booktest.Queen(name)})
	}
	for i := range w.starters {
		colony(i, book.Starter)
	}
	for i := range w.finishers {
		colony(i, book.Finisher)
	}
	for i := range w.givers {
		colony(i, book.BroodSource)
	}
	for i := range w.drones {
		colony(i, book.DroneSource)
	}
	if w.places > 0 {
		p.Write(book.NumberChanged{Number: "incubator_places", Value: float64(w.places)})
	}
	return p
}

func plannerOf(p *booktest.Pen) *plan.Planner { return plan.New(course.New(p.View(morning))) }

func day(t testing.TB, s string) calendar.Day {
	t.Helper()
	d, err := calendar.ParseDay(s)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// big is a season of forty orders for queens of four lines, from 2,500 nucs in
// three yards.
func big(t testing.TB) (*plan.Planner, season.Wanted) { return plannerOf(bigPen()), orders(t) }

// bigPen are the nucs and colonies of it.
func bigPen() *booktest.Pen {
	p := (&booktest.Pen{}).At("2027-03-01 12:00")
	for y := range 3 {
		yard := booktest.Yard(fmt.Sprint("yard ", y))
		p.Write(book.YardDescribed{Yard: yard, Name: fmt.Sprint("Yard ", y+1), Home: y == 0, Zone: "UTC"})
		for i := range 2500/3 + 1 {
			n := booktest.Nuc(fmt.Sprint(y, "-", i))
			p.Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("A%d", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: yard})
		}
	}
	for i := range 20 {
		r := book.Starter
		if i >= 6 {
			r = book.Finisher
		}
		name := fmt.Sprintf("S%d", i)
		p.Write(book.ColonyDescribed{Colony: booktest.Colony(name), Name: name, Yard: booktest.Yard("yard 0"), Roles: []book.Role{r}, Thousands: 40})
	}
	return p
}

// orders are the forty orders of it.
func orders(t testing.TB) (w season.Wanted) {
	first := day(t, "2027-05-25")
	for i := range 40 {
		w.Promises = append(w.Promises, season.Promise{
			Name: fmt.Sprint("order ", i+1), Queens: 6 + i*7%30, Lines: []string{[]string{"Siskin", "Plover", "Yarrow", "Rook"}[i*3%4]},
			By: first + calendar.Day(i*2), Sure: []float64{0.8, 0.9, 0.75}[i%3],
		})
	}
	return w
}
