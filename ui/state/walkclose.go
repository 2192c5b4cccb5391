package state

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
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

// asksAlong asks for the cells of each batch that can be out, and for what else is
// counted.
func asksAlong(s State) (asks []Ask) {
	for b := range s.Walk.view.Batches() {
		if b.Left() > 0 {
			asks = append(asks, Ask{Name: cellsOf(b), Label: fmt.Sprintf("Cells of batch %d", b.Number), Kind: Figure})
		}
	}
	return append(asks, Ask{Name: "virgins", Label: "Virgins in cages", Kind: Figure}, Ask{Name: "cages", Label: "Empty cages", Kind: Figure})
}

func cellsOf(b *book.Batch) string { return "cells." + strconv.Itoa(b.Number) }

func along(s State, a *Answers) (facts []book.Fact) {
	add := func(what book.Goods, batch book.BatchID, name string) {
		if n := a.Count(name); n > 0 {
			facts = append(facts, book.TakenAlong{What: what, Batch: batch, Count: n})
		}
	}
	for b := range s.Walk.view.Batches() {
		if a.Said(cellsOf(b)) {
			add(book.Cells, b.Batch, cellsOf(b))
		}
	}
	add(book.Virgins, book.BatchID{}, "virgins")
	add(book.Cages, book.BatchID{}, "cages")
	if len(facts) == 0 {
		a.Wrong(s.Form.Asks[0].Name, "say how many of one of them")
	}
	return facts
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
	if a.Yes("twins") {
		for _, t := range s.Walk.Twins {
			facts = append(facts, book.Struck{Entry: t.Again.ID, Why: "typed twice"})
		}
	}
	return facts
}

// Goods are the goods of a count in words: "cells of batch 4".
func Goods(v *book.View, c rules.Closing) string {
	if c.Batch.IsZero() {
		return c.What.String()
	}
	return fmt.Sprintf("%s of batch %d", c.What, v.Batch(c.Batch).Number)
}

// TwinNucs is of how many nucs something stands twice.
func TwinNucs(twins []rules.Twin) int {
	nucs := map[book.NucID]bool{}
	for _, t := range twins {
		nucs[t.Nuc] = true
	}
	return len(nucs)
}

// TwinWords says of how many nucs lines stand twice and by whom.
func TwinWords(twins []rules.Twin) string {
	first := twins[0]
	said := counted(TwinNucs(twins), "nuc") + " typed twice"
	if a, b := first.First.Writer, first.Again.Writer; a != b && a != "" && b != "" {
		return said + ", by " + a + " and by " + b
	}
	return said
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

// unwrittenRow is the first row in which something was typed and not written.
func (s State) unwrittenRow() (WalkRow, bool) {
	for _, row := range s.Walk.Rows {
		if s.unwritten(row) {
			return row, true
		}
	}
	return WalkRow{}, false
}

func (s State) unwritten(row WalkRow) bool {
	draft := s.RowDraft(row)
	return draft != "" && draft != row.Typed
}

// unwrittenWords names the rows in which something was typed and not written.
func (s State) unwrittenWords() string {
	var names []string
	for _, row := range s.Walk.Rows {
		if s.unwritten(row) {
			names = append(names, cmp.Or(row.Title, "any nuc"))
		}
	}
	return strings.Join(names, ", ")
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
