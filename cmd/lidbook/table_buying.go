package main

import (
	"lidmark/domain/plan"
	"lidmark/storage/table"
)

// buyingLine is a row of the buying list: what one planned graft needs of a good.
type buyingLine struct {
	plan.BuyFor
	of plan.Buy
}

// buyingTable is the table of what is to be bought: of each good a line for each
// that needs it, the goods that have to be ordered first before the rest.
func buyingTable(buys []plan.Buy) table.Table {
	var lines []buyingLine
	for _, b := range buys {
		for _, f := range b.For {
			lines = append(lines, buyingLine{f, b})
		}
	}
	return tableOf(buyingFields(), lines)
}

func (l buyingLine) shape() buyForShape { return shapeOfBuyFor(l.BuyFor) }

func buyingFields() []column[buyingLine] {
	return []column[buyingLine]{
		{"goods", "", func(l buyingLine) table.Cell { return table.Text(l.of.String()) }},
		{"amount", "", func(l buyingLine) table.Cell { return numberCell(l.Amount, true) }},
		{"unit", "", func(l buyingLine) table.Cell { return table.Text(l.Unit()) }},
		{"graft", "", func(l buyingLine) table.Cell { return table.Day(l.Planned.Day) }},
		{"batch", "", func(l buyingLine) table.Cell { return countCell(l.shape().Batch) }},
		{"line", "", func(l buyingLine) table.Cell { return table.Text(l.shape().Line) }},
		{"order", "", func(l buyingLine) table.Cell { return table.Text(l.shape().Order) }},
		{"order by", "", func(l buyingLine) table.Cell { return table.Day(l.OrderBy) }},
		{"needed from", "", func(l buyingLine) table.Cell { return table.Day(l.From) }},
		{"of all", "", func(l buyingLine) table.Cell { return numberCell(l.of.Amount, true) }},
	}
}
