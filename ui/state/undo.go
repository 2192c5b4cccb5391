package state

import (
	"cmp"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
)

// nothingDone says why nothing can be undone.
func nothingDone(s State) string {
	switch why := noPen(s); {
	case s.Book == nil:
		return noBook(s)
	case len(s.Pen.Done) > 0:
		return ""
	case why != "":
		return why
	case len(s.Pen.Sent) > 0:
		return "what was written last is on its way, a moment"
	}
	v := s.Present().View
	last, ok := v.Last()
	switch {
	case !ok || calendar.DayOf(last.Written, v.Zone()) != s.Today():
		return "nothing was written today; strike older lines on their card"
	case last.Writer != s.Pen.Writer:
		return "what was written last today is by " + cmp.Or(last.Writer, "nobody named") + "; strike it on its card"
	}
	return ""
}

// withLastDeed is the window that can undo the last deed of the book, where it
// has written nothing itself since the book was opened.
func (s State) withLastDeed() State {
	if len(s.Pen.Done) > 0 {
		return s
	}
	d := Deed{Entries: s.Present().View.LastDeed()}
	var back []string
	for _, e := range d.Entries {
		back = append(back, s.factWords(e.Fact))
	}
	s.Pen.Deeds++
	d.Words, d.Number = said(back), s.Pen.Deeds
	s.Pen.Done = []Deed{d}
	return s
}

// factWords say a fact; of a strike what it strikes.
func (s State) factWords(f book.Fact) string {
	names := line.In(s.Present().View)
	if strike, ok := f.(book.Struck); ok {
		if e, known := s.season().Entry(strike.Entry); known {
			words := "struck: " + line.Words(e.Fact, names)
			if strike.Why != "" {
				words += ", " + strike.Why
			}
			return words
		}
	}
	return line.Words(f, names)
}
