package rules_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// lateBatch is batch 4: 24 cells loose in the incubator at 34.5 °C, grafted
// Wed 5 May 2027 18:00 from larvae of 18 h.
func lateBatch(t testing.TB) *booktest.Pen {
	p := pen(t)
	p.At("2027-05-05 18:00").Write(graft(4, 24))
	p.At("2027-05-10 18:00").Write(book.CellsMoved{Batch: batch(4)}, book.CappedCounted{Batch: batch(4), Capped: 24},
		book.IncubatorRead{Batch: batch(4), Celsius: 34.5})
	return p
}

func TestLateDayIsPlannedAndRung(t *testing.T) {
	v := lateBatch(t).View("2027-05-10 19:00")
	hard := of(v, rules.CellsOut)
	if len(hard) != 1 || !hard[0].Hard || hard[0].By.After(instant(t, "2027-05-15 20:00")) {
		t.Fatalf("cells must be out: %+v, want one hard by Sat 15 May 20:00", hard)
	}
	var planned, rung []string
	for _, d := range rules.Deadlines(v, calendar.Date(2027, 5, 1), calendar.Date(2027, 5, 31)) {
		if strings.Contains(d.What, bee.CellsIn.String()) {
			planned = append(planned, d.Day.String())
		}
		if d.Hard {
			for _, a := range d.Alarms {
				rung = append(rung, day(a)+a.In(v.Zone()).Format(" 15:04"))
			}
		}
	}
	if want := []string{"2027-05-15"}; !slices.Equal(planned, want) {
		t.Errorf("cells in planned %v, want %v", planned, want)
	}
	if want := []string{"2027-05-14 19:00", "2027-05-15 08:00"}; !slices.Equal(rung, want) {
		t.Errorf("alarms %v, want %v", rung, want)
	}
}

func TestLateDayCard(t *testing.T) {
	v := lateBatch(t).View("2027-05-15 20:00")
	card, ok := rules.LateDay(v, batch(4), instant(t, "2027-05-17 18:00"))
	if !ok {
		t.Fatal("no card")
	}
	if lost := card.Losses[len(card.Losses)-1].Lost; lost < 14 || lost > 17 {
		t.Errorf("lost by Mon 18:00 = %.1f, want 14 to 17 of 24", lost)
	}
	for _, w := range card.Ways {
		if w.Way == bee.Cage && (w.Lost != 0 || w.Accepted < 15 || w.Accepted > 15.3) {
			t.Errorf("cage all: lost %.1f, accepted %.1f, want 0 and 24 × 0.63", w.Lost, w.Accepted)
		}
	}
	if free := rules.NextFree(v); !free.Equal(instant(t, "2027-05-16 07:00")) {
		t.Errorf("next free hour %v, want Sun 07:00", free)
	}
	p := lateBatch(t)
	p.At("2027-05-17 18:00").Write(book.ClockSeen{Batch: batch(4), Sign: book.SeenWalking})
	card, _ = rules.LateDay(p.View("2027-05-17 18:05"), batch(4), instant(t, "2027-05-18 18:30"))
	if !card.Walking {
		t.Error("a virgin walks and the card does not know")
	}
	if f := rules.Findings(p.View("2027-05-17 18:05")); len(f) == 0 || f[0].Rule != rules.VirginWalks {
		t.Errorf("the walking virgin does not come first: %+v", f)
	}
}

func TestWildCell(t *testing.T) {
	p := pen(t)
	s1 := booktest.Colony("S1")
	p.At("2027-05-12 18:00").Write(book.BroodGiven{To: s1.Subject(), Combs: 2, Open: 6, From: booktest.Colony("S2").Subject()})
	g := graft(5, 20)
	g.Starter = s1
	p.At("2027-05-15 18:00").Write(g)
	found := of(p.View("2027-05-16 09:00"), rules.WildCells)
	if len(found) != 1 {
		t.Fatalf("found %d, want one", len(found))
	}
	f := found[0]
	if f.Severity != rules.Pressing || day(f.From) != "2027-05-16" || day(f.By) != "2027-05-21" || !f.Hard {
		t.Errorf("severity %v, from %s, by %s, hard %v", f.Severity, day(f.From), day(f.By), f.Hard)
	}
	want := "2 combs with open brood put in Wed 12 May; a queen raised there could walk from Sat 22 May and cost all of batch 5"
	if f.Why != want {
		t.Errorf("why = %q\nwant  %q", f.Why, want)
	}
	p.At("2027-05-18 18:00").Write(book.WildCellsSearched{In: s1.Subject(), Found: 1})
	v := p.View("2027-05-18 18:30")
	if found := of(v, rules.WildCells); len(found) != 0 {
		t.Errorf("searched and still found: %+v", found)
	}
	if got := v.Colony(s1).OpenBrood[0].Found; got != 1 {
		t.Errorf("wild cells counted = %d, want 1", got)
	}
}

