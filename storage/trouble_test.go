package storage

import (
	"bytes"
	"context"
	"database/sql"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/storage/journaltest"
)

// some are the entries of the books in these tests.
var some = journaltest.Some(200, 20)

// written is the path of a closed book with the entries of some.
func written(t *testing.T) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "summer.lidmark")
	b, err := Create(path)
	if err != nil {
		t.Fatal(err)
	}
	if err := b.Append(some...); err != nil {
		t.Fatal(err)
	}
	sane(t, b)
	return path
}

// sane verifies a book and closes it.
func sane(t *testing.T, b *Book) {
	t.Helper()
	for _, p := range b.Verify(context.Background()) {
		t.Errorf("%s: %s", filepath.Base(b.Path()), p)
	}
	if err := b.Close(); err != nil {
		t.Error(err)
	}
}

// raw runs statements in the file at path, as another program might.
func raw(t *testing.T, path string, statements string) {
	t.Helper()
	db, err := sql.Open("sqlite", path)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := db.Exec(statements); err != nil {
		t.Fatal(err)
	}
	if err := db.Close(); err != nil {
		t.Fatal(err)
	}
}

// saying fails the test unless err is the trouble and says want.
func saying(t *testing.T, err error, trouble Trouble, want string) {
	t.Helper()
	var fe *FileError
	if !errors.As(err, &fe) || !errors.Is(err, trouble) {
		t.Fatalf("got %v, want the trouble %q", err, trouble)
	}
	if got := err.Error(); got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}

func TestFilesThatAreNoBook(t *testing.T) {
	for _, c := range []struct {
		name    string
		make    func(t *testing.T, path string)
		trouble Trouble
		want    string
	}{
		{
			"missing", func(*testing.T, string) {}, Missing,
			"x.lidmark: there is no such file; check the name, or make a new book of that name",
		},
		{
			"folder", func(t *testing.T, p string) { check(t, os.Mkdir(p, 0o777)) }, IsFolder,
			"x.lidmark: this is a folder; name a file in it",
		},
		{
			"empty", func(t *testing.T, p string) { put(t, p, nil) }, NotABook,
			"x.lidmark: this is not a book (it is empty); choose a file that ends in .lidmark",
		},
		{
			"short text", func(t *testing.T, p string) { put(t, p, []byte("milk, eggs")) }, NotABook,
			"x.lidmark: this is not a book; choose a file that ends in .lidmark",
		},
		{
			"long text", func(t *testing.T, p string) { put(t, p, bytes.Repeat([]byte("all work "), 9000)) }, NotABook,
			"x.lidmark: this is not a book; choose a file that ends in .lidmark",
		},
		{
			"tables without a mark", func(t *testing.T, p string) { raw(t, p, "CREATE TABLE milk (eggs)") }, Foreign,
			"x.lidmark: this file belongs to another program; choose a file that ends in .lidmark",
		},
		{"the mark of another program", func(t *testing.T, p string) {
			raw(t, p, "PRAGMA application_id = 7; PRAGMA user_version = 1; CREATE TABLE entry (id)")
		}, Foreign, "x.lidmark: this file belongs to another program; choose a file that ends in .lidmark"},
		{
			"the mark alone", func(t *testing.T, p string) { raw(t, p, fmt.Sprint("PRAGMA application_id = ", applicationID)) }, Damaged,
			"x.lidmark: the file is damaged (it has no tables); leave it as it is and open the newest copy in the folder beside it that ends in .copies",
		},
		{"cut in half", func(t *testing.T, p string) {
			whole, err := os.ReadFile(written(t))
			check(t, err)
			put(t, p, whole[:len(whole)/2])
		}, Damaged, "x.lidmark: the file is damaged; leave it as it is and open the newest copy in the folder beside it that ends in .copies"},
	} {
		t.Run(c.name, func(t *testing.T) {
			path := filepath.Join(t.TempDir(), "x.lidmark")
			c.make(t, path)
			before := contents(path)
			for _, o := range []Options{{}, {ReadOnly: true}} {
				_, err := Open(path, o)
				saying(t, err, c.trouble, c.want)
			}
			if !bytes.Equal(contents(path), before) {
				t.Error("opening it changed the file")
			}
		})
	}
}

