package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/storage"
	"lidmark/ui/state"
)

// The tests in this file kill a process in the middle of typing, with a signal
// that it cannot catch, and look at what is there again.

func init() {
	children["type without end"] = typeWithoutEnd
	children["send and die"] = sendAndDie
	children["lay out without end"] = tryWithoutEnd
}

// typist is a window in a process of its own, which has no test to fail.
func typist(folder, path string, pause time.Duration, wrote func(*desk, string, error)) *world {
	d := newDesk(folder, clock)
	d.keeps.pause = pause
	if wrote != nil {
		d.keeps.wrote = func(file string, err error) { wrote(d, file, err) }
	}
	w := &world{desk: d, state: state.State{Now: start, Room: state.Yard, Width: 1440, Height: 900}}
	w.opens(path)
	return w
}

// typeWithoutEnd writes two lines and then types a third without end, and prints
// how much of it was typed when a draft of it was on disk.
func typeWithoutEnd(args []string) error {
	w := typist(args[0], args[1], 2*time.Millisecond, func(d *desk, file string, err error) {
		var draft state.Draft
		if _, failed := kept(file, &draft); err != nil || failed != nil || file == d.prefsFile() {
			return
		}
		if line := typedLine(draft.Fields); len(line) > 3 { // not of the first two
			fmt.Println(len(line))
		}
	})
	w.types("A1e⏎A2e⏎")
	w.settle()
	for i := 0; ; i = (i + 1) % len(keystrokes) {
		w.types(keystrokes[i : i+1])
		w.settle()
	}
}

const keystrokes = "e b4 calm, again and again 0123456789 "

// typed is the first n keystrokes.
func typed(n int) string {
	return strings.Repeat(keystrokes, n/len(keystrokes)+1)[:n]
}

func TestKilledWhileTyping(t *testing.T) {
	for kill := range 4 {
		folder, path := t.TempDir(), aBook(t)
		c := children.Play(t, "type without end", folder, path)
		onDisk := 0
		for range 3 + 5*kill {
			onDisk = number(t, c.Line())
		}
		for _, line := range c.Kill() {
			onDisk = number(t, line)
		}
		w := newWorld(t, folder)
		w.opens(path)
		line := w.state.Field(w.state.CardField()).Text
		if len(line) < onDisk || line != typed(len(line)) {
			t.Errorf("of %d characters on disk %d are back: %q", onDisk, len(line), line)
		}
		w.says("is here again")
		if got, want := w.entries(), len(founding())+2; got != want || len(w.state.Pen.Failed) != 0 {
			t.Errorf("%d entries, want %d; %d deeds failed", got, want, len(w.state.Pen.Failed))
		}
		whole(t, path)
	}
}

func number(t *testing.T, line string) int {
	t.Helper()
	n, err := strconv.Atoi(line)
	if err != nil {
		t.Fatalf("the child says %q", line)
	}
	return n
}

// whole fails unless a book reads from beginning to end and its file is sound.
func whole(t *testing.T, path string) {
	t.Helper()
	b, err := storage.Open(path, storage.Options{ReadOnly: true})
	check(t, err)
	if found := b.Verify(t.Context()); len(found) > 0 {
		t.Errorf("the book is not sound: %v", found)
	}
	check(t, b.Close())
}

// sendAndDie sends two deeds, of which the first reaches the book, keeps its
// draft and dies before it hears of either.
func sendAndDie(args []string) error {
	w := typist(args[0], args[1], time.Hour, nil)
	w.types("A1e⏎A2e⏎")
	w.desk.writes.wait(func() {}) // both are in the book, and the window has not heard
	w.types("A1e b4")
	w.desk.keeps.flush()
	fmt.Println("typed")
	select {}
}

