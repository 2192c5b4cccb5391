package storage

import (
	"context"
	"database/sql"
	"errors"
	"path/filepath"
	"testing"

	"lidmark/domain/book"
	"lidmark/storage/journaltest"
)

// The yardstick: a book of half a million entries about ten thousand nucs.
// Each benchmark has beside it the least that could be done.
const (
	bigEntries = 500_000
	bigNucs    = 10_000
)

// big makes the big book, closed, and its entries.
func big(b *testing.B) (path string, all []book.Entry) {
	b.Helper()
	path = filepath.Join(b.TempDir(), "big.lidmark")
	all = journaltest.Some(bigEntries, bigNucs)
	k, err := Create(path)
	if err != nil {
		b.Fatal(err)
	}
	if err := errors.Join(k.Append(all...), k.Close()); err != nil {
		b.Fatal(err)
	}
	return path, all
}

func opened(b *testing.B, path string) *Book {
	b.Helper()
	k, err := Open(path, Options{})
	if err != nil {
		b.Fatal(err)
	}
	b.Cleanup(func() { _ = k.Close() })
	return k
}

func BenchmarkOpenAndReadAll(b *testing.B) {
	path, _ := big(b)
	for b.Loop() {
		k, err := Open(path, Options{})
		if err != nil {
			b.Fatal(err)
		}
		n := 0
		for _, err := range k.Entries() {
			if err != nil {
				b.Fatal(err)
			}
			n++
		}
		if err := k.Close(); n != bigEntries || err != nil {
			b.Fatal(n, err)
		}
	}
}

// BenchmarkFloorScan reads the same columns of the same rows and forgets them.
func BenchmarkFloorScan(b *testing.B) {
	path, _ := big(b)
	k := opened(b, path)
	for b.Loop() {
		rows, err := k.read.Query("SELECT " + entryColumns + " FROM entry e ORDER BY e.id")
		if err != nil {
			b.Fatal(err)
		}
		n := 0
		var r row
		for cells := r.columns(); rows.Next(); n++ {
			if err := rows.Scan(cells...); err != nil {
				b.Fatal(err)
			}
		}
		if err := rows.Close(); n != bigEntries || err != nil {
			b.Fatal(n, err)
		}
	}
}

func BenchmarkEntriesOfOneSubject(b *testing.B) {
	path, all := big(b)
	k := opened(b, path)
	for b.Loop() {
		n := 0
		for _, err := range k.EntriesOf(book.Subjects(all[17].Fact)[0]) {
			if err != nil {
				b.Fatal(err)
			}
			n++
		}
		if n < 40 {
			b.Fatal(n)
		}
	}
}

func BenchmarkAppendBig(b *testing.B) {
	all := journaltest.Some(bigEntries, bigNucs)
	for b.Loop() {
		k, err := Create(filepath.Join(b.TempDir(), "big.lidmark"))
		if err != nil {
			b.Fatal(err)
		}
		if err := errors.Join(k.Append(all...), k.Close()); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkAppendOne(b *testing.B) {
	k, err := Create(filepath.Join(b.TempDir(), "one.lidmark"))
	if err != nil {
		b.Fatal(err)
	}
	for i := 0; b.Loop(); i++ {
		if err := k.Append(journaltest.Entry(i, bigNucs)); err != nil {
			b.Fatal(err)
		}
	}
	if err := k.Close(); err != nil {
		b.Fatal(err)
	}
}

// BenchmarkFloorInsert inserts one row of one column, with the same sync.
func BenchmarkFloorInsert(b *testing.B) {
	path := filepath.Join(b.TempDir(), "bare.db")
	db, err := dial(path, writing, 1, "_txlock=immediate")
	if err != nil {
		b.Fatal(err)
	}
	insert := func(query string) {
		if _, err := db.Exec(query); err != nil {
			b.Fatal(err)
		}
	}
	insert("CREATE TABLE bare (n INTEGER PRIMARY KEY) STRICT")
	for b.Loop() {
		insert("INSERT INTO bare DEFAULT VALUES")
	}
	if err := db.Close(); err != nil {
		b.Fatal(err)
	}
}

func BenchmarkCopy(b *testing.B) {
	path, _ := big(b)
	k := opened(b, path)
	for b.Loop() {
		if err := k.Copy(context.Background(), filepath.Join(b.TempDir(), "copy.lidmark")); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkFloorVacuum copies without checking or syncing.
func BenchmarkFloorVacuum(b *testing.B) {
	path, _ := big(b)
	db, err := sql.Open("sqlite", path)
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		if _, err := db.Exec("VACUUM INTO ?", filepath.Join(b.TempDir(), "copy.db")); err != nil {
			b.Fatal(err)
		}
	}
	if err := db.Close(); err != nil {
		b.Fatal(err)
	}
}
