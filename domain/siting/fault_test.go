package siting_test

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/siting"
	"lidmark/domain/yard"
)

// croft is a ground of 40 by 30 m with a hedge, a pond and a hollow; the wind blows from
// the south-west, from which nothing shelters.
var croft = yard.Ground{
	Wind: book.Reading{Value: 225, At: calendar.Moment{Instant: time.Unix(0, 0)}},
	Features: []book.FeatureDrawn{
		{What: book.Boundary, Points: []book.Point{at(0, 0), at(40, 0), at(40, 30), at(0, 30)}},
		{What: book.Hedge, Points: []book.Point{at(5, 26), at(35, 26)}, Width: 1, Height: 2},
		{What: book.Water, Points: []book.Point{at(30, 8), at(34, 8), at(34, 12), at(30, 12), at(30, 8)}},
		{What: book.ColdHollow, Points: []book.Point{at(4, 4), at(8, 4), at(8, 8), at(4, 8)}},
		{What: book.VehicleSpot, Points: []book.Point{at(20, 1)}},
	},
}

// column are stands of four from north to south, the upper half outside the boundary.
func column(stands int) (l yard.Layout) {
	for i := range stands {
		letter := string(rune('A' + i))
		s := yard.Stand{ID: id(letter), Letter: letter, At: at(20, 30+2.5*float64(stands/2-i)), Places: 4}
		for k := range 4 {
			name := fmt.Sprint(letter, k+1)
			s.Nucs = append(s.Nucs, yard.Nuc{ID: book.NucID(id(name)), Name: name, Place: k + 1, Bearing: float64(k) * 90, Virgins: 1, Queenright: 0.5})
		}
		l.Stands = append(l.Stands, s)
	}
	return l
}

// From a column of which half stands outside the boundary and some in the hedge, all are
// carried to where boxes may stand, and it is said; the bill's faults are those that are
// counted anew.
func TestStandsAreCarriedOutOfBadPlaces(t *testing.T) {
	l := column(8)
	for seed := range uint64(2) {
		task := siting.Moving(l, nil, marks, croft, usual)
		task.Seed, task.Tries = seed, 8000
		f := search(t, task)
		if f.Was.Faults.NoRoom < 5 || f.Now.Faults.NoRoom != 0 {
			t.Errorf("seed %d: %d stands in bad places, then %d", seed, f.Was.Faults.NoRoom, f.Now.Faults.NoRoom)
		}
		room := croft.Room(usual)
		for _, s := range f.Layout.Stands {
			if !room.Has(s.At) {
				t.Errorf("seed %d: stand %s is left at %v, where no box may stand", seed, s.Letter, s.At)
			}
		}
		mended, said := 0, false
		for _, s := range f.Steps {
			mended += s.Mended
			said = said || strings.Contains(s.Words(), "to where boxes may stand")
		}
		if mended != f.Was.Faults.NoRoom || !said || f.Steps[0].Mended == 0 {
			t.Errorf("seed %d: %d of %d are told: %+v", seed, mended, f.Was.Faults.NoRoom, f.Steps)
		}
	}
}

// No gain is worth a bad place: a stand there weighs more than the layout can lose.
func TestABadPlaceOutweighsAllElse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		some := func(name string) yard.Layout {
			l := column(4)
			for i := range l.Stands {
				l.Stands[i].At = at(rapid.Float64Range(10, 25).Draw(t, name), rapid.Float64Range(10, 20).Draw(t, name))
			}
			return l
		}
		good, bad := some("good"), some("bad")
		bad.Stands[rapid.IntRange(0, 3).Draw(t, "which")].At = at(6, 6) // in the hollow
		task := siting.Moving(column(4), nil, nil, croft, usual)
		task.Prices.Rounds, task.Prices.Minute, task.Prices.Wind = 0, 0, 0
		s, err := siting.New(task, usual)
		if err != nil {
			t.Fatal(err)
		}
		if g, b := s.Bill(good), s.Bill(bad); b.Faults.NoRoom != 1 || g.Faults.NoRoom != 0 || b.Worth <= g.Worth {
			t.Fatalf("in the hollow %+v, else %+v", b, g)
		}
	})
}

// A front is turned into the wind only where that gains more than it weighs; where the
// wind weighs nothing some are, where it weighs much none.
func TestFrontsAreNotTurnedIntoTheWind(t *testing.T) {
	l := singles("N", inRow(9, 0.7)...)
	for i := range l.Stands {
		l.Stands[i].At.X, l.Stands[i].At.Y = l.Stands[i].At.X+15, 15
	}
	turned := func(wind float64) (siting.Search, siting.Found) {
		task := siting.TurnAndPaint(l, nil, croft, usual)
		task.Tries, task.Prices.Wind, task.Prices.Minute = 8000, wind, 0
		s, err := siting.New(task, usual)
		if err != nil {
			t.Fatal(err)
		}
		for s.Step(1000) {
			continue
		}
		return *s, s.Best()
	}
	if _, f := turned(0); f.Now.Faults.Windy == 0 {
		t.Error("without a price of the wind no front is turned into it: the case tells nothing")
	}
	if _, f := turned(10); f.Now.Faults.Windy != 0 {
		t.Errorf("%d fronts in the wind for any price", f.Now.Faults.Windy)
	}
	s, f := turned(siting.PricesOf(usual).Wind)
	for i := range f.Layout.Stands {
		back := f.Layout.Clone()
		back.Stands[i].Turn = l.Stands[i].Turn
		if s.Bill(back).Worth < f.Now.Worth-1e-9 {
			t.Errorf("%s is turned, and would be better as it was", back.Stands[i].Letter)
		}
	}
}

// What a search keeps along is the full bill with its faults too: on a ground with bad
// places and wind.
func TestKeptFaultsAreTheFullOnes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		task := siting.Moving(column(rapid.IntRange(1, 6).Draw(t, "stands")), nil, marks[:1], croft, usual)
		task.Seed, task.Tries, task.Prices.Wind = rapid.Uint64().Draw(t, "seed"), 400, rapid.Float64Range(0, 1).Draw(t, "wind")
		s, err := siting.New(task, usual)
		if err != nil {
			t.Fatal(err)
		}
		for range 4 {
			s.Step(50)
			if kept, full := s.Kept(), s.FullOfKept(); math.Abs(kept-full) > 1e-9 {
				t.Fatalf("kept along %.12f, anew %.12f", kept, full)
			}
		}
	})
}

// A step says what of its places it mends.
func TestWordsOfMendedPlaces(t *testing.T) {
	some := siting.Step{Letters: []string{"A", "B"}, Nucs: 8, Carried: 8, Nearest: 1, Furthest: 1, Mended: 1, Windy: 2}
	if got := some.Words(); !strings.HasPrefix(got, "all carried 1.0 m, 1 stand to where boxes may stand, 2 fronts out of the wind; ") {
		t.Error(got)
	}
	some.Mended, some.Windy = 2, 0
	if got := some.Words(); !strings.HasPrefix(got, "all carried 1.0 m to where boxes may stand; ") {
		t.Error(got)
	}
}
