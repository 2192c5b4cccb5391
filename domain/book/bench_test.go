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

// BenchmarkFoldNucs folds the nucs of a book that was just opened.
func BenchmarkFoldNucs(b *testing.B) {
	entries := booktest.Big(10_000, 50)
	for b.Loop() {
		b.StopTimer()
		s := book.NewSeason(nil, entries)
		b.StartTimer()
		foldNucs(b, s.At(booktest.BigNow))
	}
}

// BenchmarkFoldNucsAgain folds them on other days, none of them worked between.
func BenchmarkFoldNucsAgain(b *testing.B) {
	s := book.NewSeason(nil, booktest.Big(10_000, 50))
	on := booktest.BigNow.AddDate(0, 0, 30)
	foldNucs(b, s.At(on))
	for b.Loop() {
		on = on.AddDate(0, 0, 1)
		foldNucs(b, s.At(on))
	}
}

func foldNucs(b *testing.B, v *book.View) {
	n := 0
	for range v.Nucs() {
		n++
	}
	if n != 10_000 {
		b.Fatalf("%d nucs", n)
	}
}

func BenchmarkWithOneEntry(b *testing.B) {
	entries := booktest.Big(10_000, 50)
	s := book.NewSeason(nil, entries[:len(entries)-1])
	for b.Loop() {
		s.With(entries[len(entries)-1])
	}
}
