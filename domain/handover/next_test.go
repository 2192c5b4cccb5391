package handover

import (
	"fmt"
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// unproven is a book with nucs of two lines whose queens lay since a week, their brood
// not capped: so many of Rook, one of Linnet.
func unproven(rooks int) *booktest.Pen {
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	for i := range rooks + 1 {
		line, b := "Rook", booktest.Batch("Rook")
		if i == rooks {
			line, b = "Linnet", booktest.Batch("Linnet")
		}
		n := booktest.Nuc(fmt.Sprint(i))
		if i == 0 || i == rooks {
			p.At("2027-04-09 15:00").Write(book.Grafted{Batch: b, Number: 9 + i, Line: line, Larvae: 20})
		}
		p.At("2027-04-10 12:00").Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("N%d", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: booktest.Yard("home")})
		p.At("2027-04-19 12:00").Write(book.CellGiven{Nuc: n, Batch: b})
	}
	return p
}

func comingOf(p *booktest.Pen, on string) []coming { return comings(course.New(p.View(on))) }

// A queen who has not proven herself is ready when her brood is capped and she is old
// enough, and of her line as surely as it is she who lays.
func TestWhenOneWhoComesIsReady(t *testing.T) {
	all := comingOf(unproven(3), "2027-04-26 08:00")
	if len(all) != 4 || all[0].line != "Rook" || all[3].line != "Linnet" {
		t.Fatalf("%d come: %+v", len(all), all)
	}
	k, n := all[0], practice.Numbers{}
	if born := k.old - calendar.Day(n.Days(practice.LeastAgeAtHandOver)); born != calendar.Date(2027, 4, 21) && born != calendar.Date(2027, 4, 20) {
		t.Errorf("old enough on %s", k.old)
	}
	if k.by(k.old-1, false) != 0 {
		t.Errorf("ready with %v before she is old enough", k.by(k.old-1, false))
	}
	// Old enough at once, she is ready so long after her first egg.
	young := k
	young.old = 0
	for d := calendar.Date(2027, 5, 1); d < calendar.Date(2027, 6, 1); d++ {
		eggs := k.eggs.By(d - calendar.Day(n.Days(practice.ReadyAfterFirstEgg)))
		if got := young.by(d, false); got != eggs {
			t.Fatalf("%s: ready with %v, laid so long before with %v", d, got, eggs)
		}
		young.sure = 0.5
		if got := young.by(d, true); got != eggs/2 {
			t.Fatalf("%s: half sure whose daughter she is, ready with %v of %v", d, got, eggs)
		}
	}
	if k.by(k.old, false) == 0 || k.sure <= 0 || k.sure > 1 {
		t.Errorf("ready with %v when she is old enough, sure %v", k.by(k.old, false), k.sure)
	}
}

// Whose descent is doubtful is nobody's of a line, and whose yard is shut nobody's.
func TestWhoDoesNotCome(t *testing.T) {
	p := unproven(1)
	p.At("2027-04-30 12:00").Write(book.DiseaseSuspected{Of: booktest.Yard("home").Subject(), What: "foulbrood"})
	if all := comingOf(p, "2027-05-01 08:00"); len(all) != 0 {
		t.Errorf("on standstill %d come", len(all))
	}
	p = (&booktest.Pen{}).At("2027-04-01 08:00").Write(
		book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"},
		book.Grafted{Batch: booktest.Batch("Rook"), Number: 3, Line: "Rook", Larvae: 20},
		book.NucNamed{Nuc: booktest.Nuc("A"), Name: "A", Sides: 6}, book.NucPlaced{Nuc: booktest.Nuc("A"), Yard: booktest.Yard("home")},
		book.NucMadeUp{Nuc: booktest.Nuc("A"), Open: 1}, // brood of which it can raise its own
	)
	p.At("2027-04-11 12:00").Write(book.CellGiven{Nuc: booktest.Nuc("A"), Batch: booktest.Batch("Rook")})
	p.At("2027-05-20 12:00").Write(book.Looked{Nuc: booktest.Nuc("A"), Queen: book.QueenSeen, Eggs: book.SingleEggs})
	v := p.View("2027-05-21 08:00")
	if v.Nuc(booktest.Nuc("A")).Holds.Descent != book.DescentDoubtful {
		t.Fatal("her descent is not in doubt")
	}
	if all := comings(course.New(v)); len(all) != 1 || all[0].sure != 0 {
		t.Errorf("doubtful: %+v", all)
	}
}

