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
	OfWalk  bool         // it was written in a walk
	turned  int          // the number of the one that it undoes or redoes
	unnamed bool         // it waits until it is known who writes
}

// Pen is what the window has written and is about to write. The zero Pen has
// written nothing.
type Pen struct {
	Writer  string   // who writes
	Nobody  bool     // it was asked, and nobody was named
	IDs     book.IDs // makes the ids of entries and of new things
	Sent    []Deed   // given to the book, not yet acknowledged
	Failed  []Deed   // what the book did not take
	Why     string   // why it did not
	Done    []Deed   // what can be undone, the latest last
	Earlier []Deed   // lines typed before the program ended, as they were typed
	Undone  []Deed   // what can be redone, the latest last
	Deeds   int      // how many there were
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
	d.Number, d.unnamed, d.OfWalk = s.Pen.Deeds, s.asksWriter(), s.Walk != nil
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
	if d.Turns {
		s.Pen = s.Pen.turned(d)
	} else {
		s.Pen.Done, s.Pen.Undone = append(slices.Clip(s.Pen.Done), d), nil
		return s.grown(m.Book).yardShown(s.Book, d), nil
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

// yardShown is the window with the yard shown that a deed brought into the book.
func (s State) yardShown(before *Book, d Deed) State {
	for _, e := range d.Entries {
		if f, ok := e.Fact.(book.YardDescribed); ok && !before.On(s.Now, s.Today()).Known(f.Yard.Subject()) && s.Present().Known(f.Yard.Subject()) {
			s = s.shows(f.Yard)
			s.Selection = Select(f.Yard.Subject())
		}
	}
	return s
}

// undo strikes the latest deed: of those written here, else the last one of the
// book.
func undo(s State) (State, []Effect) {
	s = s.withLastDeed()
	d := s.Pen.Done[len(s.Pen.Done)-1]
	return s.turn(d, "undone: ", d.Entries)
}

// redo strikes what struck the deed that was undone last.
func redo(s State) (State, []Effect) {
	d := s.Pen.Undone[len(s.Pen.Undone)-1]
	return s.turn(d, "again: ", d.Strikes)
}

// turn gives the book strikes of a deed, the latest entry first. The deed counts
// as undone, or as done again, when the book has them, see [Pen.turned].
func (s State) turn(d Deed, words string, entries []book.Entry) (State, []Effect) {
	switch {
	case len(s.Pen.Sent) > 0:
		s.Note = Note{Text: "what was written last is on its way, a moment"}
		return s, nil
	case len(s.Pen.Failed) > 0:
		s.Note = Note{Text: "what was written last waits: try again, or let it go", Bad: true}
		return s, nil
	}
	var facts []book.Fact
	for _, e := range slices.Backward(entries) {
		facts = append(facts, book.Struck{Entry: e.ID})
	}
	ids := s.Pen.IDs
	ids.Deed()
	strikes := ids.Entries(calendar.Instantly(s.Now), s.Now, s.Pen.Writer, facts...)
	s.Pen.IDs = ids
	return s.send(Deed{Words: words + d.Words, Entries: strikes, Turns: true, turned: d.Number})
}

// turned is the pen when the book has what undoes or redoes a deed.
func (p Pen) turned(by Deed) Pen {
	is := func(d Deed) bool { return d.Number == by.turned }
	if i := slices.IndexFunc(p.Done, is); i >= 0 {
		d := p.Done[i]
		d.Strikes = by.Entries
		p.Done, p.Undone = slices.Delete(slices.Clone(p.Done), i, i+1), append(slices.Clip(p.Undone), d)
	} else if i := slices.IndexFunc(p.Undone, is); i >= 0 {
		d := p.Undone[i]
		d.Strikes = nil
		p.Undone, p.Done = slices.Delete(slices.Clone(p.Undone), i, i+1), append(slices.Clip(p.Done), d)
	}
	return p
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

// without are entries but for some of them.
func without(all, some []book.Entry) []book.Entry {
	return slices.DeleteFunc(slices.Clone(all), func(e book.Entry) bool {
		return slices.ContainsFunc(some, func(drop book.Entry) bool { return drop.ID == e.ID })
	})
}

// withoutFailed is the window in which some entries that the book did not take
// are dropped. What else their deeds wrote waits on.
func (s State) withoutFailed(drops []book.Entry) State {
	if len(drops) == 0 {
		return s
	}
	failed := slices.Clone(s.Pen.Failed)
	for i := range failed {
		failed[i].Entries = without(failed[i].Entries, drops)
	}
	s.Pen.Failed = slices.DeleteFunc(failed, func(d Deed) bool { return len(d.Entries) == 0 })
	if len(s.Pen.Failed) == 0 {
		s.Pen.Why = ""
	}
	return s
}

// Unsaved tells whether something written here has not reached the book.
func (s State) Unsaved() bool { return len(s.Pen.Sent)+len(s.Pen.Failed) > 0 }
