package storage

import (
	"context"
	"database/sql/driver"
	"errors"
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"modernc.org/sqlite"

	"lidmark/domain/book"
	"lidmark/storage/journaltest"
)

// The tests in this file kill a process while it writes, with a signal that
// it cannot catch, and look at what it left. They prove that the death of the
// process loses nothing. They do not prove that a power cut loses nothing,
// for what the process has handed to the system survives the process; that
// rests on SQLite's full sync and on a disk that tells the truth.

func init() {
	children["append batches"] = appendBatches
	children["copy again and again"] = copyAgainAndAgain
	children["migrate"] = migrateAndPause
}

// batchOf is how many entries the child appends at a time.
const batchOf = 7

// appendBatches appends batch after batch and prints the number of each when
// it has been acknowledged.
func appendBatches(args []string) error {
	b, err := Open(args[0], Options{})
	if err != nil {
		return err
	}
	for n := 0; ; n++ {
		if err := b.Append(batchNumber(n)...); err != nil {
			return err
		}
		fmt.Println(n)
	}
}

func batchNumber(n int) []book.Entry {
	return journaltest.Some((n+1)*batchOf, 20)[n*batchOf:]
}

func TestKilledWhileAppending(t *testing.T) {
	path := filepath.Join(t.TempDir(), "summer.lidmark")
	random := rand.New(rand.NewPCG(1, 2))
	for range 8 {
		_ = os.Remove(path)
		b, err := Create(path)
		check(t, err)
		check(t, b.Close())
		c := children.Play(t, "append batches", path)
		acknowledged := -1
		for range 1 + random.IntN(60) {
			acknowledged = number(t, c.Line())
		}
		for _, line := range c.Kill() {
			acknowledged = number(t, line)
		}
		b, err = Open(path, Options{})
		check(t, err)
		n, err := b.Count()
		check(t, err)
		if n%batchOf != 0 {
			t.Errorf("%d entries: a batch was half kept", n)
		}
		if last := n/batchOf - 1; last < acknowledged || last > acknowledged+1 {
			t.Errorf("batch %d was acknowledged, batch %d is the last on disk", acknowledged, last)
		}
		journaltest.Same(t, b, journaltest.Some(n, 20))
		sane(t, b)
	}
}

func number(t *testing.T, line string) int {
	t.Helper()
	n, err := strconv.Atoi(line)
	if err != nil {
		t.Fatalf("the child says %q", line)
	}
	return n
}

// copyAgainAndAgain makes copies and prints before each.
func copyAgainAndAgain(args []string) error {
	b, err := Open(args[0], Options{Keep: 2})
	for n := 0; err == nil; n++ {
		if err = b.Append(journaltest.Entry(len(some)+n, 20)); err == nil {
			fmt.Println(n)
			_, err = b.CopyIfDue(context.Background(), at(n)())
		}
	}
	return err
}

func TestKilledWhileCopying(t *testing.T) {
	for kill := range 6 {
		path := written(t)
		c := children.Play(t, "copy again and again", path)
		for range 1 + 2*kill {
			number(t, c.Line())
		}
		c.Kill()
		b, err := Open(path, Options{})
		check(t, err)
		n, err := b.Count()
		check(t, err)
		journaltest.Same(t, b, journaltest.Some(n, 20))
		for _, kept := range Copies(path) {
			old, err := Open(kept.Path, Options{ReadOnly: true})
			check(t, err)
			journaltest.Same(t, old, journaltest.Some(kept.Entries, 20))
			sane(t, old)
		}
		_, err = b.CopyIfDue(context.Background(), at(1000)())
		check(t, err)
		if left := listed(t, CopiesFolder(path)); strings.Contains(left, draftEnding) {
			t.Errorf("unfinished copies are left: %s", left)
		}
		sane(t, b)
	}
}

// migrateAndPause brings a book to a version whose script stops in its middle
// until the process is killed.
func migrateAndPause(args []string) error {
	err := sqlite.RegisterScalarFunction("pause", 0, func(*sqlite.FunctionContext, []driver.Value) (driver.Value, error) {
		fmt.Println("in the middle")
		_, err := io.ReadAll(os.Stdin)
		return nil, err
	})
	if err != nil {
		return err
	}
	_, err = open(args[0], Options{Now: at(0)}, next(addColumn+"; UPDATE writer SET phone = '1'; SELECT pause()"))
	return err
}

func TestKilledWhileMigrating(t *testing.T) {
	path := written(t)
	before := dump(t, path)
	c := children.Play(t, "migrate", path)
	if got := c.Line(); got != "in the middle" {
		t.Fatalf("the child says %q", got)
	}
	if _, err := Open(path, Options{}); !errors.Is(err, InUse) {
		t.Errorf("during a migration a second program gets %v", err)
	}
	c.Kill()
	if v, err := peek(path); v != len(scripts()) || err != nil {
		t.Errorf("version %d, %v", v, err)
	}
	if dump(t, path) != before {
		t.Error("half a migration is left")
	}
	b, err := open(path, Options{Now: at(1)}, next(addColumn))
	check(t, err)
	journaltest.Same(t, b, some)
	sane(t, b)
	if kept := Copies(path); len(kept) != 2 {
		t.Errorf("copies: %v", kept)
	}
}
