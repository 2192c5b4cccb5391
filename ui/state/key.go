package state

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"lidmark/ui/scene"
)

// key is the window after a key: a question that waits takes it first, then the
// field that takes the keys, the filter, what has the focus, and last the
// commands.
func (s State) key(m Keyed) (State, []Effect) {
	if m.Key == "Return" {
		m.Key = "Enter"
	}
	if next, effects, over := s.keyOver(m); over {
		return next, effects
	}
	if next, took := s.keyPage(m); took {
		return next, nil
	}
	if s.Asked != nil && m.Key != "Escape" {
		return s.keyAsked(m)
	}
	if s.Typing && s.InField() == "" && m.Mods&(Ctrl|Alt) == 0 && m.Key != "Escape" {
		return s.keyFilter(m), nil
	}
	if s.Typing && s.InField() == "" && m.Mods == Ctrl && m.Key == "A" {
		s.Marked = s.Filter != ""
		return s, nil
	}
	if next, effects, took := s.keyWalk(m); took {
		return next, effects
	}
	if next, effects, took := s.keyFocus(m); took {
		return next, effects
	}
	if next, took := s.keyRoom(m); took {
		return next, nil
	}
	if m.Key == " " {
		m.Key = "Space"
	}
	if s.OnLayout() && len(m.Key) == 1 {
		m.Key = strings.ToUpper(m.Key) // its letters are keys, and come as they are written
	}
	if s.Goto != "" && slices.ContainsFunc(byKey[m.name()], func(i int) bool { return commands[i].Reason(s) == "" }) {
		s.Goto = ""
	}
	if s.Form != nil && m.Mods&(Ctrl|Alt) == 0 && utf8.RuneCountInString(m.Key) == 1 {
		return s, nil // a character is for the form, or for the line that it gives way to
	}
	return keyed(s.keysFreed(m), m)
}

// keysFreed is the window with an arrow going among nucs, or lines of the route,
// and not to a button that Tab went to: what Space and Enter do next is about where
// the arrow led.
func (s State) keysFreed(m Keyed) State {
	if s.Form == nil && arrows[m.Key] != 0 && (s.Focus.Kind == CommandRef || s.Focus.Kind == TaskRef) {
		s.Focus = scene.Ref{}
	}
	return s
}

// keyAsked answers the question that waits, or with Enter leaves it open.
func (s State) keyAsked(m Keyed) (State, []Effect) {
	if m.Mods&(Ctrl|Alt) == 0 && (s.Asked.has(m.Key) || m.Key == "Enter") {
		return s.answered(m.Key)
	}
	return s, nil
}

// wroteAsked is the window after a character while a question waits: one of its
// answers comes as a key, any other leaves open all that is asked and begins what
// is typed next. So a figure answers only when it is typed first.
func (s State) wroteAsked(r rune) (State, []Effect) {
	if s.Asked.has(string(r)) {
		return s, nil
	}
	var effects []Effect
	before := s
	for s.Asked != nil {
		next, more := s.answered("Enter")
		s, effects = next, append(effects, more...)
	}
	if r == ' ' {
		return s, effects
	}
	next, more := s.walked(before).wrote(r)
	return next, append(effects, more...)
}

func (s State) keyFilter(m Keyed) State {
	switch m.Key {
	case "BackSpace":
		if s.Marked {
			s.Filter, s.Marked = "", false
		}
		letters := []rune(s.Filter)
		s.Filter = string(letters[:max(0, len(letters)-1)])
	case "Tab":
		return s.filterCompleted()
	case "Enter":
		return s.found()
	}
	return s // a character comes as Wrote
}

// keyFocus gives a key to what has the focus, and tells whether that took it.
func (s State) keyFocus(m Keyed) (next State, effects []Effect, took bool) {
	plain := m.Mods&(Ctrl|Alt) == 0
	switch {
	case m.Key == "Tab" && plain:
		return s.tabbed(m.Stops, 1-2*boolInt(m.Mods.Has(Shift))), nil, true
	case s.OnOrders() && m.Mods == 0:
		if next, took = s.keyOrders(m); took {
			return next, nil, true
		}
	case s.OnLayout():
		if next, effects, took = s.keyLaying(m); took {
			return next, effects, true
		}
	case s.OnSeason():
		if next, effects, took = s.keySeason(m); took {
			return next, effects, true
		}
	}
	switch {
	case s.Focus == scene.Ref{} || m.Key == "Escape":
		return s, nil, false
	case m.Key == "Enter" && m.Mods == 0:
		next, effects = s.enterFocus()
		return next, effects, true
	case s.Focus.Kind == ChoiceRef && arrows[m.Key] != 0 && plain:
		next, effects = s.besideChoice(m.Stops, arrows[m.Key])
		return next, effects, true
	case s.More && s.Focus.Kind == CommandRef && arrows[m.Key] != 0 && plain:
		return s.besideMore(arrows[m.Key]), nil, true
	case s.Room == Plan && slices.Contains(WishFields, s.InField()) && m.Mods == 0 && (m.Key == "Up" || m.Key == "Down"):
		return s.wishStepped(s.Focus.ID, -arrows[m.Key]).reMarked(), nil, true
	case s.Room == Plan && s.Focus.Kind == RungRef && m.Mods == 0 && arrows[m.Key] != 0:
		return s.rungMoved(arrows[m.Key]), nil, true
	case s.Room == Plan && s.Focus.Kind == OtherRef && m.Mods == 0 && arrows[m.Key] != 0:
		return s.otherBeside(arrows[m.Key]), nil, true
	case s.Room == Plan && s.Focus.Kind == LarvaeRef && m.Mods == 0 && arrows[m.Key] != 0:
		return s.larvaeBeside(arrows[m.Key]), nil, true
	case s.Focus.Kind == FieldRef && m.Mods&^Alt == 0 && (m.Key == "Up" || m.Key == "Down"):
		next, took = s.suggests(arrows[m.Key])
		return next, nil, took
	case s.Focus.Kind == FieldRef && m.Mods == Ctrl && m.Key == "V":
		return s, []Effect{Paste{}}, true
	case s.Focus.Kind == FieldRef && m.Mods == Ctrl && (m.Key == "C" || m.Key == "X"):
		next, effects = s.clipped(m.Key == "X")
		return next, effects, true
	case s.Focus.Kind == FieldRef:
		next, took = s.keyedField(m)
		if took {
			next = next.changed(s.Focus.ID)
		}
		return next, nil, took
	case m.Key == " " && s.Focus.Kind != PaneRef:
		next, effects = s.clicked(s.Focus, 0)
		return next, effects, true
	}
	return s, nil, false
}

