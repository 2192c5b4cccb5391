package state_test

import (
	"encoding/binary"
	"slices"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// yardstick is a window on 10,000 nucs and half a million entries.
func yardstick() state.State {
	season := book.NewSeason(time.LoadLocation, booktest.Big(10_000, 60))
	return state.State{Book: &state.Book{Season: season}, Now: booktest.BigNow}
}

// BenchmarkReadDay reads one day after the other: ahead, where nothing is new
// but the day, and back through days on which every nuc was worked.
func BenchmarkReadDay(b *testing.B) {
	for name, step := range map[string]calendar.Day{"ahead": 1, "back": -1} {
		b.Run(name, func(b *testing.B) {
			s := yardstick()
			s.Reading()
			d := s.Today()
			for b.Loop() {
				d += step
				s.Day = d
				s.Reading()
			}
		})
	}
}

// BenchmarkReadFirstDay reads the first day of a book that was just opened.
func BenchmarkReadFirstDay(b *testing.B) {
	s := yardstick()
	entries := slices.Collect(s.Book.Season.Entries())
	for b.Loop() {
		b.StopTimer()
		s.Book = &state.Book{Season: book.NewSeason(time.LoadLocation, entries)}
		b.StartTimer()
		s.Reading()
	}
}

// BenchmarkReadAfterLine writes a line and reads the day again.
func BenchmarkReadAfterLine(b *testing.B) {
	s := yardstick()
	s.Reading()
	line := slices.Collect(s.Book.Season.Entries())[s.Book.Season.Len()-1]
	for b.Loop() {
		binary.BigEndian.PutUint64(line.ID[:], binary.BigEndian.Uint64(line.ID[:])+1)
		s.Book = s.Book.With(line)
		s.Reading()
	}
}

// BenchmarkBareDay walks over the entries of every nuc up to a day and does
// nothing with them.
func BenchmarkBareDay(b *testing.B) {
	s := yardstick()
	nucs := s.Reading().Nucs
	d := booktest.BigNow
	for b.Loop() {
		d = d.AddDate(0, 0, 1)
		v, n := s.Book.Season.At(d), 0
		for _, m := range nucs {
			for range v.Lines(m.Nuc.Nuc.Subject()) {
				n++
			}
		}
		if n == 0 {
			b.Fatal("nothing walked")
		}
	}
}
