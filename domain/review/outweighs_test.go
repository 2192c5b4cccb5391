package review_test

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/domain/review"
	"lidmark/domain/rules"
)

// dayWorth is [morning] to a keeper to whom a day of a nuc is worth so much.
func dayWorth(t *testing.T, queens float64) *review.Review {
	t.Helper()
	zone, err := time.LoadLocation("Europe/Berlin")
	if err != nil {
		t.Fatal(err)
	}
	day := calendar.Date(2027, time.May, 11)
	p := (&booktest.Pen{Zone: zone}).At("2027-05-11 07:00").Write(book.NumberChanged{Number: "worth_nuc_day", Value: queens})
	j := rules.Judge(book.NewSeason(time.LoadLocation, append(demo.Season(day, zone), p.Entries...)).At(day.At(7, 30, zone)))
	return review.Of(j, review.InHand(j.Course()), review.Usual(j.Course().View()))
}

// titled is the way of a nuc that begins with some words.
func titled(t *testing.T, r *review.Review, n review.Nuc, begins string) review.Way {
	t.Helper()
	for _, w := range n.Ways {
		if strings.HasPrefix(r.Title(w), begins) {
			return w
		}
	}
	t.Fatalf("%s has no way that begins %q: %s", n.Name, begins, told(r, n))
	return review.Way{}
}

// TestTheGreatestGainIsTold: where nobody lays yet a look gains by the cell of the next
// one; to whom a day of a nuc is worth a tenth of a queen it gains by the box that is free
// sooner, and a cell of a batch by a queen that is ready sooner.
func TestTheGreatestGainIsTold(t *testing.T) {
	for _, c := range []struct {
		day           float64
		nuc, way, say string
	}{
		{0.0222, "V2", "Look for a virgin of its own; no cell yet", "a cell at the next look counts 0.50 more"},
		{0.1, "V2", "Look for a virgin of its own; no cell yet", "its box free sooner counts 0.24 more"},
		{0.1, "T3", "Give a cell of batch 5", "ready sooner counts 0.18 more"},
	} {
		r := dayWorth(t, c.day)
		nucs, _ := said(r)
		n := nucs[c.nuc]
		if got := r.Outweighs(n, titled(t, r, n, c.way)); got != c.say {
			t.Errorf("a day is worth %g, %s: %q, want %q", c.day, c.nuc, got, c.say)
		}
	}
}

// TestWhatIsToldIsInTheSum: what a box that is free sooner and a cell at the next look
// count more is the difference of those parts of the two ways' worth.
func TestWhatIsToldIsInTheSum(t *testing.T) {
	for day, part := range map[float64]struct{ told, words string }{
		0.0222: {"a cell at the next look counts %f more", "a cell for those found without a queen at the next look"},
		0.3:    {"its box free sooner counts %f more", "found without a queen days sooner"},
	} {
		r, found := dayWorth(t, day), 0
		for _, n := range r.Nucs {
			for _, w := range n.Ways {
				var more float64
				if _, err := fmt.Sscanf(r.Outweighs(n, w), part.told, &more); err != nil {
					continue
				}
				has, _ := sumOf(r, w, part.words)
				left, _ := sumOf(r, n.Ways[0], part.words)
				if found++; math.Abs(has.Queens-left.Queens-more) > 0.0051 {
					t.Errorf("%s, %s: told are %.2f, in the sums they are %.3f and %.3f: %v", n.Name, r.Title(w), more, has.Queens, left.Queens, r.Why(w))
				}
			}
		}
		if found == 0 {
			t.Errorf("nobody is told %q", part.told)
		}
	}
}
