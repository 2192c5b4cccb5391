package storage_test

import (
	"context"
	"path/filepath"
	"testing"

	"lidmark/domain/book"
	"lidmark/storage"
	"lidmark/storage/journaltest"
)

// created is a new book in a folder of the test's own. When the test ends it
// is verified, closed, opened again and verified once more.
func created(t *testing.T) *storage.Book {
	t.Helper()
	path := filepath.Join(t.TempDir(), "summer.lidmark")
	b, err := storage.Create(path)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { verified(t, b) })
	return b
}

// verified verifies a book that a test has written, and closes it.
func verified(t *testing.T, b *storage.Book) {
	t.Helper()
	for _, p := range b.Verify(context.Background()) {
		t.Errorf("%s: %s", filepath.Base(b.Path()), p)
	}
	if err := b.Close(); err != nil {
		t.Error(err)
	}
}

func TestBookIsAJournal(t *testing.T) {
	journaltest.Run(t, func(t *testing.T) book.Journal { return created(t) })
}

func TestMemoryIsAJournal(t *testing.T) {
	journaltest.Run(t, func(*testing.T) book.Journal { return &journaltest.Memory{} })
}
