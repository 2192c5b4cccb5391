package handover

import (
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// Fell is a batch planned for an order that gives fewer queens than it was meant to, as far
// as is known for sure: nobody grafted it by its day, or its cells and queens were lost.
type Fell struct {
	Batch  book.BatchID
	Number int          // 0: it was not grafted
	Day    calendar.Day // of the graft
	Meant  int          // queens it was planned for
	Gives  int          // of those, cells that can still be given, and virgins and queens who live or were handed over
	Sure   int          // of these, so many as are counted on for the day of the order, and those who were handed over
}

// Words say it: "batch 3 has 8 cells and queens left, 4 of them to be counted on, for 12 planned".
func (f Fell) Words() string {
	if f.Number == 0 {
		return fmt.Sprintf("the graft planned for %s was not made", f.Day.Short())
	}
	left := fmt.Sprintf("%d cells and queens left", f.Gives)
	switch {
	case f.Gives == 0:
		left = "no cell and no queen left"
	case f.Gives == 1:
		left = "one cell or queen left"
	case f.Sure == 0:
		left += ", none of them to be counted on,"
	case f.Sure < f.Gives:
		left += fmt.Sprintf(", %d of them to be counted on,", f.Sure)
	}
	return fmt.Sprintf("batch %d has %s for %d planned", f.Number, left, f.Meant)
}

// FellWords say why an order misses queens who were planned for it; "" where no batch is known
// to give fewer.
func (s Served) FellWords() string {
	words := make([]string, len(s.Fell))
	for i, f := range s.Fell {
		words[i] = f.Words()
	}
	return strings.Join(words, ", ")
}

// fellFor are the batches planned for an order that give fewer than they were meant to by its day.
func fellFor(p *plan.Planner, o Served) (all []Fell) {
	v := p.View()
	for b := range v.Plans() {
		if v.NotGrafted(b) && slices.Contains(v.Awaiting(b.BatchPlanned), o.Order.Order) {
			all = append(all, Fell{Batch: b.Batch, Day: b.Day, Meant: meant(b.BatchPlanned)})
		}
	}
	for b := range v.Batches() {
		if was, _ := v.BatchPlan(b.Batch); slices.Contains(v.Awaiting(was.BatchPlanned), o.Order.Order) {
			f := Fell{b.Batch, b.Number, b.At.Day(v.Zone()), meant(was.BatchPlanned), p.Left(b).Living(), countedOn(p, b, o.Catch)}
			if f.Sure < f.Meant {
				all = append(all, f)
			}
		}
	}
	return all
}

// countedOn is how many queens a batch gave orders, and is counted on to give by a day.
func countedOn(p *plan.Planner, b *book.Batch, by calendar.Day) int {
	l, went := p.Left(b), 0
	for _, q := range l.Caught {
		if !p.View().Queen(q).InHand() {
			went++
		}
	}
	return went + p.Gives(b, by, false).Sure(sureOf(p, by, l))
}
