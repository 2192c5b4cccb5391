package review_test

import (
	"math"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/review"
	"lidmark/domain/rules"
)

// TestWorkedByHand: where no queen is lost on the way, of a hundred cells given
// to a nuc without queen and brood 80 are taken in and lay in time. Bees are
// worth nothing here, so a cell is worth 0.80 queens less 0.15 for itself and
// 0.01 for a minute: 0.64. The 20 who refuse it are found four days later and get
// another, worth 0.64 less four days of 0.0222: 0.1102 more. Half of that minute's
// price more costs 0.005 and a fifth of it again.
func TestWorkedByHand(t *testing.T) {
	p := pen(t, signs("+", 90))
	set := func(k practice.Key, v float64) {
		p.At("2027-04-02 08:00").Write(book.NumberChanged{Number: k.String(), Value: v})
	}
	set(practice.VirginDeaths, 0)
	set(practice.NeverFlies, 0)
	set(practice.LostPerHour, 0)
	set(practice.DroneLayerTurns, 0)
	set(practice.LayingEnds, 0)
	set(practice.MatedPerHour, 1)
	set(practice.PriceCup, 0)
	p.At("2027-05-16 10:00").Write(book.Grafted{Batch: young, Number: 12, Larvae: 20, LarvaAge: 18})
	p.At("2027-05-25 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, Shut: true, Food: 600})
	j := judged(p, "2027-05-26 10:00")
	by := calendar.Date(2027, time.July, 5)
	n := only(t, review.Of(j, handOf(1), by))
	best := n.Ways[n.Best]
	if best.Kind != review.GiveCell || math.Abs(best.Lays-0.8) > 1e-4 || math.Abs(best.Worth-0.75024) > 1e-4 {
		t.Errorf("lays %.5f, worth %.5f: want 0.8 and 0.7502", best.Lays, best.Worth)
	}
	if left := n.Ways[0]; left.Lays != 0 || left.Worth != 0 {
		t.Errorf("left it lays with %v and is worth %v", left.Lays, left.Worth)
	}
	set(practice.WorthMinute, 0.015)
	r := review.Of(judged(p, "2027-05-26 10:00"), handOf(1), by)
	if dearer := r.Nucs[0].Ways[r.Nucs[0].Best]; math.Abs(best.Worth-dearer.Worth-0.006) > 1e-6 {
		t.Errorf("a minute dearer by 0.005 makes it worth %.5f", dearer.Worth)
	}
}

// TestAccepted: what is accepted is decided, is no more in hand, and another
// review leaves it alone.
func TestAccepted(t *testing.T) {
	p := pen(t, signs("+", 90))
	p.At("2027-05-16 10:00").Write(book.Grafted{Batch: young, Number: 12, Larvae: 20, LarvaAge: 18}, book.CappedCounted{Batch: young, Capped: 3})
	p.At("2027-05-25 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, Shut: true, Food: 600})
	j := judged(p, "2027-05-26 10:00")
	hand := review.InHand(j.Course())
	if hand.Cells() != 3 {
		t.Fatalf("%d cells in hand, want 3: %+v", hand.Cells(), hand)
	}
	r := review.Of(j, hand, review.Usual(j.Course().View()))
	all := r.Accept(r.This.Ways())
	if len(all) != 1 || all[0].What != book.PlanGiveCell || all[0].Batch != young || all[0].Day != r.Day {
		t.Fatalf("decided: %+v", all)
	}
	p.At("2027-05-26 10:05").Write(all[0])
	j = judged(p, "2027-05-26 10:10")
	if hand = review.InHand(j.Course()); hand.Cells() != 2 {
		t.Errorf("%d cells in hand, want 2", hand.Cells())
	}
	n := review.Of(j, hand, r.By).Nucs[0]
	if n.Decide || !n.Decided {
		t.Errorf("asked again for a decision: %+v", n)
	}
	tasks := 0
	for _, s := range rules.Day(j.Course().View(), r.Day).Stops {
		for _, task := range s.Tasks {
			if task.Act == rules.ActGiveCell && task.Minutes == 1 {
				tasks++
			}
		}
	}
	if tasks != 1 {
		t.Errorf("%d tasks of giving the cell, want 1", tasks)
	}
}
