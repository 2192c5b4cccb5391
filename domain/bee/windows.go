package bee

import (
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Step is a step in the life of a batch that keepers count in days from the
// graft.
type Step int

// The steps in their order. HandsOff is the window in which cells are left
// alone.
const (
	ToFinisher Step = iota + 1
	CountTake
	CellsCapped
	HandsOff
	CellsIn
	Emergence
)

// String gives the step in plain words.
func (s Step) String() string {
	switch s {
	case ToFinisher:
		return "starter to finisher"
	case CountTake:
		return "count the take"
	case CellsCapped:
		return "capped"
	case HandsOff:
		return "hands off"
	case CellsIn:
		return "cells into nucs"
	case Emergence:
		return "emerge"
	}
	return ""
}

// Window is a span of days from the graft, both ends included; the day of the
// graft is day 0. Best lies within it.
type Window struct {
	Step           Step
	From, Best, By int
}

// Windows gives the steps of a batch by the day, in their order, as breeders'
// tables print them. They hold for larvae of the usual age at a brood nest's
// warmth; those of one batch are [Clock.Windows].
func Windows(n practice.Numbers) []Window {
	w := func(s Step, from, best, by practice.Key) Window {
		return Window{s, n.Days(from), n.Days(best), n.Days(by)}
	}
	return []Window{
		w(ToFinisher, practice.StarterToFinisher, practice.StarterToFinisher, practice.StarterToFinisher),
		w(CountTake, practice.AcceptedCheck, practice.AcceptedCheck, practice.AcceptedCheck),
		w(CellsCapped, practice.GraftToCappedFrom, practice.GraftToCapped, practice.GraftToCappedBy),
		w(HandsOff, practice.HandsOffFrom, practice.HandsOffFrom, practice.HandsOffUntil),
		w(CellsIn, practice.CellsInFrom, practice.CellsIn, practice.CellsInBy),
		w(Emergence, practice.GraftToEmergeFrom, practice.GraftToEmerge, practice.GraftToEmergeBy),
	}
}

// Windows are those of one batch, so that no two of them contradict each other. Its
// cells are best in nucs on the table's day, or on an earlier one with a morning before
// the hard hour, and never after that hour; before the first day on which they may go in
// they are left alone, and what is counted is counted before that. Half of them emerge
// on one day.
func (c Clock) Windows(zone *time.Location) []Window {
	all := Windows(c.numbers)
	graft := calendar.DayOf(c.graft, zone)
	day := func(t time.Time) int { return calendar.DayOf(t, zone).Sub(graft) }
	in, off, capped := &all[CellsIn-1], &all[HandsOff-1], &all[CellsCapped-1]
	in.By = min(in.By, day(c.Hard()))
	in.Best = min(in.Best, lastMorning(c.Hard(), zone).Sub(graft))
	in.From = min(in.From, in.Best)
	off.within(in.From - 1)
	capped.within(off.From - 1)
	out := &all[Emergence-1]
	out.Best = day(c.Middle())
	out.From, out.By = min(out.From, out.Best), max(out.By, out.Best)
	return all
}

// BestOn is the instant of a day by which the cells are best out: that of [Clock.Best]
// where it is on that day, else noon, and not after the hard hour.
func (c Clock) BestOn(d calendar.Day, zone *time.Location) time.Time {
	best, hard := c.Best(), c.Hard()
	if calendar.DayOf(best, zone) != d {
		best = d.At(noon, 0, zone)
	}
	if best.After(hard) {
		return hard
	}
	return best
}

// noon is the hour of a day's work of which nobody said the hour. It is a convention
// of the program.
const noon = 12

// lastMorning is the last day on which there is a morning before a hard hour: the
// day before where that is not after noon.
func lastMorning(hard time.Time, zone *time.Location) calendar.Day {
	d := calendar.DayOf(hard, zone)
	if hard.Before(d.At(noon, 0, zone)) {
		return d - 1
	}
	return d
}

// within ends a window no later than on a day.
func (w *Window) within(last int) {
	w.From, w.Best, w.By = min(w.From, last), min(w.Best, last), min(w.By, last)
}

// Age is how well larvae suit for grafting by their age.
type Age int

// The verdicts on an age.
const (
	AgeGood Age = iota
	AgeOld
	AgeTooOld
)

// LarvaAge judges the age of larvae at the graft: old ones make lesser
// queens, too old ones none worth the name.
func LarvaAge(age time.Duration, n practice.Numbers) Age {
	switch {
	case age > n.Duration(practice.LarvaAgeRefused):
		return AgeTooOld
	case age > n.Duration(practice.LarvaAgeWarned):
		return AgeOld
	default:
		return AgeGood
	}
}
