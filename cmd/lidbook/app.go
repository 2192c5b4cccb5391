package main

import (
	"bufio"
	"errors"
	"fmt"
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
	file      io.Writer // where a file goes that is written to the output, as it is
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

func (a *app) execute(args []string) error {
	a.file = a.out
	out := &screen{to: a.out}
	a.out, a.errs = out, &screen{to: a.errs}
	root := a.root()
	root.SetArgs(noFlags(args))
	c, err := root.ExecuteC()
	if err != nil && !a.began {
		err = &usageError{err: err}
	}
	var usage *usageError
	if errors.As(err, &usage) {
		usage.at = c.CommandPath()
	}
	if err == nil && out.err != nil {
		err = fmt.Errorf("what was to be read here could not be written: %w", out.err)
	}
	return err
}

func (a *app) root() *cobra.Command {
	root := &cobra.Command{
		Use:                        "lidbook",
		Short:                      "Keep a book of queen rearing from the terminal",
		Long:                       rootHelp,
		SilenceUsage:               true,
		SilenceErrors:              true,
		SuggestionsMinimumDistance: 2,
		Args:                       noCommand,
		RunE: func(c *cobra.Command, _ []string) error {
			a.began = true
			return c.Help()
		},
		PersistentPreRunE: func(*cobra.Command, []string) error { return a.begin() },
	}
	root.SetIn(a.in)
	root.SetOut(a.out)
	root.SetErr(a.errs)
	for _, g := range groups() {
		root.AddGroup(&cobra.Group{ID: g.id, Title: g.title})
		for _, command := range g.commands {
			c := command(a)
			c.GroupID = g.id
			root.AddCommand(c)
		}
	}
	root.SetHelpCommandGroupID(groupKeep)
	p := root.PersistentFlags()
	p.StringVar(&a.flags.book, "book", "", "the book's `FILE` (else $LIDMARK_BOOK, else the only .lidmark here)")
	p.StringVar(&a.flags.now, "now", "", "take this instant as now")
	hide(root, "now")
	knowsItsHelp(root)
	root.SetFlagErrorFunc(flagError)
	explainArgs(root)
	return root
}

// noCommand refuses what is no command, and tells which are much like it.
func noCommand(root *cobra.Command, args []string) error {
	if len(args) == 0 {
		return nil
	}
	like := ""
	if near := root.SuggestionsFor(args[0]); len(near) > 0 {
		like = ": there is " + list(near)
	}
	return fmt.Errorf("unknown command %q%s", args[0], like)
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
	now, err := instant(text)
	if err != nil {
		return &usageError{err: fmt.Errorf("--now %q: write an instant like 2027-05-15T20:00:00+02:00, or \"2027-05-15 20:00\" by this machine's clock", text)}
	}
	a.now = now
	return nil
}

// instant reads a time with its zone, or one of this machine's zone.
func instant(text string) (time.Time, error) {
	if at, err := time.ParseInLocation("2006-01-02 15:04", text, time.Local); err == nil {
		return at, nil
	}
	return time.Parse(time.RFC3339, text)
}

const rootHelp = `Lidbook keeps a book of queen rearing: batches, nucs, queens, and what was
seen and done. It tells what needs you, by when and why.

A book is one file ending in .lidmark. Begin with

  lidbook new hill.lidmark --yard "Home Yard" --zone Europe/Berlin --boxes A1-A12 --kind mini --person Ida
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
