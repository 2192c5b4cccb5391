package main

import (
	"os"
	"path/filepath"

	"lidmark/storage/listfile"
	"lidmark/ui/state"
)

// readList reads a keeper's own list.
func readList(e state.ReadList) state.ListRead {
	m := state.ListRead{Path: e.Path}
	name := filepath.Base(e.Path)
	switch info, err := os.Stat(e.Path); {
	case err != nil:
		m.Failed = name + ": it cannot be found or read; choose a file that is there"
		return m
	case info.IsDir():
		m.Failed = name + ": this is a folder; choose a file in it"
		return m
	}
	f, err := os.Open(e.Path)
	if err == nil {
		m.List, err = listfile.Read(name, f, e.Encoding)
		_ = f.Close() // it was only read
	}
	if err != nil {
		m.Failed = err.Error()
	}
	return m
}
