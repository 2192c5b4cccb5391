package main

import (
	"lidmark/ui/state"
)

// write writes a deed in the book from whose window it came, and tells what
// became of it. A deed of a book that was left meanwhile stays in its draft.
func (d *desk) write(s state.State, deed state.Deed, tell func(state.Msg)) {
	o := d.opened()
	if o == nil || !o.is(s.Book) {
		return
	}
	b, err := o.append(s.Now, s.Looked(), d.clock(), deed.Entries)
	if err != nil {
		tell(state.Written{Number: deed.Number, Failed: err.Error()})
		return
	}
	tell(state.Written{Number: deed.Number, Book: b})
}
