package window

import (
	"path/filepath"
	"slices"
	"strings"

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
func (w *Window) OpenDemo() { w.open("", w.books.Demo) }

// OpenFile opens the book in a file; a dialog says what went wrong.
func (w *Window) OpenFile(path string) {
	w.open(path, func() (*state.Book, error) { return w.books.Open(path) })
}

// open opens a book on a worker. The stamp is taken first: what is written
// while the book is read shows in it.
func (w *Window) open(path string, read func() (*state.Book, error)) {
	w.asked++
	asked := w.asked
	w.work(func() {
		stamp := ""
		if path != "" {
			stamp = w.books.Stamp(path)
		}
		b, err := read()
		fyne.Do(func() {
			if asked == w.asked {
				w.show(b, stamp, err)
			}
		})
	})
}

// show shows the book that was opened, or says why it was not.
func (w *Window) show(b *state.Book, stamp string, err error) {
	if err != nil {
		w.say("This book does not open", err.Error())
	} else {
		w.stamp = stamp
		w.send(state.Opened{Book: b})
		w.window.SetTitle("Lidmark: " + b.Name)
	}
}

// choose lets the keeper pick the file of a book.
func (w *Window) choose() {
	d := dialog.NewFileOpen(func(file fyne.URIReadCloser, err error) {
		switch {
		case err != nil:
			w.say("No file was chosen", err.Error())
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
	books := slices.DeleteFunc(slices.Clone(files), func(f fyne.URI) bool {
		return !strings.EqualFold(filepath.Ext(f.Path()), bookExtension)
	})
	switch len(books) {
	case 1:
		w.OpenFile(books[0].Path())
	case 0:
		w.say("This is not a book", "drop a file that ends in "+bookExtension)
	default:
		w.say("One book at a time", "drop one file that ends in "+bookExtension)
	}
}

// say tells the keeper something in a dialog, in the words given.
func (w *Window) say(title, text string) { dialog.ShowInformation(title, text, w.window) }
