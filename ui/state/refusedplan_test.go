package state_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/state"
)

// TestASelectionIsRefusedAsItsNucsAre: what is refused on a nuc's own card is refused on a
// selection that has it, by its name; a selection of nucs at which it fits is not.
func TestASelectionIsRefusedAsItsNucsAre(t *testing.T) {
	w := start(t)
	c, _ := state.CommandNamed("give cell")
	why := func(all ...book.Subject) string { return c.Reason(w.take(all...).State) }
	var fits, not []*state.Nuc
	for _, n := range w.Reading().Nucs {
		if why(n.Nuc.Nuc.Subject()) == "" {
			fits = append(fits, n)
		} else {
			not = append(not, n)
		}
	}
	if len(fits) < 2 || len(not) < 8 {
		t.Fatalf("a cell fits at %d nucs, at %d not", len(fits), len(not))
	}
	a, b := fits[0].Nuc.Nuc.Subject(), fits[1].Nuc.Nuc.Subject()
	if got := why(a, b); got != "" {
		t.Errorf("at %s and %s: %s", fits[0].Name, fits[1].Name, got)
	}
	for _, n := range not[:8] {
		alone := why(n.Nuc.Nuc.Subject())
		if got := why(a, n.Nuc.Nuc.Subject(), b); got != "not at "+n.Name+": "+alone {
			t.Errorf("with %s: %q, alone: %q", n.Name, got, alone)
		}
	}
	var all []book.Subject
	for _, n := range not {
		all = append(all, n.Nuc.Nuc.Subject())
	}
	if got := why(append(all, a)...); !strings.Contains(got, not[0].Name+", "+not[1].Name) || !strings.Contains(got, "and more") {
		t.Errorf("of all: %q", got)
	}
}

// BenchmarkAllAreAsked asks of every nuc of the demo whether a cell may be given; the floor
// is a frame of the window, 16 ms.
func BenchmarkAllAreAsked(b *testing.B) {
	w := start(b)
	c, _ := state.CommandNamed("give cell")
	var all []book.Subject
	for _, n := range w.Reading().Nucs {
		if c.Reason(w.take(n.Nuc.Nuc.Subject()).State) == "" {
			all = append(all, n.Nuc.Nuc.Subject())
		}
	}
	s := w.take(all...).State
	for b.Loop() {
		c.Reason(s)
	}
	b.ReportMetric(float64(len(all)), "nucs")
}
