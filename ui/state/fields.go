package state

import (
	"maps"
	"slices"
	"strconv"
	"strings"

	"lidmark/ui/scene"
)

// Kinds of a [scene.Ref] for what takes keys.
const (
	FieldRef  = "field"  // a field; ID is its name
	CaretRef  = "caret"  // a place in a field; ID is the field's name, Part the place
	ChoiceRef = "choice" // one answer of a choice; ID is the choice's name, Part the answer
	AnswerRef = "answer" // an answer to the question that waits; ID is its key
)

// FieldNamed names a field in a scene.
func FieldNamed(name string) scene.Ref { return scene.Ref{Kind: FieldRef, ID: name} }

// CaretAt names a place in a field.
func CaretAt(name string, place int) scene.Ref {
	return scene.Ref{Kind: CaretRef, ID: name, Part: strconv.Itoa(place)}
}

// ChoiceOf names one answer of a choice.
func ChoiceOf(name, answer string) scene.Ref {
	return scene.Ref{Kind: ChoiceRef, ID: name, Part: answer}
}

// Field is the field of a name; an empty one where nothing was typed yet.
func (s State) Field(name string) Field { return s.Fields[name] }

// Typed is the text in the field of a name, without spaces around it.
func (s State) Typed(name string) string { return strings.TrimSpace(s.Fields[name].Text) }

// WithField is the window with another field of a name.
func (s State) WithField(name string, f Field) State {
	next := maps.Clone(s.Fields)
	if next == nil {
		next = map[string]Field{}
	}
	next[name] = f
	s.Fields = next
	return s
}

// withoutFields is the window without the fields whose names begin so.
func (s State) withoutFields(prefix string) State {
	next := maps.Clone(s.Fields)
	maps.DeleteFunc(next, func(name string, _ Field) bool { return strings.HasPrefix(name, prefix) })
	s.Fields = next
	return s
}

// focused is the window with the keys going to something: a field, a choice, a
// button.
func (s State) focused(ref scene.Ref) State {
	s.Focus = ref
	return s
}

// InField is the name of the field that takes the keys; "" when none does.
func (s State) InField() string {
	if s.Focus.Kind == FieldRef {
		return s.Focus.ID
	}
	return ""
}

// focusable are the kinds of what Tab stops at.
var focusable = []string{FieldRef, ChoiceRef, CommandRef, SortRef, TaskRef, YardRef, GroupRef, CopyRef, LicenceRef, WriterRef, PaneRef, LinkRef, StrikeRef, RecentRef, StepRef, ColumnRef, WayRef, UseRef, AmountRef, FoldedRef, RungRef, PlannedRef, TryRef, LeftRef, AwayRef, OtherRef, LarvaeRef, ClashRef, OutRef, FlagRef}

// Stops are what Tab and the arrows of a choice go through in a scene, as it is
// read.
func Stops(sc scene.Scene) []scene.Ref { return sc.Stops(focusable...) }

// tabbed moves the focus to the next or previous of the stops, each of which is
// seen; a choice is one stop.
func (s State) tabbed(stops []scene.Ref, by int) State {
	if s.Form != nil {
		stops = s.formStops()
	}
	stops = slices.CompactFunc(slices.Clone(stops), sameStop)
	if len(stops) == 0 {
		return s
	}
	at := slices.IndexFunc(stops, func(r scene.Ref) bool { return sameStop(r, s.Focus) })
	if at < 0 && by < 0 {
		at = 0
	}
	next := stops[(at+by+len(stops))%len(stops)]
	switch next.Kind {
	case FieldRef:
		s = s.WithField(next.ID, s.Field(next.ID).marked())
	case WayRef:
		return s.wayTaken(s.Way)
	case UseRef:
		return s.focused(UseOf(max(0, s.ReviewUse())))
	}
	return s.focused(next)
}

// sameStop tells whether Tab stops once at two refs: answers of one choice, and the
// ways out of a late day, are gone through with the arrows.
func sameStop(a, b scene.Ref) bool {
	return a == b || a.Kind == b.Kind && (a.Kind == WayRef || a.Kind == UseRef || a.Kind == ChoiceRef && a.ID == b.ID)
}

// wroteField puts characters into the field that takes the keys.
func (s State) wroteField(text string) State {
	name := s.InField()
	return s.WithField(name, s.Field(name).Put(text))
}

// keyedField is the window after a key in the field, and whether the field took it.
func (s State) keyedField(m Keyed) (State, bool) {
	name := s.InField()
	if name == "" || m.Mods.Has(Alt) {
		return s, false
	}
	f := s.Field(name)
	if m.Mods.Has(Ctrl) && m.Key == "A" {
		return s.WithField(name, f.marked()), true
	}
	f, took := f.edited(m.Key, m.Mods)
	return s.WithField(name, f), took || m.Mods&Ctrl == 0 && len([]rune(m.Key)) == 1
}

// caretPut sets the caret of the field that a CaretRef names.
func (s State) caretPut(r scene.Ref, extend bool) State {
	at, err := strconv.Atoi(r.Part)
	if err != nil {
		return s
	}
	f := s.Field(r.ID)
	f.Caret = min(max(at, 0), len([]rune(f.Text)))
	if !extend {
		f.Mark = f.Caret
	}
	return s.WithField(r.ID, f).focused(FieldNamed(r.ID))
}

// chosenAnswer is the window with one answer of a choice taken; in a form, taken
// again it is left, and yes again is no.
func (s State) chosenAnswer(r scene.Ref) State {
	if strings.HasPrefix(r.ID, SettingField) {
		return s.set(r.ID, r.Part).focused(r)
	}
	answer := r.Part
	if a, ok := s.askIn(r.ID); ok && a.Kind == Some {
		return s.toggledAnswer(a, r.Part).focused(r).changed(r.ID)
	} else if ok && s.Typed(r.ID) == answer {
		answer = ""
	}
	if answer == "yes" && s.Typed(r.ID) == "yes" {
		answer = ""
	}
	return s.WithField(r.ID, FieldOf(answer)).focused(r).changed(r.ID)
}
