package main

import (
	"database/sql"
	"path/filepath"
	"testing"

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

// Opening a big book up to the first picture of the yard.
func BenchmarkOpenToFirstPicture(b *testing.B) {
	o := bigOptions(bigBook(b))
	for b.Loop() {
		s := o.state(state.Prefs{})
		opened, err := o.opened()
		if err != nil {
			b.Fatal(err)
		}
		s.Book = opened
		if _, err := picture.Of(s, 1); err != nil {
			b.Fatal(err)
		}
	}
}
