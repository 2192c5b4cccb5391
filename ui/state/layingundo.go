package state

import (
	"fmt"

	"lidmark/domain/yard"
)

// UndoWords are what undo would take back: the last step of the try-out while one is
// worked at, else the last deed; ok is false where there is none.
func (s State) UndoWords() (words string, ok bool) {
	if s.onStands() && !s.asWrote(s.Pen.Done) {
		if !s.Laying.canStepBack() {
			return "", false
		}
		return s.Laying.lastStep() + " in the try-out", true
	}
	if done := s.Pen.Done; len(done) > 0 {
		return done[len(done)-1].Words, true
	}
	return "", false
}

// canStepBack tells whether a step of the try-out, or that it was taken up, can be undone.
func (l *Laying) canStepBack() bool { return len(l.past) > 0 || l.left != nil }

// quoted is the name of a try-out within a sentence.
func quoted(name string) string { return "“" + name + "”" }

// lastStep is the last step of the try-out in words.
func (l *Laying) lastStep() string {
	if len(l.past) == 0 {
		return "take up " + quoted(l.Name)
	}
	before := l.past[len(l.past)-1]
	changes := yard.StepsOf(before, l.Try)
	switch len(changes) {
	case 0:
		return heldWords(before, l.Try)
	case 1:
		return changes[0].Words()
	}
	return fmt.Sprintf("%d stands changed", len(changes))
}

// heldWords say which stands are held in a layout and were free before, or the other way
// round.
func heldWords(before, l yard.Layout) string {
	word, letters := "hold", []string{}
	for i := range min(len(l.Stands), len(before.Stands)) {
		if st := l.Stands[i]; st.Fixed != before.Stands[i].Fixed {
			if letters = append(letters, st.Letter); !st.Fixed {
				word = "free"
			}
		}
	}
	if len(letters) == 1 {
		return word + " stand " + letters[0]
	}
	return word + " stands " + inRuns(letters)
}
