package crew_test

import (
	"math"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/crew"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// waiting are the prices of all that waits when nobody comes, by what is done.
func waiting(t *testing.T, p *booktest.Pen, at string) (day crew.Day, of func(rules.Act) []crew.Work) {
	t.Helper()
	v := p.View(at)
	day, err := crew.Plan(rules.Judge(v), v.Today(), nil)
	if err != nil {
		t.Fatal(err)
	}
	return day, func(act rules.Act) (all []crew.Work) {
		for _, w := range day.Waits {
			if w.Task.Act == act {
				all = append(all, w)
			}
		}
		return all
	}
}

// A cell that a nuc waits for is priced at that nuc, with the days the nuc stands idle,
// and not once more where all are collected.
func TestCellsArePricedOnce(t *testing.T) {
	home := booktest.Yard("home")
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
	for _, name := range []string{"A1", "A2"} {
		n := booktest.Nuc(name)
		p.At("2027-05-09 18:00").Write(book.NucNamed{Nuc: n, Name: name, Sides: 6}, book.NucPlaced{Nuc: n, Yard: home}, book.NucMadeUp{Nuc: n, Cups: 4, Food: 900})
	}
	id := booktest.Batch("b")
	p.At("2027-05-01 08:00").Write(book.Grafted{Batch: id, Number: 4, Larvae: 10, LarvaAge: 18})
	p.At("2027-05-10 08:00").Write(book.RipeCounted{Batch: id, Ripe: 5})
	day, of := waiting(t, p, "2027-05-11 09:00")
	give, collect := of(rules.ActGiveCell), of(rules.ActCollectCells)
	if len(give) != 2 || len(collect) != 1 {
		t.Fatalf("%d cells to give, %d to collect", len(give), len(collect))
	}
	idle := day.Next.Sub(p.View("2027-05-11 09:00").On()).Hours() / 24 * (practice.Numbers{}).Get(practice.WorthNucDay)
	lost := give[0].Price.Queens - idle
	if lost <= 0 || math.Abs(collect[0].Price.Queens-3*lost) > 1e-9 {
		t.Errorf("a cell given costs %.4f besides %.4f of standing idle, the other three %.4f", lost, idle, collect[0].Price.Queens)
	}
}

// Of cells that nobody counted as many can be lost as live by the rates, not as many as were grafted.
func TestUncountedCellsArePricedByTheRates(t *testing.T) {
	id := booktest.Batch("b")
	p := (&booktest.Pen{}).At("2027-05-01 08:00").Write(
		book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"},
		book.Grafted{Batch: id, Number: 4, Larvae: 40, LarvaAge: 18})
	price := func() float64 {
		_, of := waiting(t, p, "2027-05-11 09:00")
		all := of(rules.ActCollectCells)
		if len(all) != 1 {
			t.Fatalf("%d times to collect", len(all))
		}
		return all[0].Price.Queens
	}
	grafted, live := price(), plan.RatesOf(p.View("2027-05-11 09:00")).RipeOf(p.View("2027-05-11 09:00").Batch(id))
	p.At("2027-05-11 08:30").Write(book.RipeCounted{Batch: id, Ripe: live})
	if counted := price(); live >= 40 || math.Abs(grafted/counted-1) > 0.1 { // a count says a little of the rates, too
		t.Errorf("40 grafted cost %.2f queens, %d counted %.2f", grafted, live, counted)
	}
}

// A queen who is caught for nobody may wait; one who goes to an order that is due before
// somebody comes again may not.
func TestACatchIsPricedByItsOrder(t *testing.T) {
	price := func(by string) (all []float64) {
		home := booktest.Yard("home")
		p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
		for _, name := range []string{"A1", "A2", "A3"} {
			n := booktest.Nuc(name)
			p.At("2027-04-20 18:00").Write(book.NucNamed{Nuc: n, Name: name, Sides: 6, Side: 2}, book.NucPlaced{Nuc: n, Yard: home}, book.NucMadeUp{Nuc: n, Cups: 4, Food: 900})
			p.At("2027-05-08 10:00").Write(book.Looked{Nuc: n, Eggs: book.SingleEggs, Queen: book.QueenSeen})
			p.At("2027-05-22 10:00").Write(book.Looked{Nuc: n, Queen: book.QueenSeen, Brood: book.Said(4), Eggs: book.SingleEggs})
		}
		due := p.View("2027-05-25 09:00").Today()
		if by == "later" {
			due += 9
		}
		p.At("2027-05-20 08:00").Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Customer: "Corin", Queens: 1, By: due})
		_, of := waiting(t, p, "2027-05-25 09:00")
		for _, w := range of(rules.ActCatchQueen) {
			all = append(all, w.Price.Queens)
		}
		return all
	}
	sum := func(all []float64) (s float64) {
		for _, q := range all {
			s += q
		}
		return s
	}
	if now := price("today"); len(now) == 0 || math.Abs(sum(now)-1) > 0.01 {
		t.Errorf("one queen is due today, and the catches cost %v", now)
	}
	if later := price("later"); sum(later) > 0.01 {
		t.Errorf("nothing is due before somebody comes again, and the catches cost %v", later)
	}
}

