package course_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// sound tells what is wrong with chances: they sum to one and each is one.
func sound(c course.Chances) string {
	for _, p := range []float64{
		c.Cell, c.Virgin, c.Mated, c.Laying, c.OwnCell, c.OwnVirgin, c.OwnMated, c.OwnLaying, c.DroneLayer, c.LayingWorkers, c.None,
	} {
		if !(p >= 0 && p <= 1+1e-9) {
			return "a chance outside 0 to 1"
		}
	}
	if !(math.Abs(c.Sum()-1) < 1e-9) {
		return "chances that do not sum to 1"
	}
	return ""
}

func drawSight(t *rapid.T) course.Sight {
	some := func(what string) course.Said { return course.Said(rapid.IntRange(0, 2).Draw(t, what)) }
	flag := func(what string) bool { return rapid.IntRange(0, 4).Draw(t, what) == 4 }
	return course.Sight{
		Queen:  rapid.SampledFrom([]book.Sight{book.Unsaid, book.NoneSeen, book.QueenSeen, book.VirginSeen}).Draw(t, "queen"),
		Eggs:   rapid.SampledFrom([]book.EggSight{book.EggsUnsaid, book.NoEggs, book.SingleEggs, book.ManyEggs}).Draw(t, "eggs"),
		Cell:   rapid.SampledFrom([]book.CellSight{book.CellUnsaid, book.CellUnsaid, book.CellShut, book.CellOpenAtTip, book.CellTornAtSide}).Draw(t, "cell"),
		Capped: some("capped"), OwnCells: some("own cells"), Larvae: flag("larvae"), Drones: flag("drones"),
		Thorough: flag("thorough"), Quick: flag("quick"), Young: flag("young"),
	}
}

// deeds are what may be done to a belief.
func deeds(m *course.Model, b *course.Belief) map[string]func(*rapid.T) {
	return map[string]func(*rapid.T){
		"day": func(t *rapid.T) {
			*b = b.After(m.Day(rapid.Float64Range(0, 8).Draw(t, "hours"), rapid.Float64Range(0.6, 4).Draw(t, "yard")))
		},
		"days": func(t *rapid.T) {
			d := m.Day(rapid.SampledFrom([]float64{0, 1.2, 3}).Draw(t, "hours"), 1)
			for range rapid.IntRange(1, 30).Draw(t, "days") {
				*b = b.After(d)
			}
		},
		"cell":     func(t *rapid.T) { m.GiveCell(b, course.EmergingIn(rapid.IntRange(-1, 20).Draw(t, "emerges"))) },
		"virgin":   func(t *rapid.T) { m.PutInVirgin(b, rapid.IntRange(-1, 60).Draw(t, "age")) },
		"queen":    func(*rapid.T) { m.PutInQueen(b) },
		"brood":    func(*rapid.T) { m.GiveBrood(b) },
		"broken":   func(t *rapid.T) { m.BreakDown(b, rapid.Bool().Draw(t, "young")) },
		"look":     func(t *rapid.T) { m.Weigh(b, drawSight(t)) },
		"take out": func(t *rapid.T) { b.TakeOut(m.Sees(drawSight(t))) },
	}
}

// drawBelief is a belief that days, deeds and looks led to.
func drawBelief(t *rapid.T, m *course.Model) course.Belief {
	b := []course.Belief{
		m.Unknown(), m.QueenlessFor(rapid.IntRange(0, 60).Draw(t, "for"), rapid.Bool().Draw(t, "young brood")),
		m.Virgin(rapid.IntRange(-1, 60).Draw(t, "age")),
	}[rapid.IntRange(0, 2).Draw(t, "begins")]
	all := deeds(m, &b)
	names := []string{"day", "days", "cell", "virgin", "queen", "brood", "broken", "look", "take out"}
	for range rapid.IntRange(0, 8).Draw(t, "deeds") {
		all[rapid.SampledFrom(names).Draw(t, "deed")](t)
	}
	return b
}

// drawModel is of the usual numbers, or of some at the ends of their ranges.
func drawModel(t *rapid.T) *course.Model {
	var n practice.Numbers
	if rapid.Bool().Draw(t, "own numbers") {
		for r := range practice.All() {
			if r.Group != practice.Course && r.Group != practice.Rates && r.Group != practice.Clock {
				continue
			}
			if v := rapid.SampledFrom([]float64{r.Default, r.Default, r.Min, r.Max}).Draw(t, r.Name); v != r.Default {
				if more, err := n.With(r.Key, v); err == nil {
					n = more
				}
			}
		}
	}
	return course.NewModel(n)
}

// TestChancesStayChances: through any days, deeds and looks, with any numbers
// in their ranges.
func TestChancesStayChances(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := drawModel(t)
		b := drawBelief(t, m)
		if wrong := sound(b.Chances()); wrong != "" {
			t.Fatalf("%s: %+v", wrong, b.Chances())
		}
		with, without := b.Split(m.Sees(drawSight(t)))
		if sum := with.Chances().Sum() + without.Chances().Sum(); !(math.Abs(sum-1) < 1e-9) {
			t.Fatalf("a belief split in two sums to %g", sum)
		}
		s := drawSight(t)
		was := b
		want := b.Expect(m.Sees(s))
		got := m.Weigh(&b, s)
		if !(math.Abs(got-want) < 1e-12) {
			t.Fatalf("%v has a chance of %g when weighed, %g when expected", s, got, want)
		}
		if got < 1e-5 && b != was {
			t.Fatalf("%v has a chance of %g and was believed", s, got)
		}
	})
}

