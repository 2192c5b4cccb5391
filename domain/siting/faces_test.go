package siting_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/siting"
	"lidmark/domain/yard"
)

// glade is a ground of 60 by 40 m, a hedge in the north and a brook in the south.
var glade = yard.Ground{Features: []book.FeatureDrawn{
	{What: book.Boundary, Points: []book.Point{at(0, 0), at(60, 0), at(60, 40), at(0, 40)}},
	{What: book.Hedge, Points: []book.Point{at(1, 39), at(59, 39)}, Width: 1, Height: 5},
	{What: book.Water, Points: []book.Point{at(0, 1), at(60, 1)}, Width: 2},
	{What: book.VehicleSpot, Points: []book.Point{at(3, 20)}},
}}

// fours are stands of four boxes in rows of four, all facing north; never made up where
// they are idle.
func fours(stands int, idle bool) (l yard.Layout) {
	for i := range stands {
		letter := string(rune('A' + i))
		s := yard.Stand{ID: id(letter), Letter: letter, At: at(15+8*float64(i%4), 32-7*float64(i/4)), Places: 4}
		for k := range 4 {
			name := fmt.Sprint(letter, k+1)
			s.Nucs = append(s.Nucs, yard.Nuc{ID: book.NucID(id(name)), Name: name, Place: k + 1, Virgins: 1, Queenright: 1, Idle: idle})
		}
		l.Stands = append(l.Stands, s)
	}
	return l
}

func outwards(l yard.Layout) yard.Layout {
	var all yard.Pick
	for _, s := range l.Stands {
		all = append(all, s.ID)
	}
	return l.Outwards(all)
}

// Boxes on stands of four are turned on their places: what is found is never worse than
// all boxes turned outwards, by the search's own price, and of a yard that is still to be
// set up at no work. The best of outwards and marks is far from how they stood.
func TestNeverWorseThanOutwards(t *testing.T) {
	for _, idle := range []bool{true, false} {
		for _, wind := range []float64{0, 0.01} {
			l := fours(16, idle)
			task := siting.TurnAndPaint(l, marks, glade, usual)
			task.Tries, task.Prices.Wind = 3000, wind
			task.Wind = croft.Breeze(usual)
			for i := range task.Marks {
				task.Marks[i].Count = l.Nucs()
			}
			s, err := siting.New(task, usual)
			if err != nil {
				t.Fatal(err)
			}
			for s.Step(1000) {
				continue
			}
			f, out := s.Best(), s.Bill(outwards(l))
			if f.Outwards != out {
				t.Errorf("idle %v: outwards is told as %+v, reckoned %+v", idle, f.Outwards, out)
			}
			least := task.Least * float64(len(l.Stands))
			if idle {
				least = 0
			}
			if f.Now.Worth > out.Worth+least+1e-9 {
				t.Errorf("idle %v, wind %v: found %.3f queens, outwards %.3f", idle, wind, f.Now.Worth, out.Worth)
			}
			if f.Now.Drift > 0.6*f.Was.Drift || f.Now.Lost > 0.6*f.Was.Lost {
				t.Errorf("idle %v, wind %v: drift %.3f → %.3f, lost %.2f → %.2f", idle, wind, f.Was.Drift, f.Now.Drift, f.Was.Lost, f.Now.Lost)
			}
			if idle != (f.Now.Minutes == 0) || f.Now.Carried != 0 {
				t.Errorf("idle %v: %.0f min of work, %d carried", idle, f.Now.Minutes, f.Now.Carried)
			}
		}
	}
}

// With no mark to hand boxes that stand as they were set up are turned on their places
// alone, and it is told; what shares its box with other nucs is not.
func TestBoxesTurnedOnTheirPlacesAreTold(t *testing.T) {
	l := fours(2, false)
	for k := range l.Stands[1].Nucs {
		l.Stands[1].Nucs[k].Shared = true
	}
	task := siting.TurnAndPaint(l, nil, glade, usual)
	task.Turn = 0
	f := search(t, task)
	if len(f.Steps) != 1 || f.Steps[0].Faced == 0 || f.Steps[0].Faced != f.Now.Turned || !strings.Contains(f.Steps[0].Words(), "of 4 turned on the stand; drift ") {
		t.Fatalf("%+v", f.Steps)
	}
	for k, n := range f.Layout.Stands[1].Nucs {
		if n.Bearing != l.Stands[1].Nucs[k].Bearing {
			t.Errorf("%s shares its box and is turned", n.Name)
		}
	}
}

// Of more boxes as many stand on a stand as most stands have, one where there is none; no
// box of a stand that is added stands under a tree, beside the vehicle or in water, though
// that is most of the ground.
func TestMoreBoxesStandAsTheOthersWhereTheyMay(t *testing.T) {
	g := yard.Ground{Features: []book.FeatureDrawn{
		{What: book.Boundary, Points: []book.Point{at(0, 0), at(24, 0), at(24, 24), at(0, 24)}},
		{What: book.Tree, Points: []book.Point{at(8, 8)}, Width: 8, Height: 6},
		{What: book.VehicleSpot, Points: []book.Point{at(16, 16)}},
		{What: book.Water, Points: []book.Point{at(0, 18), at(24, 18)}, Width: 1},
	}}
	l := fours(2, true)
	l.Stands[0].At, l.Stands[1].At = at(8, 8), at(18, 5) // one stands under the tree, and may
	if siting.OnAStand(l) != 4 || siting.OnAStand(yard.Layout{}) != 1 {
		t.Fatalf("%d boxes on a stand, %d where there is none", siting.OnAStand(l), siting.OnAStand(yard.Layout{}))
	}
	k := 0
	more := siting.Stands(10, siting.OnAStand(l), func() (book.StandID, string) {
		k++
		return id(fmt.Sprint("new", k)), fmt.Sprint("S", k)
	})
	if len(more) != 3 || len(more[2].Nucs) != 2 || more[2].Places != 4 {
		t.Fatalf("ten boxes by fours are %+v", more)
	}
	task := siting.Adding(l, more, nil, g, usual)
	task.Tries = 4000
	f := search(t, task)
	if f.Layout.Stands[0].At != l.Stands[0].At {
		t.Error("the stand under the tree was carried")
	}
	for _, s := range f.Layout.Stands[2:] {
		for _, n := range s.Nucs {
			p := s.On(n.Place, yard.SpacingOf(usual))
			if math.Hypot(p.X-8, p.Y-8) < 4.125 || math.Hypot(p.X-16, p.Y-16) < 2 || math.Abs(p.Y-18) < 0.625 || !inside(p) {
				t.Errorf("%s stands at %v", n.Name, p)
			}
		}
	}
}

// inside: the boundary of 24 by 24 m, with the setback of 3 m.
func inside(p book.Point) bool { return p.X >= 3 && p.X <= 21 && p.Y >= 3 && p.Y <= 21 }
