package state

import "slices"

// asksWriter tells whether it must be asked who writes before anything is
// written: nobody is named, somebody could be, and it was not asked yet. A book
// that is kept nowhere, as the demo season, is of nobody.
func (s State) asksWriter() bool {
	if s.Pen.Writer != "" || s.Pen.Nobody || s.Book == nil || s.Book.Path == "" {
		return false
	}
	for range s.Present().View.People() {
		return true
	}
	return false
}

// WaitsForWriter tells whether something is to be written as soon as it is known
// who writes.
func (s State) WaitsForWriter() bool {
	return slices.ContainsFunc(s.Pen.Sent, func(d Deed) bool { return d.unnamed })
}

// penNamed is the window after a message with what waited for its writer on its
// way into the book, once their list is shut: without a name where none was taken.
func (s State) penNamed() (State, []Effect) {
	if s.Menu == WriterMenu || !s.WaitsForWriter() {
		return s, nil
	}
	s.Pen.Nobody = s.Pen.Writer == ""
	s.Pen.Sent = slices.Clone(s.Pen.Sent)
	var effects []Effect
	for i, d := range s.Pen.Sent {
		if !d.unnamed {
			continue
		}
		d.unnamed, d.Entries = false, slices.Clone(d.Entries)
		for j := range d.Entries {
			d.Entries[j].Writer = s.Pen.Writer
		}
		s.Pen.Sent[i] = d
		effects = append(effects, Write{d})
	}
	return s, effects
}