func TestDamageInside(t *testing.T) {
	path := written(t)
	whole := contents(path)
	for at := 4096 * 6; at < len(whole); at += 4096 {
		copy(whole[at:], bytes.Repeat([]byte{0xa5}, 600))
	}
	put(t, path, whole)
	b, err := Open(path, Options{})
	check(t, err)
	defer func() { check(t, b.Close()) }()
	for _, err = range b.Entries() {
	}
	if !errors.Is(err, Damaged) {
		t.Errorf("reading: %v, want %v", err, Damaged)
	}
	if len(b.Verify(t.Context())) == 0 {
		t.Error("verifying finds nothing")
	}
}

func TestCreateReplacesNothing(t *testing.T) {
	path := written(t)
	before := contents(path)
	_, err := Create(path)
	saying(t, err, Exists, "summer.lidmark: a file of this name is there already; open it, or choose another name")
	folder := filepath.Join(filepath.Dir(path), "no", "such", "folder")
	_, err = Create(filepath.Join(folder, "b.lidmark"))
	saying(t, err, NoFolder, "b.lidmark: there is no such folder ("+folder+"); make the folder first, or choose another")
	if !bytes.Equal(contents(path), before) {
		t.Error("creating changed the file")
	}
}

func TestSecondProgramMayRead(t *testing.T) {
	path := written(t)
	since := time.Date(2027, 5, 15, 18, 4, 0, 0, time.UTC)
	first, err := Open(path, Options{Now: func() time.Time { return since }})
	check(t, err)
	_, err = Open(path, Options{})
	saying(t, err, InUse, "summer.lidmark: the book is open in another program ("+Holder{os.Getpid(), hostname(), since}.String()+
		"); close it there, or open it here to read only")
	second, err := Open(path, Options{ReadOnly: true})
	check(t, err)
	if want := "summer.lidmark: the book was opened to read only; close it and open it for writing"; second.ReadOnly() != want {
		t.Errorf("ReadOnly() = %q, want %q", second.ReadOnly(), want)
	}
	saying(t, second.Append(some[0]), OpenedToRead, second.ReadOnly())
	more := journaltest.Some(300, 20)
	check(t, first.Append(more...))
	journaltest.Same(t, second, more)
	sane(t, second)
	sane(t, first)
	third, err := Open(path, Options{})
	check(t, err)
	if third.ReadOnly() != "" {
		t.Errorf("open for writing, it says %q", third.ReadOnly())
	}
	sane(t, third)
}

func TestLockedByAnotherProgram(t *testing.T) {
	path := written(t)
	b, err := Open(path, Options{Patience: time.Millisecond})
	check(t, err)
	other, err := sql.Open("sqlite", path)
	check(t, err)
	other.SetMaxOpenConns(1)
	_, err = other.Exec("BEGIN IMMEDIATE")
	check(t, err)
	extra := journaltest.Entry(500, 20)
	saying(t, b.Append(extra), Locked, "summer.lidmark: another program keeps the file locked; close that program and try again")
	_, err = other.Exec("ROLLBACK")
	check(t, errors.Join(err, other.Close()))
	check(t, b.Append(extra))
	journaltest.Same(t, b, append(some[:200:200], extra))
	sane(t, b)
}

func TestNewerBookIsRead(t *testing.T) {
	path := written(t)
	raw(t, path, `PRAGMA user_version = 99;
		INSERT INTO kind (name) VALUES ('danced');
		INSERT INTO entry (uuid, at, part, written, writer, kind, body)
		SELECT x'000102030405060708090a0b0c0d0e0f', 0, '', 0, 1, max(id), '{}' FROM kind`)
	before := contents(path)
	b, err := Open(path, Options{})
	check(t, err)
	const want = "summer.lidmark: the book was written by a newer version of Lidmark; it may be read; to write in it, install that version"
	if got := b.ReadOnly(); got != want+"; entries that this version does not understand are left out" {
		t.Errorf("ReadOnly() = %q", got)
	}
	journaltest.Same(t, b, some)
	saying(t, b.Append(some[0]), Newer, want)
	check(t, b.Close())
	if !bytes.Equal(contents(path), before) {
		t.Error("opening it changed the file")
	}
}

