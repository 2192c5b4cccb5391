package state

import (
	"strings"

	"lidmark/ui/scene"
)

// startCommands lead to a book: the demo season, another one, a new one, a list.
var startCommands = []Command{
	{Name: "demo", Does: "open the demo season", Keys: "1", Word: "Open the demo", Why: notAtStart, Do: func(s State) (State, []Effect) { return s, []Effect{OpenDemo{}} }},
	{Name: "start book", Does: "start a book", Keys: "2", Word: "Start a book", Why: notAtStart, Do: pure(State.toSteps)},
	{Name: "choose list", Does: "bring a list", Keys: "3", Word: "Choose a file", Why: notAtStart, Do: chooseList},
	{Name: "other book", Does: "open, start or bring another book", Keys: "Ctrl+O", Word: "Another book", Do: otherBook},
	{Name: "open", Does: "open a book", Keys: "4", Word: "Open another book", Why: notAtStart, Do: func(s State) (State, []Effect) { return s, []Effect{ChooseBook{}} }},
	{Name: "start on", Does: "", Word: "Go on", Why: noSteps, Do: State.stepOn},
	{Name: "start back", Does: "", Keys: "Shift+Enter", Word: "Back", Why: noSteps, Do: pure(State.stepBack)},
	{Name: "start file", Does: "", Word: "Choose", Why: noSteps, Do: chooseStartFile},
	{Name: "start row", Does: "", Word: "Other boxes as well", Why: noMoreRows, Do: pure(State.rowAdded)},
}

// AtStart tells whether the page is shown from which books are opened.
func (s State) AtStart() bool {
	return s.Book == nil && s.Fill == NoFill || s.Fill == BooksFill || s.Fill == ListFill && s.Bring == nil
}

func notAtStart(s State) string {
	if !s.AtStart() {
		return "leave what is open here first: Ctrl+O leads to other books"
	}
	return ""
}

// otherBook shows what can be opened, or without a book asks for its file.
func otherBook(s State) (State, []Effect) {
	if s.AtStart() {
		return s, []Effect{ChooseBook{}}
	}
	if s.Book == nil {
		return s.givenBack(), nil
	}
	s = s.entered(s.Room)
	s.Fill = BooksFill
	return s, nil
}

// RecentRef is the kind of a [scene.Ref] of a book opened lately; ID is its file.
const RecentRef = "recent"

// StepRef is the kind of a [scene.Ref] of something in the steps of a new book:
// ID is "step" or "row", Part its number from 0.
const StepRef = "step"

// Step is a step of a new book. The zero Step is the first.
type Step uint8

// The steps of a new book.
const (
	YardStep Step = iota
	BoxStep
	PeopleStep
	BatchStep
	StepCount
)

// Start is a new book while it is begun: at which step, and whether it was to go
// on once, so that what is missing is said.
type Start struct {
	Step  Step
	Tried bool
	Row   int // of boxes, that is open; from 0
	made  *Founding
}

func noSteps(s State) string {
	if s.Fill != StartFill {
		return "no book is being started"
	}
	return ""
}

// toSteps is the window with the steps of a new book, where they were left.
func (s State) toSteps() State {
	s.Fill, s.Menu, s.Keys, s.Selection = StartFill, NoMenu, false, Selection{}
	first := map[string]string{
		StartZone: s.Machine.Zone, rowField(0, "per"): "1", rowField(0, "kind"): "mini",
		StartBatch: "graft",
	}
	for name, text := range first {
		if _, there := s.Fields[name]; !there {
			s = s.WithField(name, FieldOf(text))
		}
	}
	return s.reckoned().toStep(s.Start.Step)
}

// toStep is the window at a step, the keys going to its first field.
func (s State) toStep(step Step) State {
	s.Start.Step, s.Start.Tried = step, false
	s = s.scrolled(FillPlace, -s.Scroll[FillPlace]).scrolled(ClockPlace, -s.Scroll[ClockPlace])
	switch step {
	case BoxStep:
		return s.toField(rowField(s.Start.Row, "names"))
	case PeopleStep:
		return s.toField(personField(0))
	case BatchStep:
		if s.Typed(StartBatch) != "graft" {
			return s.focused(ChoiceOf(StartBatch, s.Typed(StartBatch)))
		}
		return s.toField(StartGrafted)
	}
	return s.toField(StartYard)
}

// toField gives the keys to a field, all of it marked.
func (s State) toField(name string) State {
	return s.WithField(name, s.Field(name).marked()).focused(FieldNamed(name))
}

// stepOn goes on to the next step if all is right in this one, and at the last
// begins the book.
func (s State) stepOn() (State, []Effect) {
	if s.Busy != nil {
		return s, nil
	}
	f := s.Founding()
	if name := f.WrongIn(s.Start.Step); name != "" {
		s = s.toWrong(name)
		s.Start.Tried = true
		return s, nil
	}
	if s.Start.Step+1 < StepCount {
		return s.toStep(s.Start.Step + 1), nil
	}
	for step := range StepCount {
		if name := f.WrongIn(step); name != "" {
			s = s.toStep(step).toWrong(name)
			s.Start.Tried = true
			return s, nil
		}
	}
	s.Busy, s.Note = &Busy{"the book is begun", -1}, Note{}
	s.Prefs = s.recalled(f.Path, f.first)
	return s, []Effect{Found{Path: f.Path, Entries: f.Entries}}
}

// toWrong gives the keys to a field in which something is wrong.
func (s State) toWrong(name string) State {
	if row, ok := rowOf(name); ok {
		s.Start.Row = row
	}
	return s.toField(name)
}

// stepBack is the window at the step before, or without the steps.
func (s State) stepBack() State {
	if s.Start.Step == 0 {
		return s.givenBack()
	}
	return s.toStep(s.Start.Step - 1)
}

// stepClicked is the window after a click on a step or a row of boxes.
func (s State) stepClicked(r scene.Ref) State {
	n := int(r.Part[0] - '0')
	switch {
	case r.ID == "row":
		s.Start.Row = n
		return s.toField(rowField(n, "names"))
	case Step(n) <= s.Start.Step:
		return s.toStep(Step(n))
	}
	next, _ := s.stepOn() // one on at the most, and only where all is right
	return next
}

func chooseStartFile(s State) (State, []Effect) {
	name, _ := FileName(s.Founding().Path)
	return s, []Effect{ChooseFile{For: StartFile, Kinds: []string{BookExtension}, Name: name}}
}

func chooseList(s State) (State, []Effect) {
	return s, []Effect{ChooseFile{For: "list", Kinds: []string{".csv", ".xlsx", ".txt", ".tsv"}}}
}

// reckoned is the window with the new book made anew of what was typed.
func (s State) reckoned() State {
	s.Start.made = nil
	s.Start.made = s.Founding()
	return s
}

// startField tells whether a field is one of the new book's.
func startField(name string) bool { return strings.HasPrefix(name, "start.") }
