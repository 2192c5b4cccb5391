package state

import (
	"lidmark/domain/practice"
	"lidmark/ui/scene"
)

// numberCommands are the commands of the room My numbers.
var numberCommands = []Command{
	{Name: "set number", Does: "use the number typed, from now on", Word: "Use it from now on", Why: noNewNumber, Do: setNumber},
	{Name: "number back", Does: "put the number back to its default", Word: "Back to the default", Why: notOwn, Do: numberBack},
	{Name: "settings", Does: "units, weeks, text, light or dark", Why: noSettings, Do: pure(toSettings)},
}

// toSettings shows what is kept for this machine, where no number is chosen.
func toSettings(s State) State {
	s.Number, s.Focus, s.Sheet = 0, scene.Ref{}, s.Layout().Over
	return s.scrolled(CardPlace, -s.Scroll[CardPlace])
}

func noNumber(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if s.Room != Numbers || s.Number == 0 {
		return "choose a number first"
	}
	return ""
}

// noSettings says why the settings are not opened: they are shown where no
// number is chosen.
func noSettings(s State) string {
	if s.Room != Numbers {
		return "what is kept for this machine stands in My numbers"
	}
	return ""
}

func noNewNumber(s State) string {
	if why := noNumber(s); why != "" {
		return why
	}
	if s.Book.ReadOnly != "" {
		return s.Book.ReadOnly
	}
	switch _, wrong := s.numberTyped(); {
	case wrong != "":
		return wrong
	case !s.NumberTried():
		return "this value is used already"
	}
	return ""
}

func notOwn(s State) string {
	if why := noNumber(s); why != "" {
		return why
	}
	if s.Book.ReadOnly != "" {
		return s.Book.ReadOnly
	}
	if !s.Own(s.Number) {
		return "the default is used already"
	}
	return ""
}

// numberClicked chooses the number of a name.
func (s State) numberClicked(name string) State {
	k, ok := practice.ByName(name)
	if !ok {
		return s
	}
	if s.Number == k && s.Layout().Over {
		s.Sheet = true
	}
	return s.toNumber(k)
}
