// Package rules says what follows from the book and the clock: what needs the
// keeper and by when, what a plan may not do, what a day's work is, whether
// the day's counts close. It returns values; the window, the terminal, the
// printed sheet and the calendar file show the same ones.
//
// Plans are refused where they cannot be or would destroy a queen to no
// purpose. Records are never refused: where one contradicts the book, a
// [Question] is asked and the gap stays a gap.
package rules