// withoutEggs is 1 where a nuc has none, whoever laid them: a queen lost lately has
// left some, beside which the nuc may raise cells of its own.
var withoutEggs = course.Each(func(s course.State) float64 {
	switch s.Holds {
	case course.HoldsLaying, course.HoldsDroneLayer, course.HoldsWorkers:
		return 0
	case course.HoldsNone:
		if s.Days == 0 { // of these some have open brood
			return 0
		}
	case course.HoldsCell:
		if s.Own {
			return 0
		}
	}
	return 1
})

// TestLooksMoveLayingTheRightWay: eggs never speak against a laying queen and for what
// has none, no eggs never for her and against that. Against what has eggs that are seen
// more surely, of workers or of a queen lost lately, either may: hers are few at first.
func TestLooksMoveLayingTheRightWay(t *testing.T) {
	m := course.NewModel(practice.Numbers{})
	rapid.Check(t, func(t *rapid.T) {
		b := drawBelief(t, m)
		before, none := b.Chances(), b.Expect(withoutEggs)
		s := course.Sight{Eggs: book.SingleEggs, Thorough: rapid.Bool().Draw(t, "thorough"), Quick: rapid.Bool().Draw(t, "quick")}
		eggs := b
		m.Weigh(&eggs, s)
		if after, then := eggs.Chances(), eggs.Expect(withoutEggs); after.Lays()*none < before.Lays()*then-1e-12 {
			t.Fatalf("eggs: laying from %g to %g, without eggs from %g to %g", before.Lays(), after.Lays(), none, then)
		}
		s.Eggs = book.NoEggs
		m.Weigh(&b, s)
		after := b.Chances()
		if then := b.Expect(withoutEggs); after.Lays()*none > before.Lays()*then+1e-12 {
			t.Fatalf("no eggs: laying from %g to %g, without eggs from %g to %g", before.Lays(), after.Lays(), none, then)
		}
		if before.Lays()+none > 1-1e-12 && after.Lays() > before.Lays()+1e-12 {
			t.Fatalf("no eggs: laying from %g to %g", before.Lays(), after.Lays())
		}
	})
}

// TestGiftsNeverLeaveMoreQueenless: whatever is there, a cell, a virgin, a queen
// or brood never lowers the chance of a queen there or to come; and a cell
// given where none is held never lowers that of a queen who lays later on.
func TestGiftsNeverLeaveMoreQueenless(t *testing.T) {
	m := course.NewModel(practice.Numbers{})
	rapid.Check(t, func(t *rapid.T) {
		b := drawBelief(t, m)
		given, before := b, b.Chances()
		deeds(m, &given)[rapid.SampledFrom([]string{"cell", "virgin", "queen", "brood"}).Draw(t, "gift")](t)
		if after := given.Chances(); after.Queenless() > before.Queenless()+1e-12 {
			t.Fatalf("queenless from %g to %g", before.Queenless(), after.Queenless())
		}
		left := m.QueenlessFor(rapid.IntRange(0, 40).Draw(t, "queenless for"), false)
		celled := left
		m.GiveCell(&celled, course.EmergingIn(rapid.IntRange(0, 9).Draw(t, "emerges")))
		for range rapid.IntRange(0, 40).Draw(t, "days") {
			d := m.Day(rapid.Float64Range(0, 5).Draw(t, "hours"), 1)
			left, celled = left.After(d), celled.After(d)
		}
		if celled.Chances().Lays() < left.Chances().Lays()-1e-12 {
			t.Fatalf("laying %g with a cell, %g without", celled.Chances().Lays(), left.Chances().Lays())
		}
	})
}

// TestBetterYardsLoseNoQueens: where fewer are lost no fewer lay, on any day.
func TestBetterYardsLoseNoQueens(t *testing.T) {
	m := course.NewModel(practice.Numbers{})
	rapid.Check(t, func(t *rapid.T) {
		good := m.QueenlessFor(0, rapid.Bool().Draw(t, "young brood"))
		m.GiveCell(&good, course.EmergingIn(rapid.IntRange(0, 9).Draw(t, "emerges")))
		bad := good
		y := rapid.Float64Range(0.6, 4).Draw(t, "yard")
		worse := rapid.Float64Range(0, 3).Draw(t, "worse by")
		for day := range rapid.IntRange(1, 60).Draw(t, "days") {
			hours := rapid.Float64Range(0, 6).Draw(t, "hours")
			good, bad = good.After(m.Day(hours, y)), bad.After(m.Day(hours, y+worse))
			if g, b := good.Chances().Lays(), bad.Chances().Lays(); g < b-1e-12 {
				t.Fatalf("day %d: %g lay in the better yard, %g in the worse", day, g, b)
			}
		}
	})
}
