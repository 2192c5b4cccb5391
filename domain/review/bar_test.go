package review_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/review"
)

// celled is a nuc without brood whose given cell was found open at the tip.
func celled(t *testing.T) *booktest.Pen {
	p := pen(t, signs("+", 90))
	p.At("2027-05-05 18:00").Write(book.Grafted{Batch: booktest.Batch("9"), Number: 9, Larvae: 20, LarvaAge: 18})
	p.At("2027-05-12 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 4, Shut: true, Food: 900})
	p.At("2027-05-15 17:00").Write(book.CellGiven{Nuc: a1, Batch: booktest.Batch("9")})
	p.At("2027-05-19 17:00").Write(book.Looked{Nuc: a1, Cell: book.CellOpenAtTip, Sides: book.Said(6)})
	return p
}

// TestYoungVirginIsLeft: six days after she walked no look for eggs tells anything, and
// a cell would be torn down; nine days on, and eggs possible, a look is a way.
func TestYoungVirginIsLeft(t *testing.T) {
	p := celled(t)
	j := judged(p, "2027-05-23 18:00")
	r := review.Of(j, handOf(3), review.Usual(j.Course().View()))
	n := only(t, r)
	if best := n.Ways[n.Best]; best.Kind != review.Leave || n.Decide {
		t.Errorf("%s, decide %v: want it left", r.Title(best), n.Decide)
	}
	if r.This.Chosen[0] != 0 || r.Order.Chosen[0] != 0 {
		t.Errorf("a use gives it a cell: %v, %v", r.This.Chosen, r.Order.Chosen)
	}
	for i, w := range n.Ways {
		if w.Kind == review.LookFirst {
			t.Errorf("looked at for eggs at six days: %s", r.Title(w))
		}
		if w.Gives() != w.Barred || w.Barred && i < len(n.Ways)-1 && !n.Ways[i+1].Barred {
			t.Errorf("%s: barred %v, place %d", r.Title(w), w.Barred, i)
		}
		if said := w.Warned; w.Barred && said[len(said)-1].Why != "most probably holds a virgin: a cell would be torn down" {
			t.Errorf("%s: %+v", r.Title(w), said)
		}
	}
	j = judged(p, "2027-05-30 18:00")
	for _, w := range only(t, review.Of(j, handOf(3), review.Usual(j.Course().View()))).Ways {
		if w.Kind == review.LookFirst {
			return
		}
	}
	t.Error("no look for eggs at thirteen days")
}

// TestOwnCellsAreBrokenDown: where own cells stand, they are broken down before a cell is
// given, for a laying queen whose descent is sure.
func TestOwnCellsAreBrokenDown(t *testing.T) {
	p := pen(t, signs("+", 90))
	p.At("2027-04-20 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, Food: 900})
	p.At("2027-04-21 18:00").Write(book.QueenPutIn{To: a1.Subject(), Queen: booktest.Queen("old")})
	p.At("2027-05-18 18:00").Write(book.Looked{Nuc: a1, Queen: book.QueenSeen, Eggs: book.SingleEggs, Larvae: true, Brood: book.Said(3), Sides: book.Said(6), Stores: book.Said(3)})
	p.At("2027-05-19 18:00").Write(book.QueenCaught{Nuc: a1, Queen: booktest.Queen("old")})
	p.At("2027-05-24 18:00").Write(book.Looked{Nuc: a1, Queen: book.NoneSeen, Eggs: book.NoEggs, OwnCells: book.Said(5), Sides: book.Said(6), Stores: book.Said(3)})
	p.At("2027-05-16 10:00").Write(book.Grafted{Batch: young, Number: 12, Larvae: 20, LarvaAge: 18})
	j := judged(p, "2027-05-25 18:00")
	r := review.Of(j, handOf(3), review.Usual(j.Course().View()))
	n := only(t, r)
	best := n.Ways[n.Best]
	if best.Kind != review.BreakDown || best.Doubtful > 0.1 || n.Ways[0].Doubtful < 0.7 {
		t.Errorf("%s, of doubtful descent %.2f, %.2f if left", r.Title(best), best.Doubtful, n.Ways[0].Doubtful)
	}
	if all := r.Accept(r.This.Ways()); len(all) != 1 || !strings.Contains(all[0].Why, "of its own raising") {
		t.Errorf("decided: %+v", all)
	}
	if why := r.Why(n.Ways[0])[0].Words; !strings.Contains(why, "of its own raising") {
		t.Errorf("%q", why)
	}
}

// TestRobbedYardStaysShut: while robbers are about in the yard what opens a box for
// longer than three minutes is no best way, and says why; a cell is given in one.
func TestRobbedYardStaysShut(t *testing.T) {
	p := celled(t)
	b1 := booktest.Nuc("B1")
	p.At("2027-05-12 18:00").Write(book.NucNamed{Nuc: b1, Name: "B1", Sides: 6, Side: 2}, book.NucPlaced{Nuc: b1, Yard: yard}, book.NucMadeUp{Nuc: b1, Cups: 4, Food: 900})
	p.At("2027-06-16 17:00").Write(book.Looked{Nuc: a1, Queen: book.VirginSeen, Eggs: book.NoEggs, Sides: book.Said(6)})
	kinds := func(robbed bool) (long, barred int) {
		if robbed {
			p.At("2027-06-17 10:00").Write(book.Robbed{Nuc: b1})
		}
		j := judged(p, "2027-06-17 18:00")
		for _, n := range review.Of(j, handOf(3), review.Usual(j.Course().View())).Nucs {
			for i, w := range n.Ways {
				if n.Name != "A1" || w.Minutes <= 3 || w.Kind == review.Leave {
					continue
				}
				long++
				if said := w.Warned; w.Barred && strings.HasPrefix(said[len(said)-1].Why, "robbers are about") {
					barred++
				}
				if robbed && n.Best == i {
					t.Errorf("the best while robbers are about: %v", w.Kind)
				}
			}
		}
		return long, barred
	}
	if long, barred := kinds(false); long == 0 || barred > 0 {
		t.Errorf("no robbers: %d ways open it long, %d barred", long, barred)
	}
	if long, barred := kinds(true); long == 0 || barred != long {
		t.Errorf("robbers: %d ways open it long, %d barred", long, barred)
	}
}

// TestHunger: half of such nucs are lost that have been without food for long when
// somebody comes next, and none whose food lasts until then.
func TestHunger(t *testing.T) {
	for food, lost := range map[float64]bool{0: true, 3: false} {
		p := celled(t)
		p.At("2027-05-23 17:00").Write(book.Looked{Nuc: a1, Sides: book.Said(6), Stores: book.Said(food)})
		j := judged(p, "2027-05-25 18:00")
		r := review.Of(j, handOf(0), review.Usual(j.Course().View()))
		n := only(t, r)
		if got := n.Ways[n.Best].Kind == review.Feed; got != lost {
			t.Errorf("stores %v of 3: %s", food, r.Title(n.Ways[n.Best]))
		}
	}
}

// TestSoonestFirst: of like cells those are given first that emerge first.
func TestSoonestFirst(t *testing.T) {
	p := pen(t, signs("+", 90))
	p.At("2027-05-22 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, Shut: true, Food: 900})
	j := judged(p, "2027-05-26 10:00")
	at := time.Date(2027, 5, 27, 12, 0, 0, 0, time.UTC)
	for first := range 2 {
		hand := review.Hand{Wares: []review.Ware{{Name: "cell of one batch", Many: 1, Emerges: at}, {Name: "cell of another", Many: 1, Emerges: at}}}
		hand.Wares[1-first].Emerges = at.Add(24 * time.Hour)
		r := review.Of(j, hand, review.Usual(j.Course().View()))
		n := only(t, r)
		if got := n.Ways[n.Best].Ware; got != first+1 || n.Ways[r.This.Chosen[0]].Ware != first+1 {
			t.Errorf("%s, and the best use %s: want ware %d", r.Title(n.Ways[n.Best]), r.Title(n.Ways[r.This.Chosen[0]]), first+1)
		}
	}
}
