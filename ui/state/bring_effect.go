package state

import "lidmark/domain/roll"

// ReadList reads a keeper's own list from a file; [ListRead] comes back. With an
// encoding its text is read so, else that is told by the file or asked.
type ReadList struct{ Path, Encoding string }

func (ReadList) effect() {}

// ListRead is what was read of a list, or why nothing was, as a sentence that
// says what to do.
type ListRead struct {
	Path   string
	List   roll.List
	Failed string
}

func (ListRead) msg() {}
