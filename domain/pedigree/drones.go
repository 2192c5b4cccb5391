package pedigree

import (
	"slices"

	"lidmark/domain/book"
)

// matedWith are the queens whose drones a queen mated with, as far as the book
// says: those of her drone line, else those that fed the yard she mated at.
func (k *Kin) matedWith(q book.QueenID) []book.QueenID {
	said := k.view.Queen(q)
	if said.DroneLine != "" {
		return k.dronesOf(func(c *book.Colony) bool { return c.Line == said.DroneLine })
	}
	if said.MatedAt.IsZero() {
		return nil
	}
	return k.Drones(said.MatedAt)
}

// Drones are the queens of the drone colonies that stand in a yard.
func (k *Kin) Drones(yard book.YardID) []book.QueenID {
	return k.dronesOf(func(c *book.Colony) bool { return c.Yard == yard })
}

func (k *Kin) dronesOf(of func(*book.Colony) bool) (all []book.QueenID) {
	for c := range k.view.Colonies() {
		if c.Is(book.DroneSource) && !c.Queen.IsZero() && of(c) && !slices.Contains(all, c.Queen) {
			all = append(all, c.Queen)
		}
	}
	return all
}