// TestEveningTyping: 48 cells went out; Ida types 45 nucs in four rows, Jon
// the twelve of the last one again; one nuc held a laying queen in the book.
func TestEveningTyping(t *testing.T) {
	p := pen(t)
	letters := []string{"D", "E", "F", "G"}
	sizes := []int{12, 12, 12, 10}
	var all []string
	for i, letter := range letters {
		p.Write(book.StandSet{Stand: booktest.Stand(letter), Yard: atFar, Letter: letter, Places: 12, Round: "new row"})
		for place := 1; place <= sizes[i]; place++ {
			nuc(p, letter, place)
			all = append(all, fmt.Sprintf("%s%d", letter, place))
		}
	}
	p.At("2027-05-05 18:00").Write(graft(4, 48))
	p.At("2027-05-14 09:00").Write(madeUp(all...)...)
	p.At("2027-05-14 12:00").Write(book.Looked{Nuc: booktest.Nuc("D7"), Eggs: book.SingleEggs, Queen: book.QueenSeen})
	p.At("2027-05-15 08:00").Write(book.TakenAlong{What: book.Cells, Batch: batch(4), Count: 48})
	given := all[:45] // G10 was passed over
	p.In("2027-05-15", calendar.Evening).Write(cells(4, given...)...)
	p.Write(book.Dropped{What: book.Cells, Batch: batch(4), Count: 2})
	jon := &booktest.Pen{Zone: p.Zone, Writer: "Jon"}
	jon.In("2027-05-15", calendar.Evening).Write(cells(4, given[:12]...)...)
	for i := range jon.Entries {
		jon.Entries[i].Written = jon.Entries[i].Written.Add(3600e9)
	}
	p.Entries = append(p.Entries, jon.Entries...)
	v := p.View("2027-05-15 22:00")

	closing := rules.Close(v, calendar.Date(2027, 5, 15))
	if len(closing) != 1 || closing[0].String() != "48 = 45 placed + 2 dropped + 1 not accounted for" {
		t.Fatalf("closing %v", closing)
	}
	if got := closing[0].Likely; !slices.Equal(got, []book.NucID{booktest.Nuc("G10")}) {
		t.Errorf("likely %v, want G10", got)
	}
	twins := rules.TwinsOn(v, calendar.Date(2027, 5, 15))
	if len(twins) != 12 {
		t.Fatalf("%d twins, want 12", len(twins))
	}
	for _, w := range twins {
		if w.Again.Writer != "Jon" {
			t.Errorf("to strike: %v, want the one written later", w.Again)
		}
	}
	if found := of(v, rules.Twice); len(found) != 1 || len(found[0].Also) != 12 {
		t.Errorf("twice: %+v, want one finding of 12", found)
	}
	gaps := of(v, rules.GapAsks)
	if len(gaps) == 0 || gaps[0].Of != booktest.Nuc("D7").Subject() {
		t.Fatalf("gaps %+v, want D7", gaps)
	}
	before := p.View("2027-05-15 18:00")
	q, asks := rules.Ask(before, book.CellGiven{Nuc: booktest.Nuc("D7"), Batch: batch(4)})
	if !asks || q.Answers[0].Words != "gone, not known when" {
		t.Fatalf("question %+v", q)
	}
	p.In("2027-05-15", calendar.Evening).Write(q.Answers[0].After...)
	after := p.View("2027-05-15 23:00")
	if found := of(after, rules.GapAsks); len(found) != 0 {
		t.Errorf("answered and still asked: %+v", found)
	}
	if got := after.Nuc(booktest.Nuc("D7")).Holds.Condition; got != book.Cell {
		t.Errorf("D7 holds %v, want the cell", got)
	}
}

