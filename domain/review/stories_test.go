package review_test

import (
	"fmt"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/review"
	"lidmark/domain/rules"
)

var (
	a1    = booktest.Nuc("A1")
	yard  = booktest.Yard("Quillbank")
	young = booktest.Batch("12")
)

// pen has a yard with a nuc, and flying weather by sign from 20 April on.
func pen(t testing.TB, weather string) *booktest.Pen {
	t.Helper()
	zone, err := time.LoadLocation("Europe/Berlin")
	if err != nil {
		t.Fatal(err)
	}
	p := &booktest.Pen{Zone: zone}
	p.At("2027-04-01 08:00").Write(book.YardDescribed{Yard: yard, Name: "Quillbank", Home: true, Zone: "Europe/Berlin"},
		book.NucNamed{Nuc: a1, Name: "A1", Sides: 6, Side: 2}, book.NucPlaced{Nuc: a1, Yard: yard})
	sign := map[rune]book.Sign{'+': book.Flying, '−': book.NoFlight}
	for i, s := range []rune(weather) {
		d := calendar.Date(2027, time.April, 20) + calendar.Day(i)
		p.At(d.String() + " 21:00").Write(book.WeatherSeen{Yard: yard, Day: d, Sign: sign[s]})
	}
	return p
}

func signs(s string, n int) (all string) {
	for range n {
		all += s
	}
	return all
}

// judged is the view of an instant as the rules judge it.
func judged(p *booktest.Pen, at string) *rules.Judged { return rules.Judge(p.View(at)) }

func handOf(cells int) review.Hand {
	return review.Hand{Wares: []review.Ware{{Batch: young, Name: "cell of batch 12", Many: cells}}}
}

// told is a nuc's ways as the test's reader sees them.
func told(r *review.Review, n review.Nuc) (text string) {
	for i, w := range n.Ways {
		text += fmt.Sprintf("\n%d %-70s lays %.2f ready %.2f given %.2f worth %+.3f", i, r.Title(w), w.Lays, w.Ready, w.Given, w.Worth)
	}
	return text
}

func only(t *testing.T, r *review.Review) review.Nuc {
	t.Helper()
	if len(r.Nucs) != 1 {
		t.Fatalf("%d nucs under review, want 1", len(r.Nucs))
	}
	t.Log(told(r, r.Nucs[0]))
	return r.Nucs[0]
}

// ownQueen was caught on 10 May, eggs left, a cell the same hour.
func ownQueen(t *testing.T) *booktest.Pen {
	p := pen(t, signs("+", 60))
	p.At("2027-04-01 09:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3}, book.QueenPutIn{To: a1.Subject(), Queen: booktest.Queen("old")})
	p.At("2027-04-20 09:00").Write(book.Looked{Nuc: a1, Eggs: book.SingleEggs, Brood: book.Said(3), Queen: book.QueenSeen})
	p.At("2027-04-30 09:00").Write(book.Grafted{Batch: booktest.Batch("9"), Number: 9, Larvae: 20, LarvaAge: 18})
	p.At("2027-05-10 10:00").Write(book.QueenCaught{Nuc: a1, Queen: booktest.Queen("old")}, book.CellGiven{Nuc: a1, Batch: booktest.Batch("9")})
	p.At("2027-05-16 10:00").Write(book.Grafted{Batch: young, Number: 12, Larvae: 20, LarvaAge: 18})
	return p
}

// TestOwnQueen: the nuc may hold a queen of its own, so it is looked at before
// a cell is spent on it.
func TestOwnQueen(t *testing.T) {
	p := ownQueen(t)
	p.At("2027-05-26 18:00").Write(book.Looked{Nuc: a1, Queen: book.NoneSeen, Eggs: book.NoEggs, Sides: book.Said(5)})
	j := judged(p, "2027-05-26 20:00")
	for cells := range 2 {
		r := review.Of(j, handOf(cells), review.Usual(j.Course().View()))
		n := only(t, r)
		if best := n.Ways[n.Best]; best.Kind != review.LookFirst || !best.Own {
			t.Errorf("%d cells in hand: %s, want a look for opened own cells", cells, r.Title(best))
		}
		if !n.Decide {
			t.Errorf("%d cells in hand: no decision asked", cells)
		}
	}
}

// TestNoOwnQueen is the control of it: own cells broken down, so nobody but the
// queen given can be there.
func TestNoOwnQueen(t *testing.T) {
	p := ownQueen(t)
	p.At("2027-05-17 10:00").Write(book.OwnCellsBroken{Nuc: a1})
	p.At("2027-05-26 18:00").Write(book.Looked{Nuc: a1, Queen: book.NoneSeen, Eggs: book.NoEggs, Sides: book.Said(5)})
	j := judged(p, "2027-05-26 20:00")
	r := review.Of(j, handOf(1), review.Usual(j.Course().View()))
	n := only(t, r)
	if best := n.Ways[n.Best]; best.Kind != review.GiveCell {
		t.Errorf("%s, want a cell", r.Title(best))
	}
}

// TestColdWeek: a virgin of 12 May and nine days without flight. No
// cell is spent where most are still to come, nor after a fine fortnight while she is
// more likely there than not; once eggs are missed again, one is.
func TestColdWeek(t *testing.T) {
	for name, row := range map[string]struct {
		days  string
		again bool // looked at again on 29 May
		want  review.Kind
	}{
		"cold":                   {signs("+", 22) + signs("+", 5) + signs("−", 9) + signs("+", 30), false, review.Leave},
		"fine":                   {signs("+", 66), false, review.Leave},
		"fine and no eggs twice": {signs("+", 66), true, review.GiveCell},
	} {
		t.Run(name, func(t *testing.T) {
			p := pen(t, row.days)
			p.At("2027-05-09 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3})
			p.At("2027-05-12 08:00").Write(book.VirginPutIn{Nuc: a1, Emerged: time.Date(2027, 5, 12, 7, 0, 0, 0, p.Zone)})
			p.At("2027-05-14 08:00").Write(book.Looked{Nuc: a1, Queen: book.VirginSeen})
			p.At("2027-05-16 10:00").Write(book.Grafted{Batch: young, Number: 12, Larvae: 20, LarvaAge: 18})
			p.At("2027-05-26 09:00").Write(book.Looked{Nuc: a1, Eggs: book.NoEggs, Sides: book.Said(5)})
			at := "2027-05-26 10:00"
			if row.again {
				p.At("2027-05-29 09:00").Write(book.Looked{Nuc: a1, Eggs: book.NoEggs, Sides: book.Said(5)})
				at = "2027-05-29 10:00"
			}
			j := judged(p, at)
			r := review.Of(j, handOf(1), review.Usual(j.Course().View()))
			n := only(t, r)
			if best := n.Ways[n.Best]; best.Kind != row.want {
				t.Errorf("%s", r.Title(best))
			}
			if got := r.This.Chosen[0]; got != n.Best {
				t.Errorf("the best use is %s", r.Title(n.Ways[got]))
			}
			if name == "cold" && n.Ways[0].On < calendar.Date(2027, time.May, 30) {
				t.Errorf("%s, want about 2 June", r.Title(n.Ways[0]))
			}
		})
	}
}
