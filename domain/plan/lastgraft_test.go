package plan_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
)

// withMonths is a book that knows what is usual in each month: 24 °C at noon in July,
// 2 °C in January.
func withMonths(p *booktest.Pen) *booktest.Pen {
	for m, high := range []float64{2, 4, 9, 14, 19, 22, 24, 24, 19, 13, 7, 3} {
		p.Write(book.WeatherNormal{Yard: booktest.Yard("home"), Month: m + 1, Low: book.Said(high - 9), High: book.Said(high), Rainy: book.Said(0.3)})
	}
	return p
}

// The last graft is the last day from which half lay: from the day after fewer do.
func TestTheLastGraftThatMakesSense(t *testing.T) {
	p := plannerOf(withMonths(yardOf(12)), "2027-06-01 08:00")
	yard, from := booktest.Yard("home"), day(t, "2027-06-02")
	last, ok := p.LastGraft(yard, from)
	if !ok || last <= from || last > day(t, "2027-10-31") {
		t.Fatalf("the last graft is on %s, %v", last, ok)
	}
	on, after := p.Ladder(p.GraftAt(last), 1, yard).Laid, p.Ladder(p.GraftAt(last+1), 1, yard).Laid
	if a, b := on.InTime(last+200, true), after.InTime(last+200, true); a < 0.5 || b >= 0.5 {
		t.Errorf("grafted on %s %.2f lay, a day later %.2f", last, a, b)
	}
	if later, ok := p.LastGraft(yard, last); !ok || later != last {
		t.Errorf("looked for on its own day it is on %s, %v", later, ok)
	}
}

// After the last graft the next one that makes sense is in spring; where no weather
// ends a season there is no last one.
func TestAfterTheLastGraftComesSpring(t *testing.T) {
	p := plannerOf(withMonths(yardOf(1)), "2027-11-01 08:00")
	if last, ok := p.LastGraft(booktest.Yard("home"), day(t, "2027-11-02")); ok && last < day(t, "2028-04-01") {
		t.Errorf("a graft on %s makes sense", last)
	}
	if last, ok := plannerOf(yardOf(1), "2027-06-01 08:00").LastGraft(booktest.Yard("home"), day(t, "2027-06-02")); ok {
		t.Errorf("without any weather the last graft is on %s", last)
	}
}

// Why there is no last graft is what is missing: all months, some of them, or nothing.
func TestWhyNoLastGraftIsKnown(t *testing.T) {
	home := booktest.Yard("home")
	pen := yardOf(1)
	for _, c := range []struct {
		told []int
		want string
	}{
		{nil, "the usual weather is not told"},
		{[]int{2, 3, 4, 5, 6, 8}, "the usual weather of July, September, October, November, December and January is not told"},
		{[]int{7}, "the usual weather of 5 months is not told, September to January"},
		{[]int{9, 10, 11, 12}, "the usual weather of January is not told"},
		{[]int{1}, "the usual weather ends no season there"},
	} {
		for _, m := range c.told {
			pen.Write(book.WeatherNormal{Yard: home, Month: m, Low: book.Said(13), High: book.Said(24), Rainy: book.Said(0.2)})
		}
		p := plannerOf(pen, "2027-06-01 08:00")
		if _, ok := p.LastGraft(home, day(t, "2027-06-02")); ok || p.NoLast(home) != c.want {
			t.Errorf("told of %v: %q, %v", c.told, p.NoLast(home), ok)
		}
	}
}
