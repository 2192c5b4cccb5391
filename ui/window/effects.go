package window

import (
	"path/filepath"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"

	"lidmark/ui/state"
)

// perform does one effect. Slow ones run on a worker, and their outcome comes
// back as a message.
func (w *Window) perform(e state.Effect) {
	switch e := e.(type) {
	case state.CopyText:
		w.app.Clipboard().SetContent(e.Text)
	case state.OpenDemo:
		w.OpenDemo()
	case state.ChooseBook:
		w.choose()
	}
}

// OpenDemo opens the demo season.
func (w *Window) OpenDemo() { w.open(w.books.Demo) }

// OpenFile opens the book in a file; a window says what went wrong.
func (w *Window) OpenFile(path string) {
	w.open(func() (*state.Book, error) { return w.books.Open(path) })
}

func (w *Window) open(opened func() (*state.Book, error)) {
	go func() {
		b, err := opened()
		fyne.Do(func() { w.show(b, err) })
	}()
}

// show shows the book that was opened, or says why it was not.
func (w *Window) show(b *state.Book, err error) {
	if err != nil {
		dialog.ShowError(err, w.window)
	} else {
		w.send(state.Opened{Book: b})
		w.window.SetTitle("Lidmark: " + b.Name)
	}
	if w.opened != nil {
		w.opened()
	}
}

// choose lets the keeper pick the file of a book.
func (w *Window) choose() {
	d := dialog.NewFileOpen(func(file fyne.URIReadCloser, err error) {
		switch {
		case err != nil:
			dialog.ShowError(err, w.window)
		case file != nil:
			_ = file.Close() // only its name is wanted; storage opens it
			w.OpenFile(file.URI().Path())
		}
	}, w.window)
	d.SetFilter(storage.NewExtensionFileFilter([]string{bookExtension}))
	d.Show()
}

const bookExtension = ".lidmark"

// dropped opens the book that was dragged onto the window.
func (w *Window) dropped(_ fyne.Position, files []fyne.URI) {
	for _, f := range files {
		if filepath.Ext(f.Path()) == bookExtension {
			w.OpenFile(f.Path())
			return
		}
	}
}
