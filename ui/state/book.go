package state

import (
	"slices"
	"sync"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// Book is an open book: its season and what was read of it so far. It does not
// change; a book with more entries is another Book. It may be used from
// several goroutines.
type Book struct {
	Season   *book.Season
	Name     string // as the foot shows it
	Path     string // of its file
	ReadOnly string // why nothing can be written; "" when it can
	Saved    time.Time
	Opening  int // which opening of this run it comes of: a demo begun anew is another book

	mu       sync.Mutex
	readings []*Reading // the one read last comes first
	before   []*Reading // of the book that this one was made from, the one read last first
}

// mostReadings is how many days are remembered: a week to and fro.
const mostReadings = 16

// mostBefore is how many readings a book with more entries goes on from: of
// today, and of the day looked at.
const mostBefore = 2

// With is the book with more entries. Its days are read again from the readings
// of this one, where these are of the same instant: that costs what the entries
// reach. Saved is as it was.
func (b *Book) With(entries ...book.Entry) *Book {
	b.mu.Lock()
	defer b.mu.Unlock()
	return &Book{
		Season: b.Season.With(entries...), Name: b.Name, Path: b.Path, ReadOnly: b.ReadOnly, Saved: b.Saved, Opening: b.Opening,
		before: slices.Clone(b.readings[:min(len(b.readings), mostBefore)]),
	}
}

// On is the book read on a day, with the clock at now. Today is read at the
// instant of the clock, a day past at its end, a day ahead at its noon.
func (b *Book) On(now time.Time, d calendar.Day) *Reading { return b.on(now, d, false) }

// AsKnown is the book read on a day past as it was known at its end: what was
// written later about that day is left out. Of other days it is as [Book.On].
func (b *Book) AsKnown(now time.Time, d calendar.Day) *Reading { return b.on(now, d, true) }

func (b *Book) on(now time.Time, d calendar.Day, then bool) *Reading {
	if b == nil || b.Season == nil {
		return empty
	}
	zone := b.Zone(now)
	today := calendar.DayOf(now, zone)
	at := now
	switch {
	case d < today:
		at = (d + 1).Start(zone).Add(-time.Second)
	case d > today:
		at = d.At(12, 0, zone)
	}
	return b.read(sight{at: at, day: d, from: min(d, today), ahead: d > today, underWay: d == today, then: then && d < today})
}

// sight is how a book is read: which day, at which instant, and whether as it was
// known then.
type sight struct {
	at                    time.Time
	day, from             calendar.Day // from: that it is looked at from
	ahead, underWay, then bool
}

// sees tells whether a reading is this one.
func (s sight) sees(r *Reading) bool {
	return r.View.On().Equal(s.at) && r.View.From() == s.from && r.Ahead == s.ahead && r.Then == s.then
}

// view is the season as it is read.
func (s sight) view(of *book.Season) *book.View {
	if s.then {
		return of.AsKnown(s.at, s.at)
	}
	if s.ahead {
		return of.Ahead(s.at, s.from)
	}
	return of.At(s.at)
}

// read reads the book at an instant, unless that was done lately. It reads
// without the lock, so that what is remembered stays at hand meanwhile.
func (b *Book) read(as sight) *Reading {
	if r := b.remembered(as); r != nil {
		return r
	}
	r := read(as.view(b.Season), b.judge(as), as.day, as.ahead)
	r.UnderWay, r.Then = as.underWay, as.then
	b.mu.Lock()
	defer b.mu.Unlock()
	// One reading a day: that of today goes with the clock.
	b.readings = slices.DeleteFunc(b.readings, func(old *Reading) bool { return old.Day == as.day && old.Ahead == as.ahead && old.Then == as.then })
	b.readings = append([]*Reading{r}, b.readings[:min(len(b.readings), mostReadings-1)]...)
	return r
}

func (b *Book) remembered(as sight) *Reading {
	b.mu.Lock()
	defer b.mu.Unlock()
	for i, r := range b.readings {
		if as.sees(r) {
			b.readings = append([]*Reading{r}, slices.Delete(b.readings, i, i+1)...)
			return r
		}
	}
	return nil
}

// judge is how to judge a view: from a reading of the book before of the same
// instant, where there is one, else from any, for what nucs held is known there.
func (b *Book) judge(as sight) func(*book.View) *rules.Judged {
	b.mu.Lock()
	known := slices.Concat(b.before, b.readings)
	b.mu.Unlock()
	for _, r := range b.before {
		if r.View.On().Equal(as.at) && r.Then == as.then {
			return r.judged.Again
		}
	}
	if len(known) > 0 {
		return known[0].judged.Again
	}
	return rules.Judge
}

// Zone is the time zone of the home yard at an instant.
func (b *Book) Zone(now time.Time) *time.Location {
	b.mu.Lock()
	for _, r := range b.readings {
		if r.View.On().Equal(now) {
			b.mu.Unlock()
			return r.View.Zone()
		}
	}
	b.mu.Unlock()
	return b.Season.At(now).Zone()
}
