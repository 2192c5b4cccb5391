// Package jsonl writes a book's entries as JSON Lines and reads them back.
//
// The first line is the header, {"format":"lidmark entries","version":1}.
// Every other line is one entry as [book.Entry] writes itself, in the order
// of the book, each line ended by a line feed. The same entries always give
// the same bytes. Empty lines are passed over when reading, and a byte order
// mark before the header is allowed, since some editors add one.
package jsonl

import (
	"bufio"
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"iter"
	"regexp"
	"slices"
	"strings"
	"time"
	"unicode/utf8"

	"lidmark/domain/book"
	"lidmark/storage"
)

// Version is the version of the format that this program writes and the
// newest that it reads.
const Version = 1

const format = "lidmark entries"

// header is the first line.
type header struct {
	Format  string `json:"format"`
	Version int    `json:"version"`
}

// Write writes all entries to w in the order of the book.
func Write(w io.Writer, entries iter.Seq2[book.Entry, error]) error {
	var all []book.Entry
	for e, err := range entries {
		if err != nil {
			return err
		}
		all = append(all, e)
	}
	slices.SortFunc(all, book.Entry.Compare)
	buffered := bufio.NewWriter(w)
	out := json.NewEncoder(buffered)
	out.SetEscapeHTML(false)
	if err := out.Encode(header{format, Version}); err != nil {
		return err
	}
	for _, e := range all {
		if err := out.Encode(e); err != nil {
			return fmt.Errorf("entry %s: %w", e.ID, err)
		}
	}
	return buffered.Flush()
}

// Refusal is a line that was not read, and why.
type Refusal struct {
	File string
	Line int // from 1
	Why  error
}

// Error is "file:line: what is wrong".
func (r Refusal) Error() string {
	return fmt.Sprintf("%s:%d: %s", r.File, r.Line, strings.TrimPrefix(r.Why.Error(), "json: "))
}

// Unwrap is what is wrong.
func (r Refusal) Unwrap() error { return r.Why }

// longest is the length in bytes up to which a line is read: far more than
// any entry has, and little enough to hold.
const longest = 16 << 20

// Read reads entries from r; file is the name that refusals give. Each line
// is checked by itself: entries are those of the good lines, in the order of
// the file, and refused tells of the others. An error means that the file as
// a whole could not be read, and is a [Refusal] if a line of it is to blame.
//
// Sense, if not nil, is asked of every entry that reads well; what it says
// against one refuses the line.
func Read(r io.Reader, file string, sense func(book.Entry) error) (entries []book.Entry, refused []Refusal, err error) {
	p := reader{file: file, sense: sense, lines: bufio.NewScanner(r), first: map[book.EntryID]seen{}}
	p.lines.Buffer(nil, longest)
	if err := p.header(); err != nil {
		return nil, nil, err
	}
	for p.next() {
		if e, err := p.entry(); err != nil {
			refused = append(refused, p.refuse(err))
		} else {
			entries = append(entries, e)
		}
	}
	if err := p.lines.Err(); err != nil {
		p.line++
		if errors.Is(err, bufio.ErrTooLong) {
			err = fmt.Errorf("the line is longer than %d MiB: it is no entry, choose a file of entries", longest>>20)
		}
		return nil, nil, p.refuse(err)
	}
	return entries, refused, nil
}

// reader reads a file line by line.
type reader struct {
	file  string
	sense func(book.Entry) error
	lines *bufio.Scanner
	line  int
	first map[book.EntryID]seen
}

// seen is where an entry stands first, and what it says.
type seen struct {
	line  int
	entry book.Entry
}

// next goes to the next line that is not empty.
func (p *reader) next() bool {
	for p.lines.Scan() {
		p.line++
		if len(bytes.TrimSpace(p.lines.Bytes())) > 0 {
			return true
		}
	}
	return false
}

func (p *reader) refuse(why error) Refusal { return Refusal{p.file, p.line, why} }

