package state

import (
	"strings"

	"lidmark/ui/scene"
)

// penCommands are the commands that write, or take back what was written.
var penCommands = []Command{
	{Name: "undo", Does: "undo what was written last", Keys: "Ctrl+Z", Why: noUndo, Do: undoLast},
	{Name: "redo", Does: "redo it", Keys: "Ctrl+Y Ctrl+Shift+Z", Why: noRedo, Do: redoLast},
	{Name: "again", Does: "write again what was not written", Word: "Try again", Why: nothingFailed, Do: again},
	{Name: "let go", Does: "drop what was not written", Word: "Let it go", Why: nothingFailed, Do: pure(letGo)},
	{Name: "write", Does: "write what the form says", Word: "Write", Keys: "Ctrl+Enter", Why: noForm, Do: State.submit},
	{Name: "close form", Does: "leave the form", Word: "Leave", Why: noForm, Do: pure(State.formLeft)},
	{Name: "writer", Does: "choose who writes", Keys: "Alt+V", Why: noPen, Do: menu(WriterMenu)},
	{Name: "stop", Does: "stop the work under way", Word: "Stop", Why: notBusy, Do: func(s State) (State, []Effect) { return s, []Effect{StopWork{}} }},
}

func nothingUndone(s State) string {
	if len(s.Pen.Undone) == 0 {
		return "nothing was undone"
	}
	return ""
}

func nothingFailed(s State) string {
	if len(s.Pen.Failed) == 0 {
		return "all is written"
	}
	return ""
}

func noForm(s State) string {
	if s.Form == nil {
		return "no form is open"
	}
	return ""
}

func notBusy(s State) string {
	if s.Busy == nil {
		return "nothing is under way"
	}
	return ""
}

// formLeft is the window without the form.
func (s State) formLeft() State {
	s.Form, s.Asked, s.Focus, s.Sheet = nil, nil, scene.Ref{}, false
	return s.withoutFields(FormField)
}

// enterIn does what Enter means in the field of a name.
func (s State) enterIn(name string) (State, []Effect) {
	switch {
	case name == NumberField:
		return run(s, "set number")
	case strings.HasPrefix(name, linePrefix):
		return s.lineEntered()
	case name == WalkField && s.Walk != nil:
		return s.walkEntered()
	case strings.HasPrefix(name, FormField) && s.Form != nil:
		return s.submit()
	case name == LayoutMore:
		return run(s, "more boxes")
	case featureField(name) && s.Drawing.What == 0:
		return run(s, "change feature")
	case name == DrawWind:
		return run(s, "set wind")
	case strings.HasPrefix(name, LayoutField) && s.Drawing.What != 0:
		return s.enterDrawing()
	case strings.HasPrefix(name, LayoutField):
		return s.layoutTyped(name), nil
	case startField(name) || listField(name):
		return s.enterInStart(name)
	}
	return s, nil
}

// changed is the window after the field of a name was edited.
func (s State) changed(name string) State {
	if name == WalkField && s.Walk != nil {
		return s.lineDrafted().says().rowShown()
	}
	if startField(name) || listField(name) {
		return s.startChanged(name)
	}
	return s
}

// chose is the window after a file was chosen.
func (s State) chose(m Chose) (State, []Effect) { return s.choseForBook(m) }
