package main

import (
	"lidmark/domain/book"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
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
	misses          servedShape
}

// handOverTable is the table of who gets which queen: of each order a line a queen, and one for
// those it misses; last the queens for nobody yet.
func handOverTable(p *plan.Planner) table.Table {
	v, s := p.View(), handover.New(p)
	var lines []handedLine
	shapes := shapeOfDealt(p, s).Orders
	for i, o := range s.Orders {
		for _, g := range o.Queens {
			lines = append(lines, handedLine{part: "gets", of: o, gets: g, queens: 1})
		}
		if o.Short > 0 {
			lines = append(lines, handedLine{part: "misses", of: o, queens: o.Short, coming: o.Coming, planned: o.Planned, misses: shapes[i]})
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
		{"mark", "", func(l handedLine) table.Cell { return table.Text(markWords(&book.Queen{Mark: l.gets.Mark})) }},
		{"called", "", func(l handedLine) table.Cell { return calledCell(v, l.gets.ID) }},
		{"missing since", "", func(l handedLine) table.Cell { return table.Text(l.misses.Since) }},
		{"why", "", func(l handedLine) table.Cell { return table.Text(l.misses.why) }},
		{"planned sure", "%", func(l handedLine) table.Cell {
			return shareCell(l.misses)
		}},
		{"missing by", "", func(l handedLine) table.Cell { return table.Text(l.misses.Next) }},
		{"missing sure", "%", func(l handedLine) table.Cell { return numberCell(100*l.misses.Chance, l.misses.Next != "") }},
		{"graft by", "", func(l handedLine) table.Cell { return table.Text(l.misses.GraftBy) }},
		{"cannot be kept", "", func(l handedLine) table.Cell { return table.Yes(l.misses.Lost) }},
	}
}

func ofOrder(l handedLine, cell func(*book.Order) table.Cell) table.Cell {
	if l.of.Order == nil {
		return table.Cell{}
	}
	return cell(l.of.Order)
}

// calledCell is what a queen is called; empty for none.
func calledCell(v *book.View, id book.QueenID) table.Cell {
	if id.IsZero() {
		return table.Cell{}
	}
	return table.Text(rules.Name(v, id.Subject()))
}

// shareCell is how sure the batches are in per cent that an order waits for; empty where it waits
// for none, or cannot be kept by them.
func shareCell(s servedShape) table.Cell {
	if s.Sure == nil || s.Lost {
		return table.Cell{}
	}
	return numberCell(100**s.Sure, true)
}
