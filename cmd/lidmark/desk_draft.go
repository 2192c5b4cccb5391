package main

import (
	"crypto/sha256"
	"errors"
	"fmt"
	"path/filepath"

	"lidmark/domain/book"
	"lidmark/storage"
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
func (d *desk) draftOf(b *state.Book) (draft state.Draft, trouble state.Note) {
	if b.Path == "" || b.ReadOnly != "" {
		return state.Draft{}, trouble
	}
	d.keeps.flush()
	if aside, err := kept(d.draftFile(b.Path), &draft); err != nil {
		return state.Draft{}, state.Note{Text: "what was typed and not written could not be read; the damaged file is " + aside, Bad: true}
	}
	if draft.IsZero() {
		return state.Draft{}, trouble
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
	return draft, trouble
}

// wasKept tells once that something could not be kept, until it can again.
func (d *desk) wasKept(path string, failed error) {
	d.mu.Lock()
	tell, say := d.tell, failed != nil && !d.told[path]
	d.told[path] = failed != nil
	d.mu.Unlock()
	switch {
	case say && path == d.prefsFile():
		tell(bad("what you chose for the window cannot be kept: " + reason(failed)))
	case say:
		tell(bad("what you type cannot be kept until it is written: " + reason(failed)))
	}
}

// tells notes whom to tell that something cannot be kept.
func (d *desk) tells(tell func(state.Msg)) {
	d.mu.Lock()
	defer d.mu.Unlock()
	d.tell = tell
}

// reason is what is wrong with a file of the keeper's choices and drafts, and
// what to do.
func reason(err error) string {
	var f *storage.FileError
	switch {
	case !errors.As(err, &f):
		return err.Error()
	case f.Trouble == storage.DiskFull, f.Trouble == storage.DiskFault:
		return f.Trouble.Error() + "; " + f.Trouble.Do()
	}
	return f.Trouble.Error() + "; look at " + filepath.Dir(f.Path)
}
