package state

import (
	"cmp"
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// Coming is work at a batch or its nucs that is best done on one day.
type Coming struct {
	Day calendar.Day
	Do  string
	Act rules.Act
	Of  []book.Subject // the batch, or nucs of it
}

// Words say what is to be done, and at how many nucs.
func (c Coming) Words() string {
	if len(c.Of) < 2 {
		return c.Do
	}
	return fmt.Sprintf("%s, %d nucs", c.Do, len(c.Of))
}

// Comes is the work of a batch and at its nucs on the days to come, in their
// order, like work on one day together.
func (r *Reading) Comes(b *book.Batch) (all []Coming) {
	add := func(of book.Subject) {
		for _, f := range r.About(of) {
			day := max(r.BestDay(f), r.Day)
			if f.Act == rules.ActNone {
				continue
			}
			i := slices.IndexFunc(all, func(c Coming) bool { return c.Day == day && c.Do == f.Do })
			if i < 0 {
				all, i = append(all, Coming{Day: day, Do: f.Do, Act: f.Act}), len(all)
			}
			all[i].Of = append(all[i].Of, of)
		}
	}
	add(b.Batch.Subject())
	for _, n := range r.NucsOf(b.Batch) {
		add(n.Nuc.Nuc.Subject())
	}
	slices.SortStableFunc(all, func(a, b Coming) int { return cmp.Compare(a.Day, b.Day) })
	return all
}

// BatchWork is what is done next at the batch that fills the room: a word for its
// button, and the command that begins it.
type BatchWork struct{ Word, Command string }

// BatchWork is the work that is due at the batch that fills the room; where none
// is, its nucs are taken.
func (s State) BatchWork() BatchWork {
	id, _ := s.FillOf.Batch()
	r := s.Reading()
	if _, late := r.Late(id); late {
		return BatchWork{"The ways out", "late day"}
	}
	if word, _, _ := s.dueAtBatch(); word != "" {
		return BatchWork{word, "batch work"}
	}
	return BatchWork{"Select its nucs", "batch nucs"}
}

// dueAtBatch is the work that is due at the batch that fills the room in words,
// what it is to be done at, and the record that writes it down; none of them where
// nothing is due.
func (s State) dueAtBatch() (word string, at []book.Subject, record string) {
	id, ok := s.FillOf.Batch()
	r := s.Reading()
	b := r.View.Batch(id)
	if !ok || b.At.IsZero() {
		return "", nil, ""
	}
	for _, c := range r.Comes(b) {
		if rec := recordFor(c.Act, c.Of[0].Kind); c.Day <= r.Day && rec != "" {
			return c.short(), c.Of, rec
		}
	}
	return "", nil, ""
}

// short is what is to be done as a button says it: "look for eggs, 18 nucs".
func (c Coming) short() string {
	word := c.Act.String()
	if len(c.Of) < 2 {
		return word
	}
	return fmt.Sprintf("%s, %d nucs", word, len(c.Of))
}

// recordFor is the record that writes an act down of things of a kind; "" for none.
func recordFor(act rules.Act, kind book.Kind) string {
	for _, rec := range records {
		if slices.Contains(rec.For, act) && slices.Contains(rec.Of, kind) {
			return rec.Name
		}
	}
	return ""
}

// noBatchWork says why the work that is due at the batch cannot be written down.
func noBatchWork(s State) string {
	if why := cmp.Or(noFill(s), noPen(s)); why != "" {
		return why
	}
	if word, _, _ := s.dueAtBatch(); word == "" {
		return "nothing is due at this batch"
	}
	return ""
}

// batchWorked is the window about to open the record of the work that is due at the
// batch, with what it is to be done at selected.
func (s State) batchWorked() State {
	_, at, record := s.dueAtBatch()
	s.Selection, s.then = Select(at...), record
	return s
}
