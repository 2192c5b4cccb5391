package handover_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
)

// Who can be caught for an order is asked in one place: of its line, ready by its day in
// her yard's own days, her nuc past the wait after a treatment; a standstill is told.
func TestWhoCanBeCaughtForAnOrder(t *testing.T) {
	home, by := booktest.Yard("home"), day(t, "2027-05-20")
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
	proven(p, "Rook", 2)
	proven(p, "Linnet", 1)
	p.At("2027-05-10 08:00").Write(order("1", 5, "Rook", by))
	names := func() (all []string) {
		v := p.View("2027-05-17 08:00")
		for _, q := range handover.Catchable(course.New(v), v.Order(booktest.Order("1"))) {
			name := v.Nuc(q.Nuc).Name
			if q.Closed != "" {
				name += " closed"
			}
			all = append(all, name)
		}
		return all
	}
	if got := names(); len(got) != 2 || got[0] != "R1" || got[1] != "R2" {
		t.Errorf("can be caught: %v, want R1 and R2", got)
	}
	p.At("2027-05-13 12:00").Write(order("2", 1, "", by))
	if sheet := handover.Deal(plan.New(course.New(p.View("2027-05-17 08:00")))); len(sheet.Orders[0].Queens) != 2 {
		t.Fatalf("of her line: %+v", sheet.Orders)
	}
	her := booktest.Queen("R2's")
	p.At("2027-05-13 13:00").Write(book.QueenMarked{Queen: her, Nuc: booktest.Nuc("Rook1")}, book.QueenDescribed{Queen: her, Line: "Rook", Descent: book.DescentDoubtful})
	if got := names(); len(got) != 1 || got[0] != "R1" {
		t.Errorf("R2's descent is told to be doubtful, can be caught: %v", got)
	}
	sheet := handover.Deal(plan.New(course.New(p.View("2027-05-17 08:00"))))
	if of := sheet.Orders[0]; len(of.Queens) != 1 || of.Short != 4 {
		t.Errorf("doubtful for an order of her line: %+v", of)
	}
	p.At("2027-05-13 14:00").Write(book.QueenDescribed{Queen: her, Line: "Rook", Descent: book.DescentSure})
	p.At("2027-05-14 12:00").Write(book.Treated{Of: booktest.Nuc("Rook0").Subject(), With: "acid", Wait: 30})
	if got := names(); len(got) != 1 || got[0] != "R2" {
		t.Errorf("R1 waits after a treatment, can be caught: %v", got)
	}
	p.At("2027-05-15 12:00").Write(book.DiseaseSuspected{Of: home.Subject(), What: "foulbrood"})
	if got := names(); len(got) != 1 || got[0] != "R2 closed" {
		t.Errorf("on standstill can be caught: %v", got)
	}
}

// A queen who was caught before the suspicion stays in her cage, one in her nuc there, and the order
// they were for says why of each.
func TestACagedQueenStaysOnAStandstill(t *testing.T) {
	home, by := booktest.Yard("home"), day(t, "2027-05-20")
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
	proven(p, "Rook", 2)
	p.At("2027-05-10 08:00").Write(order("1", 2, "Rook", by))
	served := func() handover.Served { return sheetOf(p.View("2027-05-17 08:00")).Orders[0] }
	p.At("2027-05-17 07:00").Write(book.QueenCaught{Nuc: booktest.Nuc("Rook0"), Queen: booktest.Queen("caught"), Label: "7"})
	if got := served(); len(got.Queens) != 2 || got.Warning != "" {
		t.Fatalf("before the suspicion %d queens are dealt out, %q", len(got.Queens), got.Warning)
	}
	p.At("2027-05-17 07:30").Write(book.DiseaseSuspected{Of: home.Subject(), What: "foul brood"})
	if got := served(); len(got.Queens) != 0 || got.Short != 2 || got.Warning != "1 who would do may not go: caught in a yard on standstill: foul brood suspected; "+
		"1 who would do may not go: its yard is on standstill: foul brood suspected" {
		t.Errorf("on standstill %d queens are dealt out, %d short: %q", len(got.Queens), got.Short, got.Warning)
	}
}

// TestHowLongACageKeepsHer: a mated queen in a bank goes to an order until the 45th day in
// her cage (Büchler et al. 2013, J. Apic. Res. 52(1): banked for one to two months), and
// one in a cage by herself until the third (common practice, no source); the day after
// the order has nobody.
func TestHowLongACageKeepsHer(t *testing.T) {
	for _, c := range []struct {
		bank bool
		days calendar.Day
	}{{true, 45}, {false, 3}} {
		for late := range calendar.Day(2) {
			p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(
				book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"},
				book.ColonyDescribed{Colony: booktest.Colony("K"), Name: "K", Yard: booktest.Yard("home")})
			proven(p, "Rook", 1)
			caught := day(t, "2027-05-17")
			p.At("2027-05-17 07:00").Write(book.QueenCaught{Nuc: booktest.Nuc("Rook0"), Queen: booktest.Queen("caught"), Label: "7"})
			if c.bank {
				p.At("2027-05-17 07:30").Write(book.QueenBanked{Queen: booktest.Queen("caught"), Bank: booktest.Colony("K")})
			}
			p.At("2027-05-17 07:40").Write(order("1", 1, "Rook", caught+c.days+late))
			got := sheetOf(p.View("2027-05-17 08:00")).Orders[0]
			if want := 1 - int(late); len(got.Queens) != want {
				t.Errorf("in a bank %v, %d days in the cage: %d queens, want %d", c.bank, c.days+late, len(got.Queens), want)
			}
		}
	}
}
