package handover

import (
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
)

// Fell is a batch planned for an order that gives fewer queens than it was meant to, as far
// as is known for sure: nobody grafted it by its day, or its cells and queens were lost.
type Fell struct {
	Batch  book.BatchID
	Number int          // 0: it was not grafted
	Day    calendar.Day // of the graft
	Meant  int          // queens it was planned for
	Gives  int          // of those, cells that can still be given, and virgins and queens who live or were handed over
}

// Words say it: "batch 3 has 8 cells and queens left for 12 planned". Not every one of them comes
// to a queen who is ready, so it is not said how many fewer there will be.
func (f Fell) Words() string {
	if f.Number == 0 {
		return fmt.Sprintf("the graft planned for %s was not made", f.Day.Short())
	}
	left := fmt.Sprintf("%d cells and queens", f.Gives)
	switch f.Gives {
	case 0:
		left = "no cell and no queen"
	case 1:
		left = "one cell or queen"
	}
	return fmt.Sprintf("batch %d has %s left for %d planned", f.Number, left, f.Meant)
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

// fellFor are the batches planned for an order that give fewer than they were meant to.
func fellFor(c *course.Course, order book.OrderID) (all []Fell) {
	v := c.View()
	for b := range v.Plans() {
		if b.Day < v.From() && slices.Contains(b.Orders, order) {
			all = append(all, Fell{Batch: b.Batch, Day: b.Day, Meant: meant(b.BatchPlanned)})
		}
	}
	for b := range v.Batches() {
		was, _ := v.BatchPlan(b.Batch)
		f := Fell{b.Batch, b.Number, b.At.Day(v.Zone()), meant(was.BatchPlanned), livingOf(c, b, was)}
		if slices.Contains(was.Orders, order) && f.Gives < f.Meant {
			all = append(all, f)
		}
	}
	return all
}

// livingOf is how many cells of a batch can still be given, and how many of its virgins and
// queens nobody knows to be lost, those handed over among them.
func livingOf(c *course.Course, b *book.Batch, was book.BatchPlan) (n int) {
	v := c.View()
	n = toGive(c, b, was)
	for _, g := range b.Given {
		if kept(v, b.Batch, g) {
			n++
		}
	}
	for _, id := range b.Caged {
		if v.Queen(id).Caged() {
			n++
		}
	}
	return n
}

// kept tells whether who was given lives in her nuc, as far as is known, or was caught and not
// culled.
func kept(v *book.View, batch book.BatchID, g book.Gift) bool {
	nuc, on := v.Nuc(g.Nuc), g.At.Day(v.Zone())
	was := func(h book.Holding) bool { return h.Batch == batch && h.Given.Day(v.Zone()) == on }
	return was(nuc.Holds) || slices.ContainsFunc(nuc.Caught, func(c book.Catch) bool { return was(c.Was) && !c.Culled })
}
