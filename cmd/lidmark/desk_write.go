package main

import (
	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// write writes a deed in the book from whose window it came, and tells what
// became of it. A deed of a book that was left meanwhile stays in its draft.
func (d *desk) write(s state.State, deed state.Deed, tell func(state.Msg)) {
	o := d.opened()
	if o == nil || !o.is(s.Book) {
		return
	}
	b, err := o.append(s.Now, d.clock(), deed.Entries)
	if err != nil {
		tell(state.Written{Number: deed.Number, Failed: err.Error()})
		return
	}
	readAhead(s, b)
	tell(state.Written{Number: deed.Number, Book: b})
	if s.Walk != nil {
		d.ticks.give(func() { o.readToday(s, b) })
	}
}

// readAhead reads a book as of today and on the day looked at, so that the
// window need not. What a walk shows of its day does not hang on that.
func readAhead(s state.State, b *state.Book) {
	for _, day := range [...]calendar.Day{s.Today(), s.Looked()} {
		if s.Walk == nil || s.Walk.Day != day {
			b.On(s.Now, day)
		}
	}
}

// readToday reads a book as of today for when the walk is left, unless more was
// written meanwhile.
func (o *opened) readToday(s state.State, b *state.Book) {
	if o.now() == b {
		b.On(s.Now, s.Today())
		b.On(s.Now, s.Looked())
	}
}
