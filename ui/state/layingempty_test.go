package state_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/state"
)

// A try-out that was looked at before anything stood in the yard begins from the yard once
// boxes do; and boxes that are added are read back in a line, with what their places have
// against them.
func TestAnEmptyTryOutBeginsFromTheYard(t *testing.T) {
	hill := booktest.Yard("Hill")
	pen := &booktest.Pen{Zone: zone, Writer: "Ida"}
	pen.At("2027-05-15 19:50").Write(book.YardDescribed{Yard: hill, Name: "Hill", Zone: "Europe/Berlin", Home: true},
		book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida"},
		book.FeatureDrawn{Feature: booktest.Feature("edge"), Yard: hill, What: book.Boundary, Points: []book.Point{{}, {X: 60}, {X: 60, Y: 40}, {Y: 40}}},
		book.FeatureDrawn{Feature: booktest.Feature("brook"), Yard: hill, What: book.Water, Points: []book.Point{{Y: 1}, {X: 60, Y: 1}}, Width: 2})
	w := inTheEvening(t, pen)
	if w.press("Z", state.Alt); !w.OnLayout() || len(w.Laying.Try.Stands) != 0 {
		t.Fatalf("the try-out of an empty yard: %+v, %s", w.Laying, w.Note.Text)
	}
	w.press("Escape")
	if w.OnLayout() {
		t.Fatal("the layout is not left")
	}
	w.fill("add boxes", "names=A1-A4, B1-B4", "combs=mini", "east=15", "north=3")
	says := w.FormSays()
	if len(says.Back) != 1 || says.Back[0] != "8 nucs on 2 stands: A, B" {
		t.Errorf("read back: %q", says.Back)
	}
	if !slices.ContainsFunc(says.Minds, func(s string) bool {
		return strings.Contains(s, "in water: B") || strings.Contains(s, "outside the boundary: B")
	}) {
		t.Errorf("minded: %q; stands %+v", says.Minds, says.Facts)
	}
	w.kept()
	if w.press("Z", state.Alt); !w.OnLayout() || w.Laying.Try.Nucs() != 8 {
		t.Errorf("the try-out has %d nucs: %s", w.Laying.Try.Nucs(), w.Note.Text)
	}
}
