package state

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/line"
)

// walkEntered is the window after Enter in the line of the walk: it writes and
// goes on, unless the line makes no sense or one question is to be answered. A
// line that makes no sense is marked, so that what is typed next takes its place;
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
		s = s.WithField(WalkField, s.Field(WalkField).marked())
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

// strikes are the entries that strike others, the latest first.
func (s State) strikes(ids *book.IDs, entries []book.Entry) (all []book.Entry) {
	for _, e := range slices.Backward(entries) {
		all = append(all, ids.Entries(instantly(s), s.Now, s.Pen.Writer, book.Struck{Entry: e.ID})...)
	}
	return all
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

// rowOpened is the walk with a row taken to be typed into: with what stands there
// unwritten, else with what was written.
func (s State) rowOpened(name RowName) State {
	if s.Walk.At != name {
		s.Asked = nil // nothing was written yet
	}
	s = s.withWalk(func(w *Walk) { w.At, w.Passed, w.Refused, w.Warned = name, Passed{}, "", false })
	if row, ok := s.Walk.Row(); ok {
		s = s.withWalk(func(w *Walk) { w.Passed = row.Passed })
		s = s.WithField(WalkField, FieldOf(cmp.Or(s.RowDraft(row), row.Typed)))
	}
	return s.focused(FieldNamed(WalkField)).says().rowShown()
}

// lineDrafted is the window with the line of the walk kept for its row, so that
// it is there again after another row was looked at, or the program ended.
func (s State) lineDrafted() State {
	row, ok := s.Walk.Row()
	if text := s.Typed(WalkField); ok && text != "" && text != row.Typed {
		return s.WithField(s.Walk.draft(row.RowName), FieldOf(text))
	}
	return s.withoutFields(s.Walk.draft(row.RowName))
}

// RowDraft is what stands unwritten in a row.
func (s State) RowDraft(row WalkRow) string { return s.Typed(s.Walk.draft(row.RowName)) }

// draft is the name of the field that keeps what stands unwritten in a row of the
// walk's day.
func (w *Walk) draft(r RowName) string {
	if r.Nuc.IsZero() {
		return fmt.Sprintf("%s.%v.%d.%d.", WalkField, w.Day, r.Deed, r.Part)
	}
	return fmt.Sprintf("%s.%v.%v", WalkField, w.Day, r.Nuc)
}

// rowStep goes to the next row, or to the one before.
func rowStep(by int) func(State) (State, []Effect) {
	return pure(func(s State) State {
		rows := s.Walk.Rows
		if len(rows) == 0 {
			return s
		}
		at := s.Walk.index(s.Walk.At)
		if at < 0 && by < 0 {
			at = len(rows)
		}
		return s.rowOpened(rows[min(max(at+by, 0), len(rows)-1)].RowName)
	})
}

// rowStruck strikes what is written in the row that is typed into, and stays there
// so that it can be typed anew.
func rowStruck(s State) (State, []Effect) {
	row, _ := s.Walk.Row()
	drops := s.unsaid(row)
	ids := s.Pen.IDs
	ids.Deed()
	entries := s.strikes(&ids, without(row.entries, drops))
	s.Pen.IDs, s = ids, s.withoutFailed(drops)
	s = s.WithField(WalkField, Field{}).lineDrafted()
	s, effects := s.send(Deed{Words: "strike " + rowWords(row, row.Typed), Entries: entries})
	if len(row.Nucs) > 0 {
		s = s.withWalk(func(w *Walk) {
			w.kept = maps.Clone(w.kept)
			if w.kept == nil {
				w.kept = map[book.NucID]bool{}
			}
			w.kept[row.Nucs[0]] = true
			w.At = RowName{Nuc: row.Nucs[0]}
		}).walkRead()
		s = s.rowOpened(s.Walk.At)
	}
	return s, effects
}

// nothingTyped says why the row cannot be struck.
func nothingTyped(s State) string {
	if why := notWalking(s); why != "" {
		return why
	}
	if row, ok := s.Walk.Row(); !ok || row.Open() {
		return "nothing is written in this row"
	}
	return ""
}

// unsaid are the entries of a row that the book did not take.
func (s State) unsaid(row WalkRow) (all []book.Entry) {
	failed := entriesOf(s.Pen.Failed)
	for _, e := range row.entries {
		if failed[e.ID] {
			all = append(all, e)
		}
	}
	return all
}

// withAnswers are the rows of a line with what the answers to its questions
// added, read back as well.
func withAnswers(typed []Typed, all []book.Entry, asked []book.Entry, names line.Names) []Typed {
	if len(all) == len(asked) {
		return typed
	}
	typed = slices.Clone(typed)
	kinds := map[string]bool{}
	for _, e := range asked {
		kinds[book.KindOfFact(e.Fact)] = true
	}
	for _, e := range all {
		id := nucIn(e.Fact)
		for i := range typed {
			if slices.Contains(typed[i].Nucs, id) && !kinds[book.KindOfFact(e.Fact)] {
				typed[i].Back = listed(typed[i].Back, line.WordsOn(e.Fact, names, id.Subject()))
			}
		}
	}
	return typed
}
