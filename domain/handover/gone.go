package handover

import (
	"cmp"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Gone is a queen who was handed over, with all by which she may be asked for.
type Gone struct {
	*book.Queen
	Customer string
	Number   string // of the order
	On       calendar.Day
	Age      int // in days when she was caught; 0: nobody knows
	Batch    int // the number of her batch; 0: none
	Claimed  book.ClaimKind
}

// HandedOver are the queens handed over whose customer, order, name, line, cage,
// disc or year holds all the words of a text, the last ones first. An empty text
// finds all.
func HandedOver(v *book.View, text string) (all []Gone) {
	claims, bornOn := claimed(v), bornOf(v)
	for q := range v.Queens() {
		if q.Handed.IsZero() {
			continue
		}
		g := Gone{Queen: q, Customer: q.HandedTo, On: q.Handed.Day(v.Zone()), Claimed: claims[q.Queen]}
		if !q.Order.IsZero() {
			o := v.Order(q.Order)
			g.Number, g.Customer = o.Number, cmp.Or(g.Customer, o.Customer)
		}
		if !q.Batch.IsZero() {
			g.Batch = v.Batch(q.Batch).Number
		}
		if born := bornOn(q); !born.IsZero() && !q.Caught.IsZero() {
			g.Age = q.Caught.Day(v.Zone()).Sub(born)
		}
		if g.Holds(text) {
			all = append(all, g)
		}
	}
	slices.SortStableFunc(all, func(a, b Gone) int { return cmp.Compare(b.On, a.On) })
	return all
}

// bornOf tells the day a queen emerged: as told, else the one on which half of her batch had
// by its clock, by which the day is told too on which she may be caught.
func bornOf(v *book.View) func(*book.Queen) calendar.Day {
	middle := map[book.BatchID]calendar.Day{}
	return func(q *book.Queen) calendar.Day {
		if !q.Emerged.IsZero() {
			return calendar.DayOf(q.Emerged, v.Zone())
		}
		day, known := middle[q.Batch]
		if b := v.Batch(q.Batch); !known && !q.Batch.IsZero() && !b.At.IsZero() {
			day = calendar.DayOf(b.Clock(v.Numbers()).Middle(), v.Zone())
			middle[q.Batch] = day
		}
		return day
	}
}

// Holds tells whether all words of a text are found in what is known of her.
func (g Gone) Holds(text string) bool {
	known := strings.ToLower(strings.Join([]string{
		g.Customer, g.Number, g.Name, g.Line, g.Label, g.Mark.Disc, g.Mark.Colour, g.On.String(), g.On.Short(),
	}, " "))
	for word := range strings.FieldsSeq(strings.ToLower(text)) {
		if !strings.Contains(known, word) {
			return false
		}
	}
	return true
}

// claimed are the queens whom claims name, and how.
func claimed(v *book.View) map[book.QueenID]book.ClaimKind {
	all := map[book.QueenID]book.ClaimKind{}
	for o := range v.Orders() {
		for e := range v.Lines(o.Order.Subject()) {
			if f, ok := e.Fact.(book.Claimed); ok {
				for _, q := range f.Of {
					all[q] = f.How
				}
			}
		}
	}
	return all
}
