package storage

import (
	"errors"
	"path/filepath"
	"testing"

	"lidmark/storage/journaltest"
)

func TestABookWithItsFirstEntries(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "summer.lidmark")
	b, err := CreateWith(path, some...)
	check(t, err)
	journaltest.Same(t, b, some)
	check(t, b.Close())
	if _, err := CreateWith(path, some...); !errors.Is(err, Exists) {
		t.Errorf("over a book that is there: %v", err)
	}
	b, err = Open(path, Options{})
	check(t, err)
	journaltest.Same(t, b, some)
	check(t, b.Close())
}

func TestABookThatCannotBeginLeavesNothing(t *testing.T) {
	dir := t.TempDir()
	bad := journaltest.Entry(3, 20)
	bad.Fact = nil
	if _, err := CreateWith(filepath.Join(dir, "summer.lidmark"), some[0], bad); err == nil {
		t.Error("an entry without a fact was taken")
	}
	if left := listed(t, dir); left != "" {
		t.Errorf("left behind: %s", left)
	}
}
