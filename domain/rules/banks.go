package rules

import (
	"cmp"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/practice"
)

// Bank is the caged queens of one kind in one place, and how long they keep.
type Bank struct {
	Of      book.Subject // the bank colony; none: cages in the hand
	Virgins bool         // else they are mated
	Kept    []Kept       // in the order in which they must be out
}

// Kept is a caged queen: since when, from which day on she should be used, and the last one.
type Kept struct {
	Queen           *book.Queen
	Since, From, By calendar.Day
}

// Banks are the caged queens by place and kind, those first who have to be out first.
func Banks(v *book.View, c *course.Course) (all []Bank) {
	for q := range v.Queens() {
		if !q.Caged() {
			continue
		}
		i := slices.IndexFunc(all, func(b Bank) bool { return b.Of == q.Where && b.Virgins == q.Virgin })
		if i < 0 {
			i, all = len(all), append(all, Bank{Of: q.Where, Virgins: q.Virgin})
		}
		from, by := keeps(v, c, q)
		all[i].Kept = append(all[i].Kept, Kept{q, q.Since.Day(v.Zone()), from, by})
	}
	for _, b := range all {
		slices.SortStableFunc(b.Kept, func(a, b Kept) int { return cmp.Compare(a.By, b.By) })
	}
	slices.SortStableFunc(all, func(a, b Bank) int {
		return cmp.Or(cmp.Compare(a.First(), b.First()), cmp.Compare(Name(v, a.Of), Name(v, b.Of)), book.TrueFirst(a.Virgins, b.Virgins))
	})
	return all
}

// Since is when the first of them was caged.
func (b Bank) Since() calendar.Day {
	first := b.Kept[0].Since
	for _, k := range b.Kept {
		first = min(first, k.Since)
	}
	return first
}

// First is the day by which the first of them must be out, Last that of the last one.
func (b Bank) First() calendar.Day { return b.Kept[0].By }

// Last is the day by which the last of them must be out.
func (b Bank) Last() calendar.Day { return b.Kept[len(b.Kept)-1].By }

// keeps is how long a caged queen keeps: the day from which she should be used, and the
// last one; a mated one in no bank should be seen to at once.
func keeps(v *book.View, c *course.Course, q *book.Queen) (from, by calendar.Day) {
	n, day := v.Numbers(), q.Since.Day(v.Zone())
	days := func(k practice.Key) calendar.Day { return calendar.Day(n.Days(k)) }
	if until, alone := handover.Alone(v, q); alone && !q.Virgin {
		return min(day, until), until
	}
	if !q.Virgin {
		by = day + days(practice.MatedBankMost)
		return by, by
	}
	from, by = day+days(practice.VirginBankGood), day+days(practice.VirginBankMost)
	if out := Emerged(c, q, q.Batch); !out.IsZero() {
		by = min(by, calendar.DayOf(out, v.Zone())+days(practice.VirginLate))
	}
	return min(from, by), by
}

// tooOld tells whether a virgin is so old that few mate: she is culled, not put in.
func tooOld(c *course.Course, q *book.Queen) bool {
	return q.Virgin && late(c, Emerged(c, q, q.Batch))
}

// Emerged is when a virgin of a batch came out of her cell, by what was seen of her or else
// by the calendar; zero: not known.
func Emerged(c *course.Course, q *book.Queen, batch book.BatchID) time.Time {
	if !q.Emerged.IsZero() {
		return q.Emerged
	}
	return c.Emerges(batch)
}

// late tells whether a virgin who emerged then is late by now.
func late(c *course.Course, emerged time.Time) bool {
	v := c.View()
	return !emerged.IsZero() && TooOld(v.On().Sub(emerged), v.Numbers())
}

// TooOld tells whether a virgin of an age is so old that few mate: none is put in from then on.
func TooOld(age time.Duration, n practice.Numbers) bool {
	return age >= n.Duration(practice.VirginLate)
}
