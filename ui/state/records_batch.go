package state

import (
	"cmp"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

var ofBatch = []book.Kind{book.KindBatch}

// batchRecords are what can be written down of a batch.
var batchRecords = []Record{
	{
		Name: "graft", Word: "Write down a graft", Of: []book.Kind{book.NoKind, book.KindYard, book.KindColony, book.KindBatch}, Hour: true,
		Fits: breederOrYard, Asks: askGraft, Facts: grafted,
	},
	{Name: "count", Word: "Count it", Of: ofBatch, For: []rules.Act{rules.ActCountCells}, Main: true, Asks: askCounts, Facts: counts},
	{
		Name: "sign", Word: "Seen on its cells", Of: ofBatch, Hour: true,
		Asks: askSign,
		Facts: func(_ State, a *Answers) []book.Fact {
			f := book.ClockSeen{Batch: a.batch().Batch}
			a.NeededWord("sign", &f.Sign)
			return fact(f)
		},
	},
	{Name: "cage", Word: "Cage them", Of: ofBatch, For: []rules.Act{rules.ActCollectCells}, Fits: cellsLeft, Asks: askCages, Facts: virginsCaged},
	{
		Name: "move cells", Word: "Move its cells", Of: ofBatch, For: []rules.Act{rules.ActMoveCells}, Hour: true,
		Fits: cellsLeft, Asks: askMoveCells, Facts: cellsMoved,
	},
	{
		Name: "read incubator", Word: "Read the incubator", Of: ofBatch, Hour: true, Fits: cellsLeft,
		Asks: func(s State) []Ask {
			return []Ask{askFigure("celsius", "Warmth from then on", "°C", s.warmth()), {Name: "humidity", Label: "Humidity, %", Kind: Figure}}
		},
		Facts: func(_ State, a *Answers) []book.Fact {
			return fact(book.IncubatorRead{Batch: a.batch().Batch, Celsius: a.celsius(), Humidity: a.Amount("humidity")})
		},
	},
	{Name: "along", Word: "Take along to a yard", Of: ofBatch, Asks: askGoods, Facts: goods(func(g book.TakenAlong) book.Fact { return g })},
	{Name: "back", Word: "Brought back", Of: ofBatch, Asks: askGoods, Facts: goods(func(g book.TakenAlong) book.Fact { return book.BroughtBack(g) })},
	{Name: "dropped", Word: "Dropped or crushed", Of: ofBatch, Asks: askGoods, Facts: goods(func(g book.TakenAlong) book.Fact { return book.Dropped(g) })},
}

// askSign asks what was seen on cells; on a late day a virgin has walked.
func askSign(s State) []Ask {
	a := Ask{Name: "sign", Label: "What was seen", Kind: Choice, Options: vocabulary(book.SeenCapped, book.SeenTipBare, book.SeenWalking)}
	if s.Fill == LateFill {
		a.First = book.SeenWalking.String()
	}
	return []Ask{a}
}

// batch is the batch that the form is about.
func (a *Answers) batch() *book.Batch {
	id, _ := a.Of.Last().Batch()
	return a.View.Batch(id)
}

// batchOn is the batch selected, as it stands now.
func (s State) batchOn() *book.Batch {
	id, _ := s.Selection.Last().Batch()
	return s.Present().View.Batch(id)
}

// breederOrYard tells whether what is selected is a colony to graft from, a batch that
// is planned, or neither a colony nor a batch.
func breederOrYard(s State) bool {
	if s.Selection.Last().Kind == book.KindBatch {
		return s.plannedChosen()
	}
	id, ok := s.Selection.Last().Colony()
	return !ok || s.Present().View.Colony(id).Is(book.Breeder)
}

func cellsLeft(s State) bool { return s.batchOn().Unplaced() > 0 }

func askGraft(s State) []Ask {
	last := lastOf[book.Grafted](s)
	number := last.Number
	for _, b := range s.Present().Batches() {
		number = max(number, b.Number)
	}
	plan, planned := s.planDue()
	line := ""
	if planned {
		last.Breeder, last.Larvae = plan.Breeder, plan.Larvae
		line = plan.Line
	}
	breeder := last.Breeder.Subject()
	if s.Selection.Last().Kind == book.KindColony {
		breeder = s.Selection.Last()
	}
	age := askFigure("age", "Age of the larvae, h", "", last.LarvaAge)
	age.Note = "left blank: " + typedFigure(s.Present().Numbers().Get(practice.LarvaAgeAtGraft)) + " h, as in your numbers"
	var of []Ask
	if plans := s.plans(); len(plans) > 0 {
		ask := askOne("plan", "Planned as", plan.Batch.Subject().String(), plans)
		ask.Note = "left blank: it was not planned"
		of = append(of, ask)
	}
	return append(
		of,
		askFigure("larvae", "Larvae", "", float64(last.Larvae)), age,
		askOne("breeder", "From breeder", breeder.String(), s.colonies(book.Breeder)),
		askWords("line", "Line", line, "left blank: the breeder's"),
		askOne("starter", "Into starter", last.Starter.Subject().String(), s.colonies(book.Starter)),
		askOne("grafter", "Who grafted", last.Grafter.Subject().String(), s.people()),
		askFigure("bars", "Bars", "", float64(last.Bars)),
		askFigure("number", "Number of the batch", "", float64(number+1)),
	)
}

// plans are the planned batches as options.
func (s State) plans() []Option {
	v := s.Present().View
	return things(v.Plans(), func(p book.BatchPlan) (book.Subject, string) {
		return p.Batch.Subject(), strings.TrimSpace(p.Day.Short()+" "+p.Line) + v.Apart(p)
	})
}

// planDue is the planned batch that is chosen, else the one that was planned for today
// or for the last day before.
func (s State) planDue() (due book.BatchPlan, ok bool) {
	if id, is := s.Selection.Last().Batch(); is && s.plannedChosen() {
		return s.Present().View.BatchPlan(id)
	}
	for p := range s.Present().View.Plans() {
		if p.Day <= s.Today() {
			due, ok = p, true
		}
	}
	return due, ok
}

func grafted(_ State, a *Answers) []book.Fact {
	f := book.Grafted{
		Batch: book.BatchID(a.Mint()), Number: a.NeededCount("number"), Larvae: a.NeededCount("larvae"), LarvaAge: a.Figure("age"),
		Breeder: a.Colony("breeder"), Starter: a.Colony("starter"), Grafter: book.PersonID(a.Thing("grafter").UUID), Line: a.Text("line"), Bars: a.Count("bars"),
	}
	if id, ok := a.Thing("plan").Batch(); ok {
		p, _ := a.View.BatchPlan(id)
		f.Batch, f.Line = id, cmp.Or(f.Line, p.Line)
	}
	if !f.Breeder.IsZero() {
		c := a.View.Colony(f.Breeder)
		f.Mother = c.Queen
		if f.Line == "" {
			f.Line = c.Line
		}
	}
	if b := a.View.BatchNumbered(f.Number); b != nil {
		a.Wrong("number", "batch %d is there already: take another number", f.Number)
	}
	return fact(f)
}

func askCounts(State) []Ask {
	return []Ask{
		{Name: "taken", Label: "Grafts taken", Kind: Figure},
		{Name: "capped", Label: "Capped cells", Kind: Figure},
		{Name: "ripe", Label: "Ripe cells together now", Kind: Figure, Note: "settles whatever was lost before"},
		{Name: "culled", Label: "Cells culled", Kind: Figure},
		askWords("why", "Why culled", "", ""),
		{Name: "out", Label: "Virgins out of cells not given", Kind: Figure},
		{Name: "dead", Label: "Cells found dead", Kind: Figure},
	}
}

func counts(_ State, a *Answers) (all []book.Fact) {
	b := a.batch()
	add := func(name string, fact func(int) book.Fact) {
		n := a.Count(name)
		if n > b.Larvae {
			a.Wrong(name, "batch %d had %d larvae: write no more", b.Number, b.Larvae)
		}
		if a.Said(name) {
			all = append(all, fact(n))
		}
	}
	add("taken", func(n int) book.Fact { return book.TakeCounted{Batch: b.Batch, Accepted: n} })
	add("capped", func(n int) book.Fact { return book.CappedCounted{Batch: b.Batch, Capped: n} })
	add("ripe", func(n int) book.Fact { return book.RipeCounted{Batch: b.Batch, Ripe: n} })
	add("culled", func(n int) book.Fact { return book.CellsCulled{Batch: b.Batch, Cells: n, Why: a.Text("why")} })
	out, dead := a.Count("out"), a.Count("dead")
	if a.Said("out") || a.Said("dead") {
		all = append(all, book.EmergedCounted{Batch: b.Batch, Out: out, Dead: dead})
	}
	if out+dead > b.Larvae {
		a.Wrong("out", "batch %d had %d larvae: write no more", b.Number, b.Larvae)
	}
	if len(all) == 0 {
		a.Wrong("taken", "write one count at least")
	}
	return all
}

func askCages(s State) []Ask {
	n, what := s.toCage()
	cages := ""
	if n > 0 {
		cages = s.nextCages(n)
	}
	return []Ask{
		askWords("cages", "Numbers of the cages", cages, "1-5, 7: one for each"),
		{Name: "what", Label: "They are", Kind: Choice, First: what, Options: []Option{{"virgins", "virgins"}, {"cells", "cells about to emerge"}}},
		askOne("bank", "Into bank", "", s.colonies(book.Bank)),
	}
}

// toCage is how many of a batch are caged, and as what: before its virgins are out the
// cells that no nuc is ready for, on a late day all; the one virgin who walks; later all.
func (s State) toCage() (n int, what string) {
	b, r := s.batchOn(), s.Present()
	switch out := r.Course.Emerges(b.Batch); {
	case s.Fill == LateFill:
		return b.Unplaced(), "cells"
	case !out.After(s.Now):
		return b.Unplaced(), "virgins"
	case !b.Walking.IsZero():
		return 1, "virgins"
	default:
		return r.judged.ToCage(b.Batch), "cells"
	}
}

func virginsCaged(_ State, a *Answers) (all []book.Fact) {
	a.Needed("cages")
	cages, bank := a.Cages("cages", 0), a.Colony("bank")
	for _, label := range cages {
		all = append(all, book.VirginCaged{Queen: book.QueenID(a.Mint()), Batch: a.batch().Batch, Label: label, Bank: bank, Cell: a.Text("what") == "cells"})
		if q := a.inCage(label); q != nil {
			a.Wrong("cages", "in cage %s sits a queen already: take another number", label)
		}
	}
	if left := a.batch().Unplaced(); len(cages) > left {
		a.Mind("%s: by the book batch %d has %d left", counted(len(cages), "cage"), a.batch().Number, left)
	}
	return all
}

// inCage is the queen in the hand who sits in a cage of a number; nil for none.
func (a *Answers) inCage(label string) *book.Queen {
	for q := range a.View.Queens() {
		if q.Label == label && q.Caged() {
			return q
		}
	}
	return nil
}

// warmth is that of the incubator as it was last read, else a brood nest's.
func (s State) warmth() float64 {
	if last := lastOf[book.IncubatorRead](s); last.Celsius > 0 {
		return last.Celsius
	}
	return s.Present().Numbers().Get(practice.BroodWarmth)
}

// celsius is a warmth that must not be left out.
func (a *Answers) celsius() float64 {
	a.Needed("celsius")
	return a.Figure("celsius")
}

// intoIncubator is the answer for the incubator among colonies.
const intoIncubator = "incubator"

func askMoveCells(s State) []Ask {
	to := append([]Option{{intoIncubator, "the incubator"}}, s.colonies(book.Finisher)...)
	warm := askFigure("celsius", "Warmth of the incubator", "°C", s.warmth())
	warm.Note = "only for the incubator"
	return []Ask{askOne("to", "Into", s.movesTo(), to), warm}
}

// movesTo is where the cells of the batch that is selected go next: to the finisher that
// their task names, to one that is to be chosen, or into the incubator.
func (s State) movesTo() string {
	for _, f := range s.Present().About(s.Selection.Last()) {
		if f.Act != rules.ActMoveCells {
			continue
		}
		if moved, named := rules.Moves(f); named {
			return moved.To.Subject().String()
		}
		return ""
	}
	return intoIncubator
}

func cellsMoved(_ State, a *Answers) []book.Fact {
	f := book.CellsMoved{Batch: a.batch().Batch}
	switch to := a.chosen("to"); to {
	case "":
		a.Wrong("to", "choose where they went, it is needed")
	case intoIncubator:
		if a.Said("celsius") {
			return []book.Fact{f, book.IncubatorRead{Batch: f.Batch, Celsius: a.Figure("celsius")}}
		}
	default:
		f.To, _ = a.Thing("to").Colony()
	}
	return fact(f)
}

func askGoods(s State) []Ask {
	b := s.batchOn()
	return []Ask{
		{Name: "what", Label: "What", Kind: Choice, First: book.Cells.String(), Options: vocabulary(book.Cells, book.Virgins, book.Queens, book.Cages)},
		askFigure("count", "How many", "", float64(b.Left())),
	}
}

// goods is what was carried or lost, counted.
func goods(of func(book.TakenAlong) book.Fact) func(State, *Answers) []book.Fact {
	return func(_ State, a *Answers) []book.Fact {
		g := book.TakenAlong{Batch: a.batch().Batch, Count: a.NeededCount("count")}
		a.NeededWord("what", &g.What)
		return fact(of(g))
	}
}