// Who is not free so late does no work that waits for dusk, nor more than his time
// allows with the way home; without hours told nobody is kept from it.
func TestDuskIsForThoseWhoAreFreeSoLate(t *testing.T) {
	v := robbed().View("2027-06-02 17:10")
	dusk := v.Today().At(20, 0, v.Zone())
	for name, c := range map[string]struct {
		hands crew.Hands
		want  bool
	}{
		"nobody told": {crew.Hands{{{Name: "Ida", Minutes: 600}}}, true},
		"until ten":   {crew.Hands{{{Name: "Ida", Minutes: 600, Until: dusk.Add(2 * 3600e9)}}}, true},
		"until six":   {crew.Hands{{{Name: "Ida", Minutes: 600, Until: dusk.Add(-2 * 3600e9)}}}, false},
		"no way home": {crew.Hands{{{Name: "Ida", Minutes: 600, Until: dusk.Add(15 * 60e9)}}}, false},
		"the other": {crew.Hands{
			{{Name: "Ida", Minutes: 600, Until: dusk.Add(-2 * 3600e9)}}, {{Name: "Emil", Minutes: 400, Until: dusk.Add(2 * 3600e9)}},
		}, true},
	} {
		day, err := crew.Plan(rules.Judge(v), v.Today(), c.hands)
		if err != nil {
			t.Fatal(err)
		}
		done := false
		for i, s := range day.Sheets {
			for _, visit := range s.Visits {
				if !visit.Dusk.IsZero() {
					done = true
					if len(c.hands) > 1 && s.Name != "Emil" {
						t.Errorf("%s: %s goes at dusk, sheet %d", name, s.Name, i)
					}
				}
			}
		}
		if done != c.want {
			t.Errorf("%s: done at dusk %v, want %v", name, done, c.want)
		}
	}
}

// A courier who takes them tomorrow has them caught today, and so has a customer who
// fetches them before somebody is free again: it has a hard end.
func TestAQueenForTomorrowIsCaughtToday(t *testing.T) {
	for _, sent := range []bool{true, false} {
		home := booktest.Yard("home")
		p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
		free := [7]book.FreeHours{}
		free[time.Tuesday] = book.FreeHours{From: 8 * 60, Until: 16 * 60}
		p.Write(book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida", Free: free})
		n := booktest.Nuc("A1")
		p.At("2027-04-20 18:00").Write(book.NucNamed{Nuc: n, Name: "A1", Sides: 6, Side: 2}, book.NucPlaced{Nuc: n, Yard: home}, book.NucMadeUp{Nuc: n, Cups: 4, Food: 900})
		p.At("2027-05-08 10:00").Write(book.Looked{Nuc: n, Eggs: book.SingleEggs, Queen: book.QueenSeen})
		p.At("2027-05-22 10:00").Write(book.Looked{Nuc: n, Queen: book.QueenSeen, Brood: book.Said(4), Eggs: book.SingleEggs})
		today := p.View("2027-05-25 07:00").Today()
		p.At("2027-05-20 08:00").Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Customer: "Corin", Queens: 1, By: today + 1, Sent: sent})
		_, of := waiting(t, p, "2027-05-25 07:00")
		catches := of(rules.ActCatchQueen)
		if len(catches) != 1 || !catches[0].Hard || math.Abs(catches[0].Price.Queens-1) > 1e-9 {
			t.Errorf("sent %v: %+v", sent, catches)
		}
	}
}

