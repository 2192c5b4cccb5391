package storage

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"lidmark/storage/journaltest"
)

// next is the scripts of a version to come.
func next(script string) []string { return append(scripts(), script) }

const addColumn = "ALTER TABLE writer ADD COLUMN phone TEXT NOT NULL DEFAULT ''"

func TestOlderBookIsBroughtUpToDate(t *testing.T) {
	path := written(t)
	_, err := open(path, Options{ReadOnly: true}, next(addColumn))
	saying(t, err, Older, "summer.lidmark: the book was written by an earlier version of Lidmark; open it once for writing, which brings it up to date and keeps a copy")
	b, err := open(path, Options{Now: at(0)}, next(addColumn))
	check(t, err)
	journaltest.Same(t, b, some)
	check(t, b.Append(journaltest.Entry(200, 20)))
	sane(t, b)
	if v, err := peek(path); v != len(scripts())+1 || err != nil {
		t.Errorf("version %d, %v", v, err)
	}
	kept := Copies(path)
	if len(kept) != 1 || kept[0].Entries != len(some) || !kept[0].Made.Equal(at(0)()) {
		t.Fatalf("copies: %+v", kept)
	}
	old, err := Open(kept[0].Path, Options{})
	check(t, err)
	journaltest.Same(t, old, some)
	sane(t, old)
}

func TestMigrationThatFailsChangesNothing(t *testing.T) {
	for name, script := range map[string]string{
		"a bad statement": addColumn + "; SELECT nonsense",
		"a dangling row":  "INSERT INTO about VALUES (777, 1, 1)",
	} {
		path := written(t)
		before := dump(t, path)
		if _, err := open(path, Options{}, next(script)); err == nil {
			t.Errorf("%s: it opens", name)
		}
		if after, err := peek(path); after != len(scripts()) || err != nil {
			t.Errorf("%s: version %d, %v", name, after, err)
		}
		if dump(t, path) != before {
			t.Errorf("%s: the book has changed", name)
		}
	}
}

// dump is the schema and the number of rows of a book.
func dump(t *testing.T, path string) string {
	t.Helper()
	db, err := dial(path, reading, 1, "mode=ro")
	check(t, err)
	var schema, rows string
	check(t, db.QueryRow("SELECT group_concat(sql) FROM sqlite_schema").Scan(&schema))
	check(t, db.QueryRow("SELECT (SELECT count(*) FROM entry) || ',' || (SELECT count(*) FROM about)").Scan(&rows))
	check(t, db.Close())
	return schema + rows
}

// TestEveryReleasedVersionOpens opens a small book of every version there has
// been; book n.lidmark is of version n, and all hold the entries of some.
func TestEveryReleasedVersionOpens(t *testing.T) {
	for n := 1; n <= len(scripts()); n++ {
		name := fmt.Sprintf("version%d.lidmark", n)
		old, err := os.ReadFile(filepath.Join("testdata", name))
		check(t, err)
		path := filepath.Join(t.TempDir(), name)
		put(t, path, old)
		if v, err := peek(path); v != n || err != nil {
			t.Errorf("%s is of version %d, %v", name, v, err)
		}
		b, err := Open(path, Options{})
		check(t, err)
		journaltest.Same(t, b, some)
		sane(t, b)
	}
}

func TestSettingsAreSaved(t *testing.T) {
	head := contents(written(t))[:100]
	if !bytes.Equal(head[68:72], []byte("LidM")) {
		t.Errorf("application id %x", head[68:72])
	}
	if !bytes.Equal(head[60:64], []byte{0, 0, 0, byte(len(scripts()))}) {
		t.Errorf("version %x", head[60:64])
	}
}

func TestReadersCannotWriteAndEntriesStay(t *testing.T) {
	b, err := Open(written(t), Options{})
	check(t, err)
	defer sane(t, b)
	for _, s := range []string{"DELETE FROM about", "INSERT INTO kind (name) VALUES ('x')"} {
		if _, err := b.read.Exec(s); err == nil || !strings.Contains(err.Error(), "readonly") {
			t.Errorf("reader: %s: %v", s, err)
		}
	}
	for _, s := range []string{"DELETE FROM entry", "UPDATE entry SET at = 0"} {
		if _, err := b.write.Exec(s); err == nil || !strings.Contains(err.Error(), "strike it") {
			t.Errorf("writer: %s: %v", s, err)
		}
	}
	for want, s := range map[string]string{
		"FOREIGN KEY": "INSERT INTO about VALUES (777, 1, 1)",
		"TEXT":        "INSERT INTO kind (name) VALUES (x'00')",
		"CHECK":       "INSERT INTO subject (kind, uuid) VALUES ('nuc', x'00')",
	} {
		if _, err := b.write.Exec(s); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("writer: %s: %v, want %s", s, err, want)
		}
	}
}
