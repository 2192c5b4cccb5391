package main

import (
	"crypto/sha256"
	"fmt"
	"path/filepath"

	"lidmark/domain/book"
	"lidmark/ui/state"
)

// draftFile is where the draft of a book is kept: one file a book, told apart
// by where the book is.
func (d *desk) draftFile(path string) string {
	sum := sha256.Sum256([]byte(path))
	return filepath.Join(d.folder, "drafts", fmt.Sprintf("%s-%x.json", nameOf(path), sum[:6]))
}

// keepDraft keeps what is typed and not written; a draft of nothing goes.
func (d *desk) keepDraft(draft state.Draft) {
	var value any
	if !draft.IsZero() {
		value = draft
	}
	d.keeps.keep(d.draftFile(draft.Path), value)
}

// draftOf is what was typed in a book and not written when the program ended.
// Deeds that reached the book all the same are no longer in it. A book open to
// read only leaves its draft to the program that writes in it.
func (d *desk) draftOf(b *state.Book) (draft state.Draft) {
	if b.Path == "" || b.ReadOnly != "" {
		return state.Draft{}
	}
	d.keeps.flush()
	if _, err := kept(d.draftFile(b.Path), &draft); err != nil || draft.IsZero() {
		return state.Draft{}
	}
	there := map[book.EntryID]bool{}
	for _, u := range draft.Unsaid {
		for _, e := range u.Entries {
			there[e.ID] = false
		}
	}
	for e := range b.Season.Entries() {
		if _, asked := there[e.ID]; asked {
			there[e.ID] = true
		}
	}
	draft = draft.Without(func(id book.EntryID) bool { return there[id] })
	d.keepDraft(draft)
	return draft
}
