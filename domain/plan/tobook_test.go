package plan_test

import (
	"math"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/plan"
)

// TestAnAnswerReadBack: what is put on the plan of an answer says what the answer said: all
// its queens are wished of all its grafts, which give them as surely, whichever is asked.
func TestAnAnswerReadBack(t *testing.T) {
	for name, c := range map[string]struct {
		wish plan.Wish
		nucs int
	}{
		"one graft":     {plan.Wish{Queens: 30, By: day(t, "2027-06-30")}, 64},
		"few nucs":      {plan.Wish{Queens: 20, By: day(t, "2027-06-30"), Grafts: 2, Larvae: 80}, 40},
		"two grafts":    {plan.Wish{Queens: 20, By: day(t, "2027-06-30"), Grafts: 2, Sure: 0.95}, 200},
		"three, laying": {plan.Wish{Queens: 45, By: day(t, "2027-07-10"), Grafts: 3, Laying: true, Larvae: 90}, 90},
		"weeks between": {plan.Wish{Queens: 20, By: day(t, "2027-07-30"), Grafts: 2, Apart: 40, Larvae: 60}, 30},
		"unlike":        {plan.Wish{Queens: 30, By: day(t, "2027-06-30"), Graft: day(t, "2027-05-03")}.WithLarvae(60, 40), 64},
	} {
		pen := yardOf(c.nucs)
		p := plannerOf(pen, "2027-03-16 08:00")
		a := p.Answer(c.wish)
		queens := 0
		for i, b := range p.ToBook(a) {
			b.Batch = booktest.Batch(string(rune('a' + i)))
			queens += b.Queens
			pen.At("2027-03-15 20:00").Write(b)
		}
		if queens != c.wish.Queens {
			t.Errorf("%s: %d queens of %d are planned", name, queens, c.wish.Queens)
		}
		p = plannerOf(pen, "2027-03-16 08:00")
		for b := range p.View().Plans() {
			w, _ := p.Wished(b)
			if off := math.Abs(w.Chance - a.Chance); w.Chance != p.Sure(b) || w.All != c.wish.Queens || off > 1e-9 {
				t.Errorf("%s: %.4f as wished, %.4f as planned: %s", name, a.Chance, w.Chance, w.Said())
			}
		}
		if told := p.Unordered(); len(told) != 1 || len(a.Batches) > 1 && !strings.Contains(told[0].Said(), "together give their") {
			t.Errorf("%s: %d times told", name, len(told))
		}
	}
}

// By hand: 20 queens of grafts of which 12 and 4 are to be expected are 15 and 5, seven of
// three like ones 2, 3 and 2; nothing to be expected leaves all to the first.
func TestShares(t *testing.T) {
	for _, c := range []struct {
		queens   int
		expected []float64
		want     []int
	}{{20, []float64{12, 4}, []int{15, 5}}, {7, []float64{3, 3, 3}, []int{2, 3, 2}}, {4, []float64{0, 0}, []int{4, 0}}, {4, []float64{9}, []int{4}}} {
		for i, n := range plan.Shares(c.queens, c.expected) {
			if n != c.want[i] {
				t.Errorf("%d of %v: %d is the share of %d, want %d", c.queens, c.expected, n, i, c.want[i])
			}
		}
	}
}

// Grafts for one order are one wish, for two orders two; with none it is the day, the line,
// the yard and the certainty.
func TestOneWish(t *testing.T) {
	of := func(line string, orders ...book.OrderID) book.BatchPlan {
		return book.BatchPlan{BatchPlanned: book.BatchPlanned{Queens: 5, By: day(t, "2027-06-30"), Line: line, Orders: orders}}
	}
	one, two := booktest.Order("1"), booktest.Order("2")
	for _, c := range []struct {
		a, b book.BatchPlan
		want bool
	}{
		{of("Rook"), of("Rook"), true},
		{of("Rook"), of("Plover"), false},
		{of("Rook", one), of("Rook"), false},
		{of("Rook", one), of("Plover", one, two), true},
		{of("Rook", one), of("Rook", two), false},
	} {
		if plan.OneWish(c.a, c.b) != c.want || plan.OneWish(c.b, c.a) != c.want {
			t.Errorf("%+v and %+v: want %v", c.a, c.b, c.want)
		}
	}
}
