package season_test

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
	"lidmark/domain/season"
)

// drawnBatches is a yard of nucs, some alive and some on full combs, and up to three batches:
// planned, or the first of them grafted as planned or without a plan, counted or not, with
// some steps done. Of two that are grafted the work of the day shares the living nucs by the
// hour at which cells must be out, the amounts by the day of the graft.
func drawnBatches(t *rapid.T) *booktest.Pen {
	p, home := world{}.pen(), booktest.Yard("home")
	for i := range rapid.IntRange(0, 30).Draw(t, "nucs") {
		n, side := booktest.Nuc(fmt.Sprint(i)), rapid.SampledFrom([]float64{2, 8}).Draw(t, "side")
		p.At("2027-03-01 12:00").Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("A%d", i+1), Sides: 6, Side: side}, book.NucPlaced{Nuc: n, Yard: home})
		if rapid.IntRange(0, 3).Draw(t, "alive") == 0 {
			p.At("2027-03-28 12:00").Write(book.NucMadeUp{Nuc: n, Cups: 4, Food: 900})
		}
	}
	for i := range rapid.IntRange(1, 3).Draw(t, "batches") {
		id, kind := booktest.Batch(fmt.Sprint(i)), 0
		if i == 0 {
			kind = rapid.IntRange(0, 2).Draw(t, "kind")
		}
		on := calendar.Date(2027, 4, 3) + calendar.Day(rapid.IntRange(0, 20).Draw(t, "day"))
		if kind > 0 {
			on = calendar.Date(2027, 3, 27) + calendar.Day(rapid.IntRange(0, 4).Draw(t, "grafted"))
		}
		larvae := rapid.IntRange(4, 100).Draw(t, "larvae")
		if kind < 2 {
			p.At("2027-03-20 12:00").Write(book.BatchPlanned{Batch: id, Day: on, Larvae: larvae, Nucs: rapid.IntRange(1, 20).Draw(t, "wants"), Yard: home})
			for _, step := range []book.ReadyStep{book.StarterSetUp, book.NucsReady} {
				if rapid.IntRange(0, 3).Draw(t, "done") == 0 {
					p.Write(book.BatchReadied{Batch: id, Step: step})
				}
			}
		}
		if kind > 0 {
			p.At(on.String() + " 15:00").Write(book.Grafted{Batch: id, Number: i + 1, Larvae: larvae})
			if rapid.Bool().Draw(t, "counted") {
				p.At((on + 1).String() + " 16:00").Write(book.TakeCounted{Batch: id, Accepted: rapid.IntRange(0, larvae).Draw(t, "taken")})
			}
		}
	}
	return p
}

// withGivers is the book with so many colonies of so many thousand bees.
func withGivers(p *booktest.Pen, n int, thousands float64) *plan.Planner {
	more := *p
	more.Entries = slices.Clone(p.Entries)
	more.At("2027-03-01 12:00")
	for i := range n {
		name := fmt.Sprint("giver ", i)
		more.Write(book.ColonyDescribed{Colony: booktest.Colony(name), Name: name, Yard: booktest.Yard("home"), Roles: []book.Role{book.BroodSource}, Thousands: thousands})
	}
	return plannerOf(&more)
}

// asked is what batches of the book ask of colonies on a day.
type asked struct{ kilograms, combs float64 }

// told is what the amounts say that the batches of a book ask for, by day, and what the nucs
// of each are made up with.
func told(p *plan.Planner) (byDay map[calendar.Day]asked, cups, combs map[book.BatchID]float64) {
	byDay, cups, combs = map[calendar.Day]asked{}, map[book.BatchID]float64{}, map[book.BatchID]float64{}
	add := func(l plan.Ladder, s plan.Size) {
		for _, n := range p.Needs(l, s) {
			step, sum := plan.MakeUpNucs, byDay[n.From]
			switch n.Good {
			case plan.StarterBees:
				step, sum.kilograms = plan.SetUpStarter, sum.kilograms+n.Amount
			case plan.KilogramsOfBees:
				sum.kilograms += n.Amount
			case plan.BroodCombs:
				sum.combs += n.Amount
				combs[s.Not] = n.Amount
			case plan.CupsOfBees:
				cups[s.Not] = n.Amount
				continue
			default:
				continue
			}
			if l.Rung(step).By >= p.View().Today() {
				byDay[n.From] = sum
			}
		}
	}
	for b := range p.View().Batches() {
		w := p.Waiting(b)
		add(w.Ladder, w.Size)
	}
	for b := range p.View().Plans() {
		add(p.LadderOf(b), p.SizeOf(b))
	}
	return byDay, cups, combs
}

