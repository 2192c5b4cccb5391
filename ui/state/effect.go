package state

import "lidmark/domain/book"

// Effect is something to be done outside the window's values: a closed set.
type Effect interface{ effect() }

// The effects.
type (
	// CopyText puts text on the clipboard.
	CopyText struct{ Text string }
	// OpenDemo opens the demo season.
	OpenDemo struct{}
	// ChooseBook lets the keeper choose the file of a book.
	ChooseBook struct{}
	// OpenBook opens the book in a file.
	OpenBook struct{ Path string }
	// ChooseFile lets the keeper choose a file; [Chose] comes back. With Name
	// it is one to be written, called so unless the keeper says otherwise.
	ChooseFile struct {
		For   string   // comes back with the choice
		Kinds []string // how its name may end: ".csv"
		Name  string
	}
	// Paste asks for what is on the clipboard; [Pasted] comes back.
	Paste struct{}
	// StopWork stops the long work that is under way.
	StopWork struct{}
	// ShowFile opens a finished file in the system's viewer.
	ShowFile struct{ Path string }
	// Found makes a new book at Path with its first entries, and opens it.
	Found struct {
		Path    string
		Entries []book.Entry
	}
	// KeepDraft keeps what is typed and not written, so that it is there again
	// when the program ended in the middle.
	KeepDraft struct{ Draft Draft }
)

func (CopyText) effect()   {}
func (OpenDemo) effect()   {}
func (ChooseBook) effect() {}
func (OpenBook) effect()   {}
func (ChooseFile) effect() {}
func (Paste) effect()      {}
func (StopWork) effect()   {}
func (ShowFile) effect()   {}
func (Found) effect()      {}
func (KeepDraft) effect()  {}
