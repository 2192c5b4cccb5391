package storage

import (
	"path/filepath"
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/storage/journaltest"
)

func TestTwoBooksThatSwapFilesAreTheSame(t *testing.T) {
	dir := t.TempDir()
	left, err := Create(filepath.Join(dir, "left.lidmark"))
	check(t, err)
	right, err := Create(filepath.Join(dir, "right.lidmark"))
	check(t, err)
	check(t, left.Append(some[:120]...))
	check(t, right.Append(some[80:]...))
	for _, swap := range [][2]*Book{{left, right}, {right, left}, {left, left}} {
		check(t, swap[0].Merge(swap[1]))
	}
	journaltest.Same(t, left, some)
	journaltest.Same(t, right, some)
	for _, s := range book.Subjects(some[0].Fact) {
		a, b := journaltest.All(t, left.EntriesOf(s)), journaltest.All(t, right.EntriesOf(s))
		if len(a) == 0 || !slices.EqualFunc(a, b, func(x, y book.Entry) bool { return x.ID == y.ID }) || !slices.IsSortedFunc(a, book.Entry.Compare) {
			t.Errorf("%s: %d and %d entries, or not in order", s, len(a), len(b))
		}
	}
	sane(t, left)
	sane(t, right)
}
