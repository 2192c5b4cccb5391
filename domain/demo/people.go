package demo

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

const neighbour = "Tilda B."

// Free hours of an ordinary working day, of an afternoon and of a free day.
var (
	afterWork = book.FreeHours{From: 17 * 60, Until: 20*60 + 30}
	afternoon = book.FreeHours{From: 14 * 60, Until: 18 * 60}
	freeDay   = book.FreeHours{From: 8 * 60, Until: 17 * 60}
	none      = book.FreeHours{}
)

var people = []struct {
	name, phone string
	free        [7]book.FreeHours // Sunday first
}{
	{keeper, "555 0141", [7]book.FreeHours{freeDay, afterWork, afterWork, freeDay, afterWork, afterWork, freeDay}},
	{partner, "555 0142", [7]book.FreeHours{freeDay, afterWork, none, afterWork, none, afterWork, freeDay}},
	{neighbour, "555 0177", [7]book.FreeHours{none, none, afternoon, none, afternoon, none, freeDay}},
}

// daysOff are days on which somebody is away, first and last.
var daysOff = []struct {
	name     string
	told     int
	from, to int
}{
	{partner, -33, -31, -29},
	{neighbour, -12, -10, -8},
	{partner, -4, -2, -1}, // who was to place the cells of batch 5
	{neighbour, -5, 6, 10},
}

func (v *valley) settlePeople() {
	begun := v.in(bookBegun, calendar.Morning)
	for _, p := range people {
		v.people[p.name] = book.PersonID(v.name())
		v.write(keeper, begun, book.PersonDescribed{Person: v.people[p.name], Name: p.name, Free: p.free, Phone: p.phone})
	}
	for _, d := range daysOff {
		v.write(keeper, v.in(d.told, calendar.Evening), book.DaysOff{Person: v.people[d.name], From: v.on(d.from), To: v.on(d.to)})
	}
}

// away tells whether somebody is away on a day.
func (v *valley) away(name string, day calendar.Day) bool {
	for _, d := range daysOff {
		if d.name == name && v.on(d.from) <= day && day <= v.on(d.to) {
			return true
		}
	}
	return false
}
