package plan_test

import (
	"math"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// plansOf writes planned grafts of one yard, each for its own queens, with so many nucs each.
func plansOf(p *booktest.Pen, nucs map[calendar.Day]int) *booktest.Pen {
	for d, n := range nucs {
		p.Write(book.BatchPlanned{
			Batch: booktest.Batch(d.String()), Day: d, Larvae: 40, Nucs: n, Yard: booktest.Yard("home"), Queens: 6, By: d + 60,
		})
	}
	return p
}

// 26 nucs and 41 wanted of them: the sooner graft has all of its own, the later one what is left, and that
// is what its chance is of. A graft behind both, once their queens are ready, has all again.
func TestNucsAreDealtInTheOrderOfTheGrafts(t *testing.T) {
	d := day(t, "2027-05-01")
	p := plannerOf(plansOf(yardOf(26), map[calendar.Day]int{d: 20, d + 4: 21, d + 60: 26}), "2027-03-16 08:00")
	for b := range p.View().ToGraft() {
		want := map[calendar.Day]int{d: 20, d + 4: 6, d + 60: 26}[b.Day]
		if n := p.Dealt(b); n != want {
			t.Errorf("graft of %s: %d nucs dealt, want %d", b.Day, n, want)
		}
		late := 1 - p.LadderOf(b).Laid.InTime(b.By, false)
		near(t, "chance of the graft of "+b.Day.String(), p.Sure(b), plan.RatesOf(p.View()).Queens(plan.Graft{Larvae: 40, Nucs: want, Late: late}).AtLeast(6), 1e-9)
	}
	second, _ := p.View().BatchPlan(booktest.Batch((d + 4).String()))
	w, _ := p.Wished(second)
	if said := w.Short(); !strings.HasSuffix(said, ": 6 of its 21 nucs are free") {
		t.Error(said)
	}
	// moved before the first it has its own, and the first goes short
	second.Day = d - 1
	if n := p.Dealt(second); n != 21 {
		t.Errorf("moved before the first: %d nucs dealt", n)
	}
}

// Nucs that come free on the last day on which its cells can be given are a graft's, though it is best made
// up days before: so a slip by a day changes nothing. A day later they are not.
func TestASlipByADayLeavesAGraftItsNucs(t *testing.T) {
	d := day(t, "2027-05-01")
	first := plannerOf(plansOf(yardOf(26), map[calendar.Day]int{d: 20}), "2027-03-16 08:00")
	b, _ := first.View().BatchPlan(booktest.Batch(d.String()))
	free := first.LadderOf(b).Rung(plan.Ready).By
	next := d
	rungs := func() plan.Ladder {
		return first.LadderOf(book.BatchPlan{BatchPlanned: book.BatchPlanned{Day: next, Larvae: 40, Yard: b.Yard}})
	}
	for rungs().Rung(plan.GiveCells).By < free {
		next++
	}
	if best := rungs().Rung(plan.MakeUpNucs).Best; best >= free {
		t.Fatalf("best made up on %s, when the nucs are free already", best)
	}
	for graft, nucs := range map[calendar.Day]int{next - 1: 6, next: 26, next + 1: 26, next + 2: 26} {
		p := plannerOf(plansOf(yardOf(26), map[calendar.Day]int{d: 20, graft: 26}), "2027-03-16 08:00")
		b, _ := p.View().BatchPlan(booktest.Batch(graft.String()))
		if n := p.Dealt(b); n != nucs {
			t.Errorf("graft of %s: %d nucs dealt, want %d", graft, n, nucs)
		}
	}
}

// Who gets none of what is wanted holds nothing against those behind it.
func TestWhoGetsNoNucsHoldsNone(t *testing.T) {
	d := day(t, "2027-05-01")
	p := plannerOf(plansOf(yardOf(20), map[calendar.Day]int{d: 20, d + 20: 20, d + 45: 20}), "2027-03-16 08:00")
	var got []int
	for b := range p.View().ToGraft() {
		got = append(got, p.Dealt(b))
	}
	if len(got) != 3 || got[0] != 20 || got[1] != 0 || got[2] != 20 {
		t.Errorf("dealt %v", got)
	}
}

// Of a yard without any nuc in the book a graft has what is said of it.
func TestANucThatTheBookDoesNotKnow(t *testing.T) {
	d := day(t, "2027-05-01")
	p := plannerOf(plansOf(yardOf(0), map[calendar.Day]int{d: 20}), "2027-03-16 08:00")
	for b := range p.View().ToGraft() {
		if n := p.Dealt(b); n != 20 || p.Against([]book.BatchPlan{b}) != "" {
			t.Errorf("%d dealt, %q", n, p.Against([]book.BatchPlan{b}))
		}
	}
}

// A wish for more nucs than are free says how sure it is once it is planned, and so it is.
func TestAWishSaysWhatItIsOncePlanned(t *testing.T) {
	pen := yardOf(26)
	p := plannerOf(pen, "2027-03-16 08:00")
	a := p.Possible(plan.Wish{Queens: 10, By: day(t, "2027-06-20"), Nucs: 40})
	said := ""
	for _, m := range p.Minds(a) {
		if strings.HasPrefix(m.Why, "planned so it is ") {
			said = m.Why
		}
	}
	b := p.ToBook(a)[0]
	b.Batch = booktest.Batch("a")
	then := plannerOf(pen.Write(b), "2027-03-16 08:00")
	planned, _ := then.View().BatchPlan(b.Batch)
	if want := "planned so it is " + plan.OfHundred(then.Sure(planned)) + ": 26 of its 40 nucs are free"; said != want || a.Chance <= then.Sure(planned) {
		t.Errorf("said %q, want %q", said, want)
	}
}

// Where nobody is free for the ripe cells a graft loses what giving them late costs, in queens as the day
// prices it, planned and grafted alike.
func TestNobodyIsFreeForTheCells(t *testing.T) {
	pen, d := yardOf(26), day(t, "2027-05-08")
	who := book.PersonDescribed{Person: booktest.Person("who"), Name: "Nela"}
	for w := range who.Free {
		who.Free[w] = book.FreeHours{From: 10 * 60, Until: 20 * 60}
	}
	pen.Write(who)
	plansOf(pen, map[calendar.Day]int{d: 26})
	b, _ := plannerOf(pen, "2027-03-16 08:00").View().BatchPlan(booktest.Batch(d.String()))
	before := plannerOf(pen, "2027-03-16 08:00")
	pen.Write(book.DaysOff{Person: who.Person, From: d + 8, To: d + 11})
	p := plannerOf(pen, "2027-03-16 08:00")
	late := p.CellsLate(plan.Batch{Ladder: p.LadderOf(b), Size: p.SizeOf(b)})
	share := late.Queens / (26 * plan.OfCell(p.Own()))
	if g, was := p.GraftFor(b, 0, false), before.GraftFor(b, 0, false); was.Late != 0 || math.Abs(g.Late-share) > 1e-9 || share < 0.5 {
		t.Errorf("lost %.2f, by the day's price %.2f", g.Late, share)
	}
	if said := p.Against([]book.BatchPlan{b}); !strings.HasPrefix(said, "nobody is free to give its cells by Tue 18 May ") || !strings.HasSuffix(said, "cells lost") {
		t.Error(said)
	}
	pen.At(d.String() + " 10:00").Write(book.Grafted{Batch: b.Batch, Number: 1, Larvae: 40})
	grafted := plannerOf(pen, d.String()+" 20:00")
	ever := grafted.Gives(grafted.View().Batch(b.Batch), 0, false)
	near(t, "grafted as planned", ever.AtLeast(6), p.Joint([]book.BatchPlan{b}, 0).AtLeast(6), 0.02)
}
