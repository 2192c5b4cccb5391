package state

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/yard"
)

// Laid is a layout of a yard to be printed. The zero Scale is the largest round one
// that fits on a page, without Pegs the tapes begin where that is best.
type Laid struct {
	Yard  book.YardID
	Name  string // of the try-out; "": as the yard stands
	Try   yard.Layout
	From  calendar.Day // it is the plan from this day on; zero: it is not
	Scale float64      // 100 is 1:100
	Pegs  []yard.Peg   // from which it is staked out: none or two
}

// printLayout prints the try-out that is worked at.
func (s State) printLayout() (State, []Effect) {
	l := s.Laying
	laid := Laid{Yard: l.Yard, Name: l.Name, Try: l.Try}
	if s.unchanged() {
		laid.From = s.LayoutSheet().InBook.From
	}
	e := Print{
		Paper: LayoutPaper, Name: paperNames[LayoutPaper] + " " + s.Present().Day.Short(), Reading: s.Present(), Book: s.Book.Name, Yard: l.Yard,
		Layout: laid, Large: s.Large, Letter: s.Letter, Units: s.Units,
	}
	s.Busy = &Busy{Words: "printing " + e.Name, Share: -1}
	return s, []Effect{e}
}

// noLayoutPrint says why no layout can be printed.
func noLayoutPrint(s State) string {
	if why := noEdit(s); why != "" {
		return why
	}
	if len(s.Laying.Try.Stands) == 0 {
		return "the try-out has no stand yet: add boxes first"
	}
	return noPrint(s)
}
