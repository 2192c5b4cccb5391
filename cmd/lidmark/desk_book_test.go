package main

import (
	"bytes"
	"os"
	"path/filepath"
	"runtime/debug"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/storage"
	"lidmark/storage/jsonl"
	"lidmark/storage/listfile"
	"lidmark/ui/state"
)

func TestACopyIsMadeFoundAndMadeABookOfItsOwn(t *testing.T) {
	path := aBook(t)
	w := newWorld(t, t.TempDir())
	at := start
	w.desk.clock = func() time.Time { return at }
	w.opens(path)
	w.types("A1e⏎")
	w.settle()
	at = at.Add(time.Minute)
	w.run("copy now")
	w.says("and read through")
	w.run("about")
	copies := w.state.Copies
	if len(copies) != 2 || !copies[0].Made.Equal(at) || copies[0].Entries != w.entries() || copies[1].Entries != w.entries()-1 {
		t.Fatalf("the copies are %+v, want one of now and one of the opening", copies)
	}
	old := filepath.Join(t.TempDir(), "old.lidmark")
	w.do(state.RestoreCopy{Copy: copies[1].Path, To: old})
	w.settle()
	if w.state.Book.Name != "old" || w.state.Book.ReadOnly != "" || w.entries() != copies[1].Entries {
		t.Errorf("restored: %s with %d entries, %q", w.state.Book.Name, w.entries(), w.state.Book.ReadOnly)
	}
	w.do(state.RestoreCopy{Copy: copies[0].Path, To: path})
	w.settle()
	if w.says("a file of this name is there already"); w.state.Book.Name != "old" || inFile(t, path) != copies[0].Entries {
		t.Error("a copy was restored over a file")
	}
	w.do(state.RestoreCopy{Copy: filepath.Join(t.TempDir(), "nowhere.lidmark"), To: filepath.Join(t.TempDir(), "new.lidmark")})
	w.settle()
	w.says("there is no such file")
}

func TestACopyElsewhere(t *testing.T) {
	path := aBook(t)
	w := newWorld(t, t.TempDir())
	w.opens(path)
	stick := filepath.Join(t.TempDir(), "hill-2027-05-11.lidmark")
	w.do(state.CopyBook{To: stick})
	w.settle()
	if w.says("copied to hill-2027-05-11.lidmark and read through"); inFile(t, stick) != w.entries() || w.state.Book.Path != path {
		t.Errorf("%d entries in the copy, the window shows %s", inFile(t, stick), w.state.Book.Path)
	}
	w.do(state.CopyBook{To: stick})
	w.settle()
	w.says("a file of this name is there already")
	w.do(state.CopyBook{To: filepath.Join(t.TempDir(), "no folder", "x.lidmark")})
	w.settle()
	if !w.state.Note.Bad || w.state.Busy != nil {
		t.Errorf("into no folder: %+v, %+v", w.state.Note, w.state.Busy)
	}
}

func TestTheWholeBookIsChecked(t *testing.T) {
	path := aBook(t)
	w := newWorld(t, t.TempDir())
	w.opens(path)
	w.run("check book")
	w.says("the whole book was read: all is well")
	w.do(state.OpenDemo{})
	w.settle()
	for _, command := range []string{"copy now", "check book", "take in"} {
		w.run(command)
		w.says("the demo season is kept in no file")
	}
}

// otherHand is a book of the same yard in which somebody else wrote a look.
func otherHand(t *testing.T) (path string, entries []book.Entry) {
	t.Helper()
	p := booktest.Pen{Writer: "Jon"}
	p.At("2027-05-10 10:00").Write(book.Looked{Nuc: booktest.Nuc("A2"), Eggs: book.SingleEggs})
	path = filepath.Join(t.TempDir(), "jon.lidmark")
	b, err := storage.CreateWith(path, append(founding(), p.Entries[0])...)
	check(t, err)
	check(t, b.Close())
	return path, p.Entries
}

