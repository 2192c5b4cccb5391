package handover_test

import (
	"fmt"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
)

func day(t *testing.T, s string) calendar.Day {
	t.Helper()
	d, err := calendar.ParseDay(s)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// proven writes nucs whose queens of a line were seen laying and with capped worker
// brood in time.
func proven(p *booktest.Pen, line string, nucs int) {
	batch := booktest.Batch(line)
	p.At("2027-03-25 15:00").Write(book.Grafted{Batch: batch, Number: len(line), Line: line, Larvae: 40})
	for i := range nucs {
		n := booktest.Nuc(fmt.Sprint(line, i))
		p.At("2027-04-01 12:00").Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("%c%d", line[0], i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: booktest.Yard("home")})
		p.At("2027-04-04 12:00").Write(book.CellGiven{Nuc: n, Batch: batch})
		p.At("2027-04-20 12:00").Write(book.Looked{Nuc: n, Queen: book.QueenSeen, Eggs: book.SingleEggs})
		p.At("2027-05-03 12:00").Write(book.Looked{Nuc: n, Queen: book.QueenSeen, Eggs: book.SingleEggs, Brood: book.Said(4)})
	}
}

func order(number string, queens int, line string, by calendar.Day, substitute ...string) book.OrderTaken {
	return book.OrderTaken{Priority: int(number[0] - '0'), Order: booktest.Order(number), Number: number, Customer: "Customer " + number, Queens: queens, Line: line, Substitute: substitute, By: by}
}

// Nine Rook and fifteen Linnet are ready on 20 May; A wants twelve Rook
// and nothing else, B ten of any line, C six Rook or Linnet, in this order.
func TestWhoGetsWhich(t *testing.T) {
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	proven(p, "Rook", 9)
	proven(p, "Linnet", 15)
	by := day(t, "2027-05-20")
	p.At("2027-05-10 08:00").Write(order("1", 12, "Rook", by), order("2", 10, "", by), order("3", 6, "Rook", by, "Linnet"))
	s := sheetOf(p.View("2027-05-17 08:00"))
	for i, want := range []struct{ rook, linnet, short int }{{9, 0, 3}, {0, 10, 0}, {0, 5, 1}} {
		got := map[string]int{}
		for _, q := range s.Orders[i].Queens {
			got[q.Line]++
		}
		if got["Rook"] != want.rook || got["Linnet"] != want.linnet || s.Orders[i].Short != want.short {
			t.Errorf("order %s gets %v, short of %d; want %+v", s.Orders[i].Order.Number, got, s.Orders[i].Short, want)
		}
	}
	if len(s.Left) != 0 {
		t.Errorf("%d are left over", len(s.Left))
	}
	for _, o := range s.Orders {
		if caged := o.On.Sub(o.Catch); caged < 0 || caged > 3 {
			t.Errorf("order %s: caged for %d days at the hand-over", o.Order.Number, caged)
		}
	}
}

// Three more Rook that stand in nucs and lay, their brood not capped yet: the day
// on which they will be ready is told with its chance.
func TestWhenTheMissingAreReady(t *testing.T) {
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	proven(p, "Rook", 9)
	later := booktest.Batch("later")
	p.At("2027-04-09 15:00").Write(book.Grafted{Batch: later, Number: 9, Line: "Rook", Larvae: 20})
	for i := range 4 {
		n := booktest.Nuc(fmt.Sprint("later", i))
		p.At("2027-04-10 12:00").Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("L%d", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: booktest.Yard("home")})
		p.At("2027-04-19 12:00").Write(book.CellGiven{Nuc: n, Batch: later})
		p.At("2027-05-12 12:00").Write(book.Looked{Nuc: n, Queen: book.QueenSeen, Eggs: book.SingleEggs})
	}
	p.At("2027-05-10 08:00").Write(order("1", 12, "Rook", day(t, "2027-05-17")), order("2", 40, "Finch", day(t, "2027-05-17")))
	s := sheetOf(p.View("2027-05-14 08:00"))
	next := s.Orders[0].Next
	if s.Orders[0].Short != 3 || next.Day.IsZero() || next.Day > day(t, "2027-05-30") || next.Chance < 0.85 {
		t.Errorf("short of %d, to be expected on %s with %.2f", s.Orders[0].Short, next.Day, next.Chance)
	}
	if finch := s.Orders[1].Next; !finch.Day.IsZero() || finch.Most != 0 {
		t.Errorf("of a line nobody has, queens are expected on %s", finch.Day)
	}
}

