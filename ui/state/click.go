package state

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// clicked does what a click on a thing of the scene means.
func (s State) clicked(r scene.Ref, mods Mods) (State, []Effect) {
	if s.Keys {
		s.Keys = false
		return s, nil
	}
	if s.Asked != nil {
		if r.Kind == AnswerRef {
			return s.answered(r.ID)
		}
		return s, nil
	}
	menu := s.Menu
	s.Menu = NoMenu
	switch {
	case r.Kind == CommandRef && menu.closes(r.ID):
		return s, nil
	case r.Kind == CommandRef:
		return run(s, r.ID)
	case r.Kind == FieldRef || r.Kind == CaretRef || r.Kind == ChoiceRef:
		return s.fieldClicked(r, mods), nil
	case menu != NoMenu && !inMenu[r.Kind]:
		return s, nil
	}
	if does, ok := clicks[r.Kind]; ok {
		return does(s, r, mods)
	}
	if sub := SubjectOf(r); mods.Has(Shift) && sub.Kind == book.KindNuc {
		return s.ranged(sub, mods.Has(Ctrl)), nil
	}
	return s.pointed(SubjectOf(r), mods.Has(Ctrl)), nil
}

// closes tells whether a command is the one that opened the menu: a click on it
// closes the menu again.
func (m Menu) closes(command string) bool {
	return m == YardMenu && command == "yards" || m == HeadsMenu && command == "heads" || m == LayerMenu && command == "layers" || m == WriterMenu && command == "writer"
}

// inMenu are the kinds that rows of menus have; while a menu is open a click on
// anything else only closes it.
var inMenu = map[string]bool{YardRef: true, WriterRef: true, SortRef: true}

// clicks are what a click on a thing of a kind does, where it is no subject of the
// book.
var clicks = map[string]func(State, scene.Ref, Mods) (State, []Effect){
	SortRef: func(s State, r scene.Ref, mods Mods) (State, []Effect) {
		if c, ok := columnNamed(r.ID); ok {
			s.Sort = s.Sort.by(c, mods.Has(Shift))
		}
		return s, nil
	},
	NumberRef:  func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.numberClicked(r.ID), nil },
	LicenceRef: func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.licenceClicked(r.ID), nil },
	CopyRef:    func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.restored(r.ID) },
	GroupRef:   func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.grouped(r.ID), nil },
	YardRef:    func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.shows(yardOf(r.ID)), nil },
	WriterRef:  func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.writes(r.ID), nil },
	TaskRef:    func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.lineClicked(r) },
	TickRef:    func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.lineClicked(r) },
	DoneRef:    func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.lineClicked(r) },
	AnswerRef:  func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.passedClicked(r.ID) },
	RowRef:     func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.rowClicked(r), nil },
	RecentRef:  func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s, []Effect{OpenBook{r.ID}} },
	StepRef:    func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.stepClicked(r), nil },
	ColumnRef:  func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.columnClicked(r), nil },
	LinkRef:    func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.followed(r), nil },
	StrikeRef:  func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.struckLine(r.ID) },
	WayRef:     wayClicked,
	UseRef:     useClicked,
	FoldedRef:  foldedClicked,
	AmountRef:  func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.focused(r), nil },
	ChangeRef:  amountClicked,
	FilterRef:  findClicked,
	HeadRef:    State.headClicked,
	AwayRef:    func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.awayClicked(r), nil },
	ClashRef:   func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.clashClicked(r), nil },
	OutRef:     func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.outClicked(r) },
	FlagRef:    func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.flagClicked(r), nil },
	LeftRef:    func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.leftClicked(r), nil },
	PlannedRef: func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.planClicked(r.ID), nil },
	OtherRef:   func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.otherClicked(r.ID), nil },
	LarvaeRef:  func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.larvaeClicked(r.ID), nil },
	TryRef:     func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.tryClicked(r.ID), nil },
	TriedRef:   func(s State, r scene.Ref, mods Mods) (State, []Effect) { return s.triedClicked(r, mods), nil },
	TriesRef:   func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.triesClicked(r), nil },
	FigureRef:  func(s State, _ scene.Ref, _ Mods) (State, []Effect) { return s, nil },
	RungRef:    func(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.focused(r), nil },
	FoldRef:    State.foldClicked,
	SuggestRef: func(s State, r scene.Ref, _ Mods) (State, []Effect) {
		return s.suggested(r.ID, r.Part, s.Typed(r.ID)), nil
	},
	PaneRef: func(s State, r scene.Ref, mods Mods) (State, []Effect) {
		if s.OnLayout() && inTry(r) {
			return s.triedClicked(r, mods), nil
		}
		s.Selection, s.Ring, s.Sheet, s.Focus = Selection{}, book.Subject{}, false, r
		return s, nil
	},
}

// fieldClicked gives the keys to a field or a choice, and takes the answer.
func (s State) fieldClicked(r scene.Ref, mods Mods) State {
	switch r.Kind {
	case FieldRef:
		return s.WithField(r.ID, FieldOf(s.Field(r.ID).Text)).focused(r)
	case CaretRef:
		return s.caretPut(r, mods.Has(Shift))
	default:
		return s.chosenAnswer(r)
	}
}

// writes is the window in which somebody writes from now on.
func (s State) writes(name string) State {
	s.Pen.Writer, s.Pen.Nobody = name, name == ""
	s.Prefs = s.recalled(s.Book.Path, name)
	return s
}

// yardOf is the yard of an id; the zero yard for none.
func yardOf(id string) (yard book.YardID) {
	if yard.UnmarshalText([]byte(id)) != nil {
		return book.YardID{}
	}
	return yard
}

// pointed selects a subject; a stand stands for its nucs. Where the card has no
// room beside the pane, a second click lays it over the pane.
func (s State) pointed(sub book.Subject, add bool) State {
	if !sub.IsZero() {
		s.Ring = book.Subject{}
	}
	switch {
	case sub.IsZero():
	case sub.Kind == book.KindStand:
		if !add {
			s.Selection = Selection{}
		}
		var nucs []book.Subject
		for _, n := range s.Reading().Nucs {
			if n.Stand.Subject() == sub {
				nucs = append(nucs, n.Nuc.Nuc.Subject())
			}
		}
		s.Selection = s.Selection.With(nucs...)
	case add:
		s.Selection = s.Selection.Toggled(sub)
	default:
		s.Sheet = s.Layout().Over && s.Selection.Len() == 1 && s.Selection.Has(sub)
		s.Selection = Select(sub)
	}
	return s
}

// copyShown puts the shown nucs on the clipboard as lines with tabs.
func copyShown(s State) (State, []Effect) {
	r := s.Reading()
	var b strings.Builder
	b.WriteString("nuc\tyard\tholds\tbatch\tage, d\tlast entry\tdue\tneeds you\n")
	for _, n := range s.walk() {
		batch, due, age := "", "", ""
		if !n.Holds.Batch.IsZero() {
			batch = fmt.Sprint(r.View.Batch(n.Holds.Batch).Number)
		}
		if n.Due != nil {
			due = n.Due.Act.String() + " " + n.DueDay.String()
		}
		if !n.Presumed.Emerged.IsZero() {
			age = fmt.Sprint(n.Presumed.Age)
		}
		why := ""
		if n.NeedsYou {
			why = n.Findings[0].What
		}
		fmt.Fprintf(&b, "%s\t%s\t%s\t%s\t%s\t%s\t%s\t%s\n", n.Name, r.View.Yard(n.Yard).Name,
			n.Presumed.Condition, batch, age, r.DayOf(n.LastEntry.Instant), due, why)
	}
	return s, []Effect{CopyText{b.String()}}
}
