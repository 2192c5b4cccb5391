package rules_test

import (
	"fmt"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/rules"
)

const (
	zone = "Europe/Berlin"
	home = "Ostermead"
	far  = "Quillbank"
)

var (
	atHome = booktest.Yard(home)
	atFar  = booktest.Yard(far)
)

// pen begins a book: a home yard with a finisher and a brood source, a mating
// yard 20 km away, two stands of four in it, and a keeper who is free on
// weekday evenings and at weekends.
func pen(t testing.TB) *booktest.Pen {
	t.Helper()
	berlin, err := time.LoadLocation(zone)
	if err != nil {
		t.Fatal(err)
	}
	p := &booktest.Pen{Zone: berlin, Writer: "Ida"}
	p.At("2027-04-01 08:00").Write(
		book.YardDescribed{Yard: atHome, Name: home, Home: true, Lat: 50.00, Lon: 10, Zone: zone},
		book.YardDescribed{Yard: atFar, Name: far, Lat: 50.18, Lon: 10, Zone: zone, Drive: 22},
		book.StandSet{Stand: booktest.Stand("A"), Yard: atFar, Letter: "A", At: book.Point{X: 10, Y: 10}, Places: 4, Round: "north row"},
		book.StandSet{Stand: booktest.Stand("B"), Yard: atFar, Letter: "B", At: book.Point{X: 20, Y: 10}, Places: 4, Round: "north row"},
		book.StandSet{Stand: booktest.Stand("C"), Yard: atFar, Letter: "C", At: book.Point{X: 10, Y: 40}, Places: 4, Round: "south row"},
		book.ColonyDescribed{Colony: booktest.Colony("S1"), Name: "S1", Yard: atHome, Roles: []book.Role{book.Finisher}, Thousands: 40},
		book.ColonyDescribed{Colony: booktest.Colony("S2"), Name: "S2", Yard: atHome, Roles: []book.Role{book.BroodSource}, Thousands: 40},
		book.ColonyDescribed{Colony: booktest.Colony("K1"), Name: "K1", Yard: atHome, Roles: []book.Role{book.Bank}, Thousands: 30},
		keeper("Ida"),
	)
	for _, letter := range []string{"A", "B", "C"} {
		for place := 1; place <= 4; place++ {
			nuc(p, letter, place)
		}
	}
	return p
}

func keeper(name string) book.PersonDescribed {
	f := book.PersonDescribed{Person: booktest.Person(name), Name: name}
	for day := time.Monday; day <= time.Friday; day++ {
		f.Free[day] = book.FreeHours{From: 18*60 + 30, Until: 20*60 + 30}
	}
	f.Free[time.Saturday] = book.FreeHours{From: 7 * 60, Until: 20 * 60}
	f.Free[time.Sunday] = f.Free[time.Saturday]
	return f
}

// nuc sets up an empty nuc of six sides of 2 dm² on a place.
func nuc(p *booktest.Pen, letter string, place int) {
	name := fmt.Sprintf("%s%d", letter, place)
	p.Write(
		book.NucNamed{Nuc: booktest.Nuc(name), Name: name, Sides: 6, Side: 2},
		book.NucPlaced{Nuc: booktest.Nuc(name), Yard: atFar, Stand: booktest.Stand(letter), Place: place},
		book.EntranceSet{Nuc: booktest.Nuc(name), Area: 1.2},
	)
}

// graft begins a batch of larvae of 18 h, with as many cells capped.
func graft(number, cells int) book.Grafted {
	return book.Grafted{Batch: batch(number), Number: number, Larvae: cells, LarvaAge: 18, Line: "Rook"}
}

func batch(number int) book.BatchID { return booktest.Batch(fmt.Sprint(number)) }

// madeUp fills nucs with three cups of bees and enough food.
func madeUp(names ...string) []book.Fact {
	var facts []book.Fact
	for _, name := range names {
		facts = append(facts, book.NucMadeUp{Nuc: booktest.Nuc(name), Cups: 3, Food: 900, From: booktest.Colony("S2")})
	}
	return facts
}

func cells(number int, names ...string) []book.Fact {
	var facts []book.Fact
	for _, name := range names {
		facts = append(facts, book.CellGiven{Nuc: booktest.Nuc(name), Batch: batch(number)})
	}
	return facts
}

// of are the findings of a rule, in the order told.
func of(v *book.View, r rules.Rule) []rules.Finding {
	var all []rules.Finding
	for _, f := range rules.Findings(v) {
		if f.Rule == r {
			all = append(all, f)
		}
	}
	return all
}

func instant(t testing.TB, moment string) time.Time {
	t.Helper()
	berlin, err := time.LoadLocation(zone)
	if err != nil {
		t.Fatal(err)
	}
	at, err := time.ParseInLocation("2006-01-02 15:04", moment, berlin)
	if err != nil {
		t.Fatal(err)
	}
	return at
}

func day(t time.Time) string {
	berlin, err := time.LoadLocation(zone)
	if err != nil {
		panic(err)
	}
	return t.In(berlin).Format("2006-01-02")
}
