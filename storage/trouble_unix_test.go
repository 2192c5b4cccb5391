//go:build unix

package storage

import (
	"errors"
	"fmt"
	"os"
	"os/signal"
	"path/filepath"
	"strconv"
	"syscall"
	"testing"

	"lidmark/storage/journaltest"
)

func init() {
	children["open as nobody"] = openAsNobody
	children["append to a faulty disk"] = appendToFaultyDisk
}

// openAsNobody opens a book as a user without any rights and prints why that
// fails, and then how many entries can be read. The administrator, as whom
// tests often run, may write everywhere.
func openAsNobody(args []string) error {
	const nobody = 65534
	if os.Getuid() == 0 {
		if err := errors.Join(syscall.Setgroups(nil), syscall.Setgid(nobody), syscall.Setuid(nobody)); err != nil {
			return err
		}
	}
	b, err := Open(args[0], Options{})
	if err == nil {
		return errors.Join(errors.New("it opens"), b.Close())
	}
	fmt.Println(err)
	if b, err = Open(args[0], Options{ReadOnly: true}); err != nil {
		return err
	}
	n := 0
	for _, err := range b.Entries() {
		if err != nil {
			return err
		}
		n++
	}
	fmt.Println(n)
	return b.Close()
}

// open as nobody is told where it fails; these are the sentences.
const (
	readOnlyFolder = "summer.lidmark: nothing may be written in this folder; copy the book to a folder of your own, or open it to read only"
	denied         = "summer.lidmark: you may not read this file; ask its owner for leave, or choose another"
)

// within is a folder that everybody may enter, unlike those of t.TempDir.
func within(t *testing.T) string {
	t.Helper()
	dir, err := os.MkdirTemp("", "book")
	check(t, err)
	check(t, os.Chmod(dir, 0o755))
	t.Cleanup(func() {
		check(t, os.Chmod(dir, 0o755))
		check(t, os.RemoveAll(dir))
	})
	return dir
}

func TestFolderThatMayOnlyBeRead(t *testing.T) {
	dir := within(t)
	path := filepath.Join(dir, "summer.lidmark")
	put(t, path, contents(written(t)))
	check(t, os.Chmod(path, 0o644))
	check(t, os.Chmod(dir, 0o555))
	before := listed(t, dir)
	c := children.Play(t, "open as nobody", path)
	if got := c.Line(); got != readOnlyFolder {
		t.Errorf("got  %s\nwant %s", got, readOnlyFolder)
	}
	if got := c.Line(); got != strconv.Itoa(len(some)) {
		t.Errorf("read only: %s entries, want %d", got, len(some))
	}
	if after := listed(t, dir); after != before {
		t.Errorf("the folder had %s and has %s", before, after)
	}
}

func TestFileThatMayNotBeRead(t *testing.T) {
	dir := within(t)
	path := filepath.Join(dir, "summer.lidmark")
	put(t, path, contents(written(t)))
	check(t, os.Chmod(path, 0))
	c := children.Play(t, "open as nobody", path)
	for range 2 {
		if got := c.Line(); got != denied {
			t.Errorf("got  %s\nwant %s", got, denied)
		}
	}
}

// appendToFaultyDisk appends entries one by one until it may not write any
// further into the file, and prints how many were kept and what it is told.
func appendToFaultyDisk(args []string) error {
	b, err := Open(args[0], Options{})
	if err != nil {
		return err
	}
	signal.Ignore(syscall.SIGXFSZ)
	if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &syscall.Rlimit{Cur: 300000, Max: 300000}); err != nil {
		return err
	}
	for i := len(some); err == nil; i++ {
		fmt.Println(i)
		err = b.Append(journaltest.Entry(i, 20))
	}
	return err
}

func TestFaultyDisk(t *testing.T) {
	path := written(t)
	c := children.Play(t, "append to a faulty disk", path)
	kept, said := 0, ""
	for _, line := range c.Rest() {
		if n, err := strconv.Atoi(line); err == nil {
			kept = n
		} else {
			said = line
		}
	}
	const want = "summer.lidmark: the disk could not be read or written; check that it is still connected and do it again; what was saved before is safe"
	if said != want || kept < len(some)+10 {
		t.Errorf("after %d entries got %q, want %q", kept, said, want)
	}
	b, err := Open(path, Options{})
	check(t, err)
	journaltest.Same(t, b, journaltest.Some(kept, 20))
	sane(t, b)
}