func (p *reader) header() error {
	const do = `; the first line must be {"format":"lidmark entries","version":1}`
	if !p.next() {
		if err := p.lines.Err(); err != nil {
			return Refusal{p.file, 1, err}
		}
		return Refusal{p.file, 1, errors.New("the file is empty" + do)}
	}
	var h header
	text := bytes.TrimPrefix(p.lines.Bytes(), []byte("\ufeff"))
	if err := json.Unmarshal(text, &h); err != nil || h.Format != format {
		return p.refuse(errors.New("this is not a file of entries" + do))
	}
	if h.Version < 1 || h.Version > Version {
		return p.refuse(fmt.Errorf("the file is of version %d; this program reads version %d; take it in with a newer version of Lidmark", h.Version, Version))
	}
	return nil
}

// entry is the entry on the line. A line that repeats an earlier one is one
// entry twice; one that gives the same id to something else is an
// error.
func (p *reader) entry() (book.Entry, error) {
	var e book.Entry
	if err := wholeText(p.lines.Bytes()); err != nil {
		return e, err
	}
	if err := json.Unmarshal(p.lines.Bytes(), &e); err != nil {
		return e, placed(err)
	}
	if err := storage.Check(e); err != nil {
		return e, err
	}
	if p.sense != nil {
		if err := p.sense(e); err != nil {
			return e, err
		}
	}
	before, found := p.first[e.ID]
	if found && !same(before.entry, e) {
		return e, fmt.Errorf("entry %s stands in line %d already and says something else there; one of them needs another id", e.ID, before.line)
	}
	if !found {
		p.first[e.ID] = seen{p.line, e}
	}
	return e, nil
}

// same tells whether two entries are written alike.
func same(e, f book.Entry) bool {
	a, errA := json.Marshal(e)
	b, errB := json.Marshal(f)
	return errA == nil && errB == nil && bytes.Equal(a, b)
}

// wholeText refuses a line whose text would be changed by reading it: bytes
// that are no UTF-8, and half a surrogate pair.
func wholeText(line []byte) error {
	for i := 0; i < len(line); {
		r, n := utf8.DecodeRune(line[i:])
		if r == utf8.RuneError && n == 1 {
			return fmt.Errorf("column %d: this is no UTF-8 text; save the file as UTF-8", i+1)
		}
		i += n
	}
	escapes := bytes.ReplaceAll(line, []byte(`\\`), []byte("__")) // a backslash of its own begins none
	if half := halfPair.FindIndex(pair.ReplaceAll(escapes, []byte("____________"))); half != nil {
		return fmt.Errorf("column %d: half a character; its other half is missing, write it whole", half[0]+1)
	}
	return nil
}

// pair is a character written as two escapes (RFC 8259, section 7), halfPair
// one of the two.
var (
	pair     = regexp.MustCompile(`\\u[dD][89abAB][0-9a-fA-F]{2}\\u[dD][c-fC-F][0-9a-fA-F]{2}`)
	halfPair = regexp.MustCompile(`\\u[dD][89a-fA-F][0-9a-fA-F]{2}`)
)

// article is "a" or "an" before a word.
func article(word string) string {
	if strings.ContainsAny(word[:1], "aeiou") {
		return "an"
	}
	return "a"
}

// placed puts an error of the JSON itself in plain words, with the column or
// the field.
func placed(err error) error {
	var syntax *json.SyntaxError
	var kind *json.UnmarshalTypeError
	var instant *time.ParseError
	switch {
	case errors.As(err, &syntax):
		return fmt.Errorf("column %d: %w", syntax.Offset, err)
	case errors.As(err, &kind) && kind.Field == "":
		return fmt.Errorf("here stands %s %s and no entry; take the line out", article(kind.Value), kind.Value)
	case errors.As(err, &kind):
		return fmt.Errorf("field %s: %s %s does not fit here; write it as in the lines that are read", kind.Field, article(kind.Value), kind.Value)
	case errors.As(err, &instant):
		return fmt.Errorf("%s is no instant; write it like 2027-05-15T18:00:00Z", instant.Value)
	}
	return err
}
