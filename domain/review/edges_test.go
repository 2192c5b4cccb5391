package review_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/review"
	"lidmark/domain/rules"
)

// pair is two nucs side by side: A1 without a queen, B1 with a laying one.
func pair(t *testing.T) *booktest.Pen {
	p := pen(t, signs("+", 90))
	b1 := booktest.Nuc("B1")
	p.At("2027-04-01 08:10").Write(book.NucNamed{Nuc: b1, Name: "B1", Sides: 6, Side: 2}, book.NucPlaced{Nuc: b1, Yard: yard})
	p.At("2027-05-16 10:00").Write(book.Grafted{Batch: young, Number: 12, Larvae: 20, LarvaAge: 18}, book.CappedCounted{Batch: young, Capped: 3})
	p.At("2027-05-22 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, Shut: true, Food: 900}, book.NucMadeUp{Nuc: b1, Cups: 3, Food: 900})
	p.At("2027-05-25 09:00").Write(book.Looked{Nuc: b1, Eggs: book.SingleEggs, Queen: book.QueenSeen, Sides: book.Said(5)})
	return p
}

func reviewed(p *booktest.Pen, at string, cups int) *review.Review {
	j := judged(p, at)
	hand := review.InHand(j.Course())
	hand.Cups = cups
	return review.Of(j, hand, review.Usual(j.Course().View()))
}

func place(t *testing.T, r *review.Review, name string) int {
	for i, n := range r.Nucs {
		if n.Name == name {
			return i
		}
	}
	t.Fatalf("%s is not under review", name)
	return -1
}

// TestAUnionByHandLeavesTheNeighbourAlone, and one with another neighbour is not known.
func TestAUnionByHandLeavesTheNeighbourAlone(t *testing.T) {
	p := pair(t)
	p.At("2027-05-25 09:05").Write(book.Looked{Nuc: booktest.Nuc("B1"), Stores: book.Said(0)})
	r := reviewed(p, "2027-05-26 10:00", 0)
	a, b := place(t, r, "A1"), place(t, r, "B1")
	if r.This.Chosen[b] == 0 {
		t.Fatalf("B1 is left of itself: %s", told(r, r.Nucs[b]))
	}
	with := review.Choice{Kind: review.Unite, With: r.Nucs[b].NucNamed.Nuc}
	taken := r.Taking(map[book.NucID]review.Choice{a1: with})
	if !taken.Taken(a) || taken.This.Chosen[b] != 0 {
		t.Errorf("united by hand, B1 gets: %s", r.Title(r.Nucs[b].Ways[taken.This.Chosen[b]]))
	}
	with.With = a1
	if r.Taking(map[book.NucID]review.Choice{a1: with}).Taken(a) {
		t.Error("a union with itself is taken")
	}
}

// TestNoUnionIsProposedThatTheRulesRefuse: bees without a queen may join a neighbour who
// lays, a drone layer may not before she is taken out.
func TestNoUnionIsProposedThatTheRulesRefuse(t *testing.T) {
	p := pair(t)
	unions := func(at string) (with []string) {
		j := judged(p, at)
		r := review.Of(j, review.InHand(j.Course()), review.Usual(j.Course().View()))
		for _, w := range r.Nucs[place(t, r, "A1")].Ways {
			if w.Kind != review.Unite {
				continue
			}
			with = append(with, j.Course().View().Nuc(w.With).Name)
			if v := j.Check(rules.Unite{Nuc: a1, With: w.With.Subject()}); !v.OK() {
				t.Errorf("%s: united with %s, refused: %s", at, with, v.Refused[0].Why)
			}
		}
		return with
	}
	if got := unions("2027-05-26 10:00"); len(got) != 1 || got[0] != "B1" {
		t.Errorf("without a queen it is united with %v, want B1", got)
	}
	p.At("2027-06-20 09:00").Write(book.Looked{Nuc: booktest.Nuc("B1"), Eggs: book.SingleEggs, Queen: book.QueenSeen, Brood: book.Said(3)}, book.Looked{Nuc: a1, DroneBrood: true, Eggs: book.SingleEggs, Queen: book.QueenSeen})
	if got := unions("2027-06-20 10:00"); len(got) != 0 {
		t.Errorf("with a drone layer it is united with %v", got)
	}
}

// TestADecidedNucIsNotChosenAnew by a choice that stands from before.
func TestADecidedNucIsNotChosenAnew(t *testing.T) {
	p := pair(t)
	p.At("2027-05-26 09:00").Write(book.Planned{Nuc: a1, What: book.PlanGiveCell, Batch: young, Day: reviewed(p, "2027-05-26 10:00", 0).Day})
	r := reviewed(p, "2027-05-26 10:00", 0)
	if a := place(t, r, "A1"); r.Taking(map[book.NucID]review.Choice{a1: {Kind: review.Leave}}).Taken(a) {
		t.Error("what is decided is taken by hand")
	}
}

// TestALookTakenByHandIsCounted: where no cell is in hand it is one too few.
func TestALookTakenByHandIsCounted(t *testing.T) {
	p := celled(t)
	j := judged(p, "2027-05-30 18:00")
	r := review.Of(j, review.Hand{Wares: []review.Ware{{Name: review.AnyCell}}}, review.Usual(j.Course().View()))
	look := review.Choice{Kind: review.LookFirst, Ware: review.AnyCell}
	if r = r.Taking(map[book.NucID]review.Choice{a1: look}); !r.Taken(0) {
		t.Fatalf("no such look: %s", told(r, r.Nucs[0]))
	}
	if left := r.Left(); len(left) != 1 || left[0].Many != -1 || !strings.HasPrefix(r.LeftWords(left[0]), "Too few: 1 ripe cell") {
		t.Errorf("left: %+v", left)
	}
}

// TestNoCellIsReservedPastItsHour: a decision to take a queen out today reserves a cell for
// tomorrow only if its hard hour lets it be kept until then.
func TestNoCellIsReservedPastItsHour(t *testing.T) {
	p := pair(t)
	day := reviewed(p, "2027-05-25 10:00", 0).Day
	p.At("2027-05-25 09:30").Write(book.Planned{Nuc: booktest.Nuc("B1"), What: book.PlanTakeOut, Batch: young, Day: day})
	for at, want := range map[string]int{"2027-05-25 10:00": 2, "2027-05-26 10:00": 3} {
		j := judged(p, at)
		if hard := j.Course().Clock(young).Hard().In(p.Zone).Format("02 15"); hard != "26 20" {
			t.Fatalf("the hard hour is %s", hard)
		}
		if got := review.InHand(j.Course()).Cells(); got != want {
			t.Errorf("%s: %d cells in hand, want %d", at, got, want)
		}
	}
}

// droneLayer is a nuc whose queen is to be taken out, and a batch with a hard hour on 26
// May at 20:36.
func droneLayer(t *testing.T, sides float64) *booktest.Pen {
	p := pair(t)
	p.At("2027-05-25 18:00").Write(book.Looked{Nuc: a1, DroneBrood: true, Queen: book.QueenSeen, Sides: book.Said(sides)})
	return p
}

// takesOut is the way that takes her out and gives a cell the day after.
func takesOut(t *testing.T, r *review.Review) review.Way {
	for _, w := range r.Nucs[place(t, r, "A1")].Ways {
		if w.Kind == review.TakeOut && w.Gives() && !r.Hand.Wares[w.Ware-1].Virgin {
			return w
		}
	}
	t.Fatal("she cannot be taken out")
	return review.Way{}
}

func why(w review.Way) (all string) {
	for _, r := range w.Warned {
		all += r.Why + "\n"
	}
	return all
}

// TestACellIsKeptNoLongerThanItMay: until the hour at which somebody can come again.
func TestACellIsKeptNoLongerThanItMay(t *testing.T) {
	p := droneLayer(t, 6)
	if w := takesOut(t, reviewed(p, "2027-05-25 19:00", 0)); w.Barred {
		t.Errorf("barred a day before the hard hour: %s", why(w))
	}
	w := takesOut(t, reviewed(p, "2027-05-26 08:00", 0))
	if !w.Barred || !strings.Contains(why(w), "its cell may not be kept until Thu 27 May: its hard hour is Wed 26 May 20:36") {
		t.Errorf("on the day of the hard hour: barred %v, %s", w.Barred, why(w))
	}
	p.At("2027-04-01 08:20").Write(book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida", Free: [7]book.FreeHours{time.Friday: {From: 18 * 60, Until: 20 * 60}}})
	if w := takesOut(t, reviewed(p, "2027-05-25 19:00", 0)); !w.Barred {
		t.Error("kept for tomorrow, when nobody can come until Friday")
	}
}

// TestRobbersDelayWhatTakesLong: taking a queen out does not press, whatever is given after.
func TestRobbersDelayWhatTakesLong(t *testing.T) {
	p := droneLayer(t, 6)
	p.At("2027-05-25 18:30").Write(book.Robbed{Nuc: booktest.Nuc("B1")})
	if w := takesOut(t, reviewed(p, "2027-05-25 19:00", 0)); !w.Barred || !strings.Contains(why(w), "robbers are about") {
		t.Errorf("barred %v: %s", w.Barred, why(w))
	}
}

// TestNewBeesAreEnough: a nuc with too few bees that is shaken out and made up anew with
// bees in hand may be given a cell.
func TestNewBeesAreEnough(t *testing.T) {
	p := pen(t, signs("+", 90))
	p.At("2027-04-02 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, Shut: true, Food: 900})
	p.At("2027-05-10 18:00").Write(book.Looked{Nuc: a1, Eggs: book.ManyEggs, Queen: book.NoneSeen, Sides: book.Said(5)})
	p.At("2027-05-16 10:00").Write(book.Grafted{Batch: young, Number: 12, Larvae: 20, LarvaAge: 18}, book.CappedCounted{Batch: young, Capped: 3})
	r := reviewed(p, "2027-05-26 10:00", 6)
	n := only(t, r)
	j := judged(p, "2027-05-26 10:00")
	if s := j.Strength(yard).Of(j.Course().View().Nuc(a1)); !s.TooFew(j.Course().View().Numbers()) || s.WeakThen() {
		t.Fatalf("it has %.0f bees of %.0f, seen as %.0f", s.Bees, s.Need, s.BeesThen)
	}
	anew := false
	for _, w := range n.Ways {
		anew = anew || w.Kind == review.ShakeOut && w.Gives() && !w.Barred
	}
	if !anew {
		t.Error("it cannot be made up anew")
	}
}

// TestDwindledIsWeak: a nuc seen with enough bees and too few by reckoning since counts as
// weak, as one seen so.
func TestDwindledIsWeak(t *testing.T) {
	p := pen(t, signs("+", 90))
	p.At("2027-05-05 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 2, Shut: true, Food: 900})
	p.At("2027-05-08 18:00").Write(book.Looked{Nuc: a1, Queen: book.NoneSeen, Eggs: book.NoEggs, Sides: book.Said(5)})
	for at, want := range map[string]bool{"2027-05-09 10:00": false, "2027-05-24 10:00": true} {
		j := judged(p, at)
		s := j.Strength(yard).Of(j.Course().View().Nuc(a1))
		if s.WeakThen() || s.TooFew(j.Course().View().Numbers()) != want {
			t.Fatalf("%s: %.0f bees of %.0f, seen as %.0f", at, s.Bees, s.Need, s.BeesThen)
		}
		r, weak := reviewed(p, at, 0), false
		for _, w := range only(t, r).Ways {
			for _, s := range r.Why(w) {
				weak = weak || strings.HasPrefix(s.Words, "weak: ")
			}
			if (w.Kind == review.GiveBrood || w.Gives()) && w.Barred != want {
				t.Errorf("%s: %s: barred %v", at, r.Title(w), w.Barred)
			}
		}
		if weak != want {
			t.Errorf("%s: weak %v, want %v", at, weak, want)
		}
	}
}

// TestBeesStayApartOnAStandstill: no union and no shaking out is ever the best, and each
// says why.
func TestBeesStayApartOnAStandstill(t *testing.T) {
	p := pair(t)
	p.At("2027-05-26 08:00").Write(book.DiseaseSuspected{Of: yard.Subject(), What: "foul brood"})
	r := reviewed(p, "2027-05-26 10:00", 0)
	n := r.Nucs[place(t, r, "A1")]
	found := 0
	for _, w := range n.Ways {
		if w.Kind != review.Unite && w.Kind != review.ShakeOut {
			continue
		}
		found++
		if !w.Barred || !strings.Contains(why(w), "suspected") {
			t.Errorf("%s: barred %v, %s", r.Title(w), w.Barred, why(w))
		}
	}
	if found < 2 {
		t.Errorf("%d such ways: %s", found, told(r, n))
	}
}
