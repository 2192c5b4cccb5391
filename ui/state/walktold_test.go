package state_test

import (
	"slices"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/ui/state"
)

// evenings is an evening on a book that has a file.
func evenings(t *testing.T) *window {
	w := inTheEvening(t, yardOfTheEvening())
	w.send(state.Opened{Book: &state.Book{Season: w.Book.Season, Name: "hill", Path: "/books/hill.lidmark"}, IDs: w.Pen.IDs})
	w.Pen.Writer, w.Pen.Nobody = "Ida", true
	return w.run("type it in")
}

// again is the window of another day, on what is in the book, with the draft that
// was kept last.
func (w *window) again(after time.Duration) *window {
	all := w.drafts()
	next := &window{t: w.t, State: state.State{Now: w.Now.Add(after), Width: 1440, Height: 900}}
	next.send(state.Opened{Book: w.Book, IDs: book.NewIDs(next.Now, w.Book.Season, [32]byte{2}), Draft: all[len(all)-1]})
	next.Pen.Writer = "Ida"
	next.run("today")
	next.Day = w.Walk.Day
	return next.run("type it in")
}

// words are what the rows of a walk say was typed and read back.
func (w *window) words() (all [][3]string) {
	for _, r := range w.Walk.Rows {
		if !r.Open() {
			all = append(all, [3]string{r.Title, r.Typed, r.Back})
		}
	}
	return all
}

// TestLinesStandAsTheyWereTyped also once the program was ended and begun again,
// and what was struck meanwhile does not come back.
func TestLinesStandAsTheyWereTyped(t *testing.T) {
	w := evenings(t)
	for _, l := range []string{"A1-A12 done as written, except A3", "s5 n h2 c4", "B1 h1 s4; B2 c4 n", "C7 s4 c4", "D1 s4 n"} {
		w.write(l).press("Return").keep()
		for w.Asked != nil {
			w.press("1").keep()
		}
	}
	w.press("Z", state.Ctrl).keep()
	want := w.words()
	if len(want) < 5 {
		t.Fatalf("only %q is written", want)
	}
	got := w.again(12 * time.Hour)
	if !slices.Equal(got.words(), want) {
		t.Errorf("after a restart the walk says\n%q, want\n%q", got.words(), want)
	}
	got.write("D2 s4 n").press("Return").keep()
	want = got.words()
	if third := got.again(time.Hour); !slices.Equal(third.words(), want) {
		t.Errorf("after another one it says\n%q, want\n%q", third.words(), want)
	}
	if later := w.again(72 * time.Hour).again(0); slices.Equal(later.words(), want) || len(later.words()) < len(want)-1 {
		t.Errorf("three days later it says %q", later.words())
	}
}

// keep saves as [window.save] does, and keeps the drafts and the path of the book.
func (w *window) keep() *window {
	effects := w.effects
	w.effects = nil
	for _, e := range effects {
		if write, ok := e.(state.Write); ok {
			w.send(state.Written{Number: write.Deed.Number, Book: w.Book.With(write.Deed.Entries...)})
		}
	}
	w.effects = append(effects, w.effects...)
	return w
}
