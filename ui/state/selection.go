package state

import (
	"bytes"
	"iter"
	"maps"

	"lidmark/domain/book"
)

// Selection is a set of subjects, with the one taken last. It is immutable;
// the zero Selection is empty.
type Selection struct {
	set  map[book.Subject]bool
	last book.Subject
	from book.Subject // where a range begins
}

// Select is the selection of the given subjects, the last of them taken last.
func Select(all ...book.Subject) Selection { return Selection{}.With(all...) }

// With is the selection with more subjects.
func (sel Selection) With(more ...book.Subject) Selection {
	next := Selection{set: make(map[book.Subject]bool, len(sel.set)+len(more)), last: sel.last, from: sel.from}
	maps.Copy(next.set, sel.set)
	for _, s := range more {
		if !s.IsZero() {
			next.set[s], next.last = true, s
		}
	}
	if next.from.IsZero() {
		next.from = next.last
	}
	return next
}

// Toggled is the selection with s, or without it if it was there.
func (sel Selection) Toggled(s book.Subject) Selection {
	if !sel.Has(s) {
		sel.from = s
		return sel.With(s)
	}
	next := Selection{set: maps.Clone(sel.set), last: sel.last, from: s}
	delete(next.set, s)
	if next.last == s {
		next.last = first(next.set)
	}
	return next
}

// Has tells whether s is selected.
func (sel Selection) Has(s book.Subject) bool { return sel.set[s] }

// Len is the number of subjects.
func (sel Selection) Len() int { return len(sel.set) }

// Last is the subject taken last, or none.
func (sel Selection) Last() book.Subject { return sel.last }

// All yields the subjects in no order.
func (sel Selection) All() iter.Seq[book.Subject] { return maps.Keys(sel.set) }

// kept is the selection without what the book no longer knows.
func (sel Selection) kept(known func(book.Subject) bool) Selection {
	next := Selection{set: map[book.Subject]bool{}, last: sel.last, from: sel.from}
	for s := range sel.set {
		if known(s) {
			next.set[s] = true
		}
	}
	if !next.Has(sel.last) {
		next.last = first(next.set)
	}
	return next
}

// first is one of the set, the same every time.
func first(set map[book.Subject]bool) (least book.Subject) {
	for s := range set {
		if least.IsZero() || bytes.Compare(s.UUID[:], least.UUID[:]) < 0 {
			least = s
		}
	}
	return least
}

// Same tells whether the same things are selected.
func (sel Selection) Same(t Selection) bool {
	for s := range sel.All() {
		if !t.Has(s) {
			return false
		}
	}
	return sel.Len() == t.Len()
}
