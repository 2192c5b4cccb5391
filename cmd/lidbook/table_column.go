package main

import (
	"math"

	"lidmark/storage/table"
)

// column is a column of a table and how its cell comes from a row's T.
type column[T any] struct {
	name, unit string
	cell       func(T) table.Cell
}

// tableOf is the table of some rows.
func tableOf[T any](columns []column[T], rows []T) (t table.Table) {
	for _, c := range columns {
		t.Columns = append(t.Columns, table.Column{Name: c.name, Unit: c.unit})
	}
	for _, row := range rows {
		var cells []table.Cell
		for _, c := range columns {
			cells = append(cells, c.cell(row))
		}
		t.Rows = append(t.Rows, cells)
	}
	return t
}

// countCell is a cell with a number; empty for none.
func countCell(n int) table.Cell {
	if n < 1 {
		return table.Cell{}
	}
	return table.Count(n)
}

// numberCell is a cell with a number to one place; empty where it is not told.
func numberCell(n float64, told bool) table.Cell {
	if !told {
		return table.Cell{}
	}
	return table.Number(math.Round(10*n) / 10)
}
