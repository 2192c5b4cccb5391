package storage

import (
	"database/sql"
	"fmt"
	"net/url"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"
)

// applicationID marks a file as a book of Lidmark in its header: "LidM".
const applicationID = 0x4c69644d

// pragmas are settings of one connection, as name and value as read back.
type pragmas [][2]string

// patient is p with another time to wait for locks; 0 leaves it.
func (p pragmas) patient(d time.Duration) pragmas {
	if d == 0 {
		return p
	}
	q := slices.Clone(p)
	for i, set := range q {
		if set[0] == "busy_timeout" {
			q[i][1] = strconv.FormatInt(d.Milliseconds(), 10)
		}
	}
	return q
}

// cacheKiB is the page cache of one connection. The default of 2 MiB makes a
// large import twice as slow; more than this gains nothing measurable.
const cacheKiB = "-32768"

var (
	// writing is how the one writing connection is set. fullfsync asks macOS
	// to push data through the drive's own cache; elsewhere it does nothing.
	writing = pragmas{
		{"busy_timeout", "5000"},
		{"journal_mode", "wal"},
		{"synchronous", "2"}, // FULL
		{"fullfsync", "1"},
		{"checkpoint_fullfsync", "1"},
		{"foreign_keys", "1"},
		{"cache_size", cacheKiB},
	}
	// migrating is writing without foreign keys, which SQLite cannot switch
	// inside a transaction; a migration checks them itself.
	migrating = pragmas{
		{"busy_timeout", "5000"},
		{"synchronous", "2"},
		{"fullfsync", "1"},
		{"foreign_keys", "0"},
		{"cache_size", cacheKiB},
	}
	// copying is reading without query_only, under which VACUUM INTO is
	// refused although it writes only in the new file.
	copying = pragmas{
		{"busy_timeout", "5000"},
		{"cache_size", cacheKiB},
	}
	// reading is how the reading connections are set.
	reading = pragmas{
		{"busy_timeout", "5000"},
		{"query_only", "1"},
		{"cache_size", cacheKiB},
	}
)

// readers is how many reading connections there may be: one for a long read,
// the others for what is asked meanwhile.
const readers = 4

// dial opens a pool on the file at path with the settings, reads each of them
// back and fails if one did not take. Extra holds further parameters of
// SQLite's file URI, as in "mode=ro".
func dial(path string, set pragmas, connections int, extra ...string) (*sql.DB, error) {
	db, err := sql.Open("sqlite", uri(path, set, extra))
	if err != nil {
		return nil, err
	}
	db.SetMaxOpenConns(connections)
	db.SetMaxIdleConns(connections)
	for _, p := range set {
		var got string
		if err := db.QueryRow("PRAGMA " + p[0]).Scan(&got); err != nil {
			_ = db.Close()
			return nil, trouble(path, err)
		}
		if got != p[1] {
			_ = db.Close()
			return nil, &FileError{Path: path, Trouble: Unsafe, Detail: fmt.Sprintf("%s stayed %s", p[0], got)}
		}
	}
	return db, nil
}

func uri(path string, set pragmas, extra []string) string {
	parts := extra
	for _, p := range set {
		parts = append(parts, fmt.Sprintf("_pragma=%s(%s)", p[0], p[1]))
	}
	abs, err := filepath.Abs(path)
	if err != nil {
		abs = path
	}
	abs = filepath.ToSlash(abs)
	if !strings.HasPrefix(abs, "/") {
		abs = "/" + abs // a Windows drive: file:///C:/...
	}
	u := url.URL{Scheme: "file", Path: abs, RawQuery: strings.Join(parts, "&")}
	return u.String()
}
