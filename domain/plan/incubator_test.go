package plan_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/course"
	"lidmark/domain/plan"
)

// incubating is a book of which the incubator holds so many cells, with what is written
// besides.
func incubating(places float64, write func(*booktest.Pen)) *plan.Planner {
	p := (&booktest.Pen{}).At("2027-04-01 18:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	if places > 0 {
		p.Write(book.NumberChanged{Number: "incubator_places", Value: places})
	}
	write(p)
	return plan.New(course.New(p.View("2027-05-06 08:00")))
}

// By hand: of 96 larvae 0.80 are accepted, 0.95 of those capped, where the graft does not
// fail: 73 places; of 24 larvae 19, of 12 ten. A book whose keeper has no incubator wants
// none. Of a grafted batch it is what was counted, where that was moved into the incubator.
func TestPlacesInTheIncubator(t *testing.T) {
	batch := func(name, graft string, larvae int) book.BatchPlanned {
		return book.BatchPlanned{Batch: booktest.Batch(name), Day: day(t, graft), Larvae: larvae, Nucs: 10, Yard: booktest.Yard("home")}
	}
	// live is a batch of virgins, who are all out on 13 May.
	live := func(to book.ColonyID) func(p *booktest.Pen) {
		return func(p *booktest.Pen) {
			b := batch("live", "2027-04-30", 50)
			b.Virgins = true
			p.At("2027-04-30 12:00").Write(b, book.Grafted{Batch: b.Batch, Number: 1, Larvae: 50})
			p.At("2027-05-05 12:00").Write(book.CappedCounted{Batch: b.Batch, Capped: 31}, book.CellsMoved{Batch: b.Batch, To: to})
		}
	}
	for _, c := range []struct {
		name   string
		places float64
		graft  string
		write  func(*booktest.Pen)
		have   float64 // -1: nothing is told
	}{
		{"no incubator", 0, "2027-05-10", func(*booktest.Pen) {}, -1},
		{"alone", 60, "2027-05-10", func(*booktest.Pen) {}, 60},
		{"beside one of a day later", 60, "2027-05-10", func(p *booktest.Pen) { p.Write(batch("next", "2027-05-11", 24)) }, 41},
		{"beside two in turn", 60, "2027-05-10", func(p *booktest.Pen) { p.Write(batch("next", "2027-05-13", 24), batch("before", "2027-05-07", 12)) }, 41},
		{"beside one of two weeks later", 60, "2027-05-10", func(p *booktest.Pen) { p.Write(batch("next", "2027-05-24", 24)) }, 60},
		{"beside a live one in it", 60, "2027-05-07", live(book.ColonyID{}), 29},
		{"beside a live one in a finisher", 60, "2027-05-07", live(booktest.Colony("F")), 60},
	} {
		it := batch("it", c.graft, 96)
		p := incubating(c.places, func(p *booktest.Pen) { c.write(p); p.Write(it) })
		b, _ := p.View().BatchPlan(it.Batch)
		l := p.LadderOf(b)
		n, told := needs(p, l, p.SizeOf(b))[plan.InIncubator]
		if told != (c.have >= 0) {
			t.Errorf("%s: told: %v", c.name, told)
		}
		if told && (n.Amount != 73 || n.Have != c.have || n.From != l.Rung(plan.CountCapped).Best || n.To != l.Rung(plan.GiveCells).Best) {
			t.Errorf("%s: %v of %v from %s to %s, by hand 73 of %v", c.name, n.Amount, n.Have, n.From, n.To, c.have)
		}
	}
}
