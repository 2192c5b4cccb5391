package review_test

import (
	"math"
	"strings"
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

// TestChosenByHand: a way taken by hand stands in the best use, what it needs is
// taken from the others, and taking what the best use takes changes nothing.
func TestChosenByHand(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := review.Of(rules.Judge(drawn(t).View(asked)), drawHand(t), calendar.Date(2027, time.June, 23))
		i := rapid.IntRange(0, len(r.Nucs)-1).Draw(t, "nuc")
		n := r.Nucs[i]
		as := r.Taking(map[book.NucID]review.Choice{n.NucNamed.Nuc: r.ChoiceOf(n.Ways[r.This.Chosen[i]])})
		if math.Abs(as.This.Worth-r.This.Worth) > 1e-6 {
			t.Fatalf("worth %v, and %v with its own way taken", r.This.Worth, as.This.Worth)
		}
		j := rapid.IntRange(0, len(n.Ways)-1).Draw(t, "way")
		by := r.Taking(map[book.NucID]review.Choice{n.NucNamed.Nuc: r.ChoiceOf(n.Ways[j])})
		if by.This.Chosen[i] != j || !by.Taken(i) || r.Taken(i) {
			t.Fatalf("way %d is taken, %d stands", j, by.This.Chosen[i])
		}
		w := n.Ways[j]
		if r.Hand.Minutes == 0 && !r.Hand.Lacks(w) && !w.Barred && by.This.Worth > r.This.Worth+1e-6 {
			t.Fatalf("worth %v, and %v with another way taken", r.This.Worth, by.This.Worth)
		}
		inHand(t, by, i)
	})
}

// inHand: no more is given than is in hand, but for what was taken by hand.
func inHand(t *rapid.T, r *review.Review, taken int) {
	given := make([]int, len(r.Hand.Wares))
	for i, j := range r.This.Chosen {
		if w := r.Nucs[i].Ways[j]; w.Gives() {
			given[w.Ware-1]++
		}
	}
	for i, w := range r.Hand.Wares {
		short := 0
		if way := r.Nucs[taken].Ways[r.This.Chosen[taken]]; w.Many == 0 && way.Ware == i+1 {
			short = 1
		}
		if given[i] > w.Many+short {
			t.Fatalf("%d of %s are given, %d are in hand", given[i], w.Name, w.Many)
		}
	}
}

// TestCatchingGains: a queen caught is one had, and her nuc may have another.
func TestCatchingGains(t *testing.T) {
	p := pen(t, signs("+", 90))
	p.At("2027-05-13 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 4, Food: 2000})
	p.At("2027-05-14 09:00").Write(book.CellGiven{Nuc: a1, Batch: booktest.Batch("2")})
	p.At("2027-06-04 18:00").Write(book.Looked{Nuc: a1, Eggs: book.SingleEggs, Queen: book.QueenSeen})
	p.At("2027-06-17 18:00").Write(book.Looked{Nuc: a1, Eggs: book.SingleEggs, Brood: book.Said(3), Queen: book.QueenSeen})
	j := judged(p, "2027-06-22 10:00")
	r := review.Of(j, review.InHand(j.Course()), review.Usual(j.Course().View()))
	n := only(t, r)
	catch := -1
	for k, w := range n.Ways {
		if w.Kind == review.Catch {
			catch = k
		}
	}
	if catch < 0 {
		t.Fatalf("she cannot be caught: %+v", n.Ways)
	}
	r = r.Taking(map[book.NucID]review.Choice{n.NucNamed.Nuc: {Kind: review.Catch}})
	w := n.Ways[catch]
	if r.This.Caught != 1 || w.Caught < 0.95 || math.Abs(r.This.Expected-w.Caught-w.Lays) > 1e-9 {
		t.Errorf("caught with %.2f, laying again with %.2f: %v queens, %d caught", w.Caught, w.Lays, r.This.Expected, r.This.Caught)
	}
	if r.This.Expected < r.None.Expected {
		t.Errorf("catching her brings %.2f queens, leaving her %.2f", r.This.Expected, r.None.Expected)
	}
	if all := r.Accept(r.This.Ways()); len(all) != 1 || !strings.HasPrefix(all[0].Why, "the queen is caught") {
		t.Errorf("decided: %+v", all)
	}
}

// TestLeftOver: of three cells and one nuc two are left, to be caged by the hard
// hour of their batch.
func TestLeftOver(t *testing.T) {
	p := pen(t, signs("+", 90))
	p.At("2027-05-16 10:00").Write(book.Grafted{Batch: young, Number: 12, Larvae: 20, LarvaAge: 18}, book.CappedCounted{Batch: young, Capped: 3})
	p.At("2027-05-25 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, Shut: true, Food: 600})
	said := func(at string) string {
		j := judged(p, at)
		r := review.Of(j, review.InHand(j.Course()), review.Usual(j.Course().View()))
		left := r.Left()
		if len(left) != 1 || left[0].Many != 2 || !left[0].By.Equal(j.Course().Clock(young).Hard()) {
			t.Fatalf("left at %s: %+v", at, left)
		}
		return r.LeftWords(left[0])
	}
	if got := said("2027-05-25 19:00"); !strings.HasPrefix(got, "Left: 2 cells of batch 12: cage each by ") || !strings.Contains(got, "others") {
		t.Errorf("in time: %q", got)
	}
	if got := said("2027-05-27 02:00"); !strings.HasPrefix(got, "Left: 2 cells of batch 12: cage each now") {
		t.Errorf("late: %q", got)
	}
}

// TestBeesAreProposed: what a cup of bees would do to a weak nuc is told though
// none is in hand, and none is given.
func TestBeesAreProposed(t *testing.T) {
	p := pen(t, signs("+", 90))
	p.At("2027-04-02 08:00").Write(book.NumberChanged{Number: practice.PriceCup.String(), Value: 0.02})
	p.At("2027-05-13 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 1, Food: 600})
	p.At("2027-05-14 09:00").Write(book.CellGiven{Nuc: a1, Batch: booktest.Batch("2")})
	j := judged(p, "2027-05-20 10:00")
	hand := review.InHand(j.Course())
	r := review.Of(j, hand, review.Usual(j.Course().View()))
	n := only(t, r)
	for _, w := range n.Ways {
		if w.Kind == review.AddBees && (!hand.Lacks(w) || n.Ways[r.This.Chosen[0]].Kind == review.AddBees) {
			t.Error("bees are given of which there are none")
		}
	}
	if more := r.MoreBees(); more.Worth <= 0 || !more.Exact {
		t.Errorf("one more cup would be worth %+v: %+v", more, n.Ways)
	}
}

// TestWorthInMoney: in queens, and in the keeper's own word once a queen has a price.
func TestWorthInMoney(t *testing.T) {
	p := pen(t, signs("+", 90))
	said := func() string {
		j := judged(p, "2027-05-26 10:00")
		return review.Of(j, handOf(1), review.Usual(j.Course().View())).Worth(0.4)
	}
	set := func(f book.NumberChanged) string {
		f.Number = practice.PriceQueen.String()
		p.At("2027-05-20 08:00").Write(f)
		return said()
	}
	for _, c := range []struct{ got, want string }{
		{said(), "0.40 queens"},
		{set(book.NumberChanged{Value: 30, In: "crowns"}), "0.40 queens · 12 crowns"},
		{set(book.NumberChanged{Value: 20}), "0.40 queens · 8.00 crowns"},
		{set(book.NumberChanged{Value: 30, In: "€"}), "0.40 queens · 12 €"},
	} {
		if c.got != c.want {
			t.Errorf("said %q, want %q", c.got, c.want)
		}
	}
}
