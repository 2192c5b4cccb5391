package main

import (
	"bytes"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/spf13/cobra"
)

// No line of a help is wider than a terminal, but of those that are typed as they stand.
func TestHelpFitsATerminal(t *testing.T) {
	var all func(c *cobra.Command)
	seen := 0
	all = func(c *cobra.Command) {
		var b bytes.Buffer
		c.SetOut(&b)
		if err := c.Help(); err != nil {
			t.Fatal(err)
		}
		typed := false
		for l := range strings.Lines(b.String()) {
			l = strings.TrimSuffix(l, "\n")
			switch {
			case l == "Usage:", l == "Examples:":
				typed = true
			case l == "":
				typed = false
			case strings.HasPrefix(l, "  lidbook "):
			case !typed && utf8.RuneCountInString(l) > helpColumns:
				t.Errorf("%s: %d columns: %q", c.CommandPath(), utf8.RuneCountInString(l), l)
			}
			seen++
		}
		for _, sub := range c.Commands() {
			all(sub)
		}
	}
	all((&app{}).root())
	if seen < 1000 {
		t.Fatalf("%d lines of help", seen)
	}
}
