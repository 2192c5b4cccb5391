package crew_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/crew"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// ownRates is a book whose batches take fewer larvae than the table has it, and whose nucs
// accept more cells, with a batch of 80 larvae grafted on 20 July that nobody has counted.
func ownRates() (p *booktest.Pen, grafted book.BatchID) {
	home := booktest.Yard("home")
	p = (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
	for k := range 4 {
		b := booktest.Batch(fmt.Sprint("counted", k))
		p.At(fmt.Sprintf("2027-05-%02d 12:00", 1+k)).Write(book.Grafted{Batch: b, Number: k + 1, Larvae: 40}, book.TakeCounted{Batch: b, Accepted: 20})
		p.At(fmt.Sprintf("2027-05-%02d 12:00", 6+k)).Write(book.CappedCounted{Batch: b, Capped: 16})
		for i := range 15 {
			name := fmt.Sprintf("%c%d", 'A'+k, i+1)
			n := booktest.Nuc(name)
			p.At("2027-05-09 18:00").Write(book.NucNamed{Nuc: n, Name: name, Sides: 6}, book.NucPlaced{Nuc: n, Yard: home}, book.NucMadeUp{Nuc: n, Cups: 4, Food: 900})
			p.At(fmt.Sprintf("2027-05-%02d 12:00", 11+k)).Write(book.CellGiven{Nuc: n, Batch: b})
			p.At("2027-06-06 12:00").Write(book.Looked{Nuc: n, Eggs: book.SingleEggs})
			p.At("2027-07-10 12:00").Write(book.QueenCaught{Nuc: n})
			p.At("2027-07-25 18:00").Write(book.NucMadeUp{Nuc: n, Cups: 4, Food: 900})
		}
	}
	grafted = booktest.Batch("grafted")
	return p.At("2027-07-20 12:00").Write(book.Grafted{Batch: grafted, Number: 9, Larvae: 80}), grafted
}

// Where a book has rates of its own, the ripe cells to be expected of some larvae are one
// number: in the amounts of a plan, for the nucs that wait, in the work of the day and on the
// card of the late day; and so are the accepted grafts, for whom finishers are wanted.
func TestRipeCellsAreOneNumber(t *testing.T) {
	p, id := ownRates()
	v := p.View("2027-07-29 07:00")
	j, b := rules.Judge(v), v.Batch(id)
	planner := plan.New(j.Course())
	size := planner.SizeOf(book.BatchPlan{BatchPlanned: book.BatchPlanned{Larvae: 80, Nucs: 60}})
	table := 80 * (practice.Numbers{}).Get(practice.Take) * (practice.Numbers{}).Get(practice.RipeOfTakes)
	if size.Cells > table-10 {
		t.Fatalf("%.1f cells of a keeper with a poor take, by the table %.1f", size.Cells, table)
	}
	want := int(math.Round(size.Cells))
	if w := planner.Waiting(b); w.Nucs != want {
		t.Errorf("%d nucs wait, want %d", w.Nucs, want)
	}
	if card, ok := rules.LateDay(v, id, v.On().AddDate(0, 0, 3)); !ok || card.Cells != want {
		t.Errorf("the late day reckons with %d cells, want %d", card.Cells, want)
	}
	said, finishers := false, plan.FinishersFor(size.Takes, v.Numbers())
	for _, f := range j.Findings() {
		if of, is := f.Of.Batch(); is && of == id && f.Rule == rules.CellsOut {
			said = int(f.Amount) == want
		}
	}
	if !said {
		t.Errorf("today does not say %d cells", want)
	}
	moves := rules.Findings(p.View("2027-07-21 13:00"))
	for _, f := range moves {
		if f.Rule == rules.MoveToFinisher && !strings.Contains(f.Why, fmt.Sprintf("about %.0f live: %.0f finisher", size.Takes, finishers)) {
			t.Errorf("%s; by the amounts %.1f in %.0f finishers", f.Why, size.Takes, finishers)
		}
	}
}

// A ladder has its cells given on the best day if somebody has the minutes then for as many
// as the keeper's own rates leave; the table's would take longer, and move it.
func TestALadderHasTheCellsOfTheKeeper(t *testing.T) {
	p, _ := ownRates()
	const long = 8 * 60
	give := func(on time.Weekday, minutes int) calendar.Day {
		free := *p
		free.Entries = slices.Clone(p.Entries)
		who := book.PersonDescribed{Person: booktest.Person("who"), Name: "Nela"}
		for d := range who.Free {
			who.Free[d] = book.FreeHours{From: 10 * 60, Until: 10*60 + long}
		}
		who.Free[on].Until = 10*60 + minutes
		planner := plan.New(rules.Judge(free.At("2027-07-28 08:00").Write(who).View("2027-07-29 07:00")).Course())
		return planner.Ladder(calendar.Date(2027, 8, 2).At(20, 0, time.UTC), 80, booktest.Yard("home")).Rung(plan.GiveCells).Best
	}
	best := give(0, long)
	own := plan.RatesOf(p.View("2027-07-29 07:00")).Ripe(80) * (practice.Numbers{}).Get(practice.MinutesGiveCell)
	if got := give(best.Weekday(), int(own)+1); got != best {
		t.Errorf("with %.0f minutes on %s cells are given on %s", own, best, got)
	}
	if got := give(best.Weekday(), int(own)-1); got == best {
		t.Errorf("with fewer than %.0f minutes cells are given on %s all the same", own, got)
	}
}

// What a caged cell costs on a short day is by the shares of the keeper's own book, and so is
// what a plan says of cells that are given a day late. Somebody comes again when all are out.
func TestACageIsPricedByTheKeepersRates(t *testing.T) {
	p, _ := ownRates()
	who := book.PersonDescribed{Person: booktest.Person("who"), Name: "Nela"}
	who.Free[time.Wednesday] = book.FreeHours{From: 10 * 60, Until: 14 * 60}
	v := p.At("2027-07-28 08:00").Write(who).View("2027-07-29 16:00")
	own := plan.RatesOf(v).In(v.Numbers())
	day, err := crew.Plan(rules.Judge(v), v.Today(), crew.Hands{{{Name: "Nela", Minutes: 30}}}) // all are collected, and half of the nucs go without
	if err != nil {
		t.Fatal(err)
	}
	idle := day.Next.Sub(v.On()).Hours() / 24 * v.Numbers().Get(practice.WorthNucDay)
	cell, virgin, caged := own.Get(practice.AcceptCell), own.Get(practice.AcceptVirginDaysOld), 0
	want := (cell - virgin) * own.Get(practice.LayingOfAccepted)
	for _, w := range day.Waits {
		if w.Task.Act != rules.ActGiveCell {
			continue
		}
		caged++
		if one := w.Price.Queens - idle; math.Abs(one-want) > 1e-3 || !strings.HasPrefix(w.Price.Why, "its cell is caged: 100 of 100 are out by then") {
			t.Errorf("a cell that waits costs %.4f besides its idle nuc, want %.4f: %s", one, want, w.Price.Why)
		}
	}
	if table := (practice.Numbers{}); caged == 0 || cell < table.Get(practice.AcceptCell)+0.1 {
		t.Errorf("%d cells wait, %.2f of the cells are accepted", caged, cell)
	}
	cells := plan.New(rules.Judge(v).Course()).Ladder(v.On(), 80, booktest.Yard("home")).Rung(plan.GiveCells)
	who.Free[cells.Best.Weekday()] = who.Free[time.Wednesday] // she is there on their day, and cages them
	planner := plan.New(rules.Judge(p.At("2027-07-29 15:00").Write(who).View("2027-07-29 16:00")).Course())
	l := planner.Ladder(v.On(), 80, booktest.Yard("home"))
	late := planner.CellsLate(plan.Batch{Ladder: l, Size: plan.Size{Cells: 30, Nucs: 30}})
	out := bee.Batch{Graft: l.Graft, Cells: 30}.Clock(v.Numbers()).Out(late.At)
	if young := out * (cell - own.Get(practice.AcceptVirginUnderDay)) * own.Get(practice.LayingOfAccepted); late.Hard.IsZero() || late.Queens < young-1e-9 || late.Queens > out*want+1e-9 {
		t.Errorf("in a plan %.4f, want %.4f to %.4f", late.Queens, young, out*want)
	}
}
