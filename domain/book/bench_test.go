package book_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
)

// The floor of folding: a bare walk over the same entries, reading one field.
func BenchmarkBareWalk(b *testing.B) {
	entries := booktest.Big(10_000, 50)
	for b.Loop() {
		var sum int64
		for i := range entries {
			sum += entries[i].At.Instant.Unix()
		}
		if sum == 0 {
			b.Fatal("nothing walked")
		}
	}
	b.ReportMetric(float64(len(entries)), "entries")
}

func BenchmarkNewSeason(b *testing.B) {
	entries := booktest.Big(10_000, 50)
	for b.Loop() {
		book.NewSeason(nil, entries)
	}
}

func BenchmarkFoldNucs(b *testing.B) {
	s := book.NewSeason(nil, booktest.Big(10_000, 50))
	for b.Loop() {
		n := 0
		for range s.At(booktest.BigNow).Nucs() {
			n++
		}
		if n != 10_000 {
			b.Fatalf("%d nucs", n)
		}
	}
}

func BenchmarkWithOneEntry(b *testing.B) {
	entries := booktest.Big(10_000, 50)
	s := book.NewSeason(nil, entries[:len(entries)-1])
	for b.Loop() {
		s.With(entries[len(entries)-1])
	}
}
