package main

import (
	"fmt"
	"path/filepath"
	"slices"
	"strings"
)

// checkEnding refuses a file whose name says that something else is in it than what is written: a
// program that opens it by its name could not. A name without an ending says nothing.
func checkEnding(file, what string, takes ...string) error {
	end := strings.ToLower(filepath.Ext(file))
	if end == "" || slices.Contains(takes, end) {
		return nil
	}
	return &usageError{err: fmt.Errorf("%s: %s written as %s: let the name end so", file, what, strings.Join(takes, " or "))}
}
