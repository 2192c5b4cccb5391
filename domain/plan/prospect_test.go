package plan_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// A queen who was seen is ready when her brood is capped and she is old enough, as surely as those
// who lay are good, and of her line as surely as it is she who lays.
func TestWhenOneWhoWasSeenIsReady(t *testing.T) {
	pen := yardOf(1)
	pen.At("2027-04-09 15:00").Write(book.Grafted{Batch: booktest.Batch("b"), Number: 7, Line: "Rook", Larvae: 20})
	pen.At("2027-04-19 12:00").Write(book.CellGiven{Nuc: booktest.Nuc("0"), Batch: booktest.Batch("b")})
	pen.At("2027-04-24 12:00").Write(book.Looked{Nuc: booktest.Nuc("0"), Queen: book.VirginSeen})
	p := plannerOf(pen, "2027-04-26 08:00")
	nuc, n := p.View().Nuc(booktest.Nuc("0")), practice.Numbers{}
	k, ok := p.Prospect(nuc)
	if !ok || k.Proven || k.Sure <= 0 || k.Sure > 1 {
		t.Fatalf("told %v: %+v", ok, k)
	}
	if born := k.From - calendar.Day(n.Days(practice.LeastAgeAtHandOver)); born != day(t, "2027-04-20") && born != day(t, "2027-04-21") {
		t.Errorf("old enough on %s", k.From)
	}
	if got := k.By(k.From-1, false, false); got != 0 {
		t.Errorf("ready with %v before she is old enough", got)
	}
	eggs := p.Course().Eggs(nuc)
	k.Sure = 0.5
	for d := k.From; d < k.From+20; d++ {
		ready := eggs.By(d-calendar.Day(n.Days(practice.ReadyAfterFirstEgg))) * n.Get(practice.GoodEnough)
		near(t, "ready by "+d.String(), k.By(d, false, false), ready, 1e-9)
		near(t, "and of her line", k.By(d, false, true), ready/2, 1e-9)
		near(t, "laying", k.By(d, true, false), eggs.By(d), 1e-9)
	}
	if k.By(k.From+20, false, false) < 0.3 {
		t.Error("hardly ever ready")
	}
}
