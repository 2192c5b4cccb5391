package window

import (
	"net/url"
	"path/filepath"
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"lidmark/ui/state"
)

// Desk does for the window what needs no toolkit: it reads and writes books and
// keeps what the keeper chose.
type Desk interface {
	// Do takes on an effect that came of s, and returns at once. What comes of
	// it is told later, from any goroutine.
	Do(s state.State, e state.Effect, tell func(state.Msg))
	// Tick takes on the turn of a minute, and tells [state.Ticked] when all is
	// ready for it.
	Tick(s state.State, tell func(state.Msg))
}

// Perform does one effect: what needs the toolkit here, all else at the desk.
func (w *Window) Perform(e state.Effect) {
	switch e := e.(type) {
	case state.CopyText:
		w.app.Clipboard().SetContent(e.Text)
	case state.Paste:
		w.send(state.Pasted{Text: w.app.Clipboard().Content()})
	case state.ChooseBook:
		w.chooseFile([]string{bookExtension}, func(path string) { w.Perform(state.OpenBook{Path: path}) })
	case state.ChooseFile:
		chose := func(path string) { w.send(state.Chose{For: e.For, Path: path}) }
		if e.Name != "" {
			w.nameFile(e.Name, chose)
		} else {
			w.chooseFile(e.Kinds, chose)
		}
	case state.ShowFile:
		w.showFile(e.Path)
	default:
		w.desk.Do(w.state, e, w.tell)
	}
}

// tell takes a message from any goroutine.
func (w *Window) tell(m state.Msg) {
	fyne.Do(func() {
		if !w.closed {
			w.send(m)
		}
	})
}

// complain tells the keeper what went wrong.
func (w *Window) complain(text string) { w.send(state.Worked{Note: state.Note{Text: text, Bad: true}}) }

// showFile opens a file in the system's viewer.
func (w *Window) showFile(path string) {
	if err := w.app.OpenURL(&url.URL{Scheme: "file", Path: filepath.ToSlash(path)}); err != nil {
		w.complain("no program here shows " + path + "; it is written all the same")
	}
}

const bookExtension = ".lidmark"

// listExtensions are how files end that bring entries into a book; a saved
// forecast ends in .json, a ground in .geojson or .gpx.
var listExtensions = []string{".csv", ".xlsx", ".jsonl", ".json", ".geojson", ".gpx"}

// dropped opens the book that was dragged onto the window, or brings the list or
// the weather.
func (w *Window) dropped(_ fyne.Position, files []fyne.URI) {
	if len(files) != 1 {
		w.complain("drop one file at a time: a book, a list or weather")
		return
	}
	path := files[0].Path()
	switch ending := strings.ToLower(filepath.Ext(path)); {
	case ending == bookExtension:
		w.Perform(state.OpenBook{Path: path})
	case slices.Contains(listExtensions, ending):
		w.send(state.Chose{For: "drop", Path: path})
	default:
		w.complain(filepath.Base(path) + " is neither a book nor a list, weather or a ground; drop a file that ends in " + bookExtension + ", .csv, .xlsx, .json, .jsonl, .geojson or .gpx")
	}
}
