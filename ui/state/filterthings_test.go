package state_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/state"
)

// TestTheFilterLeadsToACard: a customer who rings is found by typing, and so is all
// that is no nuc.
func TestTheFilterLeadsToACard(t *testing.T) {
	s := open(t)
	v := s.Present().View
	typed := map[string]book.Subject{}
	for o := range v.Orders() {
		typed["order "+o.Number], typed[o.Customer] = o.Order.Subject(), book.Subject{Kind: book.KindOrder}
	}
	for c := range v.Colonies() {
		typed["colony "+c.Name] = c.Colony.Subject()
		break
	}
	for p := range v.People() {
		typed["person "+p.Name] = p.Person.Subject()
	}
	if len(typed) < 4 {
		t.Fatalf("the demo season has no orders: %v", typed)
	}
	for words, want := range typed {
		w := &window{t: t, State: s}
		w.State.Room = state.Yard
		w.press("F", state.Ctrl).write(words).press("Return")
		if got := w.Selection.Last(); got != want && (want.UUID != book.Subject{}.UUID || got.Kind != want.Kind) {
			t.Errorf("%q leads to %v, want %v", words, got, want)
		}
	}
}

// TestAllOfTheFilterIsMarked by Ctrl+A: what is typed next takes its place.
func TestAllOfTheFilterIsMarked(t *testing.T) {
	w := start(t)
	w.State.Room = state.Yard
	w.press("F", state.Ctrl).write("cell").press("A", state.Ctrl).write("v")
	if w.Filter != "v" || w.Selection.Len() > 1 {
		t.Errorf("the filter is %q, %d are selected", w.Filter, w.Selection.Len())
	}
	if w.press("A", state.Ctrl).press("BackSpace"); w.Filter != "" {
		t.Errorf("the filter is %q", w.Filter)
	}
}
