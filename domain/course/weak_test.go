package course_test

import (
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// TestOpenBroodHoldsWorkersBack: on open brood the days to laying workers begin
// when it is capped, nine days on.
func TestOpenBroodHoldsWorkersBack(t *testing.T) {
	m := course.NewModel(noOwnCells(t))
	bare, brood, d := m.Queenless(false), m.Queenless(true), m.Day(0, 1)
	for range 9 {
		brood = brood.After(d)
	}
	if p := brood.Chances().LayingWorkers; p != 0 {
		t.Errorf("workers lay beside open brood in %g", p)
	}
	for day := range 36 {
		if got, want := brood.Chances().LayingWorkers, bare.Chances().LayingWorkers; got != want {
			t.Errorf("day %d: %g after open brood, %g without", day, got, want)
		}
		bare, brood = bare.After(d), brood.After(d)
	}
}

// TestSilence: who gives a cell, a virgin or brood and has no word of eggs would
// have told of laying workers in 0.6; a glance tells in 1 − 0.4^0.3, a word of
// single eggs says more than silence.
func TestSilence(t *testing.T) {
	n := practice.Numbers{}.Get
	tells := n(practice.TellsManyEggs)
	lay := func(then ...book.Fact) float64 {
		p := pen(t)
		p.At("2027-04-20 08:00").Write(book.NucNamed{Nuc: a1, Name: "A1"}, book.NucPlaced{Nuc: a1, Yard: yard}, book.NucMadeUp{Nuc: a1, Cups: 3})
		p.At("2027-05-13 10:00").Write(then...)
		v := p.View("2027-05-13 12:00")
		return course.New(v).Held(v.Nuc(a1)).Chances().LayingWorkers
	}
	before := lay(book.Fed{To: a1.Subject(), Fondant: 100})
	odds := func(p float64) float64 { return p / (1 - p) }
	for what, row := range map[string]struct {
		fact book.Fact
		left float64 // of the odds
	}{
		"cell":         {book.CellGiven{Nuc: a1}, 1 - tells},
		"virgin":       {book.VirginPutIn{Nuc: a1}, 1 - tells},
		"capped brood": {book.BroodGiven{To: a1.Subject(), Capped: 2}, 1 - tells},
		"cell looked":  {book.Looked{Nuc: a1, OwnCells: book.Said(0)}, 1 - tells},
		"glance":       {book.Looked{Nuc: a1, OwnCells: book.Said(0), Quick: true}, math.Pow(1-tells, n(practice.QuickLook))},
	} {
		if got, want := odds(lay(row.fact))/odds(before), row.left; !(math.Abs(got-want) < 1e-9) {
			t.Errorf("%s: odds of laying workers fall to %.6f, want %.6f", what, got, want)
		}
	}
	if got := lay(book.Looked{Nuc: a1, Eggs: book.ManyEggs}); got < 0.99 {
		t.Errorf("many eggs a cell: %g", got)
	}
}

// TestTooFewBees: of queens in a nuc seen with one side of bees fewer are left a
// day, until bees are given or a look finds more; she is seen nowhere sooner.
func TestTooFewBees(t *testing.T) {
	lays := func(looks map[string]book.Fact) float64 {
		p := pen(t)
		p.At("2027-05-13 08:00").Write(book.NucNamed{Nuc: a1, Name: "A1"}, book.NucPlaced{Nuc: a1, Yard: yard}, book.NucMadeUp{Nuc: a1, Cups: 3})
		p.At("2027-05-15 10:00").Write(book.CellGiven{Nuc: a1})
		signs(p, calendar.Date(2027, 5, 16), repeat("+", 20))
		for _, at := range []string{"2027-05-19 09:00", "2027-05-24 09:00"} {
			if f := looks[at]; f != nil {
				p.At(at).Write(f)
			}
		}
		v := p.View("2027-06-08 12:00")
		return course.New(v).Held(v.Nuc(a1)).Chances().Lays()
	}
	few, many := book.Looked{Nuc: a1, Sides: book.Said(1)}, book.Looked{Nuc: a1, Sides: book.Said(4)}
	given := book.BeesAdded{Nuc: a1, Cups: 2}
	usual := lays(nil)
	kept := lays(map[string]book.Fact{"2027-05-19 09:00": many})
	left := lays(map[string]book.Fact{"2027-05-19 09:00": few})
	if kept != usual {
		t.Errorf("enough bees seen: %g, none spoken of %g", kept, usual)
	}
	between(t, "of those who would lay, after 20 d of too few bees", left/usual, 0.40, 0.55) // e^−0.8 = 0.45
	for what, then := range map[string]book.Fact{"seen": many, "given": given} {
		mended := lays(map[string]book.Fact{"2027-05-19 09:00": few, "2027-05-24 09:00": then})
		between(t, "bees "+what+" after 5 d", mended/usual, 0.78, 0.88) // e^−0.2 = 0.82
	}
}

// TestALostQueensEggs: she who was lost yesterday left eggs: a look that finds
// none knows that she was not.
func TestALostQueensEggs(t *testing.T) {
	m := course.NewModel(practice.Numbers{})
	for _, sight := range []struct {
		what string
		s    course.Sight
		want float64
	}{
		{"no eggs", course.Sight{Eggs: book.NoEggs}, 0.05},
		{"no eggs, brood was left", course.Sight{Eggs: book.NoEggs, Young: true}, 0.998},
		{"larvae", course.Sight{Larvae: true}, 0.95},
	} {
		b := m.Queenless(true)
		if got := b.Expect(m.Sees(sight.s)); !(math.Abs(got-sight.want) < 1e-3) {
			t.Errorf("%s on the day after: %g, want %g", sight.what, got, sight.want)
		}
		for range 13 {
			b = b.After(m.Day(0, 1))
		}
		want := map[bool]float64{true: 0.002, false: 0.998}[sight.s.Larvae]
		if got := b.Expect(m.Sees(sight.s)); !(math.Abs(got-want) < 1e-3) {
			t.Errorf("%s after thirteen days: %g, want %g", sight.what, got, want)
		}
	}
}
