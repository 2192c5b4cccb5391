package table

import (
	"iter"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Looks is the table of all looks at nucs that count at the view's instant,
// in the order of the book.
func Looks(v *book.View) Table { return tabled(lookFields(v), looksOf(v)) }

// look is a look with its entry and its nuc.
type look struct {
	book.Entry
	book.Looked
	nuc *book.Nuc
}

func looksOf(v *book.View) iter.Seq[look] {
	return func(yield func(look) bool) {
		for e := range v.All() {
			if l, ok := e.Fact.(book.Looked); ok && !yield(look{e, l, v.Nuc(l.Nuc)}) {
				return
			}
		}
	}
}

func lookFields(v *book.View) []field[look] {
	return []field[look]{
		{"id", "", func(l look) Cell { return Text(l.ID.String()) }},
		{"day", "", func(l look) Cell { return on(l.At, zoneOf(v, l.nuc.Yard)) }},
		{"time", "", func(l look) Cell { return clock(v, l) }},
		{"yard", "", func(l look) Cell { return Text(v.Yard(l.nuc.Yard).Name) }},
		{"nuc", "", func(l look) Cell { return Text(l.nuc.Name) }},
		{"queen", "", func(l look) Cell { return Text(l.Queen.String()) }},
		{"eggs", "", func(l look) Cell { return Text(l.Eggs.String()) }},
		{"larvae", "", func(l look) Cell { return Yes(l.Larvae) }},
		{"capped brood", "dm²", func(l look) Cell { return Amount(l.Brood) }},
		{"drone brood", "", func(l look) Cell { return Yes(l.DroneBrood) }},
		{"own cells", "", func(l look) Cell { return Amount(l.OwnCells) }},
		{"cell", "", func(l look) Cell { return Text(l.Cell.String()) }},
		{"bees", "sides", func(l look) Cell { return Amount(l.Sides) }},
		{"stores", "0–3", func(l look) Cell { return Amount(l.Stores) }},
		{"temper", "1–4", func(l look) Cell { return Amount(l.Temper) }},
		{"thorough", "", func(l look) Cell { return Yes(l.Thorough) }},
		{"quick", "", func(l look) Cell { return Yes(l.Quick) }},
		{"note", "", func(l look) Cell { return Text(l.Note) }},
		{"writer", "", func(l look) Cell { return Text(l.Writer) }},
	}
}

// clock is the time of day of a look, or the part of the day that was said.
func clock(v *book.View, l look) Cell {
	if l.At.Part == calendar.Exact {
		return Text(l.At.Instant.In(zoneOf(v, l.nuc.Yard)).Format("15:04"))
	}
	return Text(l.At.Part.String())
}
