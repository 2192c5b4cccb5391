package table

import (
	"iter"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// field is a column and how its cell comes from a row's T: one line for a new
// column.
type field[T any] struct {
	name, unit string
	cell       func(T) Cell
}

// tabled is the table of all rows.
func tabled[T any](fields []field[T], rows iter.Seq[T]) Table {
	var t Table
	for _, f := range fields {
		t.Columns = append(t.Columns, Column{Name: f.name, Unit: f.unit})
	}
	for row := range rows {
		cells := make([]Cell, len(fields))
		for i, f := range fields {
			cells[i] = f.cell(row)
		}
		t.Rows = append(t.Rows, cells)
	}
	return t
}

// on is a cell with the day of a moment; empty for no moment.
func on(m calendar.Moment, zone *time.Location) Cell {
	if m.IsZero() {
		return Cell{}
	}
	return Day(m.Day(zone))
}

func reading(r book.Reading) Cell {
	if !r.Said() {
		return Cell{}
	}
	return Number(r.Value)
}

func counted(c book.Count) Cell {
	if !c.Counted() {
		return Cell{}
	}
	return Count(c.N)
}

func batchNumber(v *book.View, id book.BatchID) Cell {
	if id.IsZero() || v.Batch(id).Number == 0 {
		return Cell{}
	}
	return Count(v.Batch(id).Number)
}

// zoneOf is the time zone of a yard, or of the home yard for none.
func zoneOf(v *book.View, id book.YardID) *time.Location {
	if id.IsZero() {
		return v.Zone()
	}
	return v.Yard(id).Zone
}
