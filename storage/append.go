package storage

import (
	"cmp"
	"database/sql"
	"encoding/json"
	"errors"
	"fmt"
	"iter"
	"slices"

	"lidmark/domain/book"
)

// Append adds the entries in one transaction: when it returns nil they have
// all reached the disk, and when it returns an error none of them has. An
// entry whose id is in the book already changes nothing.
func (b *Book) Append(entries ...book.Entry) error {
	if len(entries) == 0 {
		return nil
	}
	return b.AppendAll(func(yield func(book.Entry, error) bool) {
		for _, e := range entries {
			if !yield(e, nil) {
				return
			}
		}
	})
}

// Merge adds every entry of another journal that is not in the book yet, in
// one transaction. Two books that merge each other hold the same entries.
func (b *Book) Merge(from book.Journal) error { return b.AppendAll(from.Entries()) }

// AppendAll is Append for entries that come one by one, for a whole book of
// them. An error among them ends it, and then none is added. The sequence
// must not write in the book.
func (b *Book) AppendAll(entries iter.Seq2[book.Entry, error]) error {
	if b.write == nil {
		why := OpenedToRead
		if b.newer {
			why = Newer
		}
		return &FileError{Path: b.path, Trouble: why}
	}
	tx, err := b.write.Begin()
	if err != nil {
		return trouble(b.path, err)
	}
	defer func() { _ = tx.Rollback() }() // after a commit it does nothing
	if err := appendIn(tx, entries); err != nil {
		return trouble(b.path, err)
	}
	return trouble(b.path, tx.Commit())
}

func appendIn(tx *sql.Tx, entries iter.Seq2[book.Entry, error]) error {
	a, err := newAppender(tx)
	if err != nil {
		return err
	}
	for e, err := range entries {
		if err == nil {
			err = a.add(e)
		}
		if err != nil {
			return errors.Join(err, a.close())
		}
	}
	return errors.Join(a.index(), a.close())
}

// appender adds entries within one transaction.
type appender struct {
	entry, about *sql.Stmt
	stored       *sql.Stmt
	writers      numbers[string]
	kinds        numbers[string]
	subjects     numbers[book.Subject]
	new          []aboutRow
}

// aboutRow is a row of the table about.
type aboutRow struct{ subject, at, entry int64 }

func newAppender(tx *sql.Tx) (*appender, error) {
	var errs []error
	prepare := func(query string) *sql.Stmt {
		s, err := tx.Prepare(query)
		errs = append(errs, err)
		return s
	}
	name := func(s string) []any { return []any{s} }
	a := &appender{
		entry:  prepare("INSERT INTO entry (uuid, at, part, written, writer, kind, body) VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT (uuid) DO NOTHING"),
		stored: prepare("SELECT at, part, written, writer, kind, body FROM entry WHERE uuid = ?"),
		about:  prepare("INSERT INTO about (subject, at, entry) VALUES (?, ?, ?)"),
		writers: numbersOf(name,
			prepare("SELECT id FROM writer WHERE name = ?"),
			prepare("INSERT INTO writer (name) VALUES (?)")),
		kinds: numbersOf(name,
			prepare("SELECT id FROM kind WHERE name = ?"),
			prepare("INSERT INTO kind (name) VALUES (?)")),
		subjects: numbersOf(func(s book.Subject) []any { return []any{s.Kind.String(), s.UUID[:]} },
			prepare("SELECT id FROM subject WHERE kind = ? AND uuid = ?"),
			prepare("INSERT INTO subject (kind, uuid) VALUES (?, ?)")),
	}
	return a, errors.Join(errs...)
}

func (a *appender) add(e book.Entry) error {
	body, err := bodyOf(e)
	if err != nil {
		return fmt.Errorf("entry %s: %w", e.ID, err)
	}
	writer, err := a.writers.of(e.Writer)
	if err != nil {
		return err
	}
	kind, err := a.kinds.of(book.KindOfFact(e.Fact))
	if err != nil {
		return err
	}
	at := e.At.Instant.Unix()
	done, err := a.entry.Exec(e.ID[:], at, e.At.Part.String(), e.Written.Unix(), writer, kind, string(body))
	if err != nil {
		return err
	}
	if n, err := done.RowsAffected(); err != nil || n == 0 {
		return errors.Join(err, a.agrees(e, writer, kind, body))
	}
	id, err := done.LastInsertId()
	if err != nil {
		return err
	}
	for _, s := range book.Subjects(e.Fact) {
		subject, err := a.subjects.of(s)
		if err != nil {
			return err
		}
		a.new = append(a.new, aboutRow{subject, at, id})
	}
	return nil
}

