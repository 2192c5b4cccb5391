package table

import (
	"strings"

	"lidmark/domain/book"
)

// Orders is the table of all orders as they stood at the view's instant: those
// served first before the others.
func Orders(v *book.View) Table { return tabled(orderFields(v), v.Orders()) }

func orderFields(v *book.View) []field[*book.Order] {
	return []field[*book.Order]{
		{"id", "", func(o *book.Order) Cell { return Text(o.Order.String()) }},
		{"order", "", func(o *book.Order) Cell { return Text(o.Number) }},
		{"customer", "", func(o *book.Order) Cell { return Text(o.Customer) }},
		{"taken", "", func(o *book.Order) Cell { return on(o.Taken, v.Zone()) }},
		{"queens", "", func(o *book.Order) Cell { return Count(o.Queens) }},
		{"line", "", func(o *book.Order) Cell { return Text(o.Line) }},
		{"other lines", "", func(o *book.Order) Cell { return Text(strings.Join(o.Substitute, ", ")) }},
		{"from", "", func(o *book.Order) Cell { return Day(o.From) }},
		{"by", "", func(o *book.Order) Cell { return Day(o.By) }},
		{"marked", "", func(o *book.Order) Cell { return Yes(o.Marked) }},
		{"disc", "", func(o *book.Order) Cell { return Yes(o.Disc) }},
		{"clipped", "", func(o *book.Order) Cell { return Yes(o.Clipped) }},
		{"sent", "", func(o *book.Order) Cell { return Yes(o.Sent) }},
		{"journey", "d", func(o *book.Order) Cell { return countFrom1(o.Journey) }},
		{"priority", "", func(o *book.Order) Cell { return Count(o.Priority) }},
		{"handed over", "", func(o *book.Order) Cell { return Count(len(o.Handed)) }},
		{"claimed", "", func(o *book.Order) Cell { return Count(o.Claimed) }},
		{"open", "", func(o *book.Order) Cell { return Count(o.Open()) }},
		{"closed", "", func(o *book.Order) Cell { return Yes(o.Closed) }},
	}
}
