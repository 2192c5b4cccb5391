package main

import (
	"encoding/json"
	"errors"
	"io"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"sync"
	"time"

	"lidmark/storage"
)

// keeper writes small files that change often, such as what is being typed: of
// each the newest state, a moment after it changed.
type keeper struct {
	pause  time.Duration                   // from a change to its writing
	wrote  func(path string, failed error) // told of each file; may be nil
	mu     sync.Mutex
	due    map[string]any // what is to be written by path; nil: the file is to go
	armed  bool
	atDisk sync.Mutex // held while files are written
}

// keep has a value written as JSON; with nil the file goes.
func (k *keeper) keep(path string, value any) {
	k.mu.Lock()
	defer k.mu.Unlock()
	if k.due == nil {
		k.due = map[string]any{}
	}
	k.due[path] = value
	if !k.armed {
		k.armed = true
		time.AfterFunc(k.pause, k.flush)
	}
}

// flush writes what is due now.
func (k *keeper) flush() {
	k.atDisk.Lock()
	defer k.atDisk.Unlock()
	k.mu.Lock()
	due := k.due
	k.due, k.armed = nil, false
	k.mu.Unlock()
	failed := map[string]any{}
	for _, path := range slices.Backward(slices.Sorted(maps.Keys(due))) { // what is typed is told of last
		value := due[path]
		err := replaced(path, value)
		if err != nil {
			failed[path] = value
		}
		if k.wrote != nil {
			k.wrote(path, err)
		}
	}
	k.again(failed)
}

// again keeps what could not be written, until something newer is to be, and tries
// it again after longer pauses.
func (k *keeper) again(failed map[string]any) {
	k.mu.Lock()
	defer k.mu.Unlock()
	if len(failed) == 0 {
		return
	}
	maps.Copy(failed, k.due)
	k.due = failed
	if !k.armed {
		k.armed = true
		time.AfterFunc(retries*k.pause, k.flush)
	}
}

// retries is how many times longer than for a change it is waited before what
// failed is tried again.
const retries = 40

// replaced is a file whole and new, or as it was.
func replaced(path string, value any) error {
	if value == nil {
		if err := os.Remove(path); !errors.Is(err, fs.ErrNotExist) {
			return err
		}
		return nil
	}
	if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		return err
	}
	return storage.WriteFile(path, func(w io.Writer) error {
		e := json.NewEncoder(w)
		e.SetIndent("", "  ")
		return e.Encode(value)
	})
}

// kept reads what a keeper wrote. A file that is damaged is laid aside under
// another name, which is given back.
func kept(path string, value any) (aside string, err error) {
	text, err := os.ReadFile(path)
	if errors.Is(err, fs.ErrNotExist) {
		return "", nil
	}
	if err != nil {
		return "", err // it may be whole
	}
	if err = json.Unmarshal(text, value); err == nil {
		return "", nil
	}
	aside = path + ".damaged"
	return aside, errors.Join(err, os.Rename(path, aside))
}
