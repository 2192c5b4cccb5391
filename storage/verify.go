package storage

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
)

// Problem is something in a book that should not be so: the entry it
// concerns, or the zero id for the file as a whole, and what is wrong.
type Problem struct {
	Entry book.EntryID
	What  string
}

// String is the problem as a line of a report.
func (p Problem) String() string {
	if p.Entry.IsZero() {
		return p.What
	}
	return "entry " + p.Entry.String() + ": " + p.What
}

// Verify reads the whole book and lists what is wrong with it; nil when
// nothing is. It checks SQLite's own structures and references, that every
// entry reads, and that every entry is found under exactly the subjects of
// its fact, at its instant. Half a million entries take some seconds.
func (b *Book) Verify(ctx context.Context) []Problem {
	if err := sound(ctx, b.read); err != nil {
		return []Problem{{What: err.Error()}}
	}
	found, err := b.verifyEntries(ctx)
	if err != nil {
		found = append(found, Problem{What: err.Error()})
	}
	return found
}

// sound runs SQLite's own checks.
func sound(ctx context.Context, db *sql.DB) error {
	rows, err := db.QueryContext(ctx, "PRAGMA integrity_check")
	if err != nil {
		return err
	}
	defer func() { _ = rows.Close() }()
	for rows.Next() {
		var said string
		if err := rows.Scan(&said); err != nil {
			return err
		}
		if said != "ok" {
			return damage{errors.New(finding(said))}
		}
	}
	if err := rows.Err(); err != nil {
		return err
	}
	return checkForeignKeys(ctx, db)
}

// finding is the first of what SQLite found, in a line, and how much more there is: it lists
// all in one text under a heading.
func finding(said string) string {
	first, more, _ := strings.Cut(strings.TrimPrefix(said, "*** in database main ***\n"), "\n")
	if more == "" {
		return first
	}
	return fmt.Sprintf("%s, and %d more", first, 1+strings.Count(more, "\n"))
}

// verifyEntries walks the entries and the table about beside each other, both
// in the order of the entries' row numbers.
func (b *Book) verifyEntries(ctx context.Context) (found []Problem, err error) {
	tx, err := b.read.BeginTx(ctx, &sql.TxOptions{ReadOnly: true})
	if err != nil {
		return nil, err
	}
	defer func() { _ = tx.Rollback() }() // it only read
	names, err := loadNames(ctx, tx)
	if err != nil {
		return nil, err
	}
	index, err := loadIndex(ctx, tx)
	if err != nil {
		return nil, err
	}
	rows, err := tx.QueryContext(ctx, "SELECT e.id, "+entryColumns+" FROM entry e ORDER BY e.id")
	if err != nil {
		return nil, err
	}
	defer func() { _ = rows.Close() }()
	for rows.Next() {
		var id int64
		var r row
		if err := rows.Scan(append([]any{&id}, r.columns()...)...); err != nil {
			return found, err
		}
		found = append(found, verifyEntry(&r, names, index[id])...)
	}
	return found, rows.Err()
}

func verifyEntry(r *row, names names, indexed []place) []Problem {
	e, err := r.entry(names)
	if err != nil {
		return []Problem{{What: err.Error()}}
	}
	var found []Problem
	add := func(format string, args ...any) {
		found = append(found, Problem{e.ID, fmt.Sprintf(format, args...)})
	}
	if err := Check(e); err != nil {
		add("%v", err)
	}
	want := book.Subjects(e.Fact)
	for _, p := range indexed {
		if p.at != r.at {
			add("it stands under %s at %d and happened at %d", p.subject, p.at, r.at)
		}
		if !slices.ContainsFunc(want, func(s book.Subject) bool { return keyOf(s) == p.subject }) {
			add("it stands under %s, which it is not about", p.subject)
		}
	}
	for _, s := range want {
		if !slices.ContainsFunc(indexed, func(p place) bool { return keyOf(s) == p.subject }) {
			add("it is about %s and does not stand there", s)
		}
	}
	return found
}

// subjectKey is a subject as the table subject says it.
type subjectKey struct{ kind, uuid string }

func keyOf(s book.Subject) subjectKey { return subjectKey{s.Kind.String(), string(s.UUID[:])} }

// String is the subject as files write it, its uuid in plain hexadecimal.
func (k subjectKey) String() string { return fmt.Sprintf("%s:%x", k.kind, k.uuid) }

// place is where an entry stands in the table about.
type place struct {
	subject subjectKey
	at      int64
}

// loadIndex is the table about by entry.
func loadIndex(ctx context.Context, q querier) (map[int64][]place, error) {
	rows, err := q.QueryContext(ctx, "SELECT a.entry, a.at, s.kind, s.uuid FROM about a JOIN subject s ON s.id = a.subject")
	if err != nil {
		return nil, err
	}
	defer func() { _ = rows.Close() }()
	all := map[int64][]place{}
	for rows.Next() {
		var entry int64
		var p place
		if err := rows.Scan(&entry, &p.at, &p.subject.kind, &p.subject.uuid); err != nil {
			return nil, err
		}
		all[entry] = append(all[entry], p)
	}
	return all, rows.Err()
}
