package storage

import (
	"bytes"
	"errors"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/storage/journaltest"
)

// fault is what somebody's disk has done to a file.
type fault struct {
	at    uint32 // from where on bytes are others
	patch []byte
	cut   uint32 // how much is left of it; 0: all
}

// of is a file with the fault in it.
func (f fault) of(whole []byte) []byte {
	whole = slices.Clone(whole)
	if len(whole) > 0 {
		copy(whole[int(f.at)%len(whole):], f.patch)
	}
	if f.cut > 0 {
		whole = whole[:min(len(whole), int(f.cut))]
	}
	return whole
}

// faults are such of a book of so many bytes (sqlite.org, Database File Format, section
// 1.3: the header's fields).
func faults(whole uint32) []fault {
	const page = 4096
	return []fault{
		{}, // whole
		{cut: 1},
		{cut: 100}, // of the header only
		{cut: page},
		{cut: page + 17}, // of the tables' list only
		{cut: whole / 2},
		{cut: whole - 1},
		{at: 0, patch: []byte("milk")}, // no book
		{at: 16, patch: []byte{0, 3}},
		{at: 16, patch: []byte{2, 0}}, // size of a page
		{at: 18, patch: []byte{1, 1}},
		{at: 18, patch: []byte{9, 9}},       // versions of the format
		{at: 20, patch: []byte{255}},        // room kept on a page
		{at: 28, patch: []byte{0, 0, 0, 1}}, // pages in all
		{at: 32, patch: []byte{0, 0, 0, 3, 0, 0, 0, 99}}, // free pages
		{at: 40, patch: []byte{0, 0, 0, 9, 0, 0, 0, 9}},  // format of the tables
		{at: 56, patch: []byte{0, 0, 0, 2}},              // letters of two bytes
		{at: 60, patch: []byte{0, 0, 0, 0}},
		{at: 60, patch: []byte{127, 255, 255, 255}},
		{at: 60, patch: []byte{255, 255, 255, 255}}, // its version
		{at: 68, patch: []byte("milk")},             // whose it is
		{at: 100, patch: []byte{5}},
		{at: 103, patch: []byte{0, 0}},
		{at: 103, patch: []byte{255, 255}}, // list of tables
		{at: 3 * page, patch: bytes.Repeat([]byte{0xa5}, 600)},
		{at: 7 * page, patch: bytes.Repeat([]byte{0}, 4096)},
		{at: 9 * page, patch: bytes.Repeat([]byte{255}, 64)},
	}
}

// named fails the test unless an error names the file and says more than its name, in one
// line.
func named(t *testing.T, err error) {
	t.Helper()
	if said := err.Error(); !strings.HasPrefix(said, "x.lidmark: ") || strings.ContainsAny(said, "\n\x00") {
		t.Errorf("the error is %q", said)
	}
}

// kept tells whether a file is as it was before. One that was opened for writing may have
// been brought up to date, or set back to the journal that a book has: both are said in
// its header (sqlite.org, Database File Format, section 1.3).
func kept(t *testing.T, path string, before []byte, wrote bool) {
	t.Helper()
	const journal, version = 18, 60
	if wrote && (!bytes.Equal(before[journal:journal+2], []byte{2, 2}) || int(before[version+3]) != len(scripts())) {
		return
	}
	if !bytes.Equal(contents(path), before) {
		t.Error("the file is changed")
	}
}

// FuzzOpenDamaged opens a book in which somebody's disk has changed some bytes, and reads
// and verifies it. Nothing panics, every error names the file, and one of opening says what
// to do; what cannot be read is found by Verify, each problem in a line. Neither opening nor
// reading nor closing changes a byte of it, but for what [kept] says.
func FuzzOpenDamaged(f *testing.F) {
	whole := small(f)
	for _, seed := range faults(uint32(len(whole))) {
		f.Add(seed.at, seed.patch, seed.cut, true)
		f.Add(seed.at, seed.patch, seed.cut, false)
	}
	now := func() time.Time { return time.Date(2027, 5, 15, 18, 0, 0, 0, time.UTC) }
	f.Fuzz(func(t *testing.T, at uint32, patch []byte, cut uint32, readOnly bool) {
		path := filepath.Join(t.TempDir(), "x.lidmark")
		before := fault{at, patch, cut}.of(whole)
		put(t, path, before)
		b, err := Open(path, Options{ReadOnly: readOnly, Now: now})
		defer func() { kept(t, path, before, err == nil && !readOnly) }()
		if err != nil {
			refused(t, err)
			return
		}
		readThrough(t, b)
		if err := b.Close(); err != nil {
			t.Errorf("closing: %v", err)
		}
	})
}

// refused fails the test unless an error of opening a book says what to do.
func refused(t *testing.T, err error) {
	t.Helper()
	named(t, err)
	var known *FileError
	if !errors.As(err, &known) || known.Trouble.Do() == "" {
		t.Errorf("it does not say what to do: %v", err)
	}
}

// readThrough reads a book, counts its entries and verifies it.
func readThrough(t *testing.T, b *Book) {
	t.Helper()
	var unread error
	for _, err := range b.Entries() {
		if err != nil {
			named(t, err)
			unread = err
			break
		}
	}
	if _, err := b.Count(); err != nil {
		named(t, err)
		unread = err
	}
	problems := b.Verify(t.Context())
	if unread != nil && len(problems) == 0 {
		t.Errorf("nothing is wrong with a book of which is said %q", unread)
	}
	for _, p := range problems {
		if said := p.String(); p.What == "" || strings.ContainsAny(said, "\n\x00") {
			t.Errorf("a problem is %q", said)
		}
	}
}

// small is a book of a few entries as bytes.
func small(tb testing.TB) []byte {
	tb.Helper()
	path := filepath.Join(tb.TempDir(), "small.lidmark")
	b, err := CreateWith(path, journaltest.Some(40, 4)...)
	if err == nil {
		err = b.Close()
	}
	if err != nil {
		tb.Fatal(err)
	}
	return contents(path)
}
