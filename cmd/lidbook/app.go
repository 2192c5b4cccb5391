package main

import (
	"bufio"
	"io"
	"time"

	"github.com/spf13/cobra"
)

// app is one call of the program: the instant, the streams, and what the
// flags said.
type app struct {
	now       time.Time
	in        io.Reader
	out, errs io.Writer
	env       func(string) string
	asks      bool // somebody can answer questions

	flags flags
	began bool // a command has begun; errors before it are mistakes of usage
	lines *bufio.Scanner
	ended bool // nobody answers any more
}

// flags are those that many commands share.
type flags struct {
	book  string
	demo  bool
	on    string
	known string
	json  bool
	yard  string
	by    string
	yes   bool
	now   string
}

// commands are all commands, in the order of the help. Each file adds its own,
// so that a new command is a new file.
var commands []func(*app) *cobra.Command

// Groups of commands, in the order of the help.
const (
	groupSee  = "see"
	groupDo   = "do"
	groupKeep = "keep"
)

func register(group string, make func(*app) *cobra.Command) {
	commands = append(commands, func(a *app) *cobra.Command {
		c := make(a)
		c.GroupID = group
		return c
	})
}

func (a *app) execute(args []string) error {
	root := a.root()
	root.SetArgs(args)
	err := root.Execute()
	if err != nil && !a.began {
		return &usageError{err}
	}
	return err
}

func (a *app) root() *cobra.Command {
	root := &cobra.Command{
		Use:           "lidbook",
		Short:         "Keep a book of queen rearing from the terminal",
		Long:          rootHelp,
		SilenceUsage:  true,
		SilenceErrors: true,
		Args:          cobra.NoArgs,
		RunE: func(c *cobra.Command, _ []string) error {
			a.began = true
			return c.Help()
		},
		PersistentPreRunE: func(*cobra.Command, []string) error { return a.begin() },
	}
	root.SetIn(a.in)
	root.SetOut(a.out)
	root.SetErr(a.errs)
	root.AddGroup(
		&cobra.Group{ID: groupSee, Title: "To see:"},
		&cobra.Group{ID: groupDo, Title: "To write down:"},
		&cobra.Group{ID: groupKeep, Title: "To keep the book:"},
	)
	root.SetHelpCommandGroupID(groupKeep)
	root.SetCompletionCommandGroupID(groupKeep)
	p := root.PersistentFlags()
	p.StringVar(&a.flags.book, "book", "", "the book's `FILE` (else $LIDMARK_BOOK, else the only .lidmark here)")
	p.StringVar(&a.flags.now, "now", "", "take this instant as now")
	hide(root, "now")
	for _, command := range commands {
		root.AddCommand(command(a))
	}
	explainArgs(root)
	return root
}

func hide(c *cobra.Command, flag string) {
	if err := c.PersistentFlags().MarkHidden(flag); err != nil {
		panic(err) // the flag was defined two lines above
	}
}

// begin runs before every command, when its arguments are known to be good.
func (a *app) begin() error {
	a.began = true
	text := a.flags.now
	if text == "" {
		text = a.env("LIDBOOK_NOW")
	}
	if text == "" {
		return nil
	}
	now, err := time.Parse(time.RFC3339, text)
	if err != nil {
		return &usageError{err}
	}
	a.now = now
	return nil
}

const rootHelp = `Lidbook keeps a book of queen rearing: batches, nucs, queens, and what was
seen and done. It tells what needs you, by when and why.

A book is one file ending in .lidmark. Begin with

  lidbook new hask.lidmark --yard "Lower Hask" --zone Europe/Berlin --boxes A1-A12 --kind mini --person Ida
  lidbook graft --larvae 24 --on "yesterday 18:00"
  lidbook makeup A1-A12 --cups 3
  lidbook today

and in the evening write up the yard in letters, as on the sheet:

  lidbook write "A3 q e s5 h2"        queen seen, eggs, bees on 5 sides, stores 2 of 3
  lidbook letters                     all letters

Every command has --help with examples. To look around first, use --demo
instead of a book: lidbook today --demo.

Exit codes: 0 all is well; 1 something is wrong with what was asked; 2 the
command was not understood; 3 refused, or the book is locked or read-only.`