// cagedFor is a book with five ripe cells that must be out this evening, and one nuc that
// waits for a cell an hour away; somebody is free on some days of the week.
func cagedFor(days ...time.Weekday) *book.View {
	home, far := booktest.Yard("home"), booktest.Yard("far")
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(
		book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"}, book.YardDescribed{Yard: far, Name: "Far", Zone: "UTC", Drive: 60},
	)
	ida := book.PersonDescribed{Person: booktest.Person("ida"), Name: "Ida"}
	for _, d := range days {
		ida.Free[d] = book.FreeHours{From: 12 * 60, Until: 20 * 60}
	}
	n, id := booktest.Nuc("A1"), booktest.Batch("b")
	p.Write(ida).At("2027-05-09 18:00").Write(book.NucNamed{Nuc: n, Name: "A1", Sides: 6}, book.NucPlaced{Nuc: n, Yard: far}, book.NucMadeUp{Nuc: n, Cups: 4, Food: 900})
	p.At("2027-05-01 08:00").Write(book.Grafted{Batch: id, Number: 4, Larvae: 10, LarvaAge: 18})
	p.At("2027-05-10 08:00").Write(book.RipeCounted{Batch: id, Ripe: 5})
	return p.View("2027-05-11 09:00")
}

// Once the cells are collected, what waits with a cell costs what a cage costs: as likely as
// she is out when somebody comes again the nuc takes a virgin in, a young one or an older one,
// and else the cell. No cell is lost.
func TestWhatWaitsWithACellIsCaged(t *testing.T) {
	n := practice.Numbers{}
	young := (n.Get(practice.AcceptCell) - n.Get(practice.AcceptVirginUnderDay)) * n.Get(practice.LayingOfAccepted)
	old := (n.Get(practice.AcceptCell) - n.Get(practice.AcceptVirginDaysOld)) * n.Get(practice.LayingOfAccepted)
	for name, c := range map[string]struct {
		free        time.Weekday // when somebody comes again: the 11th of May is a Tuesday
		least, most float64
	}{"before most are out": {time.Wednesday, young / 1000, young / 2}, "when all are out for days": {time.Sunday, 0.999 * old, 1.001 * old}} {
		t.Run(name, func(t *testing.T) {
			v := cagedFor(c.free)
			day, err := crew.Plan(rules.Judge(v), v.Today(), crew.Hands{{{Name: "Ida", Minutes: 60}}})
			if err != nil {
				t.Fatal(err)
			}
			idle := day.Next.Sub(v.On()).Hours() / 24 * n.Get(practice.WorthNucDay)
			given := 0
			for _, w := range day.Waits {
				switch w.Task.Act {
				case rules.ActCollectCells:
					t.Error("the cells are left together")
				case rules.ActGiveCell:
					if given++; w.Price.Queens-idle < c.least || w.Price.Queens-idle > c.most {
						t.Errorf("%.4f queens, want %.4f to %.4f: %s", w.Price.Queens-idle, c.least, c.most, w.Price.Why)
					}
				}
			}
			if given != 1 {
				t.Errorf("%d cells wait", given)
			}
		})
	}
}

// On the demo, one van: the robbed nuc is the first work in a yard that is driven to, on
// the sheet of her who is there first, and the whole yard with it.
func TestRobbersComeFirst(t *testing.T) {
	j, on := demoDay(t)
	v := j.Course().View()
	day, err := crew.Plan(j, on, crew.HandsOf(v, on, 1, 0))
	if err != nil {
		t.Fatal(err)
	}
	seen := 0
	for i, s := range day.Sheets {
		for _, visit := range s.Visits {
			for k, w := range visit.Work {
				if !w.Task.Findings[0].Emergency() {
					continue
				}
				id, nuc := w.Of.Nuc()
				if seen++; seen == 1 && (k != 0 || !nuc || v.Nuc(id).RobbedAt.IsZero()) {
					t.Errorf("first of the robbed yard is %s", w.Task.Title)
				}
				if i != 0 || s.From.After(day.Sheets[len(day.Sheets)-1].From) {
					t.Errorf("robbers are on the sheet of %s, from %v", s.Name, s.From)
				}
			}
		}
	}
	if seen == 0 {
		t.Error("no robbers on any sheet")
	}
}
