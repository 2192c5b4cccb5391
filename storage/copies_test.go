package storage

import (
	"context"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/storage/journaltest"
)

// at is a clock that stands some days after 15 May 2027.
func at(days int) func() time.Time {
	return func() time.Time { return time.Date(2027, 5, 15+days, 18, 41, 7, 0, time.UTC) }
}

func TestCopiesAreMadeWhenDueAndKeptInRotation(t *testing.T) {
	path := written(t)
	b, err := Open(path, Options{Keep: 3})
	check(t, err)
	defer sane(t, b)
	n := len(some)
	due := func(days int) bool {
		made, err := b.CopyIfDue(context.Background(), at(days)())
		check(t, err)
		return made != ""
	}
	grow := func() { check(t, b.Append(journaltest.Entry(n, 20))); n++ }
	if !due(0) {
		t.Error("no copy of a book that has none")
	}
	if due(5) {
		t.Error("a copy of what has not changed")
	}
	grow()
	b.options.Now = at(0)
	if made, err := b.CopyIfDue(context.Background(), at(0)().Add(CopyEvery-time.Second)); made != "" || err != nil {
		t.Error("a copy before its time")
	}
	for day := 1; day <= 4; day++ {
		if !due(day) {
			t.Errorf("day %d: no copy", day)
		}
		grow()
	}
	kept := Copies(path)
	got := slices.Collect(func(yield func(int) bool) {
		for _, c := range kept {
			if !yield(c.Entries) {
				return
			}
		}
	})
	if want := []int{202, 203, 204}; !slices.Equal(got, want) {
		t.Errorf("kept copies of %v entries, want %v", got, want)
	}
	if got, want := filepath.Base(kept[2].Path), "summer-20270519T184107Z-204.lidmark"; got != want {
		t.Errorf("the newest is called %s, want %s", got, want)
	}
	for _, c := range kept {
		old, err := Open(c.Path, Options{})
		check(t, err)
		journaltest.Same(t, old, journaltest.Some(c.Entries, 20))
		sane(t, old)
	}
}

func TestFilesAmongTheCopiesAreLeftAlone(t *testing.T) {
	path := written(t)
	check(t, os.MkdirAll(CopiesFolder(path), 0o777))
	left := []string{"notes.txt", "summer-2027.lidmark", "winter-20270515T184107Z-5.lidmark"}
	for _, name := range left {
		put(t, filepath.Join(CopiesFolder(path), name), nil)
	}
	put(t, filepath.Join(CopiesFolder(path), "summer-20270515T184107Z-5.lidmark.unfinished"), nil)
	b, err := Open(path, Options{Keep: 1})
	check(t, err)
	defer sane(t, b)
	_, err = b.CopyIfDue(context.Background(), at(0)())
	check(t, err)
	want := strings.Join([]string{"notes.txt", "summer-2027.lidmark", "summer-20270515T184107Z-200.lidmark", "winter-20270515T184107Z-5.lidmark"}, " ")
	if got := listed(t, CopiesFolder(path)); got != want {
		t.Errorf("left: %s\nwant: %s", got, want)
	}
}

func TestCopyReplacesNothing(t *testing.T) {
	path := written(t)
	b, err := Open(path, Options{})
	check(t, err)
	defer sane(t, b)
	saying(t, b.Copy(context.Background(), path), Exists, "summer.lidmark: a file of this name is there already; open it, or choose another name")
	to := filepath.Join(t.TempDir(), "it's a copy.lidmark")
	check(t, b.Copy(context.Background(), to))
	ctx, stop := context.WithCancel(context.Background())
	stop()
	if err := b.Copy(ctx, to+"2"); err == nil || contents(to+"2") != nil {
		t.Errorf("a copy that was called off: %v", err)
	}
	c, err := Open(to, Options{})
	check(t, err)
	journaltest.Same(t, c, some)
	sane(t, c)
}

// TestACopyThatLacksEntriesIsNone: a copy that reads back sound and has fewer entries than
// the book is taken away again, and none stands under its name. Here another program has
// put a view in the place of the table, which gives one entry twice under the book's own
// name.
func TestACopyThatLacksEntriesIsNone(t *testing.T) {
	path := written(t)
	raw(t, path, `DROP TRIGGER entry_is_never_changed; DROP TRIGGER entry_is_never_deleted;
		ALTER TABLE entry RENAME TO entries;
		CREATE VIEW entry AS SELECT * FROM entries
		UNION ALL SELECT entries.* FROM entries, pragma_database_list WHERE id = 1 AND file LIKE '%summer.lidmark'`)
	b, err := Open(path, Options{})
	check(t, err)
	defer func() { check(t, b.Close()) }()
	to := filepath.Join(t.TempDir(), "copy.lidmark")
	const want = "the copy has 200 of 201 entries"
	if err := b.Copy(t.Context(), to); err == nil || !strings.Contains(err.Error(), want) {
		t.Errorf("got %v, want %q", err, want)
	}
	if got := listed(t, filepath.Dir(to)); got != "" {
		t.Errorf("there is left: %s", got)
	}
}
