package window

import (
	"os"
	"path/filepath"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/widget"
)

// chooseFile lets the keeper pick a file that is there: by its path, or by looking
// through the folders.
func (w *Window) chooseFile(kinds []string, chose func(path string)) {
	path := newEntry(w.folder() + string(filepath.Separator))
	var asked *question
	look := newButton("Look through the folders", func() {
		asked.Dismiss()
		w.lookForFile(kinds, chose)
	})
	asked = w.ask("Which file", "Open", []*widget.FormItem{
		widget.NewFormItem("File", path), widget.NewFormItem("", look),
	}, func() {
		if info, err := os.Stat(path.Text); err != nil || info.IsDir() {
			w.complain(path.Text + " is no file that is there: look through the folders")
			return
		}
		chose(path.Text)
	}, path, look)
}

// lookForFile lets the keeper look through the folders.
func (w *Window) lookForFile(kinds []string, chose func(path string)) {
	d := dialog.NewFileOpen(func(file fyne.URIReadCloser, err error) {
		switch {
		case err != nil:
			w.complain("no file was chosen: " + err.Error() + "; type its path instead")
		case file != nil:
			_ = file.Close() // only its name is wanted
			chose(file.URI().Path())
		}
	}, w.window)
	if len(kinds) > 0 {
		d.SetFilter(storage.NewExtensionFileFilter(kinds))
	}
	w.look(d, "Which file", "Open", w.folder())
}

// lookForFolder lets the keeper look through the folders for one.
func (w *Window) lookForFolder(from string, chose func(path string)) {
	d := dialog.NewFolderOpen(func(dir fyne.ListableURI, err error) {
		switch {
		case err != nil:
			w.complain("no folder was chosen: " + err.Error() + "; type its path instead")
		case dir != nil:
			chose(dir.Path())
		}
	}, w.window)
	w.look(d, "Which folder", "Use this folder", from)
}

// look shows the toolkit's list of folders in our words. The list itself stays
// the toolkit's: it knows the drives, volumes and favourites of each system.
func (w *Window) look(d *dialog.FileDialog, title, yes, from string) {
	d.SetTitleText(title)
	d.SetConfirmText(yes)
	d.SetDismissText("Cancel")
	if at, err := storage.ListerForURI(storage.NewFileURI(from)); err == nil {
		d.SetLocation(at)
	}
	w.escapes(d)
	d.Show()
}

// nameFile lets the keeper say where a new file goes and how it is called. The
// toolkit's own dialog for that empties a file that is there as soon as it is
// chosen; this one only gives its name.
func (w *Window) nameFile(name string, chose func(path string)) {
	called, folder := newEntry(name), newEntry(w.folder())
	other := newButton("Another folder", func() {
		w.lookForFolder(folder.Text, folder.SetText)
	})
	w.ask("Where to", "Choose", []*widget.FormItem{
		widget.NewFormItem("Name", called), widget.NewFormItem("Folder", folder), widget.NewFormItem("", other),
	}, func() {
		if path := filepath.Join(folder.Text, called.Text); called.Text != "" {
			w.unlessThere(path, func() { chose(path) })
		}
	}, called, folder, other)
}

// unlessThere goes on, but asks first where a file of the name is there. A book
// is never replaced, and the desk says so.
func (w *Window) unlessThere(path string, goOn func()) {
	if _, err := os.Stat(path); err != nil || filepath.Ext(path) == bookExtension {
		goOn()
		return
	}
	said := widget.NewLabel("What is in it now is lost. Cancel, and give another name, to keep both.")
	said.Wrapping = fyne.TextWrapWord
	w.ask(filepath.Base(path)+" is there already", "Replace it", []*widget.FormItem{widget.NewFormItem("", said)}, goOn)
}

// folder is where the keeper's files are: that of the book, else of the book
// opened last, else the keeper's own.
func (w *Window) folder() string {
	switch s := w.state; {
	case s.Book != nil && s.Book.Path != "":
		return filepath.Dir(s.Book.Path)
	case len(s.Recent) > 0:
		return filepath.Dir(s.Recent[0])
	}
	home, err := os.UserHomeDir()
	if err != nil {
		return "."
	}
	return home
}
