package main

import (
	"lidmark/domain/plan"
	"lidmark/storage/table"
)

// buyingLine is a row of the buying list: what one planned graft needs of a good.
type buyingLine struct {
	plan.BuyFor
	all float64 // that all grafts need of it
}

// buyingTable is the table of what is to be bought: of each good a line for each planned
// graft that needs it, the goods that have to be ordered first before the rest.
func buyingTable(buys []plan.Buy) table.Table {
	var lines []buyingLine
	for _, b := range buys {
		for _, f := range b.For {
			lines = append(lines, buyingLine{f, b.Amount})
		}
	}
	return tableOf(buyingFields(), lines)
}

func buyingFields() []column[buyingLine] {
	return []column[buyingLine]{
		{"goods", "", func(l buyingLine) table.Cell { return table.Text(l.Good.String()) }},
		{"amount", "", func(l buyingLine) table.Cell { return numberCell(l.Amount, true) }},
		{"unit", "", func(l buyingLine) table.Cell { return table.Text(l.Unit()) }},
		{"graft", "", func(l buyingLine) table.Cell { return table.Day(l.Batch.Day) }},
		{"line", "", func(l buyingLine) table.Cell { return table.Text(l.Batch.Line) }},
		{"order by", "", func(l buyingLine) table.Cell { return table.Day(l.OrderBy) }},
		{"needed from", "", func(l buyingLine) table.Cell { return table.Day(l.From) }},
		{"of all grafts", "", func(l buyingLine) table.Cell { return numberCell(l.all, true) }},
	}
}