// agrees tells whether an entry that is in the book already says the same
// there. An id is given once; two deeds of one id are a forgery or a fault, and
// neither may be dropped in silence.
func (a *appender) agrees(e book.Entry, writer, kind int64, body []byte) error {
	var r row
	var text string
	if err := a.stored.QueryRow(e.ID[:]).Scan(&r.at, &r.part, &r.written, &r.writer, &r.kind, &text); err != nil {
		return err
	}
	same := r.at == e.At.Instant.Unix() && r.part == e.At.Part.String() && r.written == e.Written.Unix() && r.writer == writer
	if same && r.kind == kind && text == string(body) {
		return nil
	}
	return fmt.Errorf("entry %s is in the book already and says something else there; one of the two needs another id", e.ID)
}

// index adds the rows of the table about, sorted: in the order of the table's
// tree a large import touches each of its pages once.
func (a *appender) index() error {
	slices.SortFunc(a.new, func(x, y aboutRow) int {
		return cmp.Or(cmp.Compare(x.subject, y.subject), cmp.Compare(x.at, y.at), cmp.Compare(x.entry, y.entry))
	})
	for _, r := range a.new {
		if _, err := a.about.Exec(r.subject, r.at, r.entry); err != nil {
			return err
		}
	}
	return nil
}

func (a *appender) close() error {
	return errors.Join(a.entry.Close(), a.stored.Close(), a.about.Close(), a.writers.close(), a.kinds.close(), a.subjects.close())
}

// bodyOf is the JSON of an entry's fact, of an entry that will read back.
func bodyOf(e book.Entry) ([]byte, error) {
	if err := Check(e); err != nil {
		return nil, err
	}
	body, err := json.Marshal(e.Fact)
	if err != nil {
		return nil, err
	}
	_, err = book.DecodeFact(book.KindOfFact(e.Fact), body)
	return body, err
}

// Check tells why an entry cannot be kept: it needs an id, an instant and a
// fact, and times are kept to the second, of years that four digits write.
func Check(e book.Entry) error {
	switch {
	case e.ID.IsZero():
		return errors.New("the entry has no id; give it one")
	case e.At.IsZero():
		return errors.New("the entry has no instant; say when it happened")
	case book.KindOfFact(e.Fact) == "":
		return errors.New("the entry has no fact; say what happened")
	case e.At.Instant.Nanosecond() != 0 || e.Written.Nanosecond() != 0:
		return errors.New("the entry's times have fractions of a second; give them to the second")
	}
	for _, t := range [...]int{e.At.Instant.UTC().Year(), e.Written.UTC().Year()} {
		if t < 0 || t > 9999 {
			return fmt.Errorf("the year %d cannot be written; use 0 to 9999", t)
		}
	}
	return nil
}

// numbers finds, or gives, the small integers that stand for names and
// subjects. It holds them for one transaction only, since a rollback takes
// them back.
type numbers[K comparable] struct {
	args      func(K) []any
	find, add *sql.Stmt
	known     map[K]int64
}

func numbersOf[K comparable](args func(K) []any, find, add *sql.Stmt) numbers[K] {
	return numbers[K]{args, find, add, map[K]int64{}}
}

func (n numbers[K]) of(k K) (int64, error) {
	if id, ok := n.known[k]; ok {
		return id, nil
	}
	var id int64
	args := n.args(k)
	err := n.find.QueryRow(args...).Scan(&id)
	if errors.Is(err, sql.ErrNoRows) {
		var added sql.Result
		if added, err = n.add.Exec(args...); err == nil {
			id, err = added.LastInsertId()
		}
	}
	if err == nil {
		n.known[k] = id
	}
	return id, err
}

func (n numbers[K]) close() error { return errors.Join(n.find.Close(), n.add.Close()) }
