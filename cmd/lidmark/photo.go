package main

import (
	"os"
	"path/filepath"

	"lidmark/storage/photofile"
	"lidmark/ui/state"
)

// readPhoto reads a photograph of the ground.
func readPhoto(e state.ReadPhoto) state.PhotoRead {
	f, err := os.Open(e.Path)
	if err != nil {
		return state.PhotoRead{Name: filepath.Base(e.Path), Wrong: err.Error()}
	}
	defer func() { _ = f.Close() }() // it was only read
	p, err := photofile.Read(filepath.Base(e.Path), f)
	if err != nil {
		return state.PhotoRead{Name: filepath.Base(e.Path), Wrong: err.Error()}
	}
	return state.PhotoRead{Name: filepath.Base(e.Path), JPEG: p.JPEG, Wide: p.Wide, High: p.High}
}
