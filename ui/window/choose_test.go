package window

import (
	"errors"
	"net/url"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"

	"lidmark/ui/state"
)

// over is what lies over the window, as far as a kind of widget goes.
func over[W fyne.CanvasObject](w *Window) (all []W) {
	top := w.window.Canvas().Overlays().Top()
	if top == nil {
		return nil
	}
	for _, o := range test.LaidOutObjects(top) {
		if found, ok := o.(W); ok {
			all = append(all, found)
		}
	}
	return all
}

// tapButton taps the button of a dialog that says so.
func (w *Window) tapButton(t *testing.T, word string) {
	t.Helper()
	for _, b := range over[*widget.Button](w) {
		if b.Text == word {
			test.Tap(b)
			return
		}
	}
	for _, b := range over[*button](w) {
		if b.Text == word {
			test.Tap(b)
			return
		}
	}
	t.Fatalf("no dialog has a button %q", word)
}

// listening is a window whose messages a test sees, on a book in a folder.
func listening(t *testing.T, folder string) (w *Window, chose func() (state.Chose, bool)) {
	t.Helper()
	w = opened(t)
	b := demoBook()
	b.Path = filepath.Join(folder, "hill.lidmark")
	w.send(state.Opened{Book: b})
	w.asked()
	return w, func() (m state.Chose, ok bool) {
		for _, e := range w.asked() {
			if read, is := e.(state.ReadList); is {
				return state.Chose{For: "list", Path: read.Path}, true
			}
		}
		return m, false
	}
}

func TestAFileIsNamedAndNotTouched(t *testing.T) {
	dir := t.TempDir()
	w, chose := listening(t, dir)
	w.Perform(state.ChooseFile{For: "list", Name: "hill.csv"})
	w.tapButton(t, "Choose")
	if m, ok := chose(); !ok || m.Path != filepath.Join(dir, "hill.csv") {
		t.Errorf("chosen is %+v", m)
	}
	if _, err := os.Stat(filepath.Join(dir, "hill.csv")); err == nil {
		t.Error("naming a file makes it")
	}
	w.Perform(state.ChooseFile{For: "list", Name: "hill.csv"})
	w.tapButton(t, "Cancel")
	if m, ok := chose(); ok {
		t.Errorf("left alone, chosen is %+v", m)
	}
}

func TestAFileThatIsThereIsAskedAboutAndNotTouched(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "hill.csv")
	if err := os.WriteFile(path, []byte("nucs"), 0o600); err != nil {
		t.Fatal(err)
	}
	for answer, want := range map[string]bool{"Cancel": false, "Replace it": true} {
		w, chose := listening(t, dir)
		w.Perform(state.ChooseFile{For: "list", Name: "hill.csv"})
		w.tapButton(t, "Choose")
		if m, ok := chose(); ok {
			t.Fatalf("before it was asked, chosen is %+v", m)
		}
		w.tapButton(t, answer)
		if _, ok := chose(); ok != want {
			t.Errorf("%s: chosen %v", answer, ok)
		}
	}
	if text, err := os.ReadFile(path); err != nil || string(text) != "nucs" {
		t.Errorf("the file is %q, %v", text, err)
	}
}

func TestABookIsChosenFromItsFolder(t *testing.T) {
	dir := t.TempDir()
	w, _ := listening(t, dir)
	if got := w.folder(); got != dir {
		t.Errorf("files are looked for in %s, want %s", got, dir)
	}
	w.Perform(state.ChooseBook{})
	w.Perform(state.ChooseFile{For: "list", Kinds: []string{".csv"}})
	if len(over[*button](w)) == 0 {
		t.Error("there is nothing to choose with")
	}
	w.state = state.State{Prefs: state.Prefs{Recent: []string{filepath.Join(dir, "old.lidmark")}}}
	if got := w.folder(); got != dir {
		t.Errorf("without a book files are looked for in %s, want %s", got, dir)
	}
	w.state = state.State{}
	if got, err := os.UserHomeDir(); err == nil && w.folder() != got {
		t.Errorf("at first files are looked for in %s, want %s", w.folder(), got)
	}
}

// key gives a key to what has the keys, or to nothing in particular.
func (w *Window) key(name fyne.KeyName) {
	c := w.window.Canvas()
	if f := c.Focused(); f != nil {
		f.TypedKey(&fyne.KeyEvent{Name: name})
	} else if typed := c.OnTypedKey(); typed != nil {
		typed(&fyne.KeyEvent{Name: name})
	}
}

