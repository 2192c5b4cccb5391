package plan_test

import (
	"math/rand/v2"
	"testing"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// Rhodes & Denney 2003, quoted by another: of queens caught at 28 d 60 % were alive
// after 15 weeks, at 35 d 72.5 %. For 7 to 21 d no figure was found; the numbers are
// the keeper's, and marked so.
func TestLives(t *testing.T) {
	var n practice.Numbers
	near(t, "28 d", plan.Lives(28, n), 0.60, 0)
	near(t, "35 d", plan.Lives(35, n), 0.725, 0)
	near(t, "halfway", plan.Lives(31, n)/2+plan.Lives(32, n)/2, (0.60+0.725)/2, 1e-12)
	near(t, "beyond", plan.Lives(60, n), 0.725, 0)
	near(t, "under a week", plan.Lives(3, n), plan.Lives(7, n), 0)
	for age := 1; age < 40; age++ {
		if plan.Lives(age, n) < plan.Lives(age-1, n) {
			t.Errorf("survival falls at %d d", age)
		}
	}
	for _, k := range []practice.Key{practice.LivesCaughtAt7, practice.LivesCaughtAt14, practice.LivesCaughtAt21} {
		if practice.Of(k).Confidence != practice.CommonPractice {
			t.Errorf("%s is told as more than practice", k)
		}
	}
}

// By hand, all first eggs long laid at 28 d: emergence two days after the cell, catch
// on day 30, the next cell the same day. In 61 days that is two catches.
func TestATurnByHand(t *testing.T) {
	r := only(plan.LayingOfAccepted, fixed(0.7))
	first := calendar.Day(20000)
	y := r.Yield(plan.Turn{Catch: 28, First: first, Last: first + 61}, practice.Numbers{})
	near(t, "queens", y.Queens, 1.4, 1e-3)
	near(t, "living", y.Living, 1.4*0.60, 1e-3)
	near(t, "cells", y.Cells, 3, 1e-3)
	if !y.Known {
		t.Error("a figure was published for 28 d")
	}
	late := r.Yield(plan.Turn{Catch: 28, Gap: 1, First: first, Last: first + 60}, practice.Numbers{})
	near(t, "a day's gap costs the second catch, but for those given a cell again when a virgin is late", late.Queens, 0.7+0.3*0.7, 1e-3)
	if none := r.Yield(plan.Turn{Catch: 28, First: first, Last: first - 1}, practice.Numbers{}); none.Queens != 0 || none.Cells != 0 {
		t.Errorf("a season of no days gives %+v", none)
	}
}

// By hand: visits every 23 days. The cell is given two days before she emerges, so at the first
// visit she is 21 d old: the day itself on which a virgin without eggs is late. Whoever lays is
// caught, and every nuc is given its next cell; there is no third visit in 45 days.
func TestLateOnTheVeryDay(t *testing.T) {
	var n practice.Numbers
	if late := n.Days(practice.VirginLate); late != 21 {
		t.Fatalf("a virgin is late at %d d, the hand reckoned with 21", late)
	}
	y := only(plan.LayingOfAccepted, fixed(0.7)).Yield(plan.Turn{Catch: 14, Drive: 23, First: 20000, Last: 20045}, n)
	near(t, "cells", y.Cells, 2, 1e-12)
}

// Earlier catching gives more queens, of which fewer live; in the weeks of a season
// some age gives most that live.
func TestEarlierCatchingGivesMoreAndWorse(t *testing.T) {
	first := calendar.Day(20000)
	all := plan.DefaultRates(practice.Numbers{}).Yields(plan.Turn{Drive: 7, First: first, Last: first + 120}, practice.Numbers{})
	if len(all) != 4 || all[0].Catch != 14 || all[3].Catch != 35 {
		t.Fatalf("%+v", all)
	}
	for i, y := range all {
		if i == 0 {
			continue
		}
		if y.Queens > all[i-1].Queens || y.Living/y.Queens < all[i-1].Living/all[i-1].Queens {
			t.Errorf("caught at %d d: %.2f queens, %.2f living; earlier %.2f, %.2f", y.Catch, y.Queens, y.Living, all[i-1].Queens, all[i-1].Living)
		}
	}
	if all[0].Known || !all[2].Known {
		t.Error("published are 28 and 35 d, not 14")
	}
}

// A nuc followed day by day with chance alone gives as much.
func TestATurnBySimulation(t *testing.T) {
	var n practice.Numbers
	r := only(plan.LayingOfAccepted, fixed(0.7))
	turn := plan.Turn{Catch: 14, Gap: 3, Drive: 5, First: 20000, Last: 20100}
	y := r.Yield(turn, n)
	chance := rand.New(rand.NewPCG(3, 5))
	const trials = 20000
	var queens, cells float64
	for range trials {
		day, given := 0, true
		for given {
			given = false
			cells++
			half, nine := n.Get(practice.FirstEggsHalfBy), n.Get(practice.FirstEggsNineInTenBy)
			eggs := half - 0.5 + chance.NormFloat64()*(nine-half)/1.2816
			lays := chance.Float64() < 0.7
			for visit := day + 5; visit <= 100; visit += 5 {
				age := float64(visit - day - 2)
				caught := lays && age >= 14 && eggs <= age
				if caught {
					queens++
				}
				if caught || age >= 21 {
					day = visit + 5 // three days on, at the next visit
					given = day <= 100
					break
				}
			}
		}
	}
	near(t, "queens", y.Queens, queens/trials, 0.03)
	near(t, "cells", y.Cells, cells/trials, 0.03)
}

// What nobody changed is published or common practice; what the keeper changed is his own, and not the ages beside it.
func TestANumberIsTheKeepersWhereHeChangedIt(t *testing.T) {
	n, err := practice.Numbers{}.With(practice.LivesCaughtAt28, 0.5)
	if err != nil {
		t.Fatal(err)
	}
	for _, y := range (plan.Rates{}).Yields(plan.Turn{Last: 1}, n) {
		want := map[int]string{14: "common practice, none is published", 21: "common practice, none is published", 28: "your number", 35: "published"}[y.Catch]
		if got := y.Basis(n); got != want {
			t.Errorf("caught at %d d: %q, want %q", y.Catch, got, want)
		}
	}
}
