package table

import "lidmark/domain/book"

// Nucs is the table of all nucs as they stood at the view's instant, in
// walking order.
func Nucs(v *book.View) Table { return tabled(nucFields(v), v.Nucs()) }

func nucFields(v *book.View) []field[*book.Nuc] {
	return []field[*book.Nuc]{
		{"id", "", func(n *book.Nuc) Cell { return Text(n.Nuc.String()) }},
		{"yard", "", func(n *book.Nuc) Cell { return Text(v.Yard(n.Yard).Name) }},
		{"stand", "", func(n *book.Nuc) Cell { return Text(v.Stand(n.Stand).Letter) }},
		{"place", "", func(n *book.Nuc) Cell { return countFrom1(n.Place) }},
		{"nuc", "", func(n *book.Nuc) Cell { return Text(n.Name) }},
		{"holds", "", func(n *book.Nuc) Cell { return Text(n.Condition().String()) }},
		{"since", "", func(n *book.Nuc) Cell { return on(n.Holds.Since, zoneOf(v, n.Yard)) }},
		{"batch", "", func(n *book.Nuc) Cell { return batchNumber(v, n.Holds.Batch) }},
		{"given", "", func(n *book.Nuc) Cell { return on(n.Holds.Given, zoneOf(v, n.Yard)) }},
		{"first eggs", "", func(n *book.Nuc) Cell { return on(n.Holds.FirstEggs, zoneOf(v, n.Yard)) }},
		{"last look", "", func(n *book.Nuc) Cell { look, _ := n.LastLook(); return on(look.At, zoneOf(v, n.Yard)) }},
		{"bees", "sides", func(n *book.Nuc) Cell { return reading(n.Bees) }},
		{"stores", "0–3", func(n *book.Nuc) Cell { return reading(n.Stores) }},
		{"temper", "1–4", func(n *book.Nuc) Cell { return reading(n.Temper) }},
		{"entrance", "cm²", func(n *book.Nuc) Cell { return reading(n.Entrance) }},
		{"made up", "", func(n *book.Nuc) Cell { return on(n.MadeUp, zoneOf(v, n.Yard)) }},
		{"ended", "", func(n *book.Nuc) Cell { return on(n.Ended, zoneOf(v, n.Yard)) }},
	}
}

// countFrom1 is a count that is empty for 0, where nothing is counted.
func countFrom1(n int) Cell {
	if n < 1 {
		return Cell{}
	}
	return Count(n)
}
