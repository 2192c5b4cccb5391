package storage

import (
	"context"
	"database/sql"
	"runtime"
	"sync"

	"lidmark/domain/book"
)

// batchSize is how many rows are read before they are handed to a decoder.
const batchSize = 500

// reader reads the rows of all entries in one goroutine and decodes them in
// others, since decoding takes longer than reading. The batches come out in
// the order of reading.
type reader struct {
	inOrder chan *batch
	work    chan *batch
	running sync.WaitGroup
}

// batch is some rows and, once done is closed, what they say.
type batch struct {
	rows    []row
	entries []book.Entry
	err     error
	done    chan struct{}
}

func (b *Book) newReader(ctx context.Context) *reader {
	decoders := runtime.GOMAXPROCS(0)
	r := &reader{inOrder: make(chan *batch, 2*decoders), work: make(chan *batch)}
	names, err := loadNames(ctx, b.read)
	if err != nil {
		r.inOrder <- failed(err)
		close(r.inOrder)
		return r
	}
	for range decoders {
		r.running.Go(func() {
			for batch := range r.work {
				batch.decode(names, b.newer)
				close(batch.done)
			}
		})
	}
	r.running.Go(func() {
		defer close(r.inOrder)
		defer close(r.work)
		if err := r.feed(ctx, b.read); err != nil {
			r.hand(ctx, r.inOrder, failed(err))
		}
	})
	return r
}

// wait returns when every goroutine has ended and the rows are closed.
func (r *reader) wait() { r.running.Wait() }

func (r *reader) feed(ctx context.Context, db *sql.DB) error {
	rows, err := db.QueryContext(ctx, "SELECT "+entryColumns+" FROM entry e ORDER BY e.id")
	if err != nil {
		return err
	}
	defer func() { _ = rows.Close() }()
	for more := true; more; {
		next := &batch{rows: make([]row, 0, batchSize), done: make(chan struct{})}
		for len(next.rows) < batchSize {
			if more = rows.Next(); !more {
				break
			}
			next.rows = append(next.rows, row{})
			if err := rows.Scan(next.rows[len(next.rows)-1].columns()...); err != nil {
				return err
			}
		}
		if !r.hand(ctx, r.inOrder, next) || !r.hand(ctx, r.work, next) {
			return ctx.Err()
		}
	}
	return rows.Err()
}

// hand gives a batch on, unless nobody wants it any more.
func (r *reader) hand(ctx context.Context, to chan<- *batch, b *batch) bool {
	select {
	case to <- b:
		return true
	case <-ctx.Done():
		return false
	}
}

func failed(err error) *batch {
	b := &batch{err: err, done: make(chan struct{})}
	close(b.done)
	return b
}

func (b *batch) decode(names names, newer bool) {
	b.entries = make([]book.Entry, 0, len(b.rows))
	for _, r := range b.rows {
		e, err := r.entry(names)
		if err != nil && !newer {
			b.err = err
			return
		}
		if err == nil {
			b.entries = append(b.entries, e)
		}
	}
	b.rows = nil
}
