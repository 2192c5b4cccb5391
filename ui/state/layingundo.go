package state

import (
	"fmt"

	"lidmark/domain/yard"
)

// UndoWords are what undo would take back: the last step of the try-out while one is
// worked at, else the last deed; ok is false where there is none.
func (s State) UndoWords() (words string, ok bool) {
	if s.onStands() {
		if len(s.Laying.past) == 0 {
			return "", false
		}
		return s.Laying.lastStep() + " in the try-out", true
	}
	if done := s.Pen.Done; len(done) > 0 {
		return done[len(done)-1].Words, true
	}
	return "", false
}

// lastStep is the last step of the try-out in words.
func (l *Laying) lastStep() string {
	changes := yard.ChangesOf(l.past[len(l.past)-1], l.Try, nil, nil)
	switch len(changes) {
	case 0:
		return "what is held"
	case 1:
		return changes[0].Words()
	}
	return fmt.Sprintf("%d stands changed", len(changes))
}
