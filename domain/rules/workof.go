package rules

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// WorkOf is the minutes of [Judged.Work] that are of one batch, colony, nuc or yard.
func (j *Judged) WorkOf(of book.Subject, from, to calendar.Day) map[calendar.Day]float64 {
	j.mu.Lock()
	defer j.mu.Unlock()
	return j.pass.work(slices.DeleteFunc(slices.Clone(j.found), func(f Finding) bool { return f.Of != of }), from, to)
}
