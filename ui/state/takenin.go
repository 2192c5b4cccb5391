package state

import (
	"fmt"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// TakenIn says what came into a book, and how many nucs two have typed on the days
// that it tells of.
func TakenIn(before, after *book.Season, now time.Time) string {
	var said strings.Builder
	said.WriteString(newEntries(after.Len() - before.Len()))
	v := after.At(now)
	for _, day := range daysOfNew(before, v) {
		if n := len(rules.TwinNucs(v, rules.TwinsOn(v, day))); n > 0 {
			said.WriteString(fmt.Sprintf("; %s typed by both: close the walk of %s to strike the later ones", wereNucs(n), day.Short()))
		}
	}
	return said.String()
}

// newEntries says how many entries came into the book.
func newEntries(n int) string {
	switch n {
	case 0:
		return "nothing that was not in the book"
	case 1:
		return "1 entry that was not in the book"
	}
	return fmt.Sprintf("%d entries that were not in the book", n)
}

func wereNucs(n int) string {
	if n == 1 {
		return "1 nuc was"
	}
	return counted(n, "nuc") + " were"
}

// daysOfNew are the days of which a view has entries that a season had not, in the
// order of time.
func daysOfNew(before *book.Season, v *book.View) (days []calendar.Day) {
	known := make(map[book.EntryID]bool, before.Len())
	for e := range before.Entries() {
		known[e.ID] = true
	}
	for e := range v.All() {
		day := e.At.Day(v.Zone())
		if !known[e.ID] && (len(days) == 0 || days[len(days)-1] != day) {
			days = append(days, day)
		}
	}
	return days
}
