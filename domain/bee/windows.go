package bee

import (
	"time"

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

// Windows gives the steps of a batch by the day, as breeders' tables print
// them. They hold for larvae of the usual age at a brood nest's warmth; the
// hard hours come from [Clock].
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
