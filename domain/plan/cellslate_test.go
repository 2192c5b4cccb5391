package plan_test

import (
	"math"
	"testing"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// Cells that are given a day late stay together where their hard hour is later still, and lose
// what the clock has it; where it is before they are caged by it, and those that are out by then come to as
// many queens fewer as the table has it for virgins under a day old. Cells that no nuc is there for
// cost nothing, however many there are.
func TestCellsGivenADayLate(t *testing.T) {
	pen := yardOf(64)
	larvae, nucs := 60, 40
	late := func(graft string) (plan.CellsLate, plan.Batch) {
		p := plannerOf(pen, "2027-03-16 08:00")
		at, err := time.Parse("2006-01-02 15:04", graft)
		if err != nil {
			t.Fatal(err)
		}
		day := day(t, graft[:10])
		b := p.Answer(plan.Wish{Queens: 20, By: day + 70, Graft: day, Minute: at.Hour() * 60, Larvae: larvae, Nucs: nucs, Laying: true}).Batches[0]
		return p.CellsLate(b), b
	}
	caged, b := late("2027-05-03 09:00")
	if caged.Cells != 46 || !caged.Hard.Equal(b.Clock.Hard()) || caged.At.Before(caged.Hard) {
		t.Fatalf("%+v", caged)
	}
	n := practice.Numbers{}
	out := b.Clock.Out(caged.At) / float64(larvae)
	near(t, "queens of caged cells", caged.Queens, 40*out*(n.Get(practice.AcceptCell)-n.Get(practice.AcceptVirginUnderDay))*0.875, 1e-6)
	if says := "by Thu 13 May 15:00, in cages from Thu 13 May 05:35 on: 0 queens fewer"; caged.Words(time.UTC) != says {
		t.Errorf("says %q", caged.Words(time.UTC))
	}
	larvae = 200
	if many, _ := late("2027-05-03 09:00"); many.Cells <= caged.Cells || math.Abs(many.Queens-caged.Queens) > 1e-6 {
		t.Errorf("of 200 larvae %+v", many)
	}
	larvae = 60
	who := book.PersonDescribed{Person: booktest.Person("who"), Name: "Nela"} // cells are given on Wed 12 May then
	who.Free[time.Wednesday] = book.FreeHours{From: 10 * 60, Until: 14 * 60}
	pen.Write(who)
	together, b := late("2027-05-03 22:00")
	want := bee.Batch{Graft: b.Ladder.Graft, Cells: 46}.Clock(practice.Numbers{}).Loose().Lost(together.At)
	near(t, "lost by the clock", together.Lost, want, 1e-12)
	if !together.Hard.IsZero() || together.Lost > 0.5 {
		t.Errorf("%+v", together)
	}
	near(t, "queens of cells that stay together, six of them spare", together.Queens, 0, 1e-9)
	nucs = 64
	every, _ := late("2027-05-03 22:00")
	near(t, "queens of cells that stay together, each with a nuc", every.Queens, want*0.70, 1e-9)
	if says := "by Thu 13 May 15:00: 0 lost"; together.Words(time.UTC) != says {
		t.Errorf("says %q", together.Words(time.UTC))
	}
}
