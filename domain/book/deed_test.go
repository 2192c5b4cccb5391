package book_test

import (
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// TestLastDeed: an undo takes what was written as one deed, again and again,
// and never a deed of another writer in the same second.
func TestLastDeed(t *testing.T) {
	now := time.Date(2027, time.May, 11, 7, 0, 0, 0, time.UTC)
	at := calendar.Instantly(now)
	g := book.NewIDs(now, nil, [32]byte{1})
	write := func(writer string, texts ...string) (all []book.Entry) {
		g.Deed()
		for _, text := range texts {
			all = append(all, g.Entries(at, now, writer, book.Noted{Text: text})...)
		}
		return all
	}
	first, second, jons := write("Ida", "a", "b"), write("Ida", "c", "d"), write("Jon", "e")
	s := book.NewSeason(nil, nil).With(first...).With(second...).With(jons...)
	for _, want := range [][]book.Entry{jons, second, first, nil} {
		got := s.At(now).LastDeed()
		if diff := cmp.Diff(want, got); diff != "" {
			t.Fatal(diff)
		}
		g.Deed()
		for _, e := range got {
			s = s.With(g.Entries(at, now.Add(time.Second), "Ida", book.Struck{Entry: e.ID})...)
		}
	}
}
