package plan_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/plan"
)

// ordered is an order of 12 with two grafts of 12 queens planned for it, in two yards.
func ordered(t *testing.T) (*booktest.Pen, [2]book.BatchPlanned) {
	pen, order, by := yardOf(30), booktest.Order("1"), day(t, "2027-06-12")
	pen.Write(book.YardDescribed{Yard: booktest.Yard("mill"), Name: "Mill", Zone: "UTC"}, book.OrderTaken{Order: order, Number: "1", Queens: 12, By: by})
	var two [2]book.BatchPlanned
	for i, yard := range []string{"mill", "home"} {
		two[i] = book.BatchPlanned{
			Batch: booktest.Batch(yard), Day: day(t, "2027-04-19"), Larvae: 40, Nucs: 24 - 10*i, Yard: booktest.Yard(yard), Queens: 12, By: by, Orders: []book.OrderID{order},
		}
		two[i].Day += 9
		pen.At("2027-03-15 20:00").Write(two[i])
	}
	return pen, two
}

// Two grafts each of which is planned for the whole of an order of 12 are no wish of 24.
func TestTheWishOfTwoGraftsIsTheirOrders(t *testing.T) {
	pen, two := ordered(t)
	p := plannerOf(pen, "2027-03-16 08:00")
	w, _ := p.Wished(book.BatchPlan{BatchPlanned: two[0]})
	alone := p.Joint([]book.BatchPlan{{BatchPlanned: two[0]}}, two[0].By).AtLeast(12)
	if w.All != 12 || w.Chance < alone+0.1 || !strings.Contains(w.Said(), "together give their 12 queens") {
		t.Errorf("%.3f alone; %s", alone, w.Said())
	}
	pen.At("2027-03-15 21:00").Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 40, By: two[0].By})
	if w, _ := plannerOf(pen, "2027-03-16 08:00").Wished(book.BatchPlan{BatchPlanned: two[0]}); w.All != 24 {
		t.Errorf("of an order of 40 that has 24 on the plan: %s", w.Said())
	}
}

// What one yard has no cell for is no nuc of another: by hand, grafts of two yards are turns
// of the nucs, however near their days.
func TestNucsAreOfTheirYard(t *testing.T) {
	pen, two := ordered(t)
	p := plannerOf(pen, "2027-03-16 08:00")
	first, second := p.GraftFor(book.BatchPlan{BatchPlanned: two[0]}, two[0].By, false), p.GraftFor(book.BatchPlan{BatchPlanned: two[1]}, two[1].By, false)
	pooled := plan.RatesOf(p.View()).Queens(first, second).AtLeast(20)
	second.Again = true
	apart := plan.RatesOf(p.View()).Queens(first, second).AtLeast(20)
	got := p.Joint([]book.BatchPlan{{BatchPlanned: two[0]}, {BatchPlanned: two[1]}}, two[0].By).AtLeast(20)
	if math.Abs(got-apart) > 1e-12 || pooled < apart+1e-3 {
		t.Errorf("%.5f, in two yards %.5f, as of one %.5f", got, apart, pooled)
	}
}

// Once the first of two grafts is done, it is told as sure as both were together; then a poor
// take costs, and a queen who is handed over for the order is no more wished.
func TestAGraftedHalfIsOfTheWish(t *testing.T) {
	pen, two := ordered(t)
	told := func(on string) plan.Wished {
		w, _ := plannerOf(pen, on).Wished(book.BatchPlan{BatchPlanned: two[1]})
		return w
	}
	before := told("2027-04-27 08:00")
	pen.At(fmt.Sprintf("%s 14:00", two[0].Day)).Write(book.Grafted{Batch: two[0].Batch, Number: 7, Larvae: 40})
	after := told("2027-04-28 20:00")
	if math.Abs(after.Chance-before.Chance) > 0.03 || after.All != 12 || !strings.Contains(after.Said(), "together give their 12 queens") {
		t.Errorf("planned %.3f, grafted: %s", before.Chance, after.Said())
	}
	pen.At("2027-04-29 14:00").Write(book.TakeCounted{Batch: two[0].Batch, Accepted: 2})
	if poor := told("2027-04-29 20:00"); poor.Chance > after.Chance-0.1 {
		t.Errorf("2 taken: %.3f after %.3f", poor.Chance, after.Chance)
	}
	queen := booktest.Queen("q")
	pen.At("2027-04-29 21:00").Write(book.QueenDescribed{Queen: queen}, book.QueenHandedOver{Queen: queen, Order: booktest.Order("1")})
	if w := told("2027-04-29 22:00"); w.All != 11 {
		t.Errorf("one is handed over: %s", w.Said())
	}
}
