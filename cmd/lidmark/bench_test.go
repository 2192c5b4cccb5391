package main

import (
	"database/sql"
	"io"
	"path/filepath"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/storage"
	"lidmark/ui/picture"
	"lidmark/ui/state"
)

// bigBook is a file of 10,000 nucs and about half a million entries.
func bigBook(b *testing.B) string {
	b.Helper()
	path := filepath.Join(b.TempDir(), "big"+storage.Extension)
	s, err := storage.Create(path)
	if err != nil {
		b.Fatal(err)
	}
	if err := s.Append(booktest.Big(10_000, 60)...); err != nil {
		b.Fatal(err)
	}
	if err := s.Close(); err != nil {
		b.Fatal(err)
	}
	return path
}

func bigOptions(path string) options {
	return options{book: path, width: 1440, height: 900, text: 1, clock: booktest.BigClock}
}

// The floor of writing a line: a bare insert of one row, synced alike.
func BenchmarkFloorWrite(b *testing.B) {
	db, err := sql.Open("sqlite", "file:"+bigBook(b)+"?_pragma=synchronous(2)")
	if err != nil {
		b.Fatal(err)
	}
	defer func() { _ = db.Close() }()
	insert := "INSERT INTO entry (uuid, at, part, written, writer, kind, body) SELECT randomblob(16), at, part, written, writer, kind, body FROM entry LIMIT 1"
	for b.Loop() {
		if _, err := db.Exec(insert); err != nil {
			b.Fatal(err)
		}
	}
}

// Writing a line in a big book until the window has the book with it, read as of
// today: out of a walk, and in one.
func BenchmarkWriteLine(b *testing.B) {
	for name, walking := range map[string]bool{"card": false, "walk": true} {
		b.Run(name, func(b *testing.B) { benchWrite(b, walking) })
	}
}

func benchWrite(b *testing.B, walking bool) {
	d := newDesk(b.TempDir(), booktest.BigClock)
	d.keeps.pause = time.Hour
	defer d.Close(io.Discard)
	w := &world{desk: d, state: state.State{Now: booktest.BigNow, Width: 1440, Height: 900}}
	w.opens(bigBook(b))
	w.send(state.Ran{Command: "yard"})
	if walking {
		w.send(state.Ran{Command: "type it in"})
	}
	line := state.Deed{}
	for b.Loop() {
		nuc := w.state.Reading().Nucs[line.Number%100].Nuc.Nuc
		ids := w.state.Pen.IDs
		ids.Deed()
		line.Number++
		line.Entries = ids.Entries(calendar.Instantly(booktest.BigNow), booktest.BigNow, "Ida", book.Noted{Of: nuc.Subject(), Text: "calm"})
		w.state.Pen.IDs = ids
		done := make(chan state.Msg, 1)
		d.Do(w.state, state.Write{Deed: line}, func(m state.Msg) { done <- m })
		m := (<-done).(state.Written)
		if m.Failed != "" {
			b.Fatal(m.Failed)
		}
		w.state.Book = m.Book
	}
}

// The floor of opening: a bare scan of the same rows by the same driver.
func BenchmarkFloorScan(b *testing.B) {
	path := bigBook(b)
	rows := 0
	for b.Loop() {
		rows = scan(b, path)
	}
	b.ReportMetric(float64(rows), "entries")
}

func scan(b *testing.B, path string) (n int) {
	b.Helper()
	db, err := sql.Open("sqlite", "file:"+path+"?mode=ro")
	if err != nil {
		b.Fatal(err)
	}
	defer func() { _ = db.Close() }()
	rows, err := db.Query("SELECT at, body FROM entry")
	if err != nil {
		b.Fatal(err)
	}
	defer func() { _ = rows.Close() }()
	for rows.Next() {
		var at int64
		var body sql.RawBytes
		if err := rows.Scan(&at, &body); err != nil {
			b.Fatal(err)
		}
		n++
	}
	return n
}

// Opening a big book and telling the day's work.
func BenchmarkOpenAndToday(b *testing.B) {
	path := bigBook(b)
	for b.Loop() {
		opened, err := readBook(path)
		if err != nil {
			b.Fatal(err)
		}
		v := opened.Season.At(booktest.BigNow)
		if plan := rules.Day(v, calendar.DayOf(booktest.BigNow, v.Zone())); len(plan.Stops) == 0 {
			b.Fatal("nothing to do")
		}
	}
}

// Opening a big book for writing, with its lock, up to the first picture of the
// yard.
func BenchmarkOpenToFirstPicture(b *testing.B) {
	o := bigOptions(bigBook(b))
	for b.Loop() {
		d := newDesk(b.TempDir(), o.clock)
		w := &world{desk: d, state: o.state(state.Prefs{})}
		done := make(chan bool, 1)
		d.Do(w.state, state.OpenBook{Path: o.book}, func(m state.Msg) {
			if m, ok := m.(state.Opened); ok {
				w.state, _ = state.Update(w.state, m)
				done <- true
			}
		})
		<-done
		if _, err := picture.Of(w.state, 1); err != nil || w.state.Book.ReadOnly != "" {
			b.Fatal(err, w.state.Book.ReadOnly)
		}
		b.StopTimer()
		d.Close(io.Discard) // with the copy, which is due once
		b.StartTimer()
	}
}
