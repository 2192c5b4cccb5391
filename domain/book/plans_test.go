package book_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
)

// TestPlans: a plan goes on to its next step with every deed, and is over when
// the last is written, taken back, or replaced.
func TestPlans(t *testing.T) {
	nuc, four, day := booktest.Nuc("A1"), booktest.Batch("4"), calendar.Date(2027, time.May, 15)
	with := func(what book.Plan) book.Planned { return book.Planned{Nuc: nuc, What: what, Batch: four, Day: day} }
	for name, row := range map[string]struct {
		plan  book.Planned
		deeds []book.Fact
		want  book.Plan
	}{
		"open":                {with(book.PlanGiveCell), nil, book.PlanGiveCell},
		"given":               {with(book.PlanGiveCell), []book.Fact{book.CellGiven{Nuc: nuc, Batch: four}}, book.PlanNone},
		"fed meanwhile":       {with(book.PlanGiveCell), []book.Fact{book.Fed{To: nuc.Subject()}}, book.PlanGiveCell},
		"eggs found":          {with(book.PlanLookOrGive), []book.Fact{book.Looked{Nuc: nuc, Eggs: book.SingleEggs}}, book.PlanNone},
		"nothing found":       {with(book.PlanLookOrGive), []book.Fact{book.Looked{Nuc: nuc, Eggs: book.NoEggs}}, book.PlanGiveCell},
		"only looked":         {book.Planned{Nuc: nuc, What: book.PlanLook, Day: day}, []book.Fact{book.Looked{Nuc: nuc}}, book.PlanNone},
		"broken down":         {with(book.PlanBreakDown), []book.Fact{book.OwnCellsBroken{Nuc: nuc}}, book.PlanGiveCell},
		"taken out":           {with(book.PlanTakeOut), []book.Fact{book.QueenCaught{Nuc: nuc, Culled: true}}, book.PlanGiveCell},
		"taken out, no ware":  {book.Planned{Nuc: nuc, What: book.PlanTakeOut, Day: day}, []book.Fact{book.QueenCaught{Nuc: nuc}}, book.PlanNone},
		"shaken out":          {with(book.PlanShakeOut), []book.Fact{book.ShakenOut{Nuc: nuc}}, book.PlanMakeUp},
		"shaken out, another": {with(book.PlanGiveCell), []book.Fact{book.ShakenOut{Nuc: nuc}}, book.PlanNone},
		"made up":             {with(book.PlanMakeUp), []book.Fact{book.NucMadeUp{Nuc: nuc, Cups: 3}}, book.PlanGiveCell},
		"a virgin":            {book.Planned{Nuc: nuc, What: book.PlanBreakDown, Virgin: true, Day: day}, []book.Fact{book.OwnCellsBroken{Nuc: nuc}}, book.PlanPutInVirgin},
		"caught":              {book.Planned{Nuc: nuc, What: book.PlanCatch, Day: day}, []book.Fact{book.QueenCaught{Nuc: nuc}}, book.PlanNone},
		"brood given":         {book.Planned{Nuc: nuc, What: book.PlanGiveBrood, Day: day}, []book.Fact{book.BroodGiven{To: nuc.Subject(), Open: 1}}, book.PlanNone},
		"bees added":          {book.Planned{Nuc: nuc, What: book.PlanAddBees, Day: day}, []book.Fact{book.BeesAdded{Nuc: nuc, Cups: 1}}, book.PlanNone},
		"fed":                 {book.Planned{Nuc: nuc, What: book.PlanFeed, Day: day}, []book.Fact{book.Fed{To: nuc.Subject(), Litres: 0.3}}, book.PlanNone},
		"narrowed":            {book.Planned{Nuc: nuc, What: book.PlanNarrow, Day: day}, []book.Fact{book.EntranceSet{Nuc: nuc, Area: 2}}, book.PlanNone},
		"united":              {book.Planned{Nuc: nuc, What: book.PlanUnite, Day: day}, []book.Fact{book.United{Nuc: nuc, With: booktest.Nuc("A2").Subject()}}, book.PlanNone},
		"taken back":          {with(book.PlanGiveCell), []book.Fact{book.Planned{Nuc: nuc}}, book.PlanNone},
		"replaced":            {with(book.PlanGiveCell), []book.Fact{book.Planned{Nuc: nuc, What: book.PlanLook, Day: day}}, book.PlanLook},
	} {
		t.Run(name, func(t *testing.T) {
			p := &booktest.Pen{Zone: time.UTC}
			p.At("2027-05-13 18:00").Write(book.NucNamed{Nuc: nuc, Name: "A1"}, book.NucMadeUp{Nuc: nuc, Cups: 3})
			p.At("2027-05-15 10:00").Write(row.plan)
			p.At("2027-05-15 11:00").Write(row.deeds...)
			n := p.View("2027-05-15 12:00").Nuc(nuc)
			if n.Plan.What != row.want {
				t.Errorf("%q is left of it, want %q", n.Plan.What, row.want)
			}
			if n.PlannedAt.IsZero() != (row.want == book.PlanNone) {
				t.Errorf("decided at %v", n.PlannedAt)
			}
		})
	}
}