// TestOwnQueen: a laying queen was caught on 10 May and a cell given in the
// same hour; on 26 May there is neither queen nor egg.
func TestOwnQueen(t *testing.T) {
	p := pen(t)
	p.At("2027-04-20 18:00").Write(madeUp("A1")...)
	p.At("2027-05-01 18:00").Write(look("A1", book.Looked{Eggs: book.SingleEggs}))
	p.At("2027-04-30 18:00").Write(graft(3, 1))
	p.At("2027-05-10 18:00").Write(book.QueenCaught{Nuc: a1, Queen: booktest.Queen("old")}, book.CellGiven{Nuc: a1, Batch: batch(3)})
	p.At("2027-05-26 18:00").Write(look("A1", book.Looked{Queen: book.NoneSeen, Eggs: book.NoEggs}))
	found := of(p.View("2027-05-26 19:00"), rules.Late)
	if len(found) != 1 {
		t.Fatalf("late: %+v, want one", found)
	}
	want := "13 days old, no eggs on Wed 26 May; left on young brood Mon 10 May, a queen of its own could begin to lay Sat 29 May to Tue 8 Jun"
	if found[0].Why != want {
		t.Errorf("why  %q\nwant %q", found[0].Why, want)
	}
	if want := "Look for opened own cells on the comb face and for eggs; no cell yet"; found[0].Do != want {
		t.Errorf("do %q, want %q", found[0].Do, want)
	}
	p.At("2027-06-03 18:00").Write(look("A1", book.Looked{Eggs: book.SingleEggs}))
	if got := p.View("2027-06-03 19:00").Nuc(a1).Holds.Descent; got != book.DescentDoubtful {
		t.Errorf("descent %v, want doubtful", got)
	}
}

func TestSuspicionStopsMovesAndCatches(t *testing.T) {
	p := pen(t)
	p.At("2027-05-01 18:00").Write(madeUp("A1", "A2")...)
	p.At("2027-05-20 18:00").Write(book.Looked{Nuc: booktest.Nuc("A1"), Eggs: book.SingleEggs}, book.Looked{Nuc: booktest.Nuc("A2"), Eggs: book.SingleEggs})
	p.At("2027-05-30 18:00").Write(book.Looked{Nuc: booktest.Nuc("A1"), Brood: book.Said(4)})
	p.Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 1, By: calendar.Date(2027, 6, 20)})
	p.At("2027-06-03 10:00").Write(book.DiseaseSuspected{Of: booktest.Nuc("A2").Subject(), What: "foul brood"})
	v := p.View("2027-06-03 12:00")
	found := of(v, rules.Standstill)
	if len(found) != 1 || found[0].Yard != atFar {
		t.Fatalf("standstill %+v, want one at %s", found, far)
	}
	ready := of(v, rules.Ready)
	if len(ready) != 1 || ready[0].Act != rules.ActNone || ready[0].Do != "No catch while the yard is on standstill" {
		t.Errorf("ready %+v, want one that is not to be caught", ready)
	}
	for name, plan := range map[string]rules.Intent{
		"catch": rules.Catch{Nuc: booktest.Nuc("A1")},
		"move":  rules.Move{Nuc: booktest.Nuc("A1"), Yard: atHome},
	} {
		if verdict := rules.Check(v, plan); verdict.OK() || !strings.Contains(verdict.Refused[0].Why, "standstill") {
			t.Errorf("%s: %+v, want refused by the standstill", name, verdict)
		}
	}
	p.At("2027-06-05 10:00").Write(book.SuspicionEnded{Of: booktest.Nuc("A2").Subject()})
	if verdict := rules.Check(p.View("2027-06-05 12:00"), rules.Catch{Nuc: booktest.Nuc("A1")}); !verdict.OK() {
		t.Errorf("ended and still refused: %+v", verdict)
	}
}