func TestWhatReachedTheBookIsNotWrittenTwice(t *testing.T) {
	folder, path := t.TempDir(), aBook(t)
	c := children.Play(t, "send and die", folder, path)
	if got := c.Line(); got != "typed" {
		t.Fatalf("the child says %q", got)
	}
	c.Kill()
	w := newWorld(t, folder)
	w.opens(path)
	if n := len(w.state.Pen.Failed); n != 0 {
		t.Errorf("%d deeds are to be tried again that are in the book", n)
	}
	if got := w.state.Field(w.state.CardField()).Text; got != "e b4" {
		t.Errorf("the line is %q", got)
	}
	if got := w.entries(); got != len(founding())+2 {
		t.Errorf("%d entries", got)
	}
	w.types("⏎")
	w.settle()
	w.desk.keeps.flush()
	left, err := os.ReadDir(filepath.Join(folder, "drafts"))
	if len(left) > 0 || err != nil {
		t.Errorf("all is written, and drafts are left: %v, %v", left, err)
	}
}

func TestWhatCouldNotBeWrittenBeforeClosingIsInTheDraft(t *testing.T) {
	folder, path := t.TempDir(), aBook(t)
	w := newWorld(t, folder)
	w.opens(path)
	check(t, w.desk.opened().file.Close()) // as when the disk is pulled out
	w.types("A1e⏎")
	w.desk.Close(io.Discard) // before the window hears what became of it
	if got := inFile(t, path); got != len(founding()) {
		t.Fatalf("%d entries are in the book", got)
	}
	again := newWorld(t, folder)
	again.opens(path)
	if n := len(again.state.Pen.Failed); n != 1 || !again.state.Unsaved() {
		t.Fatalf("%d deeds are to be tried again", n)
	}
	again.run("again")
	if got := inFile(t, path); got != len(founding())+1 || again.state.Unsaved() {
		t.Errorf("%d entries are in the book, unsaved %v", got, again.state.Unsaved())
	}
}

func TestADamagedDraftIsLaidAside(t *testing.T) {
	folder, path := t.TempDir(), aBook(t)
	d := newDesk(folder, clock)
	check(t, os.MkdirAll(filepath.Dir(d.draftFile(path)), 0o700))
	check(t, os.WriteFile(d.draftFile(path), []byte(`{"fields`), 0o600))
	w := newWorld(t, folder)
	w.opens(path)
	w.says("could not be read; the damaged file is")
	if _, err := os.Stat(d.draftFile(path) + ".damaged"); err != nil {
		t.Error(errors.Join(errors.New("it is not kept aside"), err))
	}
}

// tryWithoutEnd turns a stand of a try-out again and again, and prints how far it was
// turned when that was on disk.
func tryWithoutEnd(args []string) error {
	w := typist(args[0], args[1], 2*time.Millisecond, func(d *desk, file string, err error) {
		var draft state.Draft
		if _, failed := kept(file, &draft); err != nil || failed != nil || file == d.prefsFile() || len(draft.Tries) == 0 {
			return
		}
		fmt.Println(draft.Tries[0].Stands[0].Turn)
	})
	w.run("layout")
	w.send(state.Keyed{Key: "A", Mods: state.Ctrl})
	for {
		w.run("turn right")
		w.settle()
	}
}

// A try-out that nobody kept is there again when the program was killed, and the foot
// says so.
func TestKilledWhileLayingOut(t *testing.T) {
	folder, path := t.TempDir(), filepath.Join(t.TempDir(), "hill"+storage.Extension)
	p := booktest.Pen{Writer: "Ida", Entries: founding()}
	p.At("2027-04-01 08:05").Write(book.StandSet{Stand: booktest.Stand("A"), Yard: booktest.Yard("hill"), Letter: "A", Places: 4})
	b, err := storage.CreateWith(path, p.Entries...)
	check(t, err)
	check(t, b.Close())
	c := children.Play(t, "lay out without end", folder, path)
	for range 4 {
		c.Line()
	}
	told := c.Kill()
	w := newWorld(t, folder)
	w.opens(path)
	w.says("not kept yet, is here again")
	w.run("layout")
	if st := w.state.Laying.Try.Stands[0]; st.Turn == w.state.LayoutSheet().Now.Layout.Stands[0].Turn {
		t.Errorf("stand %s is back as it stands, turned %v; told was %v", st.Letter, st.Turn, told)
	}
	whole(t, path)
}
