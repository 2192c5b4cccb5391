package handover

import (
	"fmt"
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
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

func comingOf(p *booktest.Pen, on string) []coming { return comings(plannerOf(p, on)) }

func plannerOf(p *booktest.Pen, on string) *plan.Planner { return plan.New(course.New(p.View(on))) }

// looked is a book of which some nucs, from the first, were looked at once their virgins walked.
func looked(p *booktest.Pen, nucs int) *booktest.Pen {
	for i := range nucs {
		p.At("2027-04-24 12:00").Write(book.Looked{Nuc: booktest.Nuc(fmt.Sprint(i)), Queen: book.VirginSeen})
	}
	return p
}

// Those of a batch into whom nobody looked come together; each who was looked at by herself.
func TestWhoComesTogether(t *testing.T) {
	all := comingOf(looked(unproven(5), 2), "2027-04-26 08:00")
	if len(all) != 4 || all[0].share != nil || all[2].share == nil || len(all[2].share.nucs) != 3 || all[2].line != "Rook" || all[3].line != "Linnet" {
		t.Fatalf("%d come: %+v", len(all), all)
	}
	d := calendar.Date(2027, 5, 20)
	if got := all[2].by(d, false); got.Most() != 3 || got.AtLeast(1) == 0 || got.AtLeast(1) == 1 {
		t.Errorf("of three nobody saw: %d at most, one with %v", got.Most(), got.AtLeast(1))
	}
	// Robbers at the yard keep all of them; a treatment one.
	k := *all[2].share
	k.nucs = []unseen{{from: d + 1}, {}, {doubtful: true}}
	if got, named := k.by(d, false).Most(), k.by(d, true).Most(); got != 2 || named != 1 {
		t.Errorf("one is not caught, one in doubt: %d of any line, %d of hers", got, named)
	}
	one := all[0]
	if one.shut = d + 1; one.by(d, false).Most() != 0 || one.by(d+1, false).Most() != 1 {
		t.Error("her yard is shut, and she is ready")
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
	if all := comings(plan.New(course.New(v))); len(all) != 1 || all[0].by(calendar.Date(2027, 6, 20), true).AtLeast(1) != 0 || all[0].by(calendar.Date(2027, 6, 20), false).AtLeast(1) == 0 {
		t.Errorf("doubtful: %+v", all)
	}
}

// The chance of so many is the sum over every way in which the batches and nucs can fare.
func TestAtLeastByEveryWay(t *testing.T) {
	all := comingOf(looked(unproven(4), 2), "2027-04-26 08:00")
	for _, line := range []string{"", "Rook", "Linnet", "Finch"} {
		o := &book.Order{OrderTaken: book.OrderTaken{Line: line}}
		for d := calendar.Date(2027, 5, 8); d < calendar.Date(2027, 5, 25); d += 3 {
			for wanted := 1; wanted <= 6; wanted++ {
				var of []plan.Chances
				for _, k := range all {
					if line == "" || line == k.line {
						of = append(of, k.by(d, line != ""))
					}
				}
				if got, want := atLeast(wanted, all, o, d), everyWay(of, wanted); math.Abs(got-want) > 1e-12 {
					t.Errorf("%d of %q by %s: %v, want %v", wanted, line, d, got, want)
				}
			}
		}
	}
}

// everyWay is the chance of so many or more of some together.
func everyWay(of []plan.Chances, wanted int) (sum float64) {
	if len(of) == 0 {
		if wanted <= 0 {
			return 1
		}
		return 0
	}
	for n := range of[0].Most() + 1 {
		sum += of[0].Exactly(n) * everyWay(of[1:], wanted-n)
	}
	return sum
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
	next := func(i int) Next { return New(plannerOf(p, "2027-04-26 08:00")).Orders[i].Next }
	alone := next(0)
	p.Write(taken("1", "Linnet"))
	if got := next(1); got != alone {
		t.Errorf("beside an order of another line %+v, alone %+v", got, alone)
	}
	p.Write(book.OrderTaken{Priority: 1, Order: booktest.Order("0"), Number: "0", Queens: 2, Line: "Rook", By: calendar.Date(2027, 5, 1)})
	for i, o := range New(plannerOf(p, "2027-04-26 08:00")).Orders {
		if o.Order.Number == "2" {
			if got := next(i); got.Day <= alone.Day && got.Most >= alone.Most {
				t.Errorf("after an order of its line %+v, alone %+v", got, alone)
			}
		}
	}
}
