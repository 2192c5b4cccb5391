package rules

import (
	"errors"
	"fmt"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Sense tells whether an entry makes sense at all: it is [Plausible], its
// things are known to the book, it lies not after now, and a box has no more
// sides, and no more brood, than it has room for; a graft is planned for a day to
// come. Whatever else it says is taken down.
func Sense(v *book.View, now time.Time, e book.Entry) error {
	if err := Plausible(e.Fact); err != nil {
		return err
	}
	if err := yearOf("when it happened", e.At.Instant.Year()); err != nil {
		return err
	}
	if e.At.Instant.After(now) {
		return fmt.Errorf("%s lies ahead: write down what has happened", e.At.InFrom(v.Today(), v.Zone()))
	}
	for _, s := range book.Subjects(e.Fact) {
		if id, ok := s.Nuc(); ok && v.Nuc(id).Name == "" && !founds(e.Fact) {
			return fmt.Errorf("the nuc is not in the book: name it first")
		}
		if id, ok := s.Batch(); ok && v.Batch(id).At.IsZero() && !founds(e.Fact) && !ofPlanned(v, id, e.Fact) {
			return fmt.Errorf("the batch is not in the book: write down its graft first")
		}
	}
	switch f := e.Fact.(type) {
	case book.Looked:
		return fits(v.Nuc(f.Nuc), f)
	case book.BatchPlanned:
		return plannable(v, e.At.Day(v.Zone()), f)
	case book.BatchDropped:
		return notGrafted(v, f.Batch)
	case book.BatchReadied:
		return readied(v, f)
	case book.HoursOn:
		if f.Day.IsZero() {
			return errors.New("the hours are of no day: say of which")
		}
	}
	return nil
}

// fits tells whether a nuc has room for what a look saw in it.
func fits(n *book.Nuc, f book.Looked) error {
	if sides, said := f.Sides.Get(); said && n.Sides > 0 && sides > float64(n.Sides) {
		return fmt.Errorf("%g sides in %s: it has %d", sides, n.Name, n.Sides)
	}
	if palms, said := f.Brood.Get(); said && n.Sides > 0 && palms > mostPalms(n) {
		return fmt.Errorf("%g palms of brood in %s: its %d sides hold %.0f at most", palms, n.Name, n.Sides, mostPalms(n))
	}
	return nil
}

// generous is by how much palms counted at a glance may pass the comb there is.
const generous = 2

// mostPalms is more brood in palms (1 dm²) than a nuc can hold; where nobody
// said how big its combs are, they are taken as the biggest.
func mostPalms(n *book.Nuc) float64 {
	if n.Side > 0 {
		return float64(n.Sides) * n.Side * generous
	}
	return float64(n.Sides) * practice.Of(practice.CombSideArea).Max
}

// yearsAhead is how far ahead anybody plans a graft.
const yearsAhead = 3

// plannable tells whether a graft can be meant on its day, by those who plan it
// on another.
func plannable(v *book.View, on calendar.Day, f book.BatchPlanned) error {
	switch {
	case f.Day.IsZero():
		return errors.New("the graft is planned for no day: say for which")
	case f.Day < on:
		return fmt.Errorf("a graft on %s lies behind: plan it for a day to come", f.Day)
	case f.Day > on.AddMonths(12*yearsAhead):
		return fmt.Errorf("a graft on %s is more than %d years ahead: write a nearer day", f.Day, yearsAhead)
	case !f.By.IsZero() && f.By <= f.Day:
		return fmt.Errorf("queens by %s of a graft on %s: write a later day for them", f.By, f.Day)
	}
	return notGrafted(v, f.Batch)
}

// notGrafted tells whether a batch can still be planned.
func notGrafted(v *book.View, id book.BatchID) error {
	if b := v.Batch(id); !b.At.IsZero() {
		return fmt.Errorf("batch %d is grafted: it is no longer planned", b.Number)
	}
	return nil
}

// readied: a step makes ready for a batch that is planned; nucs are made up for one that is
// grafted too.
func readied(v *book.View, f book.BatchReadied) error {
	if _, planned := v.BatchPlan(f.Batch); planned {
		return nil
	}
	if v.Batch(f.Batch).At.IsZero() {
		return errors.New("the batch is not on the plan: plan its graft first")
	}
	if f.Step == book.NucsReady {
		return nil
	}
	return notGrafted(v, f.Batch)
}

// founds tells whether a fact brings a nuc or a batch into the book, or speaks of
// a batch to come.
func founds(f book.Fact) bool {
	switch f.(type) {
	case book.NucNamed, book.Grafted, book.BatchPlanned, book.BatchDropped, book.BatchReadied:
		return true
	default:
		return false
	}
}

// ofPlanned tells whether a fact may be of a batch that is only planned, as a note may.
func ofPlanned(v *book.View, id book.BatchID, f book.Fact) bool {
	_, planned := v.BatchPlan(id)
	_, note := f.(book.Noted)
	return planned && note
}
