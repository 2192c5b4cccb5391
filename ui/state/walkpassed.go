package state

import (
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// Passed is a question of a row that was passed without an answer. It stays open
// in the book and is asked again where the row is opened.
type Passed struct {
	Asks    string
	Answers []Option
	given   []string // the answers given since the row was opened
}

// has tells whether a key is printed on one of the answers.
func (p Passed) has(key string) bool {
	return slices.ContainsFunc(p.Answers, func(o Option) bool { return o.Value == key })
}

// resettled is a row asked once more what it asks of the book without it.
type resettled struct {
	Passed
	waits   bool
	ids     book.IDs
	strikes []book.Entry // of what stands in the row
	again   []book.Entry // the same anew
	entries []book.Entry // the same with what the answers add; none where the row was a mistake
}

// askedAgain asks a row what it asks of the book, with the answers given so far.
func (w *Walk) askedAgain(row WalkRow, pen Pen, now time.Time, given []string) resettled {
	r := resettled{ids: pen.IDs}
	r.ids.Deed()
	state := State{Now: now, InBook: InBook{Pen: pen}}
	r.strikes = state.strikes(&r.ids, row.entries)
	for _, e := range row.entries {
		r.again = append(r.again, r.ids.Entries(e.At, now, e.Writer, e.Fact)...)
	}
	answers := answering{given: given, alike: map[string]string{}}
	entries, keep := rules.Settle(w.season.With(unwritten(row.entries)...), r.again, &r.ids, answers.answer)
	if answers.waits != nil {
		r.waits, r.Passed = true, Passed{answers.asks(), options(*answers.waits), given}
		return r
	}
	if keep {
		r.entries = entries
	}
	return r
}

// unwritten are strikes, under ids that nobody has, that take entries out of a
// season while something is asked of it.
func unwritten(entries []book.Entry) (all []book.Entry) {
	for _, e := range entries {
		strike := e
		strike.ID[len(strike.ID)-1] ^= 1
		strike.Fact = book.Struck{Entry: e.ID}
		all = append(all, strike)
	}
	return all
}

// Passing is the question asked again of the row that is typed into; it waits
// until something else is typed.
func (s State) Passing() (p Passed, waits bool) {
	if s.Walk == nil || s.Asked != nil || s.Walk.Passed.Asks == "" {
		return p, false
	}
	row, ok := s.Walk.Row()
	return s.Walk.Passed, ok && s.Typed(WalkField) == row.Typed
}

// keyPassed answers the question of the row that is typed into by its key, and
// tells whether that is one of its answers. A character was put into the line
// before it comes as a key.
func (s State) keyPassed(key string) (State, []Effect, bool) {
	row, ok := s.Walk.Row()
	text := s.Typed(WalkField)
	if !ok || s.Asked != nil || !s.Walk.Passed.has(key) || text != row.Typed && text != row.Typed+key {
		return s, nil, false
	}
	s, effects := s.passedAnswered(row, key)
	return s, effects, true
}

// passedClicked answers it by a click.
func (s State) passedClicked(key string) (State, []Effect) {
	if _, waits := s.Passing(); !waits {
		return s, nil
	}
	s, effects, _ := s.keyPassed(key)
	return s, effects
}

// passedAnswered is the window after an answer to the question of a row that was
// passed: what stands in the row is struck, and written anew with what the
// answers add.
func (s State) passedAnswered(row WalkRow, key string) (State, []Effect) {
	given := append(slices.Clip(s.Walk.Passed.given), key)
	r := s.Walk.askedAgain(row, s.Pen, s.Now, given)
	s = s.WithField(WalkField, FieldOf(row.Typed)).lineDrafted()
	if r.waits {
		return s.withWalk(func(w *Walk) { w.Passed = r.Passed }).says(), nil
	}
	s.Pen.IDs = r.ids
	typed := withAnswers([]Typed{{row.Nucs, row.Typed, row.Back}}, r.entries, r.again, line.In(s.Walk.view))
	if len(r.entries) == 0 {
		typed = nil
	}
	words := rowWords(row, row.Typed)
	s, effects := s.send(Deed{Words: words, Entries: append(r.strikes, r.entries...), Typed: typed})
	return s.walkOn([]Typed{{Nucs: row.Nucs}}), effects
}