// weekTo is what is asked in the week to a day.
func weekTo(byDay map[calendar.Day]asked, on calendar.Day) (sum asked) {
	for d, a := range byDay {
		if on-7 < d && d <= on {
			sum.kilograms, sum.combs = sum.kilograms+a.kilograms, sum.combs+a.combs
		}
	}
	return sum
}

// TestOneNumberForOneQuestion: what a batch of the book, planned or grafted, wants of bees and
// brood is one number: in its amounts, in what is left for a wish beside it, in the clashes of
// the season where colonies give next to nothing, and in the work of the day.
func TestOneNumberForOneQuestion(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pen := drawnBatches(t)
		rich := withGivers(pen, 100, 40)
		byDay, cups, combs := told(rich)
		oneForAWish(t, rich, byDay)
		poor := withGivers(pen, 1, 20.1)
		oneForTheSeason(t, poor, byDay)
		for _, f := range rules.Findings(rich.View()) {
			id, is := f.Of.Batch()
			if ready, ok := rules.Readies(f); !is || f.Act != rules.ActMakeUp && !(ok && ready.Step == book.NucsReady) {
				continue
			}
			if was, _ := rich.View().BatchPlan(id); was.Made(book.NucsReady) {
				continue // said to be, and none is there: asked again
			}
			if math.Abs(f.Goods.Cups-math.Ceil(cups[id]-1e-9)) > 1e-9 || math.Abs(f.Goods.Combs-combs[id]) > 1e-9 {
				t.Errorf("%s: %v cups and %v combs, by the amounts %v and %v", f.Do, f.Goods.Cups, f.Goods.Combs, cups[id], combs[id])
			}
		}
	})
}

// oneForAWish: of what a hundred colonies give a wish has what the batches leave.
func oneForAWish(t *rapid.T, p *plan.Planner, byDay map[calendar.Day]asked) {
	on := calendar.Date(2027, 4, 3) + calendar.Day(rapid.IntRange(0, 25).Draw(t, "wish"))
	l := p.Ladder(p.GraftAt(on), 60, booktest.Yard("home"))
	up := l.Rung(plan.MakeUpNucs).Best
	var have asked
	for _, g := range p.Givers(up) {
		have.kilograms, have.combs = have.kilograms+g.Kilograms, have.combs+g.Combs
	}
	taken := weekTo(byDay, up)
	given := p.Given(plan.Wanting{Ladder: l, Size: plan.Size{Nucs: 60, Yard: booktest.Yard("home")}})[0]
	if g := given[len(given)-1]; math.Abs(g.Kilograms-(have.kilograms-taken.kilograms)) > 1e-6 || math.Abs(g.Combs-(have.combs-taken.combs)) > 1e-6 {
		t.Errorf("for a wish of %s %.3f kg and %.2f combs are there on %s: of %+v the batches take %+v", on, g.Kilograms, g.Combs, up, have, taken)
	}
}

// oneForTheSeason: where one colony gives next to nothing every day on which something is
// asked for is a clash, of all that is asked in the week to it.
func oneForTheSeason(t *rapid.T, p *plan.Planner, byDay map[calendar.Day]asked) {
	found := map[calendar.Day]asked{}
	for _, c := range season.Clashes(p) {
		sum := found[c.From]
		switch c.Kind {
		case season.BeesShort:
			sum.kilograms = c.Want
		case season.BroodShort:
			sum.combs = c.Want
		}
		found[c.From] = sum
	}
	for d := range byDay {
		want, got := weekTo(byDay, d), found[d]
		if want.combs <= 2 { // that one gives
			want.combs, got.combs = 0, 0
		}
		if d >= p.View().Today() && (math.Abs(want.kilograms-got.kilograms) > 1e-6 || math.Abs(want.combs-got.combs) > 1e-6) {
			t.Errorf("the season wants %+v in the week to %s, the amounts %+v", got, d, want)
		}
	}
}