var arrows = map[string]int{"Left": -1, "Up": -1, "Right": 1, "Down": 1}

// besideChoice takes the answer before or behind the one that has the focus.
func (s State) besideChoice(stops []scene.Ref, by int) (State, []Effect) {
	if a, ok := s.askIn(s.Focus.ID); ok {
		stops = a.answers()
	}
	var all []scene.Ref
	for _, r := range stops {
		if sameStop(r, s.Focus) && !slices.Contains(all, r) {
			all = append(all, r)
		}
	}
	at := slices.Index(all, s.Focus)
	if at+by < 0 || at+by >= len(all) || at < 0 {
		return s, nil
	}
	return s.clicked(all[at+by], 0)
}

// clipped puts what is marked on the clipboard, and with cut takes it out.
func (s State) clipped(cut bool) (State, []Effect) {
	name := s.InField()
	f := s.Field(name)
	effects := []Effect{CopyText{f.MarkedText()}}
	if from, to := f.Marked(); cut && from != to {
		s = s.WithField(name, f.Put("")).changed(name)
	}
	return s, effects
}

// pasted puts text into the field that takes the keys.
func (s State) pasted(text string) State {
	switch {
	case s.InField() != "":
		return s.wroteField(text).changed(s.InField())
	case s.Typing:
		if s.Marked {
			s.Filter = ""
		}
		s.Filter, s.Marked = s.Filter+FieldOf("").Put(text).Text, false
	}
	return s
}

// wrote takes a character: for the field that takes the keys, for the filter, or
// for the name of a nuc to go to and then for its line.
func (s State) wrote(r rune) (State, []Effect) {
	if next, over := s.wroteOver(r); over {
		return next, nil
	}
	if s.Asked != nil {
		return s.wroteAsked(r)
	}
	s = s.wroteWalk(r)
	switch {
	case s.InField() != "":
		return s.wroteField(string(r)).changed(s.InField()), nil
	case s.typesAmount(r):
		return s.amountTyped(r), nil
	case s.Form != nil:
		return s.wroteBesideForm(r), nil
	case s.Typing:
		if s.Marked {
			s.Filter = ""
		}
		s.Filter += string(r)
		s.Scroll, s.Marked = nil, false
		return s, nil
	case s.Room == Numbers && s.Number != 0 && (unicode.IsDigit(r) || r == '-'):
		return s.WithField(NumberField, FieldOf(string(r))).focused(FieldNamed(NumberField)), nil
	case s.OnLayout() && s.Drawing.What != 0 && (unicode.IsDigit(r) || r == '-'):
		return s.WithField(DrawPoint, FieldOf(string(r))).focused(FieldNamed(DrawPoint)), nil
	case s.OnLayout():
		return s, nil // its letters are keys
	case s.OnOrders() && s.Form == nil:
		return s.searchBegun(r), nil
	case s.OnSeason() && unicode.IsDigit(r):
		return s, nil // it took a way out
	case s.paged():
		return s, nil // no nuc is shown that could be meant
	case unicode.IsUpper(r):
		s.Goto = string(r)
	case unicode.IsDigit(r) && s.Goto != "":
		s.Goto += string(r)
	default:
		return s.lineBegun(r), nil
	}
	return s.gone(), nil
}

// wroteBesideForm is the window after a character that no question of the form takes: a
// form in which nothing was answered gives way to the line, any other keeps the keys, so
// that what is read back is what will be written.
func (s State) wroteBesideForm(r rune) State {
	answered := func(a Ask) bool { return s.Field(FormField+a.Name).Text != s.first(a) }
	if s.Form.Begun || slices.ContainsFunc(s.Form.Asks, answered) {
		return s
	}
	if begun := s.formDone().lineBegun(r); begun.InField() != "" {
		return begun
	}
	return s
}

// enterFocus does what Enter means where the keys go: in a field it goes on.
func (s State) enterFocus() (State, []Effect) {
	name := s.Focus.ID
	if s.Focus.Kind == WayRef {
		return run(s, s.LateWork().Command)
	}
	if does, ok := map[string]string{UseRef: "accept", AmountRef: "review hand"}[s.Focus.Kind]; ok {
		return run(s, does)
	}
	if s.Focus.Kind != FieldRef && s.Focus.Kind != ChoiceRef {
		return s.clicked(s.Focus, 0)
	}
	return s.enterIn(name)
}
