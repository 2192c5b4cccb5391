package review

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
)

// Nuc is a nuc under review.
type Nuc struct {
	*book.Nuc
	Chances course.Chances
	Ways    []Way   // the first leaves it
	Best    int     // the way of most worth for this nuc alone
	Next    int     // the runner-up; -1: there is none
	Loses   float64 // what leaving it loses against the best, in queens
	Decide  bool    // it needs a decision
	Why     string  // why it does, or does not
	Sure    bool    // one thing holds over 95 %: its row may fold
}

// Review is a season under review.
type Review struct {
	Day           calendar.Day
	By            calendar.Day // the day by which queens are wanted
	Hand          Hand
	Nucs          []Nuc // the worst first
	This          Use   // the best use of what is in hand
	InOrder, None Use   // what is in hand in stand order, and none of it
}

// Use is a use of what is in hand over all nucs.
type Use struct {
	Chosen  []int // by nuc, the place in its ways; -1: it is put to another
	Minutes float64
	Worth   float64 // in queens

	Expected, Low, High float64 // laying queens by the day: mean, and the range of four in five

	More        []float64 // by ware, what one more would be worth, in queens
	MinuteWorth float64   // what one more minute would be worth, in queens
	Bound       float64   // no use is worth more
	Exact       bool      // none is better, proven
}
