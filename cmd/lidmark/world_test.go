package main

import (
	"io"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/storage"
	"lidmark/ui/state"
)

var start = time.Date(2027, 5, 11, 19, 30, 0, 0, time.UTC)

func clock() time.Time { return start }

// world is a window without toolkit at a desk: messages are taken in by its own
// turns, so that a test sees each.
type world struct {
	*testing.T
	desk  *desk
	state state.State

	mu   sync.Mutex
	told []state.Msg
}

func newWorld(t *testing.T, folder string) *world {
	t.Helper()
	d := newDesk(folder, clock)
	d.keeps.pause = time.Hour // tests write when they say so
	w := &world{T: t, desk: d, state: state.State{Now: start, Room: state.Yard, Width: 1440, Height: 900}}
	t.Cleanup(func() { d.Close(io.Discard) })
	return w
}

// tell takes a message from the desk.
func (w *world) tell(m state.Msg) {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.told = append(w.told, m)
}

// send has the window take a message, and the desk its effects.
func (w *world) send(m state.Msg) {
	var effects []state.Effect
	w.state, effects = state.Update(w.state, m)
	for _, e := range effects {
		w.do(e)
	}
}

func (w *world) do(e state.Effect) { w.desk.Do(w.state, e, w.tell) }

// settle lets the desk finish what it was given, and the window take what it
// tells, until nothing comes any more.
func (w *world) settle() {
	for {
		w.desk.works.wait(func() {})
		w.desk.writes.wait(func() {})
		w.mu.Lock()
		told := w.told
		w.told = nil
		w.mu.Unlock()
		if len(told) == 0 {
			return
		}
		for _, m := range told {
			w.send(m)
		}
	}
}

// opens opens the book in a file and waits for it.
func (w *world) opens(path string) {
	w.do(state.OpenBook{Path: path})
	w.settle()
}

// types types characters, "⏎" as Enter.
func (w *world) types(text string) *world {
	for _, r := range text {
		if r == '⏎' {
			w.send(state.Keyed{Key: "Enter"})
			continue
		}
		w.send(state.Wrote{Rune: r})
		w.send(state.Keyed{Key: string(r)})
	}
	return w
}

func (w *world) run(command string) {
	w.send(state.Ran{Command: command})
	w.settle()
}

// entries is how many entries the book has in the window.
func (w *world) entries() int { return w.state.Book.Season.Len() }

// says fails unless the window says something with text in it.
func (w *world) says(text string) {
	w.Helper()
	if text == "" || !strings.Contains(w.state.Note.Text, text) {
		w.Errorf("the window says %q, want %q in it", w.state.Note.Text, text)
	}
}

// inFile is how many entries there are in the file of a book.
func inFile(t *testing.T, path string) int {
	t.Helper()
	b, err := readBook(path)
	check(t, err)
	return b.Season.Len()
}

// aBook is a file of a small book.
func aBook(t testing.TB) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "hill"+storage.Extension)
	b, err := storage.CreateWith(path, founding()...)
	check(t, err)
	check(t, b.Close())
	return path
}

func check(t testing.TB, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

// founding is a yard with nucs A1 and A2 in which there is brood, and a person.
func founding() []book.Entry {
	p := booktest.Pen{Writer: "Ida"}
	yard := booktest.Yard("hill")
	p.At("2027-04-01 08:00").Write(
		book.YardDescribed{Yard: yard, Name: "Hill", Home: true, Zone: "UTC"},
		book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida"},
	)
	for _, name := range []string{"A1", "A2"} {
		p.Write(book.NucNamed{Nuc: booktest.Nuc(name), Name: name, Sides: 6}, book.NucPlaced{Nuc: booktest.Nuc(name), Yard: yard})
	}
	return p.Entries
}

// typedLine is the line about a nuc among the fields of a draft.
func typedLine(fields map[string]string) string {
	for name, text := range fields {
		if strings.HasPrefix(name, "line.") {
			return text
		}
	}
	return ""
}
