package state

import (
	"fmt"
	"slices"
	"strconv"

	"lidmark/domain/roll"
)

// notKept says why the list cannot be kept yet, and what to do.
func notKept(s State) string {
	if why := noList(s); why != "" {
		return why
	}
	b := s.Bring
	switch {
	case s.Busy != nil:
		return s.Busy.Words
	case len(b.Sheets) == 0:
		return "say first how it is written"
	case s.Book != nil && noPen(s) != "":
		return noPen(s)
	case b.Result.AsksDates:
		return "say whether the day or the month stands first"
	case b.Result.AsksYear:
		return "say of which year the dates are"
	case len(b.Result.Columns) > 0:
		return WhatDo(b.Result.Columns[0], ": ")
	case b.Result.Counts.Mistaken == 1:
		return "1 row has a mistake: mend it in the file, or leave it out here"
	case b.Result.Counts.Mistaken > 1:
		return fmt.Sprintf("%d rows have mistakes: mend them in the file, or leave them out here", b.Result.Counts.Mistaken)
	case b.Series != nil:
		return b.noSeries()
	case len(b.facts) == 0:
		return "there is nothing in it that is not in the book"
	case s.Book == nil:
		return s.foundingLacks()
	}
	return ""
}

// foundingLacks says what is missing of a new book, beside its boxes.
func (s State) foundingLacks() string {
	f := s.Founding()
	for _, step := range []Step{YardStep, PeopleStep} {
		if name := f.WrongIn(step); name != "" {
			return f.Wrong(name)
		}
	}
	return ""
}

// keepList writes the list down, or begins a book with it.
func keepList(s State) (State, []Effect) {
	if s.Bring.Series != nil {
		return keepSeries(s)
	}
	b, ids := s.Bring, s.Bring.ids
	if s.Book == nil {
		f := s.Founding()
		entries := slices.Concat(f.Entries, b.Result.Entries(s.Now, writerOf(f.Entries), ids.Next))
		s.Busy, s.Note = &Busy{"the book is begun", -1}, Note{}
		return s, []Effect{Found{Path: f.Path, Entries: entries}}
	}
	entries := b.Result.Entries(s.Now, s.Pen.Writer, ids.Next)
	name, _ := FileName(b.Path)
	words := "list " + name + ": " + b.Result.Counts.String()
	s.Pen.IDs = ids
	s = s.withoutFields("list.").withoutFields("start.").givenBack().entered(Yard)
	s.Bring, s.Start, s.Note = nil, Start{}, Note{Text: "kept: " + words}
	return s.send(Deed{Words: words, Entries: entries})
}

func noMistake(s State) string {
	if why := noList(s); why != "" {
		return why
	}
	if s.Bring.Result.Counts.Mistaken == 0 {
		return "no row has a mistake"
	}
	return ""
}

// toNextMistake is the window with the next row with a mistake at the top of the
// rows, the first again after the last.
func (s State) toNextMistake() State {
	rows, at := s.Bring.Result.Rows, s.ListLayout().FirstRow
	if number := s.rowChosen(); number != "" {
		at = slices.IndexFunc(rows, func(r roll.RowRead) bool { return strconv.Itoa(r.Row.Number) == number })
	}
	for i := range rows {
		next := (at + 1 + i) % len(rows)
		if len(rows[next].Mistakes) > 0 {
			s = s.listScrolled(s.ListLayout().Top(next) - s.Scroll[FillPlace])
			if column := rows[next].Mistakes[0].Column; column > 0 {
				s = s.focused(columnRef(column)).besideColumn(0)
			}
			return s.focused(ChoiceOf(ListSkip(strconv.Itoa(rows[next].Row.Number)), "yes"))
		}
	}
	return s
}