func TestTakingInAnotherBook(t *testing.T) {
	path := aBook(t)
	w := newWorld(t, t.TempDir())
	w.opens(path)
	before := w.entries()
	jon, _ := otherHand(t)
	w.do(state.TakeIn{Path: jon})
	w.settle()
	if w.says("1 entry that was not in the book"); w.entries() != before+1 || inFile(t, path) != before+1 {
		t.Errorf("%d entries shown, %d in the file, want %d", w.entries(), inFile(t, path), before+1)
	}
	w.do(state.TakeIn{Path: jon})
	w.settle()
	if w.says("nothing that was not in the book"); w.entries() != before+1 {
		t.Error("taken in twice it changes something")
	}
	w.types("A1e⏎")
	w.settle()
	w.run("undo")
	if w.state.Unsaved() || w.entries() != before+3 || inFile(t, path) != before+3 {
		t.Errorf("after a line and undo %d entries shown and %d in the file, want %d", w.entries(), inFile(t, path), before+3)
	}
}

// TestTakingInInTheMiddleOfTyping: neither a line that is half typed in a walk nor
// an open form, nor a deed on its way, is touched by what comes in.
func TestTakingInInTheMiddleOfTyping(t *testing.T) {
	path := aBook(t)
	w := newWorld(t, t.TempDir())
	w.opens(path)
	before := w.entries()
	jon, _ := otherHand(t)
	w.send(state.Ran{Command: "type it in"})
	if w.state.Walk == nil {
		t.Fatalf("no walk is open: %q", w.state.Note.Text)
	}
	w.types("A1e s")
	at := w.state.Walk.At
	w.do(state.TakeIn{Path: jon})
	w.settle()
	if w.state.Walk == nil || w.state.Walk.At != at || w.state.Typed(state.WalkField) != "A1e s" || w.entries() != before+1 {
		t.Fatalf("walk %v, typed %q, %d entries", w.state.Walk != nil, w.state.Typed(state.WalkField), w.entries())
	}
	w.types("5⏎")
	if w.state.Asked != nil || !w.state.Unsaved() {
		t.Fatalf("the line was not written: %q", w.state.Walk.Refused)
	}
	w.do(state.TakeIn{Path: jon}) // while the line is on its way
	w.settle()
	if w.state.Unsaved() || w.entries() != before+2 || inFile(t, path) != before+2 || len(w.state.Pen.Done) != 1 {
		t.Errorf("unsaved %v, %d entries shown, %d in the file, want %d", w.state.Unsaved(), w.entries(), inFile(t, path), before+2)
	}
}

func TestTakingInJSONLines(t *testing.T) {
	path := aBook(t)
	w := newWorld(t, t.TempDir())
	w.opens(path)
	before := w.entries()
	_, entries := otherHand(t)
	var lines bytes.Buffer
	check(t, jsonl.WriteSeason(&lines, book.NewSeason(time.LoadLocation, append(founding(), entries...)), book.Exactly))
	good := filepath.Join(t.TempDir(), "good.jsonl")
	check(t, os.WriteFile(good, lines.Bytes(), 0o666))
	lines.WriteString("{\"id\": \"not an entry\"}\n")
	torn := filepath.Join(t.TempDir(), "torn.jsonl")
	check(t, os.WriteFile(torn, lines.Bytes(), 0o666))

	w.do(state.TakeIn{Path: torn})
	w.settle()
	if w.says("torn.jsonl"); !strings.Contains(w.state.Note.Text, "nothing was taken in: mend") || inFile(t, path) != before {
		t.Errorf("a bad line: %q, %d entries", w.state.Note.Text, inFile(t, path))
	}
	w.do(state.TakeIn{Path: good})
	w.settle()
	if w.says("taken in from good.jsonl: 1 entry"); inFile(t, path) != before+1 {
		t.Errorf("%d entries, want %d", inFile(t, path), before+1)
	}
	w.do(state.TakeIn{Path: filepath.Join(t.TempDir(), "nowhere.jsonl")})
	w.settle()
	if !w.state.Note.Bad || w.state.Busy != nil {
		t.Errorf("a file that is not there: %+v", w.state.Note)
	}
	w.do(state.TakeIn{Path: path})
	w.settle()
	if got := inFile(t, path); got != before+1 {
		t.Errorf("the book taken into itself has %d entries", got)
	}
}

