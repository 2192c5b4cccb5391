package book

import (
	"slices"
	"time"
)

// struck is what strikes took out.
type struck struct {
	entries map[EntryID]bool
	about   map[Subject]bool // subjects that have a struck entry
}

// struckBy is what is struck as it is known at an instant; zero is now.
func (s *Season) struckBy(known time.Time) *struck {
	if known.IsZero() {
		return s.struck()
	}
	late := func(e *Entry) bool { return e.Written.After(known) }
	return &struck{entries: strikes(slices.DeleteFunc(slices.Clone(s.about[Subject{}]), late))}
}

// findStruck finds what is struck as it is known now. It costs a walk over the
// entries when anything is.
func (s *Season) findStruck() *struck {
	all := struck{entries: strikes(s.about[Subject{}])}
	if len(all.entries) == 0 {
		return &all
	}
	all.about = map[Subject]bool{}
	keys := newKeys()
	for _, e := range s.all {
		if all.entries[e.ID] {
			for _, sub := range keys.of(e) {
				all.about[sub] = true
			}
		}
	}
	return &all
}

// touches tells whether an entry that is new to a season changes what is struck
// in it.
func (s *struck) touches(e *Entry) bool {
	_, strike := e.Fact.(Struck)
	return strike || s.entries[e.ID]
}

// strikes are the entries that are struck by some of entries. A strike may be
// struck in its turn, by one written later: so they are taken from the last
// written backwards.
func strikes(entries []*Entry) map[EntryID]bool {
	var all []*Entry
	for _, e := range entries {
		if _, ok := e.Fact.(Struck); ok {
			all = append(all, e)
		}
	}
	slices.SortFunc(all, func(a, b *Entry) int { return compareWritten(b, a) })
	struck := map[EntryID]bool{}
	for _, e := range all {
		if !struck[e.ID] {
			struck[e.Fact.(Struck).Entry] = true
		}
	}
	return struck
}