// TestAQuestionTakesTheKeys: Enter confirms in a field and presses a button, Esc
// leaves from anywhere, and nothing reaches the stage behind.
func TestAQuestionTakesTheKeys(t *testing.T) {
	dir := t.TempDir()
	for name, c := range map[string]struct {
		keys []fyne.KeyName
		tabs int
		want bool
	}{
		"Enter in the name":   {keys: []fyne.KeyName{fyne.KeyReturn}, want: true},
		"Enter in the folder": {keys: []fyne.KeyName{fyne.KeyReturn}, tabs: 1, want: true},
		"Esc in the name":     {keys: []fyne.KeyName{fyne.KeyEscape}},
		"Esc on a button":     {keys: []fyne.KeyName{fyne.KeyEscape}, tabs: 2},
		"Enter on Cancel":     {keys: []fyne.KeyName{fyne.KeyEnter}, tabs: 3},
		"Space on Cancel":     {keys: []fyne.KeyName{fyne.KeySpace}, tabs: 3},
		"Enter on Choose":     {keys: []fyne.KeyName{fyne.KeyEnter}, tabs: 4, want: true},
	} {
		w, chose := listening(t, dir)
		before := w.state
		w.Perform(state.ChooseFile{For: "list", Name: "hill.csv"})
		w.stage.TypedKey(&fyne.KeyEvent{Name: fyne.KeyDown})
		w.stage.TypedRune('?')
		w.stage.TypedShortcut(&fyne.ShortcutSelectAll{})
		if w.state.Keys || w.state.Selection.Len() != before.Selection.Len() {
			t.Errorf("%s: a key went through the question", name)
		}
		for range c.tabs {
			w.window.Canvas().FocusNext()
		}
		for _, k := range c.keys {
			w.key(k)
		}
		if _, ok := chose(); ok != c.want || w.covered() {
			t.Errorf("%s: chosen %v, still open %v", name, ok, w.covered())
		}
		if w.window.Canvas().Focused() != w.stage {
			t.Errorf("%s: the keys do not go back to the stage", name)
		}
	}
}

// TestEscLeavesOneDialogAtATime: the folders first, then the question below.
func TestEscLeavesOneDialogAtATime(t *testing.T) {
	w, _ := listening(t, t.TempDir())
	w.Perform(state.ChooseFile{For: "list", Name: "hill.csv"})
	w.tapButton(t, "Another folder")
	for _, word := range []string{"Use this folder", "Choose"} {
		if !slices.Contains(append(words(over[*widget.Button](w)), ours(over[*button](w))...), word) {
			t.Fatalf("no dialog has a button %q", word)
		}
		w.window.Canvas().Unfocus()
		w.key(fyne.KeyEscape)
	}
	if w.covered() || w.window.Canvas().Focused() != w.stage {
		t.Error("the keys are not with the stage again")
	}
}

func words(all []*widget.Button) (said []string) {
	for _, b := range all {
		said = append(said, b.Text)
	}
	return said
}

func ours(all []*button) (said []string) {
	for _, b := range all {
		said = append(said, b.Text)
	}
	return said
}

// TestAPathIsTyped in the question which file, and one of nowhere is told.
func TestAPathIsTyped(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "nucs.csv")
	if err := os.WriteFile(path, []byte("nuc"), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, typed := range []string{path, filepath.Join(dir, "none.csv")} {
		w, chose := listening(t, dir)
		w.Perform(state.ChooseFile{For: "list", Kinds: []string{".csv"}})
		over[*entry](w)[0].SetText(typed)
		w.key(fyne.KeyReturn)
		if m, ok := chose(); ok != (typed == path) || ok == w.state.Note.Bad {
			t.Errorf("%s: chosen %+v, the foot says %q", typed, m, w.state.Note.Text)
		}
	}
}

// blind is an app on a machine on which no program shows files.
type blind struct {
	fyne.App
	asked *url.URL
}

func (b *blind) OpenURL(u *url.URL) error {
	b.asked = u
	return errors.New("no program")
}

func TestAFinishedFileIsShown(t *testing.T) {
	w := opened(t)
	b := &blind{App: w.app}
	w.app = b
	w.send(state.Worked{Show: "/sheets/route 1.pdf"})
	if b.asked == nil || b.asked.String() != "file:///sheets/route%201.pdf" {
		t.Errorf("shown is %v", b.asked)
	}
	if n := w.state.Note; !n.Bad || n.Text != "no program here shows /sheets/route 1.pdf; it is written all the same" {
		t.Errorf("the window says %+v", n)
	}
}