func TestUnknownKindInOurVersionIsAnError(t *testing.T) {
	path := written(t)
	raw(t, path, `INSERT INTO kind (name) VALUES ('danced');
		INSERT INTO entry (uuid, at, part, written, writer, kind, body)
		SELECT x'000102030405060708090a0b0c0d0e0f', 0, '', 0, 1, max(id), '{}' FROM kind`)
	b, err := Open(path, Options{})
	check(t, err)
	defer func() { check(t, b.Close()) }()
	for _, err = range b.Entries() {
	}
	saying(t, err, Damaged, `summer.lidmark: the file is damaged (entry 00010203-0405-0607-0809-0a0b0c0d0e0f: kind "danced": this version knows no such fact); `+Damaged.Do())
}

func TestFolderWhereNoBookIsSafe(t *testing.T) {
	_, err := dial(filepath.Join(t.TempDir(), "x.lidmark"), writing, 1, "vfs=unix-dotfile")
	saying(t, err, Unsafe, "x.lidmark: a book cannot be kept safely in this folder (journal_mode stayed delete); keep it on a disk of this computer and not on a network drive")
}

// TestFullFile lets SQLite itself refuse to grow the file.
func TestFullFile(t *testing.T) {
	path := written(t)
	b, err := Open(path, Options{})
	check(t, err)
	_, err = b.write.Exec("PRAGMA max_page_count = 40")
	check(t, err)
	kept := fill(t, b)
	_, err = b.write.Exec("PRAGMA max_page_count = 1000000")
	check(t, err)
	next := journaltest.Entry(len(kept), 20)
	check(t, b.Append(next))
	journaltest.Same(t, b, append(kept, next))
	sane(t, b)
}

// fill appends to a book until its disk is full, and returns what was kept.
func fill(t *testing.T, b *Book) (kept []book.Entry) {
	t.Helper()
	kept = some[:200:200]
	for i := len(some); ; i += 20 {
		if i > 100000 {
			t.Fatal("the disk does not get full")
		}
		next := journaltest.Some(i+20, 20)[i:]
		if err := b.Append(next...); err != nil {
			saying(t, err, DiskFull, "summer.lidmark: the disk is full; make room and do it again; what was saved before is safe")
			break
		}
		kept = append(kept, next...)
	}
	journaltest.Same(t, b, kept)
	return kept
}

func TestEveryTroubleSaysWhatToDo(t *testing.T) {
	for i := Missing; int(i) < len(troubles); i++ {
		for _, s := range []string{i.Error(), i.Do()} {
			if s == "" || strings.HasSuffix(s, ".") || s[0] != strings.ToLower(s)[0] {
				t.Errorf("trouble %d: %q", i, s)
			}
		}
	}
}

func TestEntriesThatCannotBeKept(t *testing.T) {
	b, err := Create(filepath.Join(t.TempDir(), "summer.lidmark"))
	check(t, err)
	for want, spoil := range map[string]func(*book.Entry){
		"has no id":           func(e *book.Entry) { e.ID = book.EntryID{} },
		"has no instant":      func(e *book.Entry) { e.At.Instant = time.Time{} },
		"has no fact":         func(e *book.Entry) { e.Fact = nil },
		"fractions":           func(e *book.Entry) { e.Written = e.Written.Add(time.Millisecond) },
		"year 12027":          func(e *book.Entry) { e.At.Instant = e.At.Instant.AddDate(10000, 0, 0) },
		`eggs "(9)": use one`: func(e *book.Entry) { e.Fact = book.Looked{Eggs: 9} },
		"unsupported value":   func(e *book.Entry) { e.Fact = book.Fed{Litres: inf()} },
	} {
		e := some[0]
		spoil(&e)
		err := b.Append(some[1], e)
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("got %v, want %q", err, want)
		}
	}
	journaltest.Same(t, b, nil)
	sane(t, b)
}

func inf() float64 { x := 0.0; return 1 / x }

func hostname() string { h, _ := os.Hostname(); return h }

func check(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

func put(t *testing.T, path string, b []byte) {
	t.Helper()
	check(t, os.WriteFile(path, b, 0o666))
}

// contents is a file's bytes; nil when there is no such file.
func contents(path string) []byte {
	b, _ := os.ReadFile(path)
	return b
}

// listed is the names of the files in a folder.
func listed(t *testing.T, dir string) string {
	t.Helper()
	files, err := os.ReadDir(dir)
	check(t, err)
	var names []string
	for _, f := range files {
		names = append(names, f.Name())
	}
	return strings.Join(names, " ")
}