// The chance of so many is the sum over every way in which the nuc can fare.
func TestAtLeastByEveryWay(t *testing.T) {
	all := comingOf(unproven(4), "2027-04-26 08:00")
	for _, line := range []string{"", "Rook", "Linnet", "Finch"} {
		o := &book.Order{OrderTaken: book.OrderTaken{Line: line}}
		for d := all[0].old - 1; d < all[0].old+12; d += 3 {
			for wanted := 1; wanted <= 6; wanted++ {
				want := 0.0
				for way := range 1 << len(all) {
					chance, ready := 1.0, 0
					for i, k := range all {
						q := 0.0
						if line == "" || line == k.line {
							q = k.by(d, line != "")
						}
						if way>>i&1 == 1 {
							chance, ready = chance*q, ready+1
						} else {
							chance *= 1 - q
						}
					}
					if ready >= wanted {
						want += chance
					}
				}
				if got := atLeast(wanted, all, o, d); math.Abs(got-want) > 1e-12 {
					t.Errorf("%d of %q by %s: %v, want %v", wanted, line, d, got, want)
				}
			}
		}
	}
}

func TestOrdersThatMayWantTheSame(t *testing.T) {
	o := func(line string, substitute ...string) *book.Order {
		return &book.Order{OrderTaken: book.OrderTaken{Line: line, Substitute: substitute}}
	}
	for _, c := range []struct {
		a, b *book.Order
		want bool
	}{
		{o(""), o("Rook"), true},
		{o("Rook"), o(""), true},
		{o("Rook"), o("Rook"), true},
		{o("Rook"), o("Linnet"), false},
		{o("Rook", "Linnet"), o("Linnet"), true},
		{o("Rook"), o("Linnet", "Rook"), true},
		{o("Rook", "Finch"), o("Linnet", "Finch"), true},
		{o("Rook", "Finch"), o("Linnet", "Siskin"), false},
	} {
		if got := shares(c.a, c.b); got != c.want {
			t.Errorf("%q %v and %q %v: %v", c.a.Line, c.a.Substitute, c.b.Line, c.b.Substitute, got)
		}
	}
}

// Who comes goes first to the order before: the one after waits for more of them.
func TestTheOrderBeforeIsServedFirst(t *testing.T) {
	p := unproven(6)
	taken := func(number string, line string) book.OrderTaken {
		return book.OrderTaken{Priority: int(number[0] - '0'), Order: booktest.Order(number), Number: number, Queens: 2, Line: line, By: calendar.Date(2027, 5, 1)}
	}
	p.At("2027-04-25 08:00").Write(taken("2", "Rook"))
	next := func(i int) Next { return reckoned(course.New(p.View("2027-04-26 08:00"))).Orders[i].Next }
	alone := next(0)
	p.Write(taken("1", "Linnet"))
	if got := next(1); got != alone {
		t.Errorf("beside an order of another line %+v, alone %+v", got, alone)
	}
	p.Write(book.OrderTaken{Priority: 1, Order: booktest.Order("0"), Number: "0", Queens: 2, Line: "Rook", By: calendar.Date(2027, 5, 1)})
	for i, o := range reckoned(course.New(p.View("2027-04-26 08:00"))).Orders {
		if o.Order.Number == "2" {
			if got := next(i); got.Day <= alone.Day && got.Most >= alone.Most {
				t.Errorf("after an order of its line %+v, alone %+v", got, alone)
			}
		}
	}
}
