package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"
)

// usage is the help's part below the words: how a command is typed, with
// examples, the commands below it, and its flags.
func usage(c *cobra.Command) error {
	var b strings.Builder
	fmt.Fprint(&b, "Usage:\n")
	if c.Runnable() && !c.HasAvailableSubCommands() {
		fmt.Fprintf(&b, "  %s\n", c.UseLine())
	}
	if c.HasAvailableSubCommands() {
		fmt.Fprintf(&b, "  %s COMMAND [flags]\n", c.CommandPath())
	}
	if c.HasExample() {
		fmt.Fprintf(&b, "\nExamples:\n%s\n", c.Example)
	}
	usageCommands(&b, c)
	if c.HasAvailableLocalFlags() {
		fmt.Fprintf(&b, "\nFlags:\n%s", c.LocalFlags().FlagUsagesWrapped(helpColumns))
	}
	if c.HasAvailableInheritedFlags() {
		fmt.Fprintf(&b, "\nFlags of every command:\n%s", c.InheritedFlags().FlagUsagesWrapped(helpColumns))
	}
	if c.HasAvailableSubCommands() {
		fmt.Fprintf(&b, "\n%s COMMAND --help says more on one of them.\n", c.CommandPath())
	}
	_, err := fmt.Fprint(c.OutOrStderr(), b.String())
	return err
}

// usageCommands lists the commands below one, by group where they have one.
func usageCommands(b *strings.Builder, c *cobra.Command) {
	groups := c.Groups()
	if len(groups) == 0 && c.HasAvailableSubCommands() {
		groups = []*cobra.Group{{Title: "Commands:"}}
	}
	for _, g := range groups {
		fmt.Fprintf(b, "\n%s\n", g.Title)
		for _, sub := range c.Commands() {
			if sub.GroupID == g.ID && !sub.Hidden {
				pad := sub.NamePadding()
				short := folded(strings.Fields(sub.Short), helpColumns-pad-3)
				fmt.Fprintf(b, "  %-*s %s\n", pad, sub.Name(), strings.Join(short, "\n"+strings.Repeat(" ", pad+3)))
			}
		}
	}
}

// helpFlags gives a command and those below it the flag for its help.
func helpFlags(c *cobra.Command) {
	c.Flags().BoolP("help", "h", false, "print this help")
	for _, sub := range c.Commands() {
		helpFlags(sub)
	}
}
