// Package demo writes the book of an invented season: a home yard and two
// mating yards in a valley that is on no map, as they stand on the evening
// before a given day.
//
// It is written as a keeper's book is, by the same facts, so whatever reads a
// book can read it. Days are counted from the given day, which is 0: a batch
// grafted on day -11 is due in nucs on day -1. Nothing but a forecast is told
// of day 0 or later. The tables say what became of every nuc; the pen turns
// that into entries.
package demo

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Season is the book of the demo season as it stands when today begins in
// zone, in the order in which it was written. The same day and zone give the
// same entries, ids included. The zone keeps its name in the book, so it should
// be a named one; a nil zone is UTC.
//
// All that a keeper meets is in it: six batches at all stages, one of them
// still loose in the incubator past its hard hour; nucs laying, late, without
// a queen, with a drone layer and with laying workers; a yard in dearth with
// robbers at its weak nucs; a cold week; a bank, orders, papers; a gap, an
// entry written twice and one struck.
func Season(today calendar.Day, zone *time.Location) []book.Entry {
	v := newValley(today, zone)
	v.found()
	v.writeWeather()
	v.rear()
	for _, n := range v.nucs {
		v.live(n)
	}
	v.sell()
	v.happen()
	return v.entries()
}