// Queens who are sent go early in the week, on a day not too hot, in time.
func TestTheDayQueensAreSent(t *testing.T) {
	home := booktest.Yard("home")
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(
		book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"},
		book.OrderTaken{Order: booktest.Order("1"), Number: "1", Customer: "A", Queens: 2, Sent: true, Journey: 1, From: day(t, "2027-05-10"), By: day(t, "2027-05-21")},
	)
	sent := func() handover.Day { return sheetOf(p.View("2027-05-03 08:00")).Orders[0].Day }
	if got := sent(); got.On != day(t, "2027-05-19") || got.Arrive != day(t, "2027-05-20") || got.Warning != "" {
		t.Errorf("sent %s, there %s: %s; want Wed 19 and Thu 20 May", got.On, got.Arrive, got.Warning)
	}
	p.At("2027-05-02 08:00").Write(book.WeatherSeen{Yard: home, Day: day(t, "2027-05-19"), High: book.Said(33), Forecast: true})
	if got := sent(); got.On != day(t, "2027-05-17") {
		t.Errorf("sent %s, the 19th is too hot; want Mon 17 May", got.On)
	}
}

// Who is to be expected in time is ready by the day on which she must be caught, as her
// card says; else the customer is to be rung, with the day on which she will be.
func TestWhoIsExpectedIsReadyByThen(t *testing.T) {
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	proven(p, "Rook", 9)
	later := booktest.Batch("later")
	p.At("2027-04-03 15:00").Write(book.Grafted{Batch: later, Number: 9, Line: "Rook", Larvae: 20})
	for i := range 6 {
		n := booktest.Nuc(fmt.Sprint("later", i))
		p.At("2027-04-10 12:00").Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("L%d", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: booktest.Yard("home")})
		p.At("2027-04-13 12:00").Write(book.CellGiven{Nuc: n, Batch: later})
		p.At("2027-05-13 12:00").Write(book.Looked{Nuc: n, Queen: book.QueenSeen, Eggs: book.SingleEggs})
	}
	p.At("2027-05-14 08:00").Write(order("1", 12, "Rook", day(t, "2027-05-20")))
	next := func(on string) handover.Next {
		o := sheetOf(p.View(on + " 08:00")).Orders[0]
		if o.Short != 3 || !o.Lost {
			t.Errorf("%s: short of %d, lost %v; want 3, and nothing in time", on, o.Short, o.Lost)
		}
		return o.Next
	}
	ready := day(t, "2027-05-25") // 12 days after the eggs that were seen
	if got := next("2027-05-19"); got.Day != ready || got.Chance < 0.85 {
		t.Errorf("three more by %s with %.2f, want %s", got.Day, got.Chance, ready)
	}
	// Proven and not ready, they are still waited for.
	for i := range 6 {
		p.At("2027-05-22 09:00").Write(book.Looked{Nuc: booktest.Nuc(fmt.Sprint("later", i)), Queen: book.QueenSeen, Brood: book.Said(2), Eggs: book.NoEggs})
	}
	if got := next("2027-05-23"); got.Day < day(t, "2027-05-23") || got.Day > ready {
		t.Errorf("with capped brood seen, three more by %s; want %s at the latest", got.Day, ready)
	}
}

// sheetOf is who gets which queen of a view.
func sheetOf(v *book.View) *handover.Sheet { return handover.New(plan.New(course.New(v))) }
