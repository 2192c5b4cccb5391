package rules_test

import (
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// A batch in no book has the card that it has in one.
func TestLateDayOfIsTheCardOfTheBook(t *testing.T) {
	p := pen(t)
	id := batch(4)
	p.At("2027-05-05 18:00").Write(book.Grafted{Batch: id, Number: 4, Larvae: 24})
	v := p.View("2027-05-15 20:00")
	next := v.On().Add(46 * time.Hour)
	want, ok := rules.LateDay(v, id, next)
	if !ok {
		t.Fatal("no late day")
	}
	got := rules.LateDayOf(v.Batch(id).Bee(24), v.On(), next, want.Fit, practice.Numbers{})
	got.Batch, got.Number, got.Ready = want.Batch, want.Number, want.Ready
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
	for i := 1; i < len(got.Losses); i++ {
		if got.Losses[i].By.Before(got.Losses[i-1].By) || got.Losses[i].Lost < got.Losses[i-1].Lost {
			t.Errorf("losses are not in the order of time: %v", got.Losses)
		}
	}
}

// Each curve begins with all cells, never rises, and comes at the next free hour
// to what its way keeps.
func TestLateCurvesAreTheWaysByTheHour(t *testing.T) {
	p := pen(t)
	id := batch(4)
	p.At("2027-05-05 18:00").Write(book.Grafted{Batch: id, Number: 4, Larvae: 24})
	v := p.View("2027-05-15 20:00")
	card, ok := rules.LateDay(v, id, v.On().Add(46*time.Hour))
	if !ok {
		t.Fatal("no late day")
	}
	curves := rules.LateCurves(v, card, 46)
	if len(curves) != len(card.Ways) {
		t.Fatalf("%d curves for %d ways", len(curves), len(card.Ways))
	}
	for i, c := range curves {
		if w := card.Ways[i]; c.Way != w.Way || c.Kept[0] > 24+1e-9 || c.Kept[0] < 24-1e-9 || c.Kept[46]-w.Kept > 1e-9 || w.Kept-c.Kept[46] > 1e-9 {
			t.Errorf("%s: from %v to %v, want from 24 to %v", c.Way, c.Kept[0], c.Kept[46], w.Kept)
		}
		for h := 1; h < len(c.Kept); h++ {
			if c.Kept[h] > c.Kept[h-1] {
				t.Errorf("%s: rises at hour %d", c.Way, h)
			}
		}
	}
}
