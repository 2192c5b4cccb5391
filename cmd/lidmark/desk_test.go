package main

import (
	"context"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/storage"
	"lidmark/ui/state"
)

func TestALineIsWrittenUndoneAndThereAgain(t *testing.T) {
	path := aBook(t)
	w := newWorld(t, t.TempDir())
	w.opens(path)
	before := w.entries()
	if w.state.Book.ReadOnly != "" || w.state.Book.Path != path {
		t.Fatalf("opened %s, read only: %q", w.state.Book.Path, w.state.Book.ReadOnly)
	}
	w.types("A1e⏎")
	if !w.state.Unsaved() {
		t.Fatal("a line was entered, and nothing is on its way into the book")
	}
	w.settle()
	if w.state.Unsaved() || w.entries() != before+1 || inFile(t, path) != before+1 || w.state.Book.Saved.IsZero() {
		t.Errorf("unsaved %v, %d entries shown and %d in the file, saved %v", w.state.Unsaved(), w.entries(), inFile(t, path), w.state.Book.Saved)
	}
	w.run("undo")
	w.run("redo")
	if got := inFile(t, path); got != before+3 || len(w.state.Pen.Done) != 1 {
		t.Errorf("after undo and redo: %d entries in the file, %d deeds done", got, len(w.state.Pen.Done))
	}
	shown := w.entries()
	w.desk.Close(io.Discard)
	again := newWorld(t, t.TempDir())
	again.opens(path)
	if again.entries() != shown {
		t.Errorf("opened again: %d entries, want %d", again.entries(), shown)
	}
}

func TestDeedsAreWrittenInTheOrderInWhichTheyWereSent(t *testing.T) {
	path := aBook(t)
	w := newWorld(t, t.TempDir())
	w.opens(path)
	w.types("A1e⏎A2e⏎")
	w.send(state.Ran{Command: "undo"})
	w.settle()
	b, err := storage.Open(path, storage.Options{ReadOnly: true})
	check(t, err)
	defer func() { check(t, b.Close()) }()
	last := ""
	for e, err := range b.Entries() { // in the order in which they arrived
		check(t, err)
		if last >= e.ID.String() && e.Writer == "Ida" && e.At.Instant.After(start.Add(-time.Hour)) {
			t.Errorf("%s was written behind %s", e.ID, last)
		}
		if e.At.Instant.After(start.Add(-time.Hour)) {
			last = e.ID.String()
		}
	}
}

func TestWhatMakesNoSenseIsNotWritten(t *testing.T) {
	path := aBook(t)
	w := newWorld(t, t.TempDir())
	w.opens(path)
	before := inFile(t, path)
	pen := booktest.Pen{Writer: "Ida"}
	pen.At("2027-05-11 10:00").Write(book.Noted{Of: booktest.Nuc("A1").Subject(), Text: "calm"},
		book.Looked{Nuc: booktest.Nuc("Z9")})
	w.desk.Do(w.state, state.Write{Deed: state.Deed{Number: 7, Entries: pen.Entries}}, func(m state.Msg) {
		if m, ok := m.(state.Written); !ok || m.Number != 7 || m.Book != nil || !strings.Contains(m.Failed, "not in the book") {
			t.Errorf("told %+v, want why it was not written", m)
		}
	})
	w.settle()
	if got := inFile(t, path); got != before {
		t.Errorf("%d entries, want %d: a deed is written whole or not at all", got, before)
	}
}

func TestTheDemoSeasonTakesEntriesAndKeepsNone(t *testing.T) {
	folder := t.TempDir()
	w := newWorld(t, folder)
	w.do(state.OpenDemo{})
	w.settle()
	before := w.entries()
	if !strings.Contains(w.state.Book.Name, "demo") || w.state.Book.ReadOnly != "" {
		t.Fatalf("the demo is called %q and may not be written: %q", w.state.Book.Name, w.state.Book.ReadOnly)
	}
	w.types("A1e⏎")
	w.settle()
	if w.entries() != before+1 || w.state.Unsaved() {
		t.Errorf("%d entries, want %d; unsaved %v", w.entries(), before+1, w.state.Unsaved())
	}
	w.desk.keeps.flush()
	if left, err := os.ReadDir(filepath.Join(folder, "drafts")); err == nil {
		t.Errorf("the demo leaves drafts: %v", left)
	}
}

func TestABookThatAnotherProgramHasIsReadUntilItIsFree(t *testing.T) {
	path := aBook(t)
	first, second := newWorld(t, t.TempDir()), newWorld(t, t.TempDir())
	first.opens(path)
	second.opens(path)
	if why := second.state.Book.ReadOnly; strings.Contains(why, "UTC") || !strings.Contains(why, " since "+start.Format("15:04")) {
		t.Errorf("since when another program has it is not said in the time of this machine: %q", why)
	}
	if why := second.state.Book.ReadOnly; !strings.Contains(why, "process") || !strings.Contains(why, "close it there") {
		t.Fatalf("the second is read only because %q, want who has it", why)
	}
	second.says("another program has this book open")
	first.types("A1e⏎")
	first.settle()
	second.desk.Tick(second.state, second.tell)
	second.settle()
	if second.entries() != first.entries() {
		t.Errorf("the first wrote, the second shows %d of %d entries", second.entries(), first.entries())
	}
	shown := second.state.Book
	second.desk.Tick(second.state, second.tell)
	second.settle()
	if second.state.Book != shown {
		t.Error("a book that nobody wrote in was read anew")
	}
	first.desk.Close(io.Discard)
	second.desk.Tick(second.state, second.tell)
	second.settle()
	second.says("can be written in now")
	second.types("A2e⏎")
	second.settle()
	if got := inFile(t, path); got != first.entries()+1 {
		t.Errorf("%d entries in the file, want one more than %d", got, first.entries())
	}
}

