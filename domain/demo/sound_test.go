package demo_test

import (
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// TestDroneBroodHadEggs: capped drone brood was egg ten days before, so no look
// in those days found none.
func TestDroneBroodHadEggs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anySeason(t)
		seen := 0
		for n := range s.Nucs() {
			for i, l := range n.Looks {
				if !l.DroneBrood {
					continue
				}
				seen++
				for _, was := range n.Looks[:i] {
					if was.Eggs == book.NoEggs && l.At.Instant.Sub(was.At.Instant) < s.Numbers().Duration(practice.DroneCapped) {
						t.Errorf("%s: drone brood %v after no eggs", n.Name, l.At.Instant.Sub(was.At.Instant).Round(time.Hour))
					}
				}
			}
		}
		if seen == 0 {
			t.Error("no drone brood was seen")
		}
	})
}

// TestEmptyNucsHadLittleFood: where a look found no stores, the bees can have
// used what they were given.
func TestEmptyNucsHadLittleFood(t *testing.T) {
	s := seasonOf(someDay, zone(t, "Europe/Berlin"))
	aThousand := s.Numbers().Get(practice.SugarPerDay) // g a day; a nuc has one to three thousand bees
	seen := 0
	for n := range s.Nucs() {
		if !light[n.Name] {
			continue
		}
		seen++
		var food float64
		for e := range s.Lines(n.Nuc.Subject()) {
			if f, ok := e.Fact.(book.NucMadeUp); ok {
				food = f.Food
			}
		}
		days := n.Stores.At.Instant.Sub(n.MadeUp.Instant).Hours() / 24
		if n.Stores.Value != 0 || food < days*aThousand || food > 3*days*aThousand {
			t.Errorf("%s: %g g used up in %.0f days, stores %g", n.Name, food, days, n.Stores.Value)
		}
	}
	if seen != len(light) {
		t.Errorf("%d nucs without stores, want %d", seen, len(light))
	}
}

// light are the nucs shown without food.
var light = map[string]bool{"W1": true, "X2": true}
