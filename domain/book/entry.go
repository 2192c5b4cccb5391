package book

import (
	"bytes"
	"cmp"
	"encoding/json"
	"fmt"
	"iter"
	"time"

	"github.com/google/uuid"

	"lidmark/domain/calendar"
)

// EntryID names one entry for good: a UUID, version 7, so that ids made later
// sort later.
type EntryID uuid.UUID

// String is the id as a UUID is written.
func (id EntryID) String() string { return uuid.UUID(id).String() }

// IsZero tells whether id names nothing.
func (id EntryID) IsZero() bool { return id == EntryID{} }

// MarshalText writes the id as a UUID.
func (id EntryID) MarshalText() ([]byte, error) { return uuid.UUID(id).MarshalText() }

// UnmarshalText reads what MarshalText writes.
func (id *EntryID) UnmarshalText(b []byte) error {
	u, err := uuid.ParseBytes(b)
	if err != nil {
		return fmt.Errorf("entry id %q: not a UUID, write one like 01a4ce1c-8580-7000-800e-000000000004", b)
	}
	*id = EntryID(u)
	return nil
}

// Entry is one line of the book: a fact, when it happened, when it was
// written down and by whom.
type Entry struct {
	ID      EntryID
	At      calendar.Moment
	Written time.Time // UTC, to the second
	Writer  string
	Fact    Fact
}

// Compare puts entries in the order of the book: by the instant of the event,
// and within one instant by id, that is, as they were written. It is a total
// order of distinct entries.
func (e Entry) Compare(f Entry) int {
	if c := e.At.Instant.Compare(f.At.Instant); c != 0 {
		return c
	}
	return bytes.Compare(e.ID[:], f.ID[:])
}

// Journal keeps entries. What Append has acknowledged is kept; appending an
// entry that is there already changes nothing, and one that says something else
// under an id that is there is an error. Entries yields all of them,
// in no promised order, and stops at the first error.
type Journal interface {
	Append(entries ...Entry) error
	Entries() iter.Seq2[Entry, error]
}

// Read is the season of all that a journal keeps. An error of the journal is
// returned as it is.
func Read(j Journal, zones Zones) (*Season, error) {
	var all []Entry
	for e, err := range j.Entries() {
		if err != nil {
			return nil, err
		}
		all = append(all, e)
	}
	return NewSeason(zones, all), nil
}

// line is an entry as JSON writes it.
type line struct {
	ID      EntryID         `json:"id"`
	At      time.Time       `json:"at"`
	Part    calendar.Part   `json:"part,omitzero"`
	Written time.Time       `json:"written"`
	Writer  string          `json:"writer,omitzero"`
	Kind    string          `json:"kind"`
	Fact    json.RawMessage `json:"fact"`
}

// MarshalJSON writes the entry as one JSON object: id, at, part, written,
// writer, kind and fact.
func (e Entry) MarshalJSON() ([]byte, error) {
	fact, err := json.Marshal(e.Fact)
	if err != nil {
		return nil, err
	}
	return json.Marshal(line{e.ID, e.At.Instant.UTC(), e.At.Part, e.Written.UTC(), e.Writer, KindOfFact(e.Fact), fact})
}

// UnmarshalJSON reads what MarshalJSON writes. An unknown kind, an unknown
// field and a missing id or instant are errors.
func (e *Entry) UnmarshalJSON(b []byte) error {
	var l line
	d := json.NewDecoder(bytes.NewReader(b))
	d.DisallowUnknownFields()
	if err := d.Decode(&l); err != nil {
		return err
	}
	if l.ID.IsZero() || l.At.IsZero() {
		return fmt.Errorf("an entry needs an id and the instant it happened (fields id and at)")
	}
	f, err := DecodeFact(l.Kind, l.Fact)
	if err != nil {
		return err
	}
	*e = Entry{l.ID, calendar.Moment{Instant: l.At.UTC(), Part: l.Part}, l.Written.UTC(), l.Writer, f}
	return nil
}

func compareWritten(e, f *Entry) int {
	return cmp.Or(e.Written.Compare(f.Written), bytes.Compare(e.ID[:], f.ID[:]))
}
