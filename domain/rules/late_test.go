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
	got.Batch, got.Number = want.Batch, want.Number
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
	for i := 1; i < len(got.Losses); i++ {
		if got.Losses[i].By.Before(got.Losses[i-1].By) || got.Losses[i].Lost < got.Losses[i-1].Lost {
			t.Errorf("losses are not in the order of time: %v", got.Losses)
		}
	}
}
