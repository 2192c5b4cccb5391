package pedigree_test

import (
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/pedigree"
)

// Daughters mate where nucs stand, not where the keeper lives.
func TestMatingYards(t *testing.T) {
	home, far, third := booktest.Yard("home"), booktest.Yard("far"), booktest.Yard("third")
	yards := func(p *booktest.Pen, said book.YardID) []book.YardID {
		return pedigree.MatingYards(p.View("2027-05-01 08:00"), said)
	}
	p := (&booktest.Pen{}).At("2027-04-01 08:00")
	if got := yards(p, book.YardID{}); len(got) != 0 {
		t.Errorf("an empty book has mating yards %v", got)
	}
	p.Write(book.YardDescribed{Yard: home, Name: "Home", Home: true}, book.YardDescribed{Yard: far, Name: "Far"}, book.YardDescribed{Yard: third, Name: "Third"})
	if got := yards(p, book.YardID{}); !slices.Equal(got, []book.YardID{home}) {
		t.Errorf("without nucs they mate in %v, want the home yard", got)
	}
	for i, y := range []book.YardID{far, far, third} {
		n := booktest.Nuc(string(rune('a' + i)))
		p.Write(book.NucNamed{Nuc: n, Name: string(rune('A' + i)), Sides: 6}, book.NucPlaced{Nuc: n, Yard: y})
	}
	if got := yards(p, book.YardID{}); len(got) != 2 || slices.Contains(got, home) {
		t.Errorf("nucs stand far and in the third yard, they mate in %v", got)
	}
	if got := yards(p, home); !slices.Equal(got, []book.YardID{home}) {
		t.Errorf("said to mate at home, they mate in %v", got)
	}
}
