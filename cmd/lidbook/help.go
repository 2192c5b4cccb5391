package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"
)

// knowsItsHelp puts help into our own words, and lets it refuse what it does not
// know, where it would print the help of something else.
func knowsItsHelp(root *cobra.Command) {
	root.InitDefaultHelpCmd()
	for _, c := range root.Commands() {
		if c.Name() == "help" {
			c.Use, c.Short, c.Long = "help [COMMAND]", "Help on a command", ""
			c.Example = "  lidbook help graft\n  lidbook help add yard"
			c.Run, c.RunE = nil, helpAbout
		}
	}
	root.SetUsageFunc(usage)
	helpFlags(root)
	foldHelp(root)
}

// helpAbout prints the help of a command.
func helpAbout(c *cobra.Command, args []string) error {
	about, rest, err := c.Root().Find(args)
	if err != nil || len(rest) > 0 {
		return &usageError{err: fmt.Errorf("help %s: there is no such command", strings.Join(args, " "))}
	}
	return about.Help()
}
