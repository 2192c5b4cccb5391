package storage

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

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
