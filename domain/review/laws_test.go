package review_test

import (
	"fmt"
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/review"
	"lidmark/domain/rules"
)

var ripe = booktest.Batch("3")

// drawn is a small book of nucs in many conditions, asked on 26 May.
func drawn(t *rapid.T) *booktest.Pen {
	p := &booktest.Pen{Zone: time.UTC}
	p.At("2027-04-01 08:00").Write(book.YardDescribed{Yard: yard, Name: "Quillbank", Home: true, Zone: "UTC"},
		book.StandSet{Stand: booktest.Stand("A"), Yard: yard, Letter: "A", Places: 9})
	p.At("2027-05-05 18:00").Write(book.Grafted{Batch: booktest.Batch("2"), Number: 2, Larvae: 20, LarvaAge: 18})
	p.At("2027-05-15 18:00").Write(book.Grafted{Batch: ripe, Number: 3, Larvae: 20, LarvaAge: 18})
	for i := range rapid.IntRange(1, 5).Draw(t, "nucs") {
		n := booktest.Nuc(fmt.Sprint("A", i+1))
		p.At("2027-04-02 08:00").Write(book.NucNamed{Nuc: n, Name: fmt.Sprint("A", i+1), Sides: 6, Side: 2}, book.NucPlaced{Nuc: n, Yard: yard, Stand: booktest.Stand("A"), Place: i + 1})
		life(t, p, n)
	}
	return p
}

// life writes what was done with a nuc.
func life(t *rapid.T, p *booktest.Pen, n book.NucID) {
	open := float64(rapid.IntRange(0, 1).Draw(t, "open brood"))
	p.At("2027-05-13 18:00").Write(book.NucMadeUp{Nuc: n, Cups: float64(rapid.IntRange(1, 4).Draw(t, "cups")), Open: open, Food: 400})
	if rapid.Bool().Draw(t, "celled") {
		p.At("2027-05-15 09:00").Write(book.CellGiven{Nuc: n, Batch: booktest.Batch("2")})
	}
	switch rapid.IntRange(0, 5).Draw(t, "look") {
	case 0:
		p.At("2027-05-25 18:00").Write(book.Looked{Nuc: n, Eggs: book.NoEggs})
	case 1:
		p.At("2027-05-25 18:00").Write(book.Looked{Nuc: n, Eggs: book.SingleEggs})
	case 2:
		p.At("2027-05-25 18:00").Write(book.Looked{Nuc: n, Eggs: book.ManyEggs})
	case 3:
		p.At("2027-05-25 18:00").Write(book.Looked{Nuc: n, DroneBrood: true})
	case 4:
		p.At("2027-05-25 18:00").Write(book.Looked{Nuc: n, Queen: book.NoneSeen, Eggs: book.NoEggs, Sides: book.Said(1)})
	}
}

func drawHand(t *rapid.T) review.Hand {
	h := review.Hand{Cups: rapid.IntRange(0, 4).Draw(t, "cups in hand")}
	h.Wares = []review.Ware{
		{Batch: ripe, Name: "cell of batch 3", Many: rapid.IntRange(0, 3).Draw(t, "cells")},
		{Virgin: true, Name: "virgin, 2 days old", Age: 2, Many: rapid.IntRange(0, 2).Draw(t, "virgins")},
	}
	if rapid.Bool().Draw(t, "limited") {
		h.Minutes = float64(rapid.IntRange(1, 20).Draw(t, "minutes"))
	}
	return h
}

const asked = "2027-05-26 08:00"

// TestBestUseAsTried: the best use is that of trying every choice there is.
func TestBestUseAsTried(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawn(t)
		j := rules.Judge(p.View(asked))
		r := review.Of(j, drawHand(t), calendar.Date(2027, time.June, 23))
		want := tried(r)
		if math.Abs(r.This.Worth-want) > 1e-6 {
			t.Fatalf("the best use is worth %v, trying finds %v", r.This.Worth, want)
		}
		if !r.This.Exact {
			t.Fatalf("not proven: %+v", r.This)
		}
	})
}

// tried is the worth of the best choice of all.
func tried(r *review.Review) float64 {
	left := make([]int, len(r.Hand.Wares))
	for i, w := range r.Hand.Wares {
		left[i] = w.Many
	}
	cups, minutes := r.Hand.Cups, r.Hand.Minutes
	if minutes == 0 {
		minutes = math.Inf(1)
	}
	at := map[book.NucID]int{}
	for i, n := range r.Nucs {
		at[n.NucNamed.Nuc] = i
	}
	taken := make([]bool, len(r.Nucs)) // by a union
	acts := make([]bool, len(r.Nucs))
	best := math.Inf(-1)
	var try func(i int, worth float64)
	try = func(i int, worth float64) {
		if i == len(r.Nucs) {
			best = max(best, worth)
			return
		}
		for j, w := range r.Nucs[i].Ways {
			with := at[w.With]
			switch {
			case w.Barred, taken[i] && j > 0, w.Minutes > minutes+1e-9, w.Gives() && left[w.Ware-1] == 0, w.Kind == review.AddBees && cups == 0:
				continue
			case w.Kind == review.Unite && (taken[with] || acts[with]):
				continue
			}
			minutes -= w.Minutes
			acts[i] = j > 0
			if w.Gives() {
				left[w.Ware-1]--
			}
			if w.Kind == review.AddBees {
				cups--
			}
			if w.Kind == review.Unite {
				taken[with] = true
			}
			try(i+1, worth+w.Worth)
			if w.Kind == review.Unite {
				taken[with] = false
			}
			if w.Kind == review.AddBees {
				cups++
			}
			if w.Gives() {
				left[w.Ware-1]++
			}
			acts[i] = false
			minutes += w.Minutes
		}
	}
	try(0, 0)
	return best
}

