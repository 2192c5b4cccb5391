package siting

import (
	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

// Task is what a search may change in a layout, by which rules and at what price.
// Stands that are fixed stay as they are, and what stands on one stand stays
// together. The zero Task changes nothing.
type Task struct {
	Layout yard.Layout  // as the boxes stand
	Add    []yard.Stand // stands with their nucs for which a place is to be found

	Only  yard.Pick // the stands that may be changed besides added ones; none: all
	Turn  float64   // degrees by which stands are turned; 0: not
	Face  bool      // boxes on stands of several are turned on their places, see [yard.Stand.FreeSides]
	Marks []Stock   // marks to hand; none: no front is painted
	Move  bool      // stands may be carried

	Room      func(book.Point) bool // where the middle of a stand may be put; nil: anywhere
	Open      func(book.Point) bool // where a box of a stand may be put that did not stand there; nil: anywhere
	Wind      yard.Wind             // a front that faces it without shelter stands badly
	Low, High book.Point            // corners of the ground on which places are looked for
	Apart     float64               // m between boxes of different stands, so that somebody can walk there
	From      book.Point            // where the walking round begins

	Prices Prices
	Least  float64 // queens: what gains less is left as it is
	Tries  int     // after how many tries the search is over
	Seed   uint64
}

// Stock is a front mark to hand and for how many fronts it lasts.
type Stock struct {
	Mark  yard.Mark
	Count int
}

// TurnAndPaint is the task to improve a layout where it stands.
func TurnAndPaint(l yard.Layout, marks []Stock, g yard.Ground, n practice.Numbers) Task {
	t := task(l, g, n)
	t.Turn, t.Face, t.Marks = n.Get(practice.LayoutTurnStep), true, marks
	return t
}

// Moving is the task to improve a layout by carrying, turning and painting the
// picked stands, all where none is picked.
func Moving(l yard.Layout, only yard.Pick, marks []Stock, g yard.Ground, n practice.Numbers) Task {
	t := TurnAndPaint(l, marks, g, n)
	t.Only, t.Move = only, true
	return t
}

// Adding is the task to find places for more stands, with those that stand there
// left as they are.
func Adding(l yard.Layout, more []yard.Stand, marks []Stock, g yard.Ground, n practice.Numbers) Task {
	l = l.Clone()
	for i := range l.Stands {
		l.Stands[i].Fixed = true
	}
	t := Moving(l, nil, marks, g, n)
	t.Add = more
	return t
}

// triesUsual is how many tries a search takes for each box unless it is told.
const triesUsual = 2000

func task(l yard.Layout, g yard.Ground, n practice.Numbers) Task {
	room, open := g.Room(n), g.Open(n)
	t := Task{
		Layout: l, Room: room.Has, Open: open.Has, Wind: g.Breeze(n), Apart: n.Get(practice.WalkwayLeast) + n.Get(practice.BoxWide),
		Prices: PricesOf(n), Least: n.Get(practice.LayoutPays), Tries: triesUsual * max(1, l.Nucs()),
	}
	low, high, drawn := room.Bounds()
	if !drawn {
		low, high = around(l)
	}
	t.Low, t.High = low, high
	if at, ok := g.VehicleSpot(); ok {
		t.From = at
	} else if len(l.Stands) > 0 {
		t.From = l.Stands[0].At
	}
	return t
}

// margin is how far in metres beyond the outermost stands places are looked for in a
// yard without a boundary.
const margin = 5

func around(l yard.Layout) (low, high book.Point) {
	for i, s := range l.Stands {
		if i == 0 {
			low, high = s.At, s.At
		}
		low = book.Point{X: min(low.X, s.At.X), Y: min(low.Y, s.At.Y)}
		high = book.Point{X: max(high.X, s.At.X), Y: max(high.Y, s.At.Y)}
	}
	return book.Point{X: low.X - margin, Y: low.Y - margin}, book.Point{X: high.X + margin, Y: high.Y + margin}
}
