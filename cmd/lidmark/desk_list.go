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
	f, err := os.Open(e.Path)
	if err == nil {
		m.List, err = listfile.Read(filepath.Base(e.Path), f, e.Encoding)
		_ = f.Close() // it was only read
	}
	if err != nil {
		m.Failed = err.Error()
	}
	return m
}
