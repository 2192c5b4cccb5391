package main

import (
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
)

// What is drawn twice under one name, or without one, is called by its number.
func TestDrawnIsCalledByItsNumber(t *testing.T) {
	y := &book.Yard{Features: []book.FeatureDrawn{
		{Feature: booktest.Feature("1"), What: book.Hedge},
		{Feature: booktest.Feature("2"), What: book.Tree, Label: "old plum"},
		{Feature: booktest.Feature("3"), What: book.Hedge},
		{Feature: booktest.Feature("4"), What: book.Wall},
	}}
	if got, want := namesDrawn(y.Features), []string{"hedge 1", "old plum", "hedge 2", "wall"}; !slices.Equal(got, want) {
		t.Errorf("called %q, want %q", got, want)
	}
	for name, want := range map[string]string{"Hedge 2": "3", "hedge 1": "1", "old plum": "2", "wall": "4", "tree": "2"} {
		if f, err := featureOf(y, name); err != nil || f.Feature != booktest.Feature(want) {
			t.Errorf("%q is %v, %v; want %s", name, f.Feature, err, want)
		}
	}
	for _, name := range []string{"hedge", "hedge 3"} {
		if f, err := featureOf(y, name); err == nil {
			t.Errorf("%q is %v", name, f.Feature)
		}
	}
}
