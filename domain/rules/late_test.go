package rules_test

import (
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// A batch in no book has the card that it has in one.
func TestLateDayOfIsTheCardOfTheBook(t *testing.T) {
	p := pen(t)
	id := batch(4)
	p.At("2027-05-05 18:00").Write(book.Grafted{Batch: id, Number: 4, Larvae: 24})
	p.At("2027-05-10 18:00").Write(book.CappedCounted{Batch: id, Capped: 24})
	v := p.View("2027-05-15 20:00")
	next := v.On().Add(46 * time.Hour)
	want, ok := rules.LateDay(v, id, next)
	if !ok {
		t.Fatal("no late day")
	}
	got := rules.LateDayOf(v.Batch(id).Bee(24), v.On(), next, want.Fit, practice.Numbers{})
	got.Batch, got.Number, got.Ready = want.Batch, want.Number, want.Ready
	if want.HardMeans() != "the hard hour is 6 h before the chance that the first has walked is 1 %" {
		t.Errorf("the hard hour is explained as %q", want.HardMeans())
	}
	if diff := cmp.Diff(want, got, cmpopts.IgnoreTypes(bee.Clock{})); diff != "" { // all that is told; what it is reckoned by is the same
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
	p.At("2027-05-10 18:00").Write(book.CappedCounted{Batch: id, Capped: 24})
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

// TestTheFirstVirginHasOneHour: the late day, the clock of the batch and the finding
// tell one hour for an even chance of the first virgin, though the losses are
// reckoned for a keeper who found none out, and some cells are placed already.
func TestTheFirstVirginHasOneHour(t *testing.T) {
	p := pen(t)
	id := batch(4)
	p.At("2027-05-05 18:00").Write(graft(4, 28))
	p.At("2027-05-10 18:00").Write(book.CappedCounted{Batch: id, Capped: 28}, book.CellsCulled{Batch: id, Cells: 3})
	for _, at := range []string{"2027-05-15 20:00", "2027-05-16 12:00", "2027-05-17 06:00"} {
		v := p.View(at)
		card, ok := rules.LateDay(v, id, time.Time{})
		clock := v.Batch(id).Clock(v.Numbers())
		if !ok || !card.First.Equal(clock.FirstOut(0.5)) || !card.Middle.Equal(clock.Middle()) || !card.Hard.Equal(clock.Hard()) {
			t.Errorf("%s: the late day says %v, %v, %v, the batch %v, %v, %v", at, card.Hard, card.First, card.Middle, clock.Hard(), clock.FirstOut(0.5), clock.Middle())
		}
	}
}

// TestUncountedCellsHaveOneNumber: what is grafted and not counted is reckoned with
// what the rates leave of it, in the finding, the kit and the ways out, and the
// reason is said.
func TestUncountedCellsHaveOneNumber(t *testing.T) {
	p := pen(t)
	p.At("2027-05-05 18:00").Write(graft(4, 6))
	p.At("2027-05-13 18:00").Write(madeUp("A1", "A2", "A3", "A4", "A5", "A6")...)
	v := p.View("2027-05-15 20:00")
	f := of(v, rules.CellsOut)
	if len(f) != 1 || f[0].What != "6 cells of batch 4 must be out (as grafted; about 5 live)" || f[0].Amount != 5 || !strings.HasPrefix(f[0].Do, "Count the take first") {
		t.Errorf("%+v", f)
	}
	card, _ := rules.LateDay(v, batch(4), time.Time{})
	if card.Cells != 5 || card.CellWords() != "about 5 cells (6 as grafted, not counted)" {
		t.Errorf("the late day reckons with %q", card.CellWords())
	}
	ripe, _ := packed(v, "ripe cells")
	if protectors, _ := packed(v, "cell protectors"); ripe != 5 || protectors != 5 {
		t.Errorf("%g cells with %g protectors are packed", ripe, protectors)
	}
}

// TestCellsOnTheWayKeepTheirHardHour: a virgin walks in the car as she does at home.
func TestCellsOnTheWayKeepTheirHardHour(t *testing.T) {
	p := pen(t)
	p.At("2027-05-05 18:00").Write(graft(4, 24))
	p.At("2027-05-10 18:00").Write(book.CappedCounted{Batch: batch(4), Capped: 24})
	p.At("2027-05-15 08:00").Write(book.TakenAlong{What: book.Cells, Batch: batch(4), Count: 24})
	v := p.View("2027-05-15 20:00")
	if f := of(v, rules.CellsOut); len(f) != 1 || !f[0].Hard || f[0].What != "24 cells of batch 4 must be out; 24 on the way" {
		t.Errorf("%+v", f)
	}
	if card, ok := rules.LateDay(v, batch(4), time.Time{}); !ok || card.Cells != 24 {
		t.Errorf("the late day has %d cells, %v", card.Cells, ok)
	}
	for _, d := range rules.Deadlines(v, v.Today(), v.Today()+3) {
		if d.Hard && d.Done {
			t.Errorf("done with 24 cells on the way: %+v", d)
		}
	}
}

// TestWhatWaitedIsLostAlready: past the hour at which a virgin walks, waiting has cost
// cells before anybody looks, and days later nobody believes a look that finds none out:
// then there are no ways out.
func TestWhatWaitedIsLostAlready(t *testing.T) {
	p := pen(t)
	id := batch(4)
	p.At("2027-05-05 18:00").Write(book.Grafted{Batch: id, Number: 4, Larvae: 24})
	p.At("2027-05-10 18:00").Write(book.CappedCounted{Batch: id, Capped: 24})
	was := 0.0
	for _, at := range []string{"2027-05-15 20:00", "2027-05-17 12:00", "2027-05-18 18:00", "2027-05-27 12:00"} {
		v := p.View(at)
		card, ok := rules.LateDay(v, id, time.Time{})
		if !ok || card.Already < was || card.Already > 24 {
			t.Fatalf("%s: %v, %g of 24 are lost already, %g before", at, ok, card.Already, was)
		}
		was = card.Already
		if said := card.AlreadySays(); (said == "") != (card.Already < 0.5) {
			t.Errorf("%s: %q is said of %g", at, said, card.Already)
		}
		if late := v.On().After(card.Middle.Add(7 * 24 * time.Hour)); (len(card.Ways) == 0) != late {
			t.Errorf("%s: %d ways out", at, len(card.Ways))
		}
	}
	if was < 12 {
		t.Errorf("of 24 cells that nobody took apart %g are lost in the end", was)
	}
}
