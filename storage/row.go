package storage

import (
	"context"
	"database/sql"
	"fmt"
	"time"

	"github.com/google/uuid"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// entryColumns are the columns that row.columns takes, of the table entry as e.
const entryColumns = "e.uuid, e.at, e.part, e.written, e.writer, e.kind, e.body"

// row is a row of the table entry.
type row struct {
	uuid         []byte
	at, written  int64
	part         string
	writer, kind int64
	body         []byte
}

// columns are where the entryColumns go.
func (r *row) columns() []any {
	return []any{&r.uuid, &r.at, &r.part, &r.written, &r.writer, &r.kind, &r.body}
}

// entry is the entry that the row says. An error is a damage.
func (r *row) entry(names names) (book.Entry, error) {
	id, err := uuid.FromBytes(r.uuid)
	if err != nil {
		return book.Entry{}, damage{fmt.Errorf("entry %x: %w", r.uuid, err)}
	}
	part, err := calendar.ParsePart(r.part)
	if err != nil {
		return book.Entry{}, damage{fmt.Errorf("entry %s: %w", id, err)}
	}
	fact, err := book.DecodeFact(names.kinds[r.kind], r.body)
	if err != nil {
		return book.Entry{}, damage{fmt.Errorf("entry %s: %w", id, err)}
	}
	return book.Entry{
		ID:      book.EntryID(id),
		At:      calendar.Moment{Instant: time.Unix(r.at, 0).UTC(), Part: part},
		Written: time.Unix(r.written, 0).UTC(),
		Writer:  names.writers[r.writer],
		Fact:    fact,
	}, nil
}

// querier is a pool or a transaction.
type querier interface {
	QueryContext(ctx context.Context, query string, args ...any) (*sql.Rows, error)
}

// names are the names behind small integers in the table entry.
type names struct{ writers, kinds map[int64]string }

func loadNames(ctx context.Context, q querier) (n names, err error) {
	if n.writers, err = loadNamesOf(ctx, q, "SELECT id, name FROM writer"); err != nil {
		return n, err
	}
	n.kinds, err = loadNamesOf(ctx, q, "SELECT id, name FROM kind")
	return n, err
}

func loadNamesOf(ctx context.Context, q querier, query string) (map[int64]string, error) {
	rows, err := q.QueryContext(ctx, query)
	if err != nil {
		return nil, err
	}
	defer func() { _ = rows.Close() }()
	all := map[int64]string{}
	for rows.Next() {
		var id int64
		var name string
		if err := rows.Scan(&id, &name); err != nil {
			return nil, err
		}
		all[id] = name
	}
	return all, rows.Err()
}
