package state

import (
	"slices"
	"strings"

	"lidmark/ui/scene"
)

// SuggestRef is a [scene.Ref] for an option that fits what is typed: ID is the
// field, Part the option. The arrows reach it from its field, Tab passes it.
const SuggestRef = "suggest"

// mostSuggested is how many options are shown below a field.
const mostSuggested = 7

// word is the word of an option; "" for none.
func (a Ask) word(value string) string {
	for _, o := range a.Options {
		if o.Value == value {
			return o.Word
		}
	}
	return ""
}

// fitting are the options whose words hold all that is typed, those first that
// begin with it.
func (a Ask) fitting(typed string) (all []Option) {
	typed = strings.ToLower(strings.TrimSpace(typed))
	var later []Option
	for _, o := range a.Options {
		word := strings.ToLower(o.Word)
		switch {
		case strings.HasPrefix(word, typed):
			all = append(all, o)
		case holdsAll(word, typed):
			later = append(later, o)
		}
	}
	return append(all, later...)
}

// holdsAll tells whether a word holds each of the words typed.
func holdsAll(word, typed string) bool {
	for part := range strings.FieldsSeq(typed) {
		if !strings.Contains(word, part) {
			return false
		}
	}
	return true
}

// exactly is the option of a word, whichever letters are capital.
func (a Ask) exactly(word string) (Option, bool) {
	i := slices.IndexFunc(a.Options, func(o Option) bool { return strings.EqualFold(o.Word, strings.TrimSpace(word)) })
	if i < 0 {
		return Option{}, false
	}
	return a.Options[i], true
}

// taken is the option that a typed text means: the one of that word, else the
// only one that it fits.
func (a Ask) taken(typed string) (Option, bool) {
	if o, ok := a.exactly(typed); ok {
		return o, true
	}
	if all := a.fitting(typed); len(all) == 1 && strings.TrimSpace(typed) != "" {
		return all[0], true
	}
	return Option{}, false
}

// askIn is the question whose answer a field holds.
func (s State) askIn(field string) (Ask, bool) {
	name, ok := strings.CutPrefix(field, FormField)
	if !ok || s.Form == nil {
		return Ask{}, false
	}
	i := slices.IndexFunc(s.Form.Asks, func(a Ask) bool { return a.Name == name })
	if i < 0 {
		return Ask{}, false
	}
	return s.Form.Asks[i], true
}

// Suggested are the options that stand below the field of a question while it
// takes the keys, and which of them stands in it; -1 for none.
func (s State) Suggested(a Ask) (all []Option, on int) {
	field := FormField + a.Name
	if a.Kind != Suggest || s.InField() != field {
		return nil, -1
	}
	typed := s.Typed(field)
	sought := typed
	if o, ok := a.exactly(typed); ok {
		sought, typed = s.Form.Sought, o.Word
	}
	all = a.fitting(sought)
	on = slices.IndexFunc(all, func(o Option) bool { return o.Word == typed })
	from := 0
	if on >= 0 {
		from = min(max(0, on-mostSuggested/2), max(0, len(all)-mostSuggested))
	}
	return all[from:min(len(all), from+mostSuggested)], on - from
}

// suggests goes up or down through the options that fit the field that takes the
// keys, and tells whether it has any.
func (s State) suggests(by int) (State, bool) {
	a, ok := s.askIn(s.InField())
	if !ok || a.Kind != Suggest {
		return s, false
	}
	field := s.InField()
	typed := s.Typed(field)
	sought := typed
	o, exact := a.exactly(typed)
	if exact {
		sought = s.Form.Sought
	}
	all := a.fitting(sought)
	if len(all) == 0 {
		return s, true
	}
	at := slices.Index(all, o) + by
	if !exact {
		at = 0
		if by < 0 {
			at = len(all) - 1
		}
	}
	return s.suggested(field, all[min(max(at, 0), len(all)-1)].Value, sought), true
}

// suggested is the window with an option in its field, taken from those that fit
// what was sought.
func (s State) suggested(field, value, sought string) State {
	a, ok := s.askIn(field)
	if !ok {
		return s
	}
	f := *s.Form
	f.Sought = sought
	s.Form = &f
	return s.WithField(field, FieldOf(a.word(value)).marked()).focused(scene.Ref{Kind: FieldRef, ID: field})
}

// toggledAnswer is the window with one of several answers taken or left, as the
// keeper's order of the options has it.
func (s State) toggledAnswer(a Ask, value string) State {
	field := FormField + a.Name
	said := strings.Split(s.Typed(field), ",")
	var all []string
	for _, o := range a.Options {
		if slices.Contains(said, o.Value) != (o.Value == value) {
			all = append(all, o.Value)
		}
	}
	return s.WithField(field, FieldOf(strings.Join(all, ",")))
}

// Several tells whether an option is one of several taken in the field of a name.
func (s State) Several(field, value string) bool {
	a, ok := s.askIn(field)
	return ok && a.Kind == Some && slices.Contains(strings.Split(s.Typed(field), ","), value)
}

// formStops are what Tab stops at in a form: its questions, those that are
// scrolled out of sight as well, and its buttons.
func (s State) formStops() (all []scene.Ref) {
	for _, a := range s.Form.Asks {
		if a.answerable() {
			all = append(all, s.toAsk(a).Focus)
		}
	}
	return append(all, CommandOf("write"), CommandOf("close form"))
}

// answerable tells whether there is anything to answer a question with: a choice
// among nothing is only shown.
func (a Ask) answerable() bool { return a.Kind != Choice && a.Kind != Some || len(a.Options) > 0 }

// YesOrNo are the answers to a question of the kind [Yes].
var YesOrNo = []Option{{"yes", "yes"}, {"", "no"}}

// answers are the answers of a question as what takes the keys.
func (a Ask) answers() (all []scene.Ref) {
	name := FormField + a.Name
	options := a.Options
	if a.Kind == Yes {
		options = YesOrNo
	}
	for _, o := range options {
		all = append(all, ChoiceOf(name, o.Value))
	}
	return all
}
