package state

import (
	"fmt"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/course"
)

// trial is a nuc as it would stand with what a line says of it: a season of its
// own entries alone, so that the size of the book does not matter.
func (s State) trial(id book.NucID, t TypedLine) *Nuc {
	w := s.Walk
	row, _ := w.Row()
	entries := slices.Clone(w.ground)
	for e := range w.view.Lines(id.Subject()) {
		if !slices.ContainsFunc(row.entries, func(old book.Entry) bool { return old.ID == e.ID }) {
			entries = append(entries, e)
		}
	}
	ids := t.ids
	on := w.view.On()
	for _, e := range t.Entries(&ids, s.Now, s.Pen.Writer) {
		if nucIn(e.Fact) == id {
			entries = append(entries, e)
		}
		if e.At.Instant.After(on) {
			on = e.At.Instant
		}
	}
	view := book.NewSeason(w.zones, entries).At(on)
	n := view.Nuc(id)
	return &Nuc{Nuc: n, Presumed: course.Beside(view, w.course).Of(n), reading: w.Before}
}

// zones finds the time zones of the book's yards by name.
func (w *Walk) zones(name string) (*time.Location, error) {
	for y := range w.Before.View.Yards() {
		if y.Zone.String() == name {
			return y.Zone, nil
		}
	}
	return nil, fmt.Errorf("zone %q: no yard has it", name)
}

// groundOf are the entries of a book on which the clocks of all nucs rest: the
// yards, the numbers, and the batches without what was given to nucs.
func groundOf(v *book.View) (all []book.Entry) {
	keep := func(of book.Subject) {
		for e := range v.Lines(of) {
			if grounded(e.Fact) {
				all = append(all, e)
			}
		}
	}
	keep(book.Subject{})
	for y := range v.Yards() {
		keep(y.Yard.Subject())
	}
	for b := range v.Batches() {
		keep(b.Batch.Subject())
	}
	return all
}

// grounded tells whether clocks of nucs rest on a fact that is told of no nuc.
func grounded(f book.Fact) bool {
	switch f.(type) {
	case book.StandSet, book.FeatureDrawn, book.WeatherSeen, book.WeatherHours, book.WeatherNormal:
		return false
	}
	return nucIn(f).IsZero()
}