// TestLaws: chances are chances, the sums make up the worth, the list is in
// order, and the best use is no worse than any other.
func TestLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		j := rules.Judge(drawn(t).View(asked))
		r := review.Of(j, drawHand(t), calendar.Date(2027, time.June, 23))
		for i, n := range r.Nucs {
			if n.Loses < 0 || n.Ways[n.Best].Worth < n.Ways[0].Worth {
				t.Fatalf("%s loses %v", n.Name, n.Loses)
			}
			if i > 0 && r.Nucs[i-1].Decide == n.Decide && r.Nucs[i-1].Loses < n.Loses {
				t.Fatalf("%s stands behind one that loses less", n.Name)
			}
			if best := n.Ways[n.Best]; best.Gives() && r.Hand.Wares[best.Ware-1].Many == 0 {
				t.Fatalf("the best for %s is not in hand: %s", n.Name, r.Title(best))
			}
			for _, w := range n.Ways {
				lawful(t, r, w)
			}
		}
		for _, u := range []review.Use{r.Order, r.None} {
			if u.Worth > r.This.Worth+1e-6 {
				t.Fatalf("the best use is worth %v, another %v", r.This.Worth, u.Worth)
			}
		}
		if u := r.This; u.Low > u.Expected+1 || u.High < u.Expected-1 || u.High > float64(u.Over+u.Caught) {
			t.Fatalf("%v laying queens, %v to %v of %d", u.Expected, u.Low, u.High, u.Over)
		}
	})
}

func lawful(t *rapid.T, r *review.Review, w review.Way) {
	for _, p := range []float64{w.Lays, w.Ready, w.Given} {
		if !(p >= 0 && p <= 1+1e-9) {
			t.Fatalf("%s: a chance of %v", r.Title(w), p)
		}
	}
	if w.Ready > w.Lays+1e-9 {
		t.Fatalf("%s: %v ready of %v laying", r.Title(w), w.Ready, w.Lays)
	}
	var sum float64
	for _, s := range r.Why(w) {
		sum += s.Queens
		if s.Words == "" || len(s.Used) == 0 {
			t.Fatalf("%s: a sum without words or numbers: %+v", r.Title(w), s)
		}
	}
	if math.Abs(sum-w.Worth) > 1e-9 {
		t.Fatalf("%s: its sums make %v, it is worth %v", r.Title(w), sum, w.Worth)
	}
}

// TestMoreInHandIsNeverWorse, nor are more minutes; and what a ware costs takes
// off what the ways that give it are worth.
func TestMoreInHandIsNeverWorse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawn(t)
		j := rules.Judge(p.View(asked))
		hand, by := drawHand(t), calendar.Date(2027, time.June, 23)
		r := review.Of(j, hand, by)
		for i, more := range []review.Hand{hand.Of(false, hand.Cells()+1), hand.Of(true, hand.Virgins()+1)} {
			got := review.Of(j, more, by).This.Worth
			if got < r.This.Worth-1e-6 {
				t.Fatalf("worth %v with %+v, %v with more", r.This.Worth, hand, got)
			}
			if told := r.More(i); !told.Exact || math.Abs(got-r.This.Worth-told.Worth) > 1e-6 {
				t.Fatalf("one more is told to be worth %v, it brings %v", told, got-r.This.Worth)
			}
		}
		bees := hand
		bees.Cups++
		if other := review.Of(j, bees, by); other.This.Over != r.This.Over {
			t.Fatalf("counted over %d nucs with %d cups, over %d with one more", r.This.Over, hand.Cups, other.This.Over)
		}
		hand.Minutes = 0
		if got := review.Of(j, hand, by).This.Worth; got < r.This.Worth-1e-6 {
			t.Fatalf("worth %v in %v minutes, %v without limit", r.This.Worth, r.Hand.Minutes, got)
		}
		hand.Minutes = r.Hand.Minutes
		p.At("2027-05-26 07:00").Write(book.NumberChanged{Number: practice.PriceCell.String(), Value: 0.5})
		dear := review.Of(rules.Judge(p.View(asked)), hand, by)
		if dear.This.Worth > r.This.Worth+1e-6 {
			t.Fatalf("worth %v, and %v when cells are dearer", r.This.Worth, dear.This.Worth)
		}
	})
}

// TestReviewAllocates: nucs of one history are reckoned once, so a review costs
// some twenty allocations a nuc, not those of its ways.
func TestReviewAllocates(t *testing.T) {
	const nucs = 2_000
	v := book.NewSeason(booktest.Zones, booktest.Big(nucs, 20)).At(booktest.BigNow)
	j := rules.Judge(v)
	got := testing.AllocsPerRun(2, func() { review.Of(j, handOf(40), review.Usual(v)) })
	if got > 30*nucs {
		t.Errorf("%.0f allocations to review %d nucs", got, nucs)
	}
}
