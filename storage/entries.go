package storage

import (
	"context"
	"iter"

	"lidmark/domain/book"
)

// Entries yields all entries as they were when it began, in the order in
// which they arrived in this file, and stops at the first error. The book may
// be written meanwhile.
func (b *Book) Entries() iter.Seq2[book.Entry, error] {
	return func(yield func(book.Entry, error) bool) {
		ctx, stop := context.WithCancel(context.Background())
		r := b.newReader(ctx)
		defer r.wait()
		defer stop()
		for batch := range r.inOrder {
			<-batch.done
			for _, e := range batch.entries {
				if !yield(e, nil) {
					return
				}
			}
			if batch.err != nil {
				yield(book.Entry{}, trouble(b.path, batch.err))
				return
			}
		}
	}
}

// EntriesOf yields the entries about a subject in the order of the book, and
// stops at the first error.
func (b *Book) EntriesOf(s book.Subject) iter.Seq2[book.Entry, error] {
	return func(yield func(book.Entry, error) bool) {
		entries, err := b.entriesOf(s)
		for _, e := range entries {
			if !yield(e, nil) {
				return
			}
		}
		if err != nil {
			yield(book.Entry{}, trouble(b.path, err))
		}
	}
}

func (b *Book) entriesOf(s book.Subject) ([]book.Entry, error) {
	names, err := loadNames(context.Background(), b.read)
	if err != nil {
		return nil, err
	}
	rows, err := b.read.Query("SELECT "+entryColumns+` FROM subject s
		JOIN about a ON a.subject = s.id JOIN entry e ON e.id = a.entry
		WHERE s.kind = ? AND s.uuid = ? ORDER BY a.at, e.uuid`, s.Kind.String(), s.UUID[:])
	if err != nil {
		return nil, err
	}
	defer func() { _ = rows.Close() }()
	one := batch{done: make(chan struct{})}
	for rows.Next() {
		var r row
		if err := rows.Scan(r.columns()...); err != nil {
			return nil, err
		}
		one.rows = append(one.rows, r)
	}
	if err := rows.Err(); err != nil {
		return nil, err
	}
	one.decode(names, b.newer)
	return one.entries, one.err
}

// Count is the number of entries in the book.
func (b *Book) Count() (n int, err error) {
	n, err = countIn(context.Background(), b.read)
	return n, trouble(b.path, err)
}
