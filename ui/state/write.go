package state

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Deed is what was written with one stroke: its entries, and in words what it
// was, for undo and redo.
type Deed struct {
	Words   string
	Entries []book.Entry
	Number  int          // counts the deeds of this window; the outcome comes back under it
	Turns   bool         // it undoes or redoes another one
	Strikes []book.Entry // what struck its entries, while it is undone
	Typed   []Typed      // what was typed, where it was a line
	unnamed bool         // it waits until it is known who writes
}

// Pen is what the window has written and is about to write. The zero Pen has
// written nothing.
type Pen struct {
	Writer string   // who writes
	Nobody bool     // it was asked, and nobody was named
	IDs    book.IDs // makes the ids of entries and of new things
	Sent   []Deed   // given to the book, not yet acknowledged
	Failed []Deed   // what the book did not take
	Why    string   // why it did not
	Done   []Deed   // what can be undone, the latest last
	Undone []Deed   // what can be redone, the latest last
	Deeds  int      // how many there were
}

// Write is the effect that appends the entries of a deed to the book. The
// outcome comes back as [Written].
type Write struct{ Deed Deed }

func (Write) effect() {}

// Written tells what became of a deed: the book with its entries in it, or why
// it was not written, as a sentence that says what to do.
type Written struct {
	Number int
	Book   *Book
	Failed string
}

func (Written) msg() {}

// write gives facts of one moment to the book.
func (s State) write(words string, at calendar.Moment, facts ...book.Fact) (State, []Effect) {
	ids := s.Pen.IDs
	ids.Deed()
	entries := ids.Entries(at, s.Now, s.Pen.Writer, facts...)
	s.Pen.IDs = ids
	return s.send(Deed{Words: words, Entries: entries})
}

// send gives a deed to the book; the first one asks who writes, where nobody
// knows.
func (s State) send(d Deed) (State, []Effect) {
	if len(d.Entries) == 0 {
		return s, nil
	}
	s.Pen.Deeds++
	d.Number, d.unnamed = s.Pen.Deeds, s.asksWriter()
	s.Pen.Sent = append(slices.Clip(s.Pen.Sent), d)
	if d.unnamed {
		return s.menuOpened(WriterMenu), nil
	}
	return s, []Effect{Write{d}}
}

// written is the window after the outcome of a deed.
func (s State) written(m Written) (State, []Effect) {
	i := slices.IndexFunc(s.Pen.Sent, func(d Deed) bool { return d.Number == m.Number })
	if i < 0 {
		return s, nil
	}
	d := s.Pen.Sent[i]
	s.Pen.Sent = slices.Concat(s.Pen.Sent[:i], s.Pen.Sent[i+1:])
	if m.Failed != "" {
		s.Pen.Failed, s.Pen.Why = append(slices.Clip(s.Pen.Failed), d), m.Failed
		return s, nil
	}
	s.Pen.Why = ""
	if !d.Turns {
		s.Pen.Done, s.Pen.Undone = append(slices.Clip(s.Pen.Done), d), nil
	}
	return s.grown(m.Book), nil
}

// grown is the window with the same book that has more entries.
func (s State) grown(b *Book) State {
	if b == nil {
		return s
	}
	s.Book = b
	s.Selection = s.Selection.kept(s.Reading().Known)
	return s
}

// strike gives the book entries that strike others, the latest first.
func (s State) strike(words string, entries []book.Entry) (State, []book.Entry, []Effect) {
	var facts []book.Fact
	for _, e := range slices.Backward(entries) {
		facts = append(facts, book.Struck{Entry: e.ID})
	}
	ids := s.Pen.IDs
	ids.Deed()
	strikes := ids.Entries(calendar.Instantly(s.Now), s.Now, s.Pen.Writer, facts...)
	s.Pen.IDs = ids
	s, effects := s.send(Deed{Words: words, Entries: strikes, Turns: true})
	return s, strikes, effects
}

// undo strikes the latest deed.
func undo(s State) (State, []Effect) {
	done := s.Pen.Done
	d := done[len(done)-1]
	s, strikes, effects := s.strike("undone: "+d.Words, d.Entries)
	d.Strikes = strikes
	s.Pen.Done, s.Pen.Undone = done[:len(done)-1], append(slices.Clip(s.Pen.Undone), d)
	return s, effects
}

// redo strikes what struck the deed that was undone last.
func redo(s State) (State, []Effect) {
	undone := s.Pen.Undone
	d := undone[len(undone)-1]
	s, _, effects := s.strike("again: "+d.Words, d.Strikes)
	d.Strikes = nil
	s.Pen.Undone, s.Pen.Done = undone[:len(undone)-1], append(slices.Clip(s.Pen.Done), d)
	return s, effects
}

// again gives the book what it did not take.
func again(s State) (State, []Effect) {
	failed := s.Pen.Failed
	s.Pen.Failed, s.Pen.Why = nil, ""
	var effects []Effect
	for _, d := range failed {
		s.Pen.Sent = append(slices.Clip(s.Pen.Sent), d)
		effects = append(effects, Write{d})
	}
	return s, effects
}

// letGo drops what the book did not take.
func letGo(s State) State {
	s.Pen.Failed, s.Pen.Why = nil, ""
	return s
}

// Unsaved tells whether something written here has not reached the book.
func (s State) Unsaved() bool { return len(s.Pen.Sent)+len(s.Pen.Failed) > 0 }
