package main

import (
	"lidmark/domain/book"
	"lidmark/domain/handover"
	"lidmark/storage/table"
)

// handedLine is a line of the hand-over sheet: a queen for an order, those that an order
// misses, or a queen for nobody yet.
type handedLine struct {
	part   string
	of     handover.Served // with no order where she is for nobody yet
	gets   handover.Given
	queens int

	coming, planned int // of those an order misses
}

// handOverTable is the table of who gets which queen: of each order a line a queen, and one for
// those it misses; last the queens for nobody yet.
func handOverTable(v *book.View, s *handover.Sheet) table.Table {
	var lines []handedLine
	for _, o := range s.Orders {
		for _, g := range o.Queens {
			lines = append(lines, handedLine{part: "gets", of: o, gets: g, queens: 1})
		}
		if o.Short > 0 {
			lines = append(lines, handedLine{part: "misses", of: o, queens: o.Short, coming: o.Coming, planned: o.Planned})
		}
	}
	for _, q := range s.Left {
		lines = append(lines, handedLine{part: "for nobody yet", gets: handover.Given{Queen: q}, queens: 1})
	}
	return tableOf(handedFields(v), lines)
}

func handedFields(v *book.View) []column[handedLine] {
	return []column[handedLine]{
		{"order", "", func(l handedLine) table.Cell {
			return ofOrder(l, func(o *book.Order) table.Cell { return table.Text(o.Number) })
		}},
		{"customer", "", func(l handedLine) table.Cell {
			return ofOrder(l, func(o *book.Order) table.Cell { return table.Text(o.Customer) })
		}},
		{"on", "", func(l handedLine) table.Cell { return table.Day(l.of.On) }},
		{"there", "", func(l handedLine) table.Cell { return table.Day(l.of.Arrive) }},
		{"part", "", func(l handedLine) table.Cell { return table.Text(l.part) }},
		{"queens", "", func(l handedLine) table.Cell { return table.Count(l.queens) }},
		{"queen", "", func(l handedLine) table.Cell { return table.Text(v.Queen(l.gets.ID).Name) }},
		{"nuc", "", func(l handedLine) table.Cell { return table.Text(v.Nuc(l.gets.Nuc).Name) }},
		{"yard", "", func(l handedLine) table.Cell {
			return table.Text(v.Yard(v.Nuc(l.gets.Nuc).Yard).Name)
		}},
		{"cage", "", func(l handedLine) table.Cell { return table.Text(l.gets.Label) }},
		{"line", "", func(l handedLine) table.Cell { return table.Text(l.gets.Line) }},
		{"ready from", "", func(l handedLine) table.Cell { return table.Day(l.gets.Ready) }},
		{"to do", "", func(l handedLine) table.Cell { return table.Text(l.gets.Words()) }},
		{"coming in time", "", func(l handedLine) table.Cell { return countCell(l.coming) }},
		{"planned", "", func(l handedLine) table.Cell { return countCell(l.planned) }},
		{"warning", "", func(l handedLine) table.Cell { return table.Text(l.of.Warning) }},
	}
}

func ofOrder(l handedLine, cell func(*book.Order) table.Cell) table.Cell {
	if l.of.Order == nil {
		return table.Cell{}
	}
	return cell(l.of.Order)
}
