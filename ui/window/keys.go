package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"lidmark/ui/state"
)

// FocusGained does nothing: the state says what has the focus.
func (s *stage) FocusGained() {}

// FocusLost forgets the keys that are held.
func (s *stage) FocusLost() { s.mods = 0 }

// AcceptsTab keeps Tab, which goes from nuc to nuc.
func (s *stage) AcceptsTab() bool { return true }

// KeyDown notes a key that is held beside others.
func (s *stage) KeyDown(e *fyne.KeyEvent) { s.mods |= heldKeys[e.Name] }

// KeyUp notes that it is let go.
func (s *stage) KeyUp(e *fyne.KeyEvent) { s.mods &^= heldKeys[e.Name] }

// TypedKey sends the keys that write no character; those that do come through
// TypedRune, as the keyboard of the country has them.
func (s *stage) TypedKey(e *fyne.KeyEvent) {
	if name, ok := keyNames[e.Name]; ok {
		s.send(state.Keyed{Key: name, Mods: s.mods})
	}
}

// TypedRune sends a character, and the key it is: the filter takes the one
// while it takes the keys, the commands the other.
func (s *stage) TypedRune(r rune) {
	s.send(state.Wrote{Rune: r})
	s.send(state.Keyed{Key: string(r)})
}

// TypedShortcut sends a key with Ctrl or Alt.
func (s *stage) TypedShortcut(sc fyne.Shortcut) {
	switch k := sc.(type) {
	case *desktop.CustomShortcut:
		s.send(state.Keyed{Key: shortcutKey(k.KeyName), Mods: modsOf(k.Modifier)})
	case *fyne.ShortcutCopy:
		s.send(state.Keyed{Key: "C", Mods: state.Ctrl})
	case *fyne.ShortcutSelectAll:
		s.send(state.Keyed{Key: "A", Mods: state.Ctrl})
	}
}

func shortcutKey(k fyne.KeyName) string {
	if name, ok := keyNames[k]; ok {
		return name
	}
	return string(k)
}

func modsOf(m fyne.KeyModifier) (mods state.Mods) {
	for _, row := range []struct {
		theirs fyne.KeyModifier
		ours   state.Mods
	}{
		{fyne.KeyModifierShift, state.Shift},
		{fyne.KeyModifierControl, state.Ctrl},
		{fyne.KeyModifierSuper, state.Ctrl},
		{fyne.KeyModifierAlt, state.Alt},
	} {
		if m&row.theirs != 0 {
			mods |= row.ours
		}
	}
	return mods
}

var heldKeys = map[fyne.KeyName]state.Mods{
	desktop.KeyShiftLeft: state.Shift, desktop.KeyShiftRight: state.Shift,
	desktop.KeyControlLeft: state.Ctrl, desktop.KeyControlRight: state.Ctrl,
	desktop.KeySuperLeft: state.Ctrl, desktop.KeySuperRight: state.Ctrl,
	desktop.KeyAltLeft: state.Alt, desktop.KeyAltRight: state.Alt,
}

// keyNames are the keys that write nothing, as commands name them.
var keyNames = map[fyne.KeyName]string{
	fyne.KeyHome: "Home", fyne.KeyEnd: "End", fyne.KeyPageUp: "PageUp", fyne.KeyPageDown: "PageDown",
	fyne.KeyLeft: "Left", fyne.KeyRight: "Right", fyne.KeyUp: "Up", fyne.KeyDown: "Down",
	fyne.KeyReturn: "Enter", fyne.KeyEnter: "Enter", fyne.KeyEscape: "Escape", fyne.KeyTab: "Tab",
	fyne.KeyBackspace: "BackSpace", fyne.KeyDelete: "Delete",
}
