package rules_test

import (
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
)

// Rules and plan are one word of how many nucs are made up for grafted batches, whatever
// nucs live, in whichever yard, and however many cells the batches have.
func TestRulesMakeUpWhatIsPlanned(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := twoBatches(t).View("2027-05-13 08:00")
		p := plan.New(course.New(v))
		want := map[book.Subject]int{}
		for b := range v.Batches() {
			w := p.Waiting(b)
			if n := p.MadeUp(w.Ladder, w.Size).Nucs; n > 0 {
				want[b.Batch.Subject()] = n
			}
		}
		got := map[book.Subject]int{}
		for _, f := range rules.Findings(v) {
			if f.Act == rules.ActMakeUp {
				n := 0
				if _, err := fmt.Sscanf(f.Do, "Make up %d nuc", &n); err != nil {
					t.Fatalf("%q: %v", f.Do, err)
				}
				got[f.Of] = n
			}
		}
		if fmt.Sprint(got) != fmt.Sprint(want) {
			t.Errorf("rules make up %v, plan %v", got, want)
		}
	})
}

// twoBatches is a book with two yards, boxes of which some are alive, and two batches
// grafted up to four days apart.
func twoBatches(t *rapid.T) *booktest.Pen {
	home, out := booktest.Yard("home"), booktest.Yard("out")
	p := (&booktest.Pen{}).At("2027-04-01 12:00").Write(
		book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"}, book.YardDescribed{Yard: out, Name: "Out", Zone: "UTC"},
	)
	for i := range 16 {
		nuc, yard := booktest.Nuc(fmt.Sprint(i)), home
		if rapid.IntRange(0, 3).Draw(t, "out") == 0 {
			yard = out
		}
		p.Write(book.NucNamed{Nuc: nuc, Name: fmt.Sprint("N", i), Sides: 6}, book.NucPlaced{Nuc: nuc, Yard: yard})
		if rapid.Bool().Draw(t, "alive") {
			p.At("2027-05-04 10:00").Write(book.NucMadeUp{Nuc: nuc, Cups: rapid.SampledFrom([]float64{0.2, 2}).Draw(t, "cups")}).At("2027-04-01 12:00")
		}
	}
	for i, on := range []int{5, rapid.IntRange(4, 9).Draw(t, "graft")} {
		b, graft := booktest.Batch(fmt.Sprint("b", i)), calendar.Date(2027, 5, on)
		larvae := rapid.IntRange(1, 20).Draw(t, "larvae")
		if nucs := rapid.IntRange(0, 12).Draw(t, "planned"); nucs > 0 {
			yard := rapid.SampledFrom([]book.YardID{home, out}).Draw(t, "yard")
			p.At("2027-04-02 12:00").Write(book.BatchPlanned{Batch: b, Day: graft, Larvae: larvae, Nucs: nucs, Yard: yard})
		}
		p.At(graft.String() + " 15:00").Write(book.Grafted{Batch: b, Number: i + 1, Larvae: larvae})
		if rapid.Bool().Draw(t, "counted") {
			p.At("2027-05-12 09:00").Write(book.CappedCounted{Batch: b, Capped: rapid.IntRange(0, larvae).Draw(t, "capped")})
		}
		if rapid.IntRange(0, 3).Draw(t, "made") == 0 {
			p.At("2027-05-12 10:00").Write(book.BatchReadied{Batch: b, Step: book.NucsReady})
		}
	}
	return p
}
