package state

import (
	"slices"
	"strings"

	"lidmark/domain/book"
)

// walkEntered is the window after Enter in the line of the walk: it writes and
// goes on, unless the line makes no sense or one question is to be answered. A
// word that makes no sense is marked, so that what is typed next takes its place;
// Enter again leaves it in its row, unwritten, and goes on.
func (s State) walkEntered() (State, []Effect) {
	text := s.Typed(WalkField)
	row, _ := s.Walk.Row()
	t := s.walkLine()
	letters, narrows := s.Walk.narrowing(text)
	switch {
	case narrows:
		return s.narrowed(letters), nil
	case text == "" || text == row.Typed && !row.Failed && (!row.Asks || row.Passed.Asks != ""):
		return s.rowOpened(s.Walk.nextOpen(row.RowName)), nil
	case !t.OK() && s.Walk.Refused == text:
		return s.rowOpened(s.Walk.nextOpen(row.RowName)), nil
	case !t.OK():
		s = s.WithField(WalkField, s.Field(WalkField).faulty(t.Mistakes))
		return s.withWalk(func(w *Walk) { w.Refused = text }), nil
	case s.typedTwice(typedRows(text, t.Line)):
		s.Asked = &Asked{Twice: text, Asks: "Typed twice?", Answers: []Option{{"1", "no, both are right"}, {"2", "strike this one"}}}
		return s, nil
	}
	return s.walkWritten(t)
}

// typedTwice tells whether a nuc has another row in which the same was typed of
// it. Neighbours of which the same is right are not asked about.
func (s State) typedTwice(typed []Typed) bool {
	return slices.ContainsFunc(typed, func(t Typed) bool {
		return slices.ContainsFunc(s.Walk.Rows, func(row WalkRow) bool {
			return row.RowName != s.Walk.At && row.By == "" && row.Typed == t.Words && slices.Equal(row.Nucs, t.Nucs)
		})
	})
}

// twiceAnswered is the window after the keeper said whether a line was typed
// twice.
func (s State) twiceAnswered(key string) (State, []Effect) {
	s.Asked = nil
	if key == "2" {
		return s.WithField(WalkField, Field{}).lineDrafted().says(), nil
	}
	return s.walkWritten(s.walkLine())
}

// walkWritten gives the book the line of the walk. A line that was typed anew
// strikes the one before it.
func (s State) walkWritten(t TypedLine) (State, []Effect) {
	row, _ := s.Walk.Row()
	asked := Asked{Words: s.walkWords(row), Typed: typedRows(s.Typed(WalkField), t.Line)}
	asked.Drops = s.unsaid(row)
	asked.Entries = s.strikes(&t.ids, without(row.entries, asked.Drops))
	asked.Entries = append(asked.Entries, t.Entries(&t.ids, s.Now, s.Pen.Writer)...)
	s.Pen.IDs = t.ids
	return s.settled(&asked)
}

// walkWords are the words of the line for undo: its nuc and what was typed.
func (s State) walkWords(row WalkRow) string {
	text := s.Typed(WalkField)
	if s.Walk.Says.Of != "" {
		return text
	}
	return rowWords(row, text)
}

// rowWords are words of a row that name its nucs once.
func rowWords(row WalkRow, text string) string {
	if row.Title == "" || row.Many() || strings.HasPrefix(text, row.Title+" ") {
		return text
	}
	return row.Title + " " + text
}

// walkOn is the walk gone on after its line was given to the book: behind the nuc
// of which it told, behind the first of several, so that those left out come next.
// After a line that tells of no nuc it stays in its row.
func (s State) walkOn(typed []Typed) State {
	row, _ := s.Walk.Row()
	s = s.WithField(WalkField, Field{}).withoutFields(s.Walk.draft(row.RowName))
	behind, most := book.NucID{}, -1
	for _, t := range typed {
		if len(t.Nucs) == 0 {
			continue
		}
		first := t.Nucs[0]
		if slices.Contains(t.Nucs, row.Nuc) {
			first = row.Nuc
		}
		if order := s.Walk.order(first); order > most {
			behind, most = first, order
		}
	}
	if most < 0 {
		return s
	}
	return s.withWalk(func(w *Walk) { w.At, w.behind = RowName{Deed: -1}, behind })
}
