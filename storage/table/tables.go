package table

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Nucs is the table of all nucs as they stood at the view's instant, in
// walking order.
func Nucs(v *book.View) Table {
	t := Table{Columns: []Column{
		{Name: "id"},
		{Name: "yard"},
		{Name: "stand"},
		{Name: "place"},
		{Name: "nuc"},
		{Name: "holds"},
		{Name: "since"},
		{Name: "batch"},
		{Name: "given"},
		{Name: "first eggs"},
		{Name: "last look"},
		{Name: "bees", Unit: "sides"},
		{Name: "stores", Unit: "0–3"},
		{Name: "temper", Unit: "1–4"},
		{Name: "entrance", Unit: "cm²"},
		{Name: "made up"},
		{Name: "ended"},
	}}
	for n := range v.Nucs() {
		t.Rows = append(t.Rows, nucRow(v, n))
	}
	return t
}

func nucRow(v *book.View, n *book.Nuc) []Cell {
	zone := zoneOf(v, n.Yard)
	look, _ := n.LastLook()
	place := Cell{}
	if n.Place > 0 {
		place = Count(n.Place)
	}
	return []Cell{
		Text(n.Nuc.String()), Text(v.Yard(n.Yard).Name), Text(v.Stand(n.Stand).Letter), place, Text(n.Name),
		Text(n.Condition().String()), on(n.Holds.Since, zone), batchNumber(v, n.Holds.Batch), on(n.Holds.Given, zone),
		on(n.Holds.FirstEggs, zone), on(look.At, zone), reading(n.Bees), reading(n.Stores), reading(n.Temper),
		reading(n.Entrance), on(n.MadeUp, zone), on(n.Ended, zone),
	}
}

// Batches is the table of all batches as they stood at the view's instant, by
// the hour of the graft.
func Batches(v *book.View) Table {
	t := Table{Columns: []Column{
		{Name: "id"},
		{Name: "batch"},
		{Name: "grafted"},
		{Name: "line"},
		{Name: "breeder"},
		{Name: "starter"},
		{Name: "finisher"},
		{Name: "larvae"},
		{Name: "larva age", Unit: "h"},
		{Name: "accepted"},
		{Name: "capped"},
		{Name: "culled"},
		{Name: "given to nucs"},
		{Name: "caged"},
		{Name: "out"},
		{Name: "dead"},
		{Name: "lost"},
		{Name: "left"},
	}}
	for b := range v.Batches() {
		age := Cell{}
		if b.LarvaAge > 0 {
			age = Number(b.LarvaAge)
		}
		t.Rows = append(t.Rows, []Cell{
			Text(b.Batch.String()), Count(b.Number), Time(b.At.Instant, v.Zone()), Text(b.Line),
			Text(v.Colony(b.Breeder).Name), Text(v.Colony(b.Starter).Name), Text(v.Colony(b.Finisher).Name),
			Count(b.Larvae), age, counted(b.Taken), counted(b.Capped), Count(b.Culled),
			Count(len(b.Given)), Count(len(b.Caged)), Count(b.Out), Count(b.Dead), Count(b.Lost), Count(b.Left()),
		})
	}
	return t
}

// Looks is the table of all looks at nucs that count at the view's instant,
// in the order of the book.
func Looks(v *book.View) Table {
	t := Table{Columns: []Column{
		{Name: "id"},
		{Name: "day"},
		{Name: "time"},
		{Name: "yard"},
		{Name: "nuc"},
		{Name: "queen"},
		{Name: "eggs"},
		{Name: "larvae"},
		{Name: "capped brood", Unit: "dm²"},
		{Name: "drone brood"},
		{Name: "own cells"},
		{Name: "cell"},
		{Name: "bees", Unit: "sides"},
		{Name: "stores", Unit: "0–3"},
		{Name: "temper", Unit: "1–4"},
		{Name: "thorough"},
		{Name: "quick"},
		{Name: "note"},
		{Name: "writer"},
	}}
	for e := range v.All() {
		if l, ok := e.Fact.(book.Looked); ok {
			t.Rows = append(t.Rows, lookRow(v, e, l))
		}
	}
	return t
}

func lookRow(v *book.View, e book.Entry, l book.Looked) []Cell {
	n := v.Nuc(l.Nuc)
	zone := zoneOf(v, n.Yard)
	clock := e.At.Part.String()
	if e.At.Part == calendar.Exact {
		clock = e.At.Instant.In(zone).Format("15:04")
	}
	return []Cell{
		Text(e.ID.String()), on(e.At, zone), Text(clock), Text(v.Yard(n.Yard).Name), Text(n.Name), Text(l.Queen.String()),
		Text(l.Eggs.String()), Yes(l.Larvae), Amount(l.Brood), Yes(l.DroneBrood), Amount(l.OwnCells), Text(l.Cell.String()),
		Amount(l.Sides), Amount(l.Stores), Amount(l.Temper), Yes(l.Thorough), Yes(l.Quick), Text(l.Note), Text(e.Writer),
	}
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
