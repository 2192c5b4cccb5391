package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"
)

// explainArgs lets every command say in its own words which argument is
// missing or too many.
func explainArgs(c *cobra.Command) {
	if good := c.Args; good != nil && c.HasParent() {
		c.Args = func(c *cobra.Command, args []string) error {
			if good(c, args) == nil {
				return nil
			}
			return argsError(c, args)
		}
	}
	for _, sub := range c.Commands() {
		explainArgs(sub)
	}
}

// argsError tells what a command wants instead of what it got.
func argsError(c *cobra.Command, args []string) error {
	wants := wantedArgs(c.Use)
	name := strings.TrimPrefix(c.CommandPath(), "lidbook ")
	switch {
	case c.HasSubCommands() && len(args) > 0 && !strings.Contains(c.Use, " "):
		var subs []string
		for _, sub := range c.Commands() {
			subs = append(subs, sub.Name())
		}
		return fmt.Errorf("%s %s: choose one of %s", name, args[0], strings.Join(subs, ", "))
	case len(args) < len(wants):
		missing := list(wants[len(args):]) + " is"
		if len(wants)-len(args) > 1 {
			missing = list(wants[len(args):]) + " are"
		}
		return fmt.Errorf("%s wants %s: %s missing%s", name, list(wants), missing, likeThis(c))
	case len(wants) == 0 && !strings.Contains(c.Use, "["):
		return fmt.Errorf("%s takes no names, %q is too much%s", name, args[0], likeThis(c))
	default:
		return fmt.Errorf("%s: %q is too much; a name with spaces stands in quotes%s", name, args[len(args)-1], likeThis(c))
	}
}

// wantedArgs are the words behind a command's name that cannot be left out.
func wantedArgs(use string) (wants []string) {
	_, rest, _ := strings.Cut(use, " ")
	quoted, depth := false, 0
	words := strings.FieldsFunc(rest, func(r rune) bool {
		switch r {
		case '"':
			quoted = !quoted
		case '[':
			depth++
		case ']':
			depth--
		}
		return r == ' ' && !quoted && depth == 0
	})
	for _, w := range words {
		if strings.HasPrefix(w, "--") {
			break // flags say themselves what they want
		}
		if !strings.HasPrefix(w, "[") {
			wants = append(wants, strings.TrimSuffix(w, "..."))
		}
	}
	return wants
}

// likeThis is a command's first example.
func likeThis(c *cobra.Command) string {
	first, _, _ := strings.Cut(strings.TrimSpace(c.Example), "\n")
	if first == "" {
		return ""
	}
	return ", as in: " + first
}
