package rules_test

import (
	"fmt"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// A graft planned for an order of another line, of no line, or too late for it is warned of,
// and so is one told as another line than its breeder's; one that will do is not.
func TestAGraftThatDoesNotDoForItsOrderIsWarned(t *testing.T) {
	home, bred, o := booktest.Yard("home"), booktest.Colony("P1"), booktest.Order("3")
	by := calendar.Date(2027, 7, 10)
	p := (&booktest.Pen{}).At("2027-04-01 12:00").Write(
		book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"},
		book.ColonyDescribed{Colony: bred, Name: "P1", Yard: home, Roles: []book.Role{book.Breeder}, Line: "Rook"},
		book.OrderTaken{Order: o, Number: "3", Queens: 3, Line: "Plover", Substitute: []string{"Yarrow"}, By: by, Sent: true, Journey: 2},
	)
	last := by - 2 - 40 // a queen can be handed over 40 days after her graft, at the soonest
	for name, c := range map[string]struct {
		planned book.BatchPlanned
		why, do string
	}{
		"its line":                {planned: book.BatchPlanned{Line: "Plover"}},
		"a substitute":            {planned: book.BatchPlanned{Line: "Yarrow", Day: last, By: by - 2}},
		"another line":            {book.BatchPlanned{Line: "Rook", Breeder: bred}, "order 3 takes Plover or Yarrow, and this graft is Rook: it does not count for the order", "Graft Plover or Yarrow for it, or write down that it takes Rook too"},
		"wished, of another line": {book.BatchPlanned{Line: "Rook", Breeder: bred, Queens: 3, By: by - 2, Day: last}, "order 3 takes Plover or Yarrow, and this graft is Rook: it does not count for the order", "Graft Plover or Yarrow for it, or write down that it takes Rook too"},
		"no line":                 {book.BatchPlanned{}, "order 3 takes Plover or Yarrow, and nobody told the line of this graft", "Tell its line"},
		"breeder's line":          {book.BatchPlanned{Line: "Plover", Breeder: bred}, "P1 is of the line Rook, and this graft is told as Plover", "Take a breeder of Plover, or tell the line of P1"},
		"too late":                {book.BatchPlanned{Line: "Plover", Day: last + 1}, "order 3 wants its queens by Thu 8 Jul, and the last graft in time for that is on Sat 29 May", "Graft by Sat 29 May, or give the order a later day"},
		"wished later":            {book.BatchPlanned{Line: "Plover", By: by - 1}, "order 3 wants its queens by Thu 8 Jul, and of this graft they are wished by Fri 9 Jul", "Wish them by Thu 8 Jul, or give the order a later day"},
	} {
		c.planned.Orders, c.planned.Larvae = []book.OrderID{o}, 20
		if c.planned.Day.IsZero() {
			c.planned.Day = calendar.Date(2027, 5, 20)
		}
		v := p.View("2027-05-05 18:00")
		got := rules.Check(v, rules.PlanOf(v, c.planned))
		switch {
		case !got.OK():
			t.Errorf("%s: refused: %+v", name, got.Refused)
		case c.why == "" && len(got.Warned) > 0, c.why != "" && (len(got.Warned) != 1 || got.Warned[0].Why != c.why || got.Warned[0].Do != c.do):
			t.Errorf("%s: %+v", name, got.Warned)
		}
	}
	v := p.View("2027-06-20 18:00")
	if got := rules.Check(v, rules.PlanOf(v, book.BatchPlanned{Line: "Plover", Day: last + 20, Orders: []book.OrderID{o}})).Warned; len(got) != 1 || strings.Contains(got[0].Do, "Graft by") {
		t.Errorf("the last day is past: %+v", got)
	}
}

// A graft planned for no order is minded where one waits for just such queens, not where it is for
// that order, or for another day or line.
func TestAGraftForNoOrderIsMinded(t *testing.T) {
	by, p := calendar.Date(2027, 7, 10), &booktest.Pen{}
	p.At("2027-05-01 12:00").Write(
		book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"},
		book.OrderTaken{Order: booktest.Order("o"), Number: "7", Customer: "Mill", Queens: 3, Line: "Rook", By: by},
	)
	v := p.View("2027-05-02 08:00")
	graft := book.BatchPlanned{Day: calendar.Date(2027, 5, 20), Larvae: 20, Queens: 3, Line: "Rook", By: by}
	for _, c := range []struct {
		name   string
		change func(*book.BatchPlanned)
		minded bool
	}{
		{"for no order", func(*book.BatchPlanned) {}, true},
		{"for it", func(b *book.BatchPlanned) { b.Orders = []book.OrderID{booktest.Order("o")} }, false},
		{"another day", func(b *book.BatchPlanned) { b.By++ }, false},
		{"another line", func(b *book.BatchPlanned) { b.Line = "Wren" }, false},
		{"fewer queens", func(b *book.BatchPlanned) { b.Queens = 2 }, false},
	} {
		planned := graft
		c.change(&planned)
		said := fmt.Sprint(rules.Check(v, rules.PlanOf(v, planned)).Warned)
		if strings.Contains(said, "planned for no order, so its queens are nobody's, and order 7 wants 3 by Sat 10 Jul") != c.minded {
			t.Errorf("%s: %s", c.name, said)
		}
	}
}
