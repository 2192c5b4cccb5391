// Package practice holds every number of the trade that the program reckons
// with: durations, ages, shares, thresholds, minutes. Each has a unit, a
// default, an allowed range, a source and a word on how sure that is; the
// keeper may change each of them. No other package carries such a number.
//
// [Numbers] is what models and rules are given. Its zero value is all
// defaults.
package practice

// Number is one row of the table: what is known about a number apart from
// the keeper's own value.
type Number struct {
	Key        Key
	Name       string     // stable, snake case, used in files and books
	Title      string     // plain words, sentence case
	Unit       Unit       // of Default, Min and Max
	Default    float64    // used while the keeper has set nothing
	Min, Max   float64    // bounds of what may be set, both allowed
	Source     string     // literature, or why there is none
	Confidence Confidence // how sure the default is
	Group      Group
	Step       bool   // it is a difference of two values of its unit: so much cooler, not so cool
	Front      bool   // one of the 25 a keeper would argue about
	Used       string // what depends on it, or [ForReference]
}

// ForReference is the use of a number that nothing reckons with: it is there to
// be looked up, and changing it changes nothing.
const ForReference = "for reference, nothing reckons with it"

// Unit is the unit of a number, written as it is printed.
type Unit string

// The units in use. Share is a fraction from 0 to 1, printed as per cent;
// Ratio and Score have no unit:
// a Score is a weight in a sum of weights. ClockHour is an hour of the day, 0 to 24.
const (
	Hour          Unit = "h"
	Day           Unit = "d"
	Minute        Unit = "min"
	ClockHour     Unit = "o'clock"
	Celsius       Unit = "°C"
	HourPerDegree Unit = "h/°C"
	MetrePerSec   Unit = "m/s"
	Metre         Unit = "m"
	Degree        Unit = "°"
	Kilometre     Unit = "km"
	Share         Unit = "share"
	SharePerDay   Unit = "share/d"
	Ratio         Unit = "×"
	Score         Unit = "weight"
	Bees          Unit = "bees"
	Kilogram      Unit = "kg"
	EggsPerDay    Unit = "eggs/d"
	CellsPerBee   Unit = "cells/bee"
	BeesPerDm2    Unit = "bees/dm²"
	CellsPerDm2   Unit = "cells/dm²"
	GramPerDm2    Unit = "g/dm²"
	Litre         Unit = "l"
	GramPerLitre  Unit = "g/l"
	GramPerDay    Unit = "g/d"
	Cm2           Unit = "cm²"
	Dm2           Unit = "dm²"
	Colonies      Unit = "colonies"
	Boxes         Unit = "boxes"
	Queens        Unit = "queens"
	Cells         Unit = "cells"
	Combs         Unit = "combs"
	Sides         Unit = "sides"
	Drones        Unit = "drones"
	Alleles       Unit = "alleles"
	WeekdayNumber Unit = "day of week"
	Money         Unit = "money"
)

// Confidence says where a default comes from.
type Confidence int

// The degrees of confidence, from the best to the least. Verified was read in
// the literature named; Derived is arithmetic from verified figures; Taught
// stands only on a teaching page, slides or a printed table without a study;
// Unchecked names literature in which it was not looked up; CommonPractice has no
// source but the trade's habit.
const (
	Verified Confidence = iota + 1
	Derived
	Taught
	Unchecked
	CommonPractice
)

// String gives the confidence in plain words.
func (c Confidence) String() string {
	switch c {
	case Verified:
		return "verified"
	case Derived:
		return "derived"
	case Taught:
		return "teaching page"
	case Unchecked:
		return "not checked against the source"
	case CommonPractice:
		return "common practice"
	}
	return ""
}

// Group is the heading a number stands under.
type Group int

// The groups in the order they are shown.
const (
	Clock Group = iota + 1
	Rates
	Course
	Weather
	BeesAndBrood
	Stores
	Robbing
	Times
	Worth
	Planning
	MatingYard
)

// Groups gives the groups in the order they are shown.
func Groups() []Group {
	return []Group{Clock, Rates, Course, Weather, BeesAndBrood, Stores, Robbing, Times, Worth, Planning, MatingYard}
}

// String gives the heading in plain words.
func (g Group) String() string {
	switch g {
	case Clock:
		return "Clock"
	case Rates:
		return "Rates"
	case Course:
		return "What a nuc holds"
	case Weather:
		return "Weather"
	case BeesAndBrood:
		return "Bees"
	case Stores:
		return "Stores"
	case Robbing:
		return "Robbing"
	case Times:
		return "Times"
	case Worth:
		return "Worth"
	case Planning:
		return "Plans"
	case MatingYard:
		return "Yard"
	}
	return ""
}