func TestABookIsOpenOnce(t *testing.T) {
	path := aBook(t)
	w := newWorld(t, t.TempDir())
	w.opens(path)
	shown := w.state.Book
	w.opens(filepath.Join(filepath.Dir(path), ".", filepath.Base(path)))
	if w.state.Book != shown {
		t.Error("the same book was opened a second time")
	}
	w.says("open already")
	other := aBook(t)
	w.opens(other)
	if w.state.Book.Path != other {
		t.Fatalf("the window shows %s", w.state.Book.Path)
	}
	b, err := storage.Open(path, storage.Options{})
	check(t, err) // the book that was left is free
	check(t, b.Close())
}

func TestWhatDoesNotOpenSaysSoAndLeavesTheBook(t *testing.T) {
	path := aBook(t)
	w := newWorld(t, t.TempDir())
	w.opens(path)
	w.opens(filepath.Join(t.TempDir(), "nowhere.lidmark"))
	w.says("nowhere.lidmark: there is no such file; check the name")
	if !w.state.Note.Bad || w.state.Book == nil || w.state.Book.Path != path || w.state.Busy != nil {
		t.Errorf("note %+v, book %v, busy %v", w.state.Note, w.state.Book, w.state.Busy)
	}
}

func TestALongReadingIsStopped(t *testing.T) {
	path := filepath.Join(t.TempDir(), "big.lidmark")
	b, err := storage.CreateWith(path, booktest.Big(200, 40)...)
	check(t, err)
	check(t, b.Close())
	d := newDesk(t.TempDir(), booktest.BigClock)
	d.keeps.pause = time.Hour
	defer d.Close(io.Discard)
	var last state.Msg
	d.work(nil, func(ctx context.Context, _ func(state.Msg)) {
		d.openBook(ctx, path, func(m state.Msg) {
			last = m
			if w, ok := m.(state.Working); ok && w.Share > 0 {
				d.stopWork()
			}
		})
	})
	d.works.wait(func() {})
	if m, ok := last.(state.Worked); !ok || m.Note.Text != "stopped: big was not opened" {
		t.Errorf("told at last: %+v", last)
	}
	if d.opened() != nil {
		t.Error("it was opened all the same")
	}
}

func TestABookIsBegunOrLeavesNothing(t *testing.T) {
	dir := t.TempDir()
	w := newWorld(t, t.TempDir())
	w.do(state.Found{Path: filepath.Join(dir, "hill"), Entries: founding()})
	w.settle()
	if w.state.Book == nil || w.state.Book.Name != "hill" || w.entries() != len(founding()) {
		t.Fatalf("begun: %+v; %q", w.state.Book, w.state.Note.Text)
	}
	w.types("A1e⏎")
	w.settle()
	if w.state.Unsaved() || w.entries() != len(founding())+1 {
		t.Error("a new book takes no line")
	}
	w.do(state.Found{Path: filepath.Join(dir, "hill.lidmark"), Entries: founding()})
	w.settle()
	w.says("a file of this name is there already")

	p := booktest.Pen{}
	p.At("2029-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("far"), Name: "Far", Zone: "UTC"})
	w.do(state.Found{Path: filepath.Join(dir, "far.lidmark"), Entries: p.Entries})
	w.settle()
	w.says("the book was not begun")
	twice := append(founding(), founding()...)
	twice[len(twice)-1].Fact = book.Noted{Text: "another deed of the same id"}
	w.do(state.Found{Path: filepath.Join(dir, "twice.lidmark"), Entries: twice})
	w.settle()
	if !w.state.Note.Bad {
		t.Error("two deeds of one id begin a book")
	}
	for _, name := range []string{"far", "twice"} {
		if left, _ := filepath.Glob(filepath.Join(dir, name+"*")); len(left) > 0 {
			t.Errorf("left behind: %v", left)
		}
	}
}

func TestCopiesAreMadeOnOpeningAndOnClosing(t *testing.T) {
	path := aBook(t)
	w := newWorld(t, t.TempDir())
	at := start
	w.desk.clock = func() time.Time { return at }
	w.opens(path)
	if got := len(storage.Copies(path)); got != 1 {
		t.Errorf("%d copies after opening, want 1", got)
	}
	w.types("A1e⏎")
	w.settle()
	at = at.Add(25 * time.Hour)
	w.desk.Close(io.Discard)
	if got := len(storage.Copies(path)); got != 2 {
		t.Errorf("%d copies after closing a day later, want 2", got)
	}
}

func TestTheClockIsToldWhenTheBookIsRead(t *testing.T) {
	w := newWorld(t, t.TempDir())
	w.opens(aBook(t))
	then := w.state
	then.Now = start.Add(time.Minute)
	done := make(chan state.Msg, 1)
	w.desk.Tick(then, func(m state.Msg) { done <- m })
	if m := (<-done).(state.Ticked); !m.Now.Equal(then.Now) {
		t.Errorf("told %v", m.Now)
	}
}
