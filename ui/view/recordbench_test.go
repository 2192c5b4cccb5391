package view_test

import (
	"fmt"
	"image"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/paint"
	"lidmark/ui/state"
	"lidmark/ui/view"
)

// typing is a window with the walk of a yard of n nucs open, some rows of which
// are written.
func typing(tb testing.TB, n int) state.State {
	tb.Helper()
	season := book.NewSeason(time.LoadLocation, booktest.Big(n, 60))
	s := state.State{Now: booktest.BigNow, Width: 1440, Height: 900}
	b := &state.Book{Season: season, Name: "big"}
	s, _ = state.Update(s, state.Opened{Book: b, IDs: book.NewIDs(s.Now, season, [32]byte{1})})
	for _, command := range []string{"type it in", "all nucs"} {
		s, _ = state.Update(s, state.Ran{Command: command})
	}
	for i := range 3 {
		for _, r := range fmt.Sprint("q e b4 s", i+1) {
			s = letter(s, r)
		}
		var effects []state.Effect
		s, effects = key(s, "Enter")
		s = saved(s, effects)
	}
	if s.Walk == nil || len(s.Walk.Rows) < n || s.Walk.Done < 3 {
		tb.Fatal("the walk is not open")
	}
	return s
}

// saved is the window after the disk has taken what was written.
func saved(s state.State, effects []state.Effect) state.State {
	for _, e := range effects {
		if w, ok := e.(state.Write); ok {
			grown := &state.Book{Season: s.Book.Season.With(w.Deed.Entries...), Name: s.Book.Name}
			s, _ = state.Update(s, state.Written{Number: w.Deed.Number, Book: grown})
		}
	}
	return s
}

func letter(s state.State, r rune) state.State {
	s, _ = state.Update(s, state.Wrote{Rune: r})
	return s
}

func key(s state.State, name string) (state.State, []state.Effect) {
	return state.Update(s, state.Keyed{Key: name})
}

// BenchmarkTypedLetter types one letter of a line of the walk: message, reading
// back, scene and pixels. A frame at 60 Hz is 16.7 ms. The floor of the pixels is
// BenchmarkBarePixels; that of the letter is the line read alone (package line).
func BenchmarkTypedLetter(b *testing.B) {
	for _, n := range []int{100, 10_000} {
		s := typing(b, n)
		for _, r := range "q e b4 s5 h" {
			s = letter(s, r)
		}
		b.Run(fmt.Sprint(n, "nucs/message"), func(b *testing.B) {
			for b.Loop() {
				letter(s, '2')
			}
		})
		b.Run(fmt.Sprint(n, "nucs/scene"), func(b *testing.B) {
			painter, err := paint.New()
			if err != nil {
				b.Fatal(err)
			}
			for b.Loop() {
				view.Window(s, painter)
			}
		})
		b.Run(fmt.Sprint(n, "nucs/all"), func(b *testing.B) {
			painter, err := paint.New()
			if err != nil {
				b.Fatal(err)
			}
			img := image.NewRGBA(image.Rect(0, 0, 1440, 900))
			for i := 0; b.Loop(); i++ {
				painter.Paint(img, view.Window(letter(s, rune('0'+i%4)), painter), paint.Light, 1)
			}
		})
	}
}

// BenchmarkTypedRow ends a line with Enter: the row shows at once, the disk comes
// later. Its floor in a big book is the copy of the index, [book.Season.With].
func BenchmarkTypedRow(b *testing.B) {
	for _, n := range []int{100, 10_000} {
		b.Run(fmt.Sprint(n, "nucs"), func(b *testing.B) {
			s := typing(b, n)
			for _, r := range "q e b4 s5 h2" {
				s = letter(s, r)
			}
			for b.Loop() {
				key(s, "Enter")
			}
		})
	}
}
