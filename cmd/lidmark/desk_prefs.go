package main

import (
	"os"
	"path/filepath"

	"lidmark/ui/state"
)

// windowSize is the size of the window as it was last, dp, where it can be.
func windowSize(p state.Prefs) (width, height float64) {
	if p.Window == [2]float64{} {
		return usualWidth, usualHeight
	}
	return min(max(p.Window[0], state.LeastWidth), mostSide), min(max(p.Window[1], state.LeastHeight), mostSide)
}

// The size of a window that nobody has changed yet, and the longest side that
// one is made with, dp.
const usualWidth, usualHeight, mostSide = 1440, 900, 8192

// configFolder is where what the keeper chose is kept on this machine: the
// folder named, else one in the system's place for such things.
func configFolder(named string) string {
	if named != "" {
		return named
	}
	at, err := os.UserConfigDir()
	if err != nil {
		at = os.TempDir()
	}
	return filepath.Join(at, "lidmark")
}

func (d *desk) prefsFile() string { return filepath.Join(d.folder, "window.json") }

// prefs are what the keeper chose. A damaged file is laid aside, and the note
// says so.
func (d *desk) prefs() (p state.Prefs, n state.Note) {
	aside, err := kept(d.prefsFile(), &p)
	if err == nil {
		return p, n
	}
	d.trouble = state.Note{
		Text: "what you chose for the window could not be read and begins anew; the damaged file is " + aside, Bad: true,
	}
	return state.Prefs{}, d.trouble
}
