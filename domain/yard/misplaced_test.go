package yard_test

import (
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

// A column of stands that runs through a brook and out of the boundary is told by where
// its stands lie; with nothing drawn nothing is.
func TestStandsThatCannotLieThereAreTold(t *testing.T) {
	var facts []book.Fact
	for i, letter := range []string{"A", "B", "C", "D"} {
		facts = append(facts, book.StandSet{Stand: booktest.Stand(letter), Letter: letter, Places: 1, At: book.Point{X: 15, Y: 6 - 3*float64(i)}},
			book.NucNamed{Nuc: booktest.Nuc(letter), Name: letter + "1"}, book.NucPlaced{Nuc: booktest.Nuc(letter), Stand: booktest.Stand(letter), Place: 1})
	}
	l := yard.OfFacts(facts)
	if len(l.Stands) != 4 || l.Nucs() != 4 {
		t.Fatalf("%+v", l)
	}
	g := yard.Ground{Features: []book.FeatureDrawn{
		feature(book.Boundary, 0, 0, 0, -1, 60, -1, 60, 40, 0, 40, 0, -1),
		feature(book.Water, 0, 7, 0, 0, 60, 0),
	}}
	got := yard.Misplaced(l, g, practice.Numbers{})
	if want := []string{"3 stands lie in water: B, C, D", "1 stand lies outside the boundary: D"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
	if got := yard.Misplaced(l, yard.Ground{}, practice.Numbers{}); got != nil {
		t.Errorf("on open ground: %q", got)
	}
}
