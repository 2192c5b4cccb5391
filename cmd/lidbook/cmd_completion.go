package main

import (
	"io"

	"github.com/spf13/cobra"
)

// shells are those that complete names, with the line that makes them do so
// from now on.
var shells = []struct {
	name, load string
	print      func(*cobra.Command, io.Writer) error
}{
	{"bash", "source <(lidbook completion bash)", func(c *cobra.Command, to io.Writer) error { return c.GenBashCompletionV2(to, true) }},
	{"fish", "lidbook completion fish | source", func(c *cobra.Command, to io.Writer) error { return c.GenFishCompletion(to, true) }},
	{"powershell", "lidbook completion powershell | Out-String | Invoke-Expression", func(c *cobra.Command, to io.Writer) error { return c.GenPowerShellCompletionWithDesc(to) }},
	{"zsh", "source <(lidbook completion zsh)", func(c *cobra.Command, to io.Writer) error { return c.GenZshCompletion(to) }},
}

func completionCommand(a *app) *cobra.Command {
	all := &cobra.Command{
		Use:   "completion",
		Short: "Print what makes a shell complete names with Tab: bash, fish, powershell, zsh",
		Args:  cobra.NoArgs,
		RunE:  func(c *cobra.Command, _ []string) error { return c.Help() },
	}
	for _, s := range shells {
		all.AddCommand(&cobra.Command{
			Use:   s.name,
			Short: "Print what makes " + s.name + " complete names with Tab",
			Long: "Prints what makes " + s.name + " complete names with Tab. This does it for one session, and in\n" +
				"the file that " + s.name + " reads when it starts for every one:\n\n  " + s.load,
			Example: "  lidbook completion " + s.name,
			Args:    cobra.NoArgs,
			RunE:    func(c *cobra.Command, _ []string) error { return s.print(c.Root(), a.file) },
		})
	}
	return all
}
