package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"
)

// knowsItsHelp lets help and completion refuse what they do not know, where
// they would print the help of something else.
func knowsItsHelp(root *cobra.Command) {
	root.InitDefaultHelpCmd()
	root.InitDefaultCompletionCmd()
	for _, c := range root.Commands() {
		switch c.Name() {
		case "help":
			c.Run = nil
			c.RunE = helpAbout
		case "completion":
			c.RunE = func(c *cobra.Command, _ []string) error { return c.Help() }
		}
	}
}

// helpAbout prints the help of a command.
func helpAbout(c *cobra.Command, args []string) error {
	about, rest, err := c.Root().Find(args)
	if err != nil || len(rest) > 0 {
		return &usageError{err: fmt.Errorf("help %s: there is no such command", strings.Join(args, " "))}
	}
	return about.Help()
}
