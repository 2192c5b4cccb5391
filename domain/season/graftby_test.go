package season_test

import (
	"fmt"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// The twelve nucs of a yard wait for another graft. The sheet of the orders names the day by which to graft
// for an order, the days in hand and the last, and that no nuc is free for it; the search names the
// same days, and the wish says of the first of them that no nuc is free.
func TestOneDayByWhichToGraft(t *testing.T) {
	by := day(t, "2027-06-20")
	pen := world{nucs: 12, starters: 2, finishers: 4}.pen().Write(
		book.BatchPlanned{Batch: booktest.Batch("1"), Day: by - 45, Larvae: 20, Nucs: 12, Yard: booktest.Yard("home")},
		book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 3, By: by})
	p := plannerOf(pen)
	sheet := handover.New(p)
	o := sheet.Orders[0]
	at := o.GraftBy
	if wish := p.Possible(plan.Wish{Queens: 3, By: by}); at.Day != wish.Full.Day || at.Last-at.Day != 2 || at.Nucs != 0 || at.Taken != 12 {
		t.Fatalf("%+v; the wish finds no nuc on %s", at, wish.Full.Day)
	}
	said := at.Day.Short() + " (2 days in hand, the last is " + at.Last.Short() + ")"
	if got := at.Said(calendar.Day.Short); got != said {
		t.Errorf("%q, want %q", got, said)
	}
	if got := p.TooFew(at); got != "no nuc is free for it: then other grafts have all 12 in Home" {
		t.Error(got)
	}
	f := season.Search(p, season.Wanted{Promises: season.Promises(p, sheet, 0)}, nil)
	if len(f.Short) != 1 || !strings.Contains(f.Short[0].Why, "more nucs a graft of "+said+" would do") {
		t.Errorf("want %q in %+v", said, f.Short)
	}
	free := plannerOf(world{nucs: 2, starters: 2, finishers: 4}.pen().Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 3, By: by}))
	if got := free.TooFew(handover.New(free).Orders[0].GraftBy); got != "2 nucs are free for it in Home: for 2 of 3 at most" {
		t.Error(got)
	}
}

// Twelve nucs are free for six queens: more than enough, were every one to give one. That they are there no more
// surely than a wish for them in these nucs says is told beside the day; of many more nucs nothing is.
func TestEnoughNucsAreNotAlwaysSure(t *testing.T) {
	by := day(t, "2027-06-20")
	ordered := func(nucs int) *plan.Planner {
		return plannerOf(world{nucs: nucs}.pen().Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 6, By: by}))
	}
	p := ordered(12)
	at := handover.New(p).Orders[0].GraftBy
	wish := p.Answer(plan.Wish{Queens: 6, By: by, Graft: at.Day, Larvae: 36})
	if want := "12 nucs are free for it in Home: enough for 6 with " + plan.OfHundred(wish.Chance) + " at most"; p.TooFew(at) != want || !plan.Unsure(wish.Chance, 0.9) {
		t.Errorf("%q, want %q", p.TooFew(at), want)
	}
	if many := ordered(60); many.TooFew(handover.New(many).Orders[0].GraftBy) != "" {
		t.Error(many.TooFew(handover.New(many).Orders[0].GraftBy))
	}
}

// Queens who stand in nucs are there a week after the day of their order, for which no graft is in time: the
// search names the day by which they are that the sheet of the orders tells the customer.
func TestTheSearchNamesTheDayOfTheHandOver(t *testing.T) {
	pen, b := world{nucs: 12, starters: 2, finishers: 4}.pen(), booktest.Batch("1")
	pen.Write(book.Grafted{Batch: b, Number: 1, Larvae: 24})
	for i := range 12 {
		pen.At("2027-03-11 12:00").Write(book.CellGiven{Nuc: booktest.Nuc(fmt.Sprint(i)), Batch: b})
	}
	pen.Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 3, By: day(t, "2027-04-05")})
	p := plannerOf(pen)
	sheet := handover.New(p)
	o := sheet.Orders[0]
	if o.Stand() != handover.RingLater {
		t.Fatalf("%+v", o)
	}
	f := season.Search(p, season.Wanted{Promises: season.Promises(p, sheet, 0)}, nil)
	if len(f.Short) != 1 || f.Short[0].Day != o.Next.Day || !strings.Contains(f.Short[0].Why, "all of them by "+o.Next.Day.Short()+", of what stands in nucs") {
		t.Errorf("the sheet says %s, the search: %+v", o.Next.Day, f.Short)
	}
}
