package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"lidmark/ui/state"
	"lidmark/ui/view"
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
	if name, ok := keyNames[e.Name]; ok && !s.covered() {
		s.key(name, s.mods)
	}
}

// key sends a key by its name, with what can take the keys where that counts:
// only Tab and the arrows go from one to the next.
func (s *stage) key(name string, mods state.Mods) {
	s.hush()
	m := state.Keyed{Key: name, Mods: mods}
	switch name {
	case "Tab", "Left", "Right", "Up", "Down":
		m.Stops = state.Stops(s.scene)
	case "PageDown":
		m.CardMost = view.CardMost(s.now(), s.painter)
	}
	s.send(m)
}

// TypedRune sends a character, and the key it is: the filter takes the one
// while it takes the keys, the commands the other.
func (s *stage) TypedRune(r rune) {
	if s.covered() {
		return
	}
	s.hush()
	s.send(state.Wrote{Rune: r})
	s.send(state.Keyed{Key: string(r)})
}

// TypedShortcut sends a key with Ctrl or Alt. The toolkit has some of them by
// names of its own, and with Shift other keys for three of those.
func (s *stage) TypedShortcut(sc fyne.Shortcut) {
	if s.covered() {
		return
	}
	if k, ok := sc.(*desktop.CustomShortcut); ok {
		s.key(shortcutKey(k.KeyName), modsOf(k.Modifier))
		return
	}
	if letter, ok := shortcuts[sc.ShortcutName()]; ok {
		s.key(letter, state.Ctrl)
	}
}

// shortcuts are the toolkit's own ones: the letter that goes with Ctrl.
var shortcuts = map[string]string{
	(&fyne.ShortcutCopy{}).ShortcutName():      "C",
	(&fyne.ShortcutCut{}).ShortcutName():       "X",
	(&fyne.ShortcutPaste{}).ShortcutName():     "V",
	(&fyne.ShortcutSelectAll{}).ShortcutName(): "A",
	(&fyne.ShortcutUndo{}).ShortcutName():      "Z",
	(&fyne.ShortcutRedo{}).ShortcutName():      "Y",
}

func shortcutKey(k fyne.KeyName) string {
	if name, ok := keyNames[k]; ok {
		return name
	}
	if k == fyne.KeySpace {
		return " " // alone it comes as a character
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
