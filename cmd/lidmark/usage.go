package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"
)

// usage prints the page of the flags, with two dashes as lidbook has them; one
// does as well.
func usage(f *flag.FlagSet) {
	var b strings.Builder
	fmt.Fprint(&b, "lidmark [flags] [BOOK]\n\nOpens a book in the window, or paints a room of it with --picture.\n\nFlags:\n")
	f.VisitAll(func(one *flag.Flag) {
		value, words := flag.UnquoteUsage(one)
		if value != "" {
			value = " " + strings.ToUpper(value)
		}
		if one.DefValue != "" && one.DefValue != "false" {
			words += " (default " + one.DefValue + ")"
		}
		fmt.Fprintf(&b, "  --%s%s\n        %s\n", one.Name, value, words)
	})
	_, _ = io.WriteString(os.Stderr, b.String())
}

// misread says in our words what the flags have against a command line.
func misread(err error) error {
	return errors.New(strings.NewReplacer(
		"flag provided but not defined: -", "unknown flag --",
		"flag needs an argument: -", "something is wanted behind --",
		"for flag -", "for --",
		"for -", "for --", // a flag that is set or not
	).Replace(err.Error()))
}
