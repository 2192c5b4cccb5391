package state

import (
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// walkRecords are what is written down about a whole walk: what was taken along,
// and at its end what became of it.
var walkRecords = []Record{
	{Name: "walk along", Word: "What was taken along", Of: []book.Kind{book.NoKind}, Fits: walking, Why: notWalking, Asks: asksAlong, Facts: along},
	{Name: "walk close", Word: "Close the walk", Of: []book.Kind{book.NoKind}, Fits: walking, Why: notWalking, Asks: asksClose, Facts: closing},
}

func walking(s State) bool { return s.Walk != nil }

// ofWalk tells whether a record is one of a walk.
func (rec Record) ofWalk() bool {
	return slices.ContainsFunc(walkRecords, func(r Record) bool { return r.Name == rec.Name })
}

// asksClose asks for what is not accounted for, and whether what stands twice is
// to be struck.
func asksClose(s State) (asks []Ask) {
	for i, c := range s.Walk.Closing {
		if c.Missing() > 0 {
			goods := Goods(s.Walk.view, c)
			asks = append(asks,
				Ask{Name: fmt.Sprintf("dropped.%d", i), Label: "Dropped, of " + goods, Kind: Figure, Note: fmt.Sprintf("%d not accounted for; blank leaves it open", c.Missing())},
				Ask{Name: fmt.Sprintf("back.%d", i), Label: "Back home, of " + goods, Kind: Figure})
			if c.What == book.Cells {
				asks = append(asks, askWords(fmt.Sprintf("caged.%d", i), "Into cages, of "+goods, "", "the numbers of the cages, like "+s.nextCages(c.Missing())))
			}
		}
	}
	if n := len(s.Walk.Twins); n > 0 {
		asks = append(asks, Ask{Name: "twins", Label: "Strike what was typed twice", Kind: Yes, First: "yes", Note: TwinWords(s.Walk.Twins) + "; the later ones go"})
	}
	return asks
}

// closing is what closes the walk: what was dropped and brought back, and the
// strikes of what stands twice.
func closing(s State, a *Answers) (facts []book.Fact) {
	for i, c := range s.Walk.Closing {
		dropped, back := fmt.Sprintf("dropped.%d", i), fmt.Sprintf("back.%d", i)
		if n := a.Count(dropped); n > 0 {
			facts = append(facts, book.Dropped{What: c.What, Batch: c.Batch, Count: n})
		}
		if n := a.Count(back); n > 0 {
			facts = append(facts, book.BroughtBack{What: c.What, Batch: c.Batch, Count: n})
		}
	}
	facts = append(facts, closingCages(s, a)...)
	if a.Yes("twins") {
		for _, t := range s.Walk.Twins {
			facts = append(facts, book.Struck{Entry: t.Again.ID, Why: "typed twice"})
		}
	}
	return facts
}

// closingCages are the cells that went into cages instead of nucs.
func closingCages(s State, a *Answers) (facts []book.Fact) {
	for i, c := range s.Walk.Closing {
		name := fmt.Sprintf("caged.%d", i)
		if c.What != book.Cells || !a.Said(name) {
			continue
		}
		for _, label := range a.Cages(name, 0) {
			if a.inCage(label) != nil {
				a.Wrong(name, "in cage %s sits a queen already: take another number", label)
			}
			facts = append(facts, book.VirginCaged{Queen: book.QueenID(a.Mint()), Batch: c.Batch, Label: label, Cell: true})
		}
	}
	return facts
}

// toClose closes the walk: at once when all is accounted for, else with a short
// form.
func toClose(s State) (State, []Effect) {
	s.Selection = Selection{}
	if row, ok := s.unwrittenRow(); ok && !s.Walk.Warned {
		s = s.rowOpened(row.RowName)
		s.Note = Note{Text: s.unwrittenWords() + ": not written yet. Close the walk again to leave it so"}
		return s.withWalk(func(w *Walk) { w.Warned = true }), nil
	}
	if len(asksClose(s)) == 0 {
		return s.walkLeft(), nil
	}
	rec, _ := RecordNamed("walk close")
	return rec.open(s)
}

// closed tells whether the form that closes the walk was written by the message.
func (s State) closed(before State) bool {
	return before.Form != nil && before.Form.Record == "walk close" && s.Form == nil && s.Pen.Deeds > before.Pen.Deeds
}

// leavesOpen tells whether the form that closes the walk was left blank.
func (s State) leavesOpen(says FormSays) bool {
	return s.Form.Record == "walk close" && len(says.Answers.Mistakes) == 0 && len(says.Facts) == 0
}

// leaveOpen closes the walk and leaves open what is not accounted for.
func leaveOpen(s State) (State, []Effect) { return s.formLeft().walkLeft(), nil }

func instantly(s State) calendar.Moment { return calendar.Instantly(s.Now) }
