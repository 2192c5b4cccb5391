package main

import (
	"cmp"
	"errors"
	"fmt"
	"strings"

	"lidmark/storage"
)

// Exit codes, as the help promises them.
const (
	exitWrong   = 1
	exitUsage   = 2
	exitRefused = 3
)

// usageError is a command that was not understood.
type usageError struct {
	err error
	at  string // the command, as one types it; "" for the program
}

func (e *usageError) Error() string { return e.err.Error() }
func (e *usageError) Unwrap() error { return e.err }

// refusal is something that was understood and is not done.
type refusal struct{ why string }

func (e *refusal) Error() string { return e.why }

func refuse(format string, args ...any) error { return &refusal{fmt.Sprintf(format, args...)} }

func exitCode(err error) int {
	var usage *usageError
	var refused *refusal
	switch {
	case err == nil:
		return 0
	case errors.As(err, &usage):
		return exitUsage
	case errors.As(err, &refused), isLocked(err):
		return exitRefused
	default:
		return exitWrong
	}
}

// isLocked tells whether a book could not be written by this program now.
func isLocked(err error) bool {
	for _, t := range []storage.Trouble{storage.InUse, storage.Locked, storage.OpenedToRead, storage.ReadOnlyFolder, storage.Denied, storage.Newer} {
		if errors.Is(err, t) {
			return true
		}
	}
	return false
}

// explain is an error for the keeper: what is wrong, and how to get help where
// the command was not understood.
func (a *app) explain(err error) string {
	text := strings.ReplaceAll(err.Error(), "\n\n", "\n")
	var usage *usageError
	if errors.As(err, &usage) {
		return text + "\nsee " + cmp.Or(usage.at, "lidbook") + " --help"
	}
	return text
}
