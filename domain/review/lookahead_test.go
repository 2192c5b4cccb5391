package review_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/review"
	"lidmark/domain/rules"
)

// TestLooksAreOnTheRoute: a cell is kept for a look that finds no eggs only where the
// day's route has that look.
func TestLooksAreOnTheRoute(t *testing.T) {
	r, j := morning(t)
	looked := map[book.NucID]bool{}
	for _, s := range j.Day(r.Day).Stops {
		for _, task := range s.Tasks {
			for _, of := range task.Of {
				if id, ok := of.Nuc(); ok && (task.Act == rules.ActLookForEggs || task.Act == rules.ActLookInside) {
					looked[id] = true
				}
			}
		}
	}
	looks := 0
	for i, n := range r.Nucs {
		if w := n.Ways[r.This.Chosen[i]]; w.Kind == review.LookFirst && w.Gives() {
			looks++
			if !looked[n.NucNamed.Nuc] {
				t.Errorf("%s: %s, and nobody looks there today", n.Name, r.Title(w))
			}
		}
	}
	if looks == 0 {
		t.Error("no look gives a cell")
	}
}

// TestNoEggsOneOrder: after a look that found no eggs where most probably nobody is, a cell
// to spare is given today; the day's work, the kit and Review say so alike.
func TestNoEggsOneOrder(t *testing.T) {
	_, j := morning(t)
	v := j.Course().View()
	g1 := v.NucNamed("G1")[0].NucNamed.Nuc
	ids := book.NewIDs(v.On(), v.Season(), [32]byte{1})
	v = v.Season().With(ids.Entries(calendar.Instantly(v.On()), v.On(), "Ida", book.Looked{Nuc: g1, Queen: book.NoneSeen, Eggs: book.NoEggs, Sides: book.Said(5)})...).At(v.On())
	j = rules.Judge(v)
	r := review.Of(j, review.InHand(j.Course()), review.Usual(v))
	_, ways := said(r)
	if got := r.Title(ways["G1"]); got != "Give a cell of batch 5" {
		t.Errorf("Review: %q", got)
	}
	told := 0
	for _, f := range j.Findings() {
		if f.Of == g1.Subject() && f.Rule == rules.VirginsTime {
			t.Errorf("beside it the day says %q by %v", f.Do, f.By)
		}
		if f.Of == g1.Subject() && f.Rule == rules.Late {
			if told++; f.Act != rules.ActGiveCell || f.Do != "Give a cell of batch 5" || f.From.After(v.On()) {
				t.Errorf("the day: %q from %v", f.Do, f.From)
			}
		}
	}
	if told != 1 {
		t.Errorf("it is late %d times", told)
	}
	if caged(r) != 8 || kit(j, "cages for cells") != 8 {
		t.Errorf("Review cages %d, the kit has %g, want 8", caged(r), kit(j, "cages for cells"))
	}
}

// askedOfVirgins is what the rules ask of virgins caged for as long as they keep well.
func askedOfVirgins(j *rules.Judged) (asked string) {
	for _, f := range j.Findings() {
		if f.Rule == rules.BankVirgins && !f.From.After(j.Course().View().On()) {
			asked = f.Do
		}
	}
	return asked
}

// TestVirginsKeptTooLong: of virgins caged for as long as they keep well Review says what
// the day's work says.
func TestVirginsKeptTooLong(t *testing.T) {
	r, j := morning(t)
	asked := askedOfVirgins(j)
	said := false
	for _, l := range r.Left() {
		words := r.LeftWords(l)
		if strings.HasPrefix(words, "Left: 4 virgins of batch 3") {
			said = true
			if want := "Left: 4 virgins of batch 3, 6 days old. " + asked + ", by Wed 12 May"; words != want {
				t.Errorf("said %q, want %q", words, want)
			}
		}
	}
	if !said || asked == "" {
		t.Errorf("nothing is said of them: %v, %q", said, asked)
	}
	later, then := on(t, 21)
	asked = askedOfVirgins(then)
	for _, l := range later.Left() {
		if words := later.LeftWords(l); strings.Contains(words, "by Wed 12 May") || strings.Contains(words, "batch 3") && !strings.HasSuffix(words, asked+"; past since Wed 12 May") {
			t.Errorf("three weeks later: %q", words)
		}
	}
}

// TestUniteIsOneWord: where the rules would have a nuc united Review does not speak of
// shaking it out alone.
func TestUniteIsOneWord(t *testing.T) {
	pen := &booktest.Pen{Zone: time.UTC, Writer: "Ida"}
	yard, stand := booktest.Yard("Hill"), booktest.Stand("B")
	pen.At("2027-05-01 08:00").Write(book.YardDescribed{Yard: yard, Name: "Hill", Zone: "UTC"}, book.StandSet{Stand: stand, Yard: yard, Letter: "B", Places: 1})
	pen.Write(book.NucNamed{Nuc: booktest.Nuc("B1"), Name: "B1", Sides: 6}, book.NucPlaced{Nuc: booktest.Nuc("B1"), Yard: yard, Stand: stand, Place: 1})
	pen.At("2027-05-11 06:00").Write(book.NucMadeUp{Nuc: booktest.Nuc("B1"), Cups: 3})
	j := rules.Judge(pen.View("2027-05-12 08:00"))
	r := review.Of(j, review.InHand(j.Course()), review.Usual(j.Course().View()))
	for _, w := range r.Nucs[0].Ways {
		if w.Kind == review.ShakeOut && r.Title(w) != "Unite it, or shake it out" {
			t.Errorf("Review: %q", r.Title(w))
		}
	}
	if f := j.Findings()[0]; f.Act != rules.ActUnite {
		t.Errorf("the rules: %q", f.Do)
	}
}
