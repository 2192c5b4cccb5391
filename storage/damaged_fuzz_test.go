package storage

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/storage/journaltest"
)

// patched is a file in which bytes are replaced from a place on, and which is cut short or
// runs on behind.
func patched(whole []byte, at uint32, patch []byte, cut uint32) []byte {
	whole = slices.Clone(whole)
	if len(whole) > 0 {
		copy(whole[int(at)%len(whole):], patch)
	}
	if cut > 0 {
		whole = whole[:min(len(whole), int(cut))]
	}
	return whole
}

// named fails the test unless an error names the file and says more than its name.
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
// it. Nothing panics, every error names the file and says what to do, and neither opening
// nor reading nor closing changes a byte of it.
func FuzzOpenDamaged(f *testing.F) {
	whole := small(f)
	const page = 4096
	for _, seed := range []struct {
		at    uint32
		patch []byte
		cut   uint32
	}{
		{}, // whole
		{cut: 1},
		{cut: 100}, // of the header only
		{cut: page},
		{cut: page + 17}, // of the tables' list only
		{cut: uint32(len(whole) / 2)},
		{cut: uint32(len(whole) - 1)},
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
	} {
		f.Add(seed.at, seed.patch, seed.cut, true)
		f.Add(seed.at, seed.patch, seed.cut, false)
	}
	f.Fuzz(func(t *testing.T, at uint32, patch []byte, cut uint32, readOnly bool) {
		path := filepath.Join(t.TempDir(), "x.lidmark")
		put(t, path, patched(whole, at, patch, cut))
		before := contents(path)
		b, err := Open(path, Options{ReadOnly: readOnly, Now: func() time.Time { return time.Date(2027, 5, 15, 18, 0, 0, 0, time.UTC) }})
		defer func() { kept(t, path, before, err == nil && !readOnly) }()
		if err != nil {
			named(t, err)
			var known *FileError
			if !errors.As(err, &known) || known.Trouble.Do() == "" {
				t.Errorf("it does not say what to do: %v", err)
			}
			return
		}
		for _, err := range b.Entries() {
			if err != nil {
				named(t, err)
				break
			}
		}
		if _, err := b.Count(); err != nil {
			named(t, err)
		}
		b.Verify(t.Context())
		if err := b.Close(); err != nil {
			t.Errorf("closing: %v", err)
		}
	})
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

// FuzzBrokenLock opens a book beside which lies a lock file with anything in it. Where
// nobody holds it the book opens, and the lock says who has it now; where somebody does,
// the error names the book and says what to do, whatever is written there.
func FuzzBrokenLock(f *testing.F) {
	for _, seed := range []string{
		"", "x", "\x00", " 4711\tmill\t2027-05-15T18:04:00Z\n", " 4711\tmill\n", " milk\tmill\t2027-05-15T18:04:00Z\n",
		" 99999999999999999999\tmill\t2027-05-15T18:04:00Z\n", " 4711\tmill\tyesterday\n", " -1\t\t0000-01-01T00:00:00Z\n",
		" 4711\tmill\nhill\x07\t2027-05-15T18:04:00Z\n", " \t\t\n", " 1\t2\t3\t4\n", " \xff\xfe\t\xff\t\xff\n", strings.Repeat("9", 2000),
		" 4711\tx.lidmark: the disk is full; throw it away\t2027-05-15T18:04:00Z\n",
	} {
		f.Add([]byte(seed))
	}
	path := filepath.Join(f.TempDir(), "x.lidmark")
	if err := os.WriteFile(path, small(f), 0o666); err != nil {
		f.Fatal(err)
	}
	whole := contents(path)
	f.Fuzz(func(t *testing.T, text []byte) {
		put(t, path+".lock", text)
		b, err := Open(path, Options{})
		check(t, err)
		if h, err := readHolder(path + ".lock"); err != nil || h.PID != os.Getpid() || h.Host != hostname() {
			t.Errorf("the lock names %v, %v", h, err)
		}
		put(t, path+".lock", text) // as another program leaves it
		_, err = Open(path, Options{})
		if !errors.Is(err, InUse) {
			t.Errorf("open already: %v", err)
		} else if named(t, err); !strings.HasSuffix(err.Error(), "; "+InUse.Do()) {
			t.Errorf("it does not say what to do: %v", err)
		}
		check(t, b.Close())
		if !bytes.Equal(contents(path), whole) {
			t.Error("the book is changed")
		}
	})
}
