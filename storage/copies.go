package storage

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"
)

// DefaultKeep is how many copies stand beside a book unless [Options] say
// otherwise.
const DefaultKeep = 20

// CopyEvery is how old the newest copy must be for [Book.CopyIfDue] to make
// another.
const CopyEvery = 24 * time.Hour

// copyStamp is the time in a copy's name.
const copyStamp = "20060102T150405Z"

// draftEnding marks a copy that is being made.
const draftEnding = ".unfinished"

// Copy makes a copy of the book as it is now at path to, while the book stays
// open. The copy is read and checked before it gets its name. It replaces no
// file.
func (b *Book) Copy(ctx context.Context, to string) error {
	if _, err := os.Lstat(to); !errors.Is(err, fs.ErrNotExist) {
		return &FileError{Path: to, Trouble: Exists, Cause: err}
	}
	return copyTo(ctx, b.path, to)
}

// CopyIfDue makes a copy in [CopiesFolder] if the newest one there is older
// than [CopyEvery] at now and the book has grown since. It returns the copy's
// path, or "" when none was due.
func (b *Book) CopyIfDue(ctx context.Context, now time.Time) (string, error) {
	n, err := b.Count()
	if err != nil {
		return "", err
	}
	if kept := Copies(b.path); len(kept) > 0 {
		newest := kept[len(kept)-1]
		if newest.Entries == n || now.Sub(newest.Made) < CopyEvery {
			return "", nil
		}
	}
	return b.CopyNow(ctx, now)
}

// CopyNow makes a copy in [CopiesFolder], whatever copies there are, and returns
// its path. The oldest of too many copies is removed.
func (b *Book) CopyNow(ctx context.Context, now time.Time) (string, error) {
	o := b.options
	o.Now = func() time.Time { return now }
	return copyInto(ctx, b.path, o)
}

// CopiesFolder is where the copies of the book at path stand: the folder
// beside it of the same name, ending in .copies.
func CopiesFolder(path string) string {
	return filepath.Join(filepath.Dir(path), stem(path)+".copies")
}

// KeptCopy is a copy in a book's folder of copies.
type KeptCopy struct {
	Path    string
	Made    time.Time
	Entries int
}

// Copies are the copies of the book at path, oldest first.
func Copies(path string) []KeptCopy {
	files, err := os.ReadDir(CopiesFolder(path))
	if err != nil {
		return nil // no folder, no copies
	}
	var all []KeptCopy
	for _, f := range files {
		if c, ok := parseCopy(filepath.Join(CopiesFolder(path), f.Name()), stem(path)); ok {
			all = append(all, c)
		}
	}
	slices.SortFunc(all, func(a, b KeptCopy) int { return a.Made.Compare(b.Made) })
	return all
}

func copyName(path string, now time.Time, entries int) string {
	name := fmt.Sprintf("%s-%s-%d%s", stem(path), now.UTC().Format(copyStamp), entries, Extension)
	return filepath.Join(CopiesFolder(path), name)
}

func parseCopy(file, stemOfBook string) (KeptCopy, bool) {
	rest, found := strings.CutPrefix(stem(file), stemOfBook+"-")
	stamp, count, cut := strings.Cut(rest, "-")
	made, err := time.Parse(copyStamp, stamp)
	n, countErr := strconv.Atoi(count)
	ok := found && cut && err == nil && countErr == nil && filepath.Ext(file) == Extension
	return KeptCopy{file, made, n}, ok
}

// copyInto makes a copy in the book's folder of copies and removes those that
// are too many.
func copyInto(ctx context.Context, path string, o Options) (string, error) {
	if err := os.MkdirAll(CopiesFolder(path), 0o777); err != nil {
		return "", trouble(path, err)
	}
	if err := removeDraftsIn(CopiesFolder(path)); err != nil {
		return "", trouble(path, err)
	}
	n, err := countAt(ctx, path)
	if err != nil {
		return "", trouble(path, err)
	}
	to := copyName(path, o.now(), n)
	if err := copyTo(ctx, path, to); err != nil {
		return "", err
	}
	keep := o.Keep
	if keep <= 0 {
		keep = DefaultKeep
	}
	kept := Copies(path)
	for _, old := range kept[:max(0, len(kept)-keep)] {
		if err := os.Remove(old.Path); err != nil {
			return to, trouble(old.Path, err)
		}
	}
	return to, nil
}

// copyTo copies the book at path: under an unfinished name first, which is
// checked, synced and renamed.
func copyTo(ctx context.Context, path, to string) error {
	draft := to + draftEnding
	err := errors.Join(removeDraft(draft), copyAndCheck(ctx, path, draft))
	if err == nil {
		// SQLite does not sync what VACUUM INTO writes.
		if err = syncFile(draft); err == nil {
			err = moveInto(draft, to)
		}
	}
	if err != nil {
		return trouble(to, errors.Join(err, removeDraft(draft)))
	}
	return nil
}

// copyAndCheck writes the copy and reads it back. VACUUM INTO takes one
// connection's view of the book, so entries may be appended meanwhile.
func copyAndCheck(ctx context.Context, path, draft string) error {
	from, err := dialToRead(path, copying)
	if err != nil {
		return err
	}
	defer func() { _ = from.Close() }()
	want, err := countIn(ctx, from)
	if err != nil {
		return err
	}
	if _, err := from.ExecContext(ctx, "VACUUM INTO ?", draft); err != nil {
		return err
	}
	made, err := dial(draft, reading, 1, "mode=ro", "immutable=1")
	if err != nil {
		return err
	}
	defer func() { _ = made.Close() }()
	if err := sound(ctx, made); err != nil {
		return err
	}
	got, err := countIn(ctx, made)
	if err == nil && got < want {
		err = fmt.Errorf("the copy has %d of %d entries", got, want)
	}
	return err
}

// removeDraft removes what a program that died left of a copy, and the
// journal that SQLite kept beside it.
func removeDraft(draft string) error {
	for _, f := range []string{draft, draft + "-journal"} {
		if err := os.Remove(f); err != nil && !errors.Is(err, fs.ErrNotExist) {
			return err
		}
	}
	return nil
}

// removeDraftsIn removes the unfinished copies in a folder of copies.
func removeDraftsIn(folder string) error {
	files, err := os.ReadDir(folder)
	for _, f := range files {
		if strings.Contains(f.Name(), draftEnding) && err == nil {
			err = os.Remove(filepath.Join(folder, f.Name()))
		}
	}
	return err
}

func countAt(ctx context.Context, path string) (int, error) {
	db, err := dialToRead(path, reading)
	if err != nil {
		return 0, err
	}
	defer func() { _ = db.Close() }()
	return countIn(ctx, db)
}

func countIn(ctx context.Context, db *sql.DB) (n int, err error) {
	err = db.QueryRowContext(ctx, "SELECT count(*) FROM entry").Scan(&n)
	return n, err
}
