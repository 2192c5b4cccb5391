package plan

import (
	"strings"

	"lidmark/domain/calendar"
)

// TooLate is that queens can not be there in time any more: how many, the day by which they are wanted, and
// the soonest by which they can be there, none where that is not known or not later.
type TooLate struct {
	Queens  int
	Line    string // of which they are to be; "": any
	By      calendar.Day
	Soonest Soonest
	NoNuc   bool // a graft would be in time, and finds no nuc free
}

// Soonest is the soonest day by which queens can be there at all, and the chance that all of them are. Its
// zero value: none is known.
type Soonest struct {
	Day    calendar.Day
	Chance float64
}

// Said is the day with its chance: "the soonest day is Mon 7 Jun, then with 38 of 100".
func (s Soonest) Said(said func(calendar.Day) string) string {
	return "the soonest day is " + said(s.Day) + ", then with " + OfHundred(s.Chance)
}

// Soonest is the soonest day by which the queens of a wish that is not in time can be there.
func (a Answer) Soonest() Soonest { return Soonest{a.Nearest, a.Then.AtLeast(a.Queens)} }

// TooLate is that a wish is not in time.
func (a Answer) TooLate() TooLate {
	return TooLate{Queens: a.Queens, Line: a.Line, By: a.By, Soonest: a.Soonest(), NoNuc: a.Full.Day != 0 && a.Full.inTime}
}

// Head begins the sentence: "no graft is in time for 40 queens".
func (t TooLate) Head() string {
	none := "no graft is in time"
	if t.NoNuc {
		none = "no nuc is free in time"
	}
	return strings.TrimSpace(none + " for " + QueensSaid(t.Queens) + " " + t.Line)
}

// Rest ends it: "by Sat 15 May; the soonest day is Mon 7 Jun, then with 38 of 100". A day is said by said.
func (t TooLate) Rest(said func(calendar.Day) string) string {
	rest := "by " + said(t.By)
	if t.Soonest.Day > t.By {
		rest += "; " + t.Soonest.Said(said)
	}
	return rest
}

// Said is the whole sentence.
func (t TooLate) Said(said func(calendar.Day) string) string { return t.Head() + " " + t.Rest(said) }