func TestAListIsBroughtWhenTakenIn(t *testing.T) {
	w := newWorld(t, t.TempDir())
	w.opens(aBook(t))
	file := filepath.Join(t.TempDir(), "nucs.csv")
	check(t, os.WriteFile(file, []byte("Nuc,State\nB1,virgin\n"), 0o666))
	w.send(state.Chose{For: "take in", Path: file})
	w.settle()
	if w.state.Fill != state.ListFill || w.state.Bring == nil {
		t.Errorf("the page is %v, %q", w.state.Fill, w.state.Note.Text)
	}
}

func TestTakingOut(t *testing.T) {
	path := aBook(t)
	w := newWorld(t, t.TempDir())
	w.opens(path)
	w.types("A1e⏎")
	w.settle()
	folder := t.TempDir()
	out := func(command, name string) []byte {
		t.Helper()
		w.send(state.Chose{For: command, Path: filepath.Join(folder, name)})
		w.settle()
		if w.state.Note.Bad {
			t.Fatalf("%s: %s", command, w.state.Note.Text)
		}
		got, err := os.ReadFile(filepath.Join(folder, name))
		check(t, err)
		return got
	}
	entries, refused, err := jsonl.Read(bytes.NewReader(out("take out entries", "all.jsonl")), "all", nil)
	if check(t, err); len(refused) > 0 || len(entries) != w.entries() {
		t.Errorf("%d of %d entries, refused %v", len(entries), w.entries(), refused)
	}
	if got := string(out("take out nucs", "nucs.csv")); !strings.Contains(got, ",A1,") || !strings.Contains(got, "2027-05-11") {
		t.Errorf("the nucs are\n%s", got)
	}
	for _, table := range []string{"nucs", "batches", "looks"} {
		list, err := listfile.Read(table, bytes.NewReader(out("take out "+table, table+".xlsx")), "")
		if check(t, err); list.Sheets[0].Name != table {
			t.Errorf("the sheet is called %s", list.Sheets[0].Name)
		}
	}
	if got := string(out("take out calendar", "due.ics")); !strings.HasPrefix(got, "BEGIN:VCALENDAR") {
		t.Errorf("the calendar begins %.40q", got)
	}
	w.send(state.Keyed{Key: ","}) // a day back: A1 was not looked at
	if got := string(out("take out nucs", "yesterday.csv")); strings.Contains(got, "2027-05-11") {
		t.Errorf("the nucs of the day before are\n%s", got)
	}
	w.send(state.Chose{For: "take out nucs", Path: path})
	w.settle()
	if w.says("hill.lidmark.csv"); w.state.Note.Bad || inFile(t, path) != w.entries() {
		t.Errorf("a table with the book's name does not lie beside it: %q", w.state.Note.Text)
	}
}

func TestTheProgramAndItsLicences(t *testing.T) {
	w := newWorld(t, t.TempDir())
	w.opens(aBook(t))
	w.run("licence page")
	if len(w.state.Licences) < 20 {
		t.Fatalf("%d licences are told", len(w.state.Licences))
	}
	for _, l := range w.state.Licences {
		if l.Of == "" || l.Terms == "" || len(l.Text) < 100 {
			t.Errorf("%+.60v has no text or no terms", l)
		}
	}
}

func TestVersion(t *testing.T) {
	for want, info := range map[string]*debug.BuildInfo{
		"v1.2.3":                {Main: debug.Module{Version: "v1.2.3"}},
		"revision 0123456789ab": {Main: debug.Module{Version: "(devel)"}, Settings: []debug.BuildSetting{{Key: "vcs.revision", Value: "0123456789abcdef"}}},
		"":                      {Main: debug.Module{Version: "(devel)"}},
	} {
		if got := version(func() (*debug.BuildInfo, bool) { return info, true }); got != want {
			t.Errorf("the version is %q, want %q", got, want)
		}
	}
	if got := version(func() (*debug.BuildInfo, bool) { return nil, false }); got != "" {
		t.Errorf("a build that knows nothing has version %q", got)
	}
}
