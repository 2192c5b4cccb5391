package state_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/ui/state"
)

// allocated is a window on nine Rook and fifteen Linnet who have proven
// themselves, three more Rook who lay since a week, and three orders for 20 May.
func allocated(t testing.TB) *window {
	home, by := booktest.Yard("home"), calendar.Date(2027, time.May, 20)
	p := (&booktest.Pen{}).At("2027-03-20 08:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "Europe/Berlin"})
	laying := func(line, letter, grafted, given, eggs string, nucs int) {
		batch := booktest.Batch(line + letter)
		p.At(grafted + " 15:00").Write(book.Grafted{Batch: batch, Number: int(letter[0] - 'A' + 1), Line: line, Larvae: 40})
		for i := range nucs {
			n := booktest.Nuc(fmt.Sprint(letter, i+1))
			p.At(given+" 12:00").Write(book.NucNamed{Nuc: n, Name: fmt.Sprint(letter, i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: home}, book.CellGiven{Nuc: n, Batch: batch})
			p.At(eggs + " 12:00").Write(book.Looked{Nuc: n, Queen: book.QueenSeen, Eggs: book.SingleEggs})
			if letter != "C" {
				p.At("2027-05-03 12:00").Write(book.Looked{Nuc: n, Queen: book.QueenSeen, Eggs: book.SingleEggs, Brood: book.Said(4)})
			}
		}
	}
	laying("Rook", "A", "2027-03-25", "2027-04-04", "2027-04-20", 9)
	laying("Linnet", "B", "2027-03-25", "2027-04-04", "2027-04-20", 15)
	laying("Rook", "C", "2027-04-13", "2027-04-23", "2027-05-16", 4)
	for i, o := range []book.OrderTaken{{Queens: 12, Line: "Rook"}, {Queens: 10}, {Queens: 6, Line: "Rook", Substitute: []string{"Linnet"}}} {
		o.Number, o.Order, o.Customer, o.By, o.Priority = fmt.Sprint(i+1), booktest.Order(fmt.Sprint(i+1)), fmt.Sprintf("Farm %c", 'A'+i), by, i+1
		p.At("2027-05-10 08:00").Write(o)
	}
	season := book.NewSeason(time.LoadLocation, p.Entries)
	w := start(t)
	at := calendar.Date(2027, time.May, 17).At(7, 0, zone)
	w.Now = at
	w.send(state.Opened{Book: &state.Book{Season: season, Name: "S8"}, IDs: book.NewIDs(at, season, [32]byte{1})})
	w.Pen.Writer = "Ida"
	return w.press("S", state.Alt).settled()
}

func (w *window) orderLines() []state.OrderLine { return w.OrderPane(w.Layout()).Lines }

// ofOrder are the lines of an order, its head first.
func (w *window) ofOrder(number string) []state.OrderLine {
	w.t.Helper()
	all := w.orderLines()
	from := slices.IndexFunc(all, func(l state.OrderLine) bool {
		return l.OrderLook == state.OrderHead && strings.HasPrefix(l.Cells[0], "Order "+number)
	})
	if from < 0 {
		w.t.Fatalf("order %s is not on the page", number)
	}
	to := from + 1
	for to < len(all) && all[to].OrderLook != state.OrderHead && all[to].OrderLook != state.OrderTitle {
		to++
	}
	return all[from:to]
}

// A gets nine Rook and is three short, B ten Linnet, C five Linnet and is
// one short; A is to be rung with a day and a chance, and nothing is left over.
func TestOrdersAreServed(t *testing.T) {
	w := allocated(t)
	for number, want := range map[string]struct {
		rook, linnet int
		short        string
	}{"1": {9, 0, "3 short"}, "2": {0, 10, "all there"}, "3": {0, 5, "1 short"}} {
		lines, rook, linnet := w.ofOrder(number), 0, 0
		for _, l := range lines {
			if l.OrderLook == state.OrderQueen {
				rook += boolInt(l.Cells[1] == "Rook")
				linnet += boolInt(strings.HasPrefix(l.Cells[1], "Linnet"))
			}
		}
		if rook != want.rook || linnet != want.linnet || !strings.HasPrefix(lines[0].Cells[2], want.short) {
			t.Errorf("order %s: %d Rook, %d Linnet, %q; want %+v", number, rook, linnet, lines[0].Cells[2], want)
		}
	}
	if ring := w.ofOrder("1")[1]; !strings.HasPrefix(ring.Cells[0], "Ring Farm A today: no graft is in time for 3 queens Rook by Thu 20 May; the soonest day is ") || !strings.Contains(ring.Cells[0], "of 100") || !ring.Alarm {
		t.Errorf("A is to be told %q", ring.Cells[0])
	}
	if since := w.ofOrder("1")[0].Cells[2]; !strings.Contains(since, "since Mon 10 May") {
		t.Errorf("short since when: %q; the order was taken on 10 May", since)
	}
	if !slices.ContainsFunc(w.orderLines(), func(l state.OrderLine) bool { return l.Cells[0] == "Nothing is left over" }) {
		t.Error("it is not said that nothing is left over")
	}
}

// Below an order that is short stands which batch gives it fewer than planned.
func TestWhichBatchLeavesAnOrderShort(t *testing.T) {
	w := allocated(t)
	late := book.BatchPlanned{Batch: booktest.Batch("late"), Day: w.Today() - 3, Larvae: 20, Queens: 3, Orders: []book.OrderID{booktest.Order("1")}}
	p := &booktest.Pen{}
	p.At((w.Today() - 5).String() + " 08:00").Write(late)
	w.send(state.Opened{Book: w.Book.With(p.Entries...)}).settled().run("orders").settled()
	if said := w.ofOrder("1")[1]; said.Cells[0] != "The graft planned for "+late.Day.Short()+" was not made" || !said.Alarm {
		t.Errorf("below the order stands %q", said.Cells[0])
	}
}

// The keys go from line to line: the card of the order, then of each nuc, and back up
// into the field; what an order misses becomes a wish.
func TestThroughTheOrdersByKeys(t *testing.T) {
	w := allocated(t).press("Down")
	if id, ok := w.Selection.Last().Order(); !ok || book.OrderID(id) != booktest.Order("1") {
		t.Fatalf("the first line leads to %v", w.Selection.Last())
	}
	if served, ok := w.Served(booktest.Order("1")); !ok || served.Short != 3 {
		t.Errorf("the card of the order knows %+v", served)
	}
	w.press("Down")
	if w.chosen() != "A1" {
		t.Errorf("the second line leads to %s", w.chosen())
	}
	w.press("Up").press("Up")
	if w.InField() != state.SearchField {
		t.Errorf("above the first line the keys go to %v", w.Focus)
	}
	w.press("Down").run("graft for order").settled()
	if w.OnOrders() || w.Typed(state.WishQueens) != "3" {
		t.Errorf("a wish for %q queens", w.Typed(state.WishQueens))
	}
}

// The form for handing over proposes the cages dealt to its order, though those of another
// come first in the book; and that of a queen the order she is dealt to.
func TestTheFormProposesWhoWasDealt(t *testing.T) {
	w := allocated(t)
	w.take(w.sub("A1"), w.sub("A2")).fill("catch", "cages=41-42").kept()
	w.take(w.sub("B1"), w.sub("B2")).fill("catch", "cages=43-44").kept()
	for number, want := range map[string]string{"1": "41,42", "2": "43,44", "3": ""} {
		if got := w.take(booktest.Order(number).Subject()).fill("serve order").Typed(state.FormField + "cages"); got != want {
			t.Errorf("order %s: %q is proposed, want %q", number, got, want)
		}
	}
	for q := range w.view().Queens() {
		want := booktest.Order("1").Subject().String()
		if q.Line == "Linnet" {
			want = booktest.Order("2").Subject().String()
		}
		if got := w.take(q.Queen.Subject()).fill("hand over").Typed(state.FormField + "order"); got != want {
			t.Errorf("the queen in cage %s: %q is proposed, want %q", q.Label, got, want)
		}
	}
}

// Queens caught into cages without a number are told by the nucs they came out of: the
// form proposes them so, takes them so, in a row as well, and a claim finds them again.
func TestCagesWithoutANumber(t *testing.T) {
	w := allocated(t)
	w.take(w.sub("B1"), w.sub("B2"), w.sub("B3")).fill("catch", "cages=").kept()
	order := booktest.Order("2")
	if got := w.take(order.Subject()).fill("serve order").Typed(state.FormField + "cages"); got != "B1,B2,B3" {
		t.Errorf("%q is proposed, want the three nucs", got)
	}
	w.take(order.Subject()).fill("serve order", "cages=b3").kept()
	w.take(order.Subject()).fill("serve order", "cages=B1-B2").kept()
	went := w.view().Order(order).Handed
	if len(went) != 3 || w.view().Nuc(w.view().Queen(went[0]).From).Name != "B3" {
		t.Fatalf("handed over are %d, the first from %s", len(went), w.view().Nuc(w.view().Queen(went[0]).From).Name)
	}
	w.take(order.Subject()).fill("serve order", "cages=B1")
	if says := w.FormSays().Answers.Mistakes["cages"]; !strings.Contains(says, "no queen is in cage B1") {
		t.Errorf("handed over again she says %q", says)
	}
	w.take(order.Subject()).fill("claim", "queens=1", "how=dead on arrival", "cages=B2").kept()
	claims := slices.Collect(w.view().History(order.Subject()))
	claim, is := claims[len(claims)-1].Fact.(book.Claimed)
	if !is || len(claim.Of) != 1 || w.view().Nuc(w.view().Queen(claim.Of[0]).From).Name != "B2" {
		t.Errorf("claimed is %+v", claim)
	}
	w.press("S", state.Alt).settled().write("farm b").settled()
	var said strings.Builder
	for _, l := range w.orderLines() {
		said.WriteString(fmt.Sprintln(l))
	}
	if !strings.Contains(said.String(), "caught from B3 on ") {
		t.Errorf("who went is not told by her nuc: %s", said.String())
	}
}

// Two claimed as dead are owed again and lower nothing else; who was handed over is
// found by typing, and leads to her card.
func TestClaimedAndFoundAgain(t *testing.T) {
	w := allocated(t)
	w.take(w.sub("B1"), w.sub("B2")).fill("catch", "cages=41-42").kept()
	order := booktest.Order("2").Subject()
	w.take(order).fill("serve order", "cages=41,42").kept()
	if got := w.view().Order(booktest.Order("2")).Open(); got != 8 {
		t.Fatalf("%d are owed after two were handed over, of ten", got)
	}
	w.take(order).fill("claim", "queens=2", "how=dead on arrival").kept()
	if a, b := w.view().Order(booktest.Order("1")).Open(), w.view().Order(booktest.Order("2")).Open(); a != 12 || b != 10 {
		t.Errorf("owed to A %d, to B %d; want 12 and 10", a, b)
	}
	w.press("S", state.Alt).settled().write("farm b").settled()
	var found []state.OrderLine
	for _, l := range w.orderLines() {
		if l.OrderLook == state.OrderGone {
			found = append(found, l)
		}
	}
	if len(found) != 2 || w.Typed(state.SearchField) != "farm b" {
		t.Fatalf("%q finds %d: %+v", w.Typed(state.SearchField), len(found), w.orderLines())
	}
	w.press("Down")
	if _, ok := w.Selection.Last().Queen(); !ok {
		t.Errorf("what is found leads to %v", w.Selection.Last())
	}
	if w.press("Up").press("Escape"); w.Typed(state.SearchField) != "" {
		t.Error("Esc leaves what is looked for")
	}
}

// BenchmarkOrders deals the queens of 10,000 nucs out to forty orders. Its floor is
// BenchmarkBareLines.
func BenchmarkOrders(b *testing.B) {
	entries := booktest.Big(10_000, 60)
	p := &booktest.Pen{}
	for i := range 40 {
		name := fmt.Sprint(i + 1)
		p.At("2027-04-01 08:00").Write(book.OrderTaken{Order: booktest.Order(name), Number: name, Queens: 20, By: calendar.DayOf(booktest.BigNow, time.UTC) + calendar.Day(i)})
	}
	season := book.NewSeason(time.LoadLocation, entries).With(p.Entries...)
	s := state.State{Now: booktest.BigNow, Width: 1440, Height: 900}
	s, _ = state.Update(s, state.Opened{Book: &state.Book{Season: season, Name: "big"}})
	_, effects := state.Update(s, state.Ran{Command: "orders"})
	for b.Loop() {
		for _, e := range effects {
			if e, ok := e.(state.ReckonOrders); ok {
				e.Reckon()
			}
		}
	}
}

// Queens who are all to be expected, planned or grafted are to come, and none of them is short.
func TestQueensOnTheWayAreNotShort(t *testing.T) {
	sheet := &state.OrderSheet{}
	for want, o := range map[string]handover.Served{
		"": {}, "2 to come": {Short: 2, Planned: 2}, "3 to come": {Short: 3, Planned: 1, Coming: 2}, "1 short": {Short: 4, Planned: 3}, "2 short": {Short: 8, Planned: 5, Coming: 1}, "3 short": {Short: 3, Coming: 3, Lost: true},
	} {
		o.Order = &book.Order{}
		if got := sheet.Short(o); got != want {
			t.Errorf("%+v: %q, want %q", o, got, want)
		}
	}
}

// An order whose customer has no room beside what is short of it is told in two lines: its number beside
// that, and its customer with what is owed below. At 150 % a window of 1280 has so much room.
func TestAnOrderIsToldInTwoLines(t *testing.T) {
	customer := "Beekeepers of the long valley behind Outer Aldervane"
	w := ordered(t, func(p *booktest.Pen) {
		p.Write(book.OrderTaken{Order: booktest.Order("9"), Number: "9", Customer: customer, Queens: 2, By: calendar.Date(2027, time.May, 20), Line: "Rook"})
	})
	w.run("orders").settled()
	for width, two := range map[float64]bool{780: false, 340: true} {
		all := w.OrderLines(width)
		i := slices.IndexFunc(all, func(l state.OrderLine) bool {
			return l.OrderLook == state.OrderHead && strings.HasPrefix(l.Cells[0], "Order 9")
		})
		if i < 0 {
			t.Fatalf("order 9 is not on a page %.0f wide", width)
		}
		head, below := all[i].Cells, all[i+1].Cells[0]
		if (head[0] == "Order 9") != two || strings.HasPrefix(below, customer+": 2 owed, Rook") != two || head[2] == "" {
			t.Errorf("%.0f wide: %q, below %q", width, head, below)
		}
	}
}
