package review_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/review"
)

// fed is [celled] seen with six sides of bees and some stores on 23 May, reviewed later.
func fed(t *testing.T, stores float64, at string) (*review.Review, review.Nuc) {
	p := celled(t)
	p.At("2027-05-23 17:00").Write(book.Looked{Nuc: a1, Sides: book.Said(6), Stores: book.Said(stores)})
	j := judged(p, at)
	r := review.Of(j, handOf(0), review.Usual(j.Course().View()))
	return r, only(t, r)
}

// sumOf is the part of a way's worth whose words hold some words.
func sumOf(r *review.Review, w review.Way, words string) (sum review.Sum, ok bool) {
	for _, s := range r.Why(w) {
		if strings.Contains(s.Words, words) {
			return s, true
		}
	}
	return sum, false
}

func wayOf(t *testing.T, r *review.Review, n review.Nuc, k review.Kind) review.Way {
	t.Helper()
	for _, w := range n.Ways {
		if w.Kind == k {
			return w
		}
	}
	t.Fatalf("no such way: %s", told(r, n))
	return review.Way{}
}

// TestHowManyStarve, by hand: of nucs three days without food half are lost, of those that
// are so for two days two thirds of the half, for one a third, and of none whose food lasts until somebody
// comes, on 1 June. Past the last look it is the day of the review. Where it is weak
// besides, seven of ten are left of the half. Feeding loses none for want of food.
func TestHowManyStarve(t *testing.T) {
	for _, c := range []struct {
		stores        float64
		at, out, lost string
	}{
		{0.25, "2027-05-24 18:00", "it lasts until Sat 29 May, and is not light yet", ""},
		{0.25, "2027-05-25 18:00", "Sat 29 May: three days until 1 June", "without food until somebody comes again: 50 of 100"},
		{0.3, "2027-05-27 18:00", "Mon 31 May: one day until 1 June", "without food until somebody comes again: 17 of 100"},
		{0.25, "2027-05-30 18:00", "Sun 30 May: two days until 1 June", "without food until somebody comes again: 33 of 100"},
		{0.25, "2027-06-05 18:00", "Sun 30 May: a month until the day of the review", "weak: 65 of 100"},
		{0.4, "2027-06-05 18:00", "a few days from then: weeks until the day of the review", "weak: 65 of 100"},
	} {
		r, n := fed(t, c.stores, c.at)
		lost, any := sumOf(r, n.Ways[0], "such nucs are lost")
		if any != (c.lost != "") || !strings.HasPrefix(lost.Words, c.lost) {
			t.Errorf("%s, food out on %s: %q, want %q", c.at, c.out, lost.Words, c.lost)
		}
		if !any || strings.HasPrefix(c.lost, "weak") {
			continue
		}
		if s, lost := sumOf(r, wayOf(t, r, n, review.Feed), "such nucs are lost"); lost {
			t.Errorf("%s, fed: %s", c.at, s.Words)
		}
	}
}

// TestACupOfBeesIsACupMore: with a cup added a weak nuc is lost no more for want of bees,
// and what its bees are worth is reckoned of one cup more.
func TestACupOfBeesIsACupMore(t *testing.T) {
	r, n := fed(t, 3, "2027-06-05 18:00")
	cups := func(w review.Way) (cups float64, sum review.Sum) {
		sum, ok := sumOf(r, w, "its bees, ")
		if _, err := fmt.Sscanf(sum.Words, "its bees, %f cups", &cups); !ok || err != nil {
			t.Fatalf("%s: %v, %v", r.Title(w), r.Why(w), err)
		}
		return cups, sum
	}
	leave, add := n.Ways[0], wayOf(t, r, n, review.AddBees)
	had, left := cups(leave)
	has, added := cups(add)
	if math.Abs(has-had-1) > 1e-9 {
		t.Errorf("%g cups, with one added %g", had, has)
	}
	// Of the cup as much is kept as of the others, said to a tenth of a cup, and it is worth
	// no more than its price.
	if more, most := added.Queens-left.Queens, (practice.Numbers{}).Get(practice.PriceCup); more > most || math.Abs(more-left.Queens/had) > 0.01 {
		t.Errorf("a cup more is worth %.3f queens more, its price is %.3f", more, most)
	}
	if _, lost := sumOf(r, leave, "weak: 30 of 100"); !lost {
		t.Errorf("left: %v", r.Why(leave))
	}
	if _, lost := sumOf(r, add, "such nucs are lost"); lost {
		t.Errorf("with bees: %v", r.Why(add))
	}
}
