package state_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/rules"
)

// A line that carries a stand of the planned layout, ticked, writes the stand as it
// is planned.
func TestALineOfThePlannedLayoutIsTicked(t *testing.T) {
	w := keeper(t)
	var n *book.Nuc
	for o := range w.Reading().View.Nucs() {
		if o.Name == "Y1" { // its cell is not out yet: no virgin flies
			n = o
		}
	}
	to := w.Reading().View.Stand(n.Stand).StandSet
	to.At.X, to.Turn = to.At.X+2, to.Turn+45
	w = withMore(w,
		book.LayoutTried{Layout: booktest.Layout("turned"), Yard: n.Yard, Name: "turned", Stands: []book.StandSet{to}, Fronts: []book.FrontMarked{{Nuc: n.Nuc, Shape: "disc", Colour: "blue"}}},
		book.LayoutPlanned{Layout: booktest.Layout("turned"), Yard: n.Yard, From: today},
	)
	for _, act := range []rules.Act{rules.ActPaintFront, rules.ActCarryStand} {
		l := w.lineOf(act, book.KindNuc)
		if says := w.TickSays(l).Words; says != "done as written  Space" {
			t.Errorf("the box of %q says %q", l.Title, says)
		}
		w.tap(tickOf(l), 0).settle()
	}
	if got := w.Reading().View.Nuc(n.Nuc).Front.Colour; got != "blue" {
		t.Errorf("the front is %q, want blue", got)
	}
	if got := w.Reading().View.Stand(n.Stand).StandSet; got != to {
		t.Errorf("the stand stands as %v, want %v", got, to)
	}
}
