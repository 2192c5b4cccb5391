package pedigree

import (
	"slices"
	"time"

	"lidmark/domain/book"
)

// matedWith are the queens whose drones a queen mated with, as far as the book
// says: those of her drone line, else those of the yard she mated at; as the
// colonies stood at the end of the year she mated in, where that is known.
func (k *Kin) matedWith(q book.QueenID) []book.QueenID {
	said := k.view.Queen(q)
	v := k.at(said.MatedYear)
	if said.DroneLine != "" {
		return dronesOf(v, func(c *book.Colony) bool { return c.Line == said.DroneLine })
	}
	if said.MatedAt.IsZero() {
		return nil
	}
	return dronesOf(v, func(c *book.Colony) bool { return c.Yard == said.MatedAt })
}

// Drones are the queens of the drone colonies that stand in a yard, zero where nobody said who
// she is.
func (k *Kin) Drones(yard book.YardID) []book.QueenID {
	return dronesOf(k.view, func(c *book.Colony) bool { return c.Yard == yard })
}

// at is the view as it stood at the end of a year, or as it is where the year is not
// over or nobody said it.
func (k *Kin) at(year int) *book.View {
	end := time.Date(year+1, time.January, 1, 0, 0, 0, 0, time.UTC)
	if year == 0 || !end.Before(k.view.On()) {
		return k.view
	}
	v, ok := k.years[year]
	if !ok {
		v = k.view.Season().AsKnown(end, k.view.Known())
		k.years[year] = v
	}
	return v
}

// dronesOf are the queens of drone colonies, a zero one for each of which nobody said who is in
// it: she is kin to nobody.
func dronesOf(v *book.View, of func(*book.Colony) bool) (all []book.QueenID) {
	for c := range v.Colonies() {
		if c.Is(book.DroneSource) && of(c) && (c.Queen.IsZero() || !slices.Contains(all, c.Queen)) {
			all = append(all, c.Queen)
		}
	}
	return all
}
