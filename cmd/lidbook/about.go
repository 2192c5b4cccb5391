package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

// aboutAnything makes a command that writes a like fact about each of the things
// that its arguments name; the last ones, so many, say what. What is to be said of all facts before they
// are written, minds say.
func (a *app) aboutAnything(c *cobra.Command, say int, fact func(*desk, book.Subject, []string) (book.Fact, error), minds ...func(*desk, []book.Fact)) *cobra.Command {
	c = a.writing(c, func(d *desk, _ *cobra.Command, args []string) error {
		f, err := d.finder(d.viewThen())
		if err != nil {
			return err
		}
		names := len(args) - say
		all, err := f.things(args[:names])
		if err != nil {
			return err
		}
		var facts []book.Fact
		for _, of := range all {
			made, err := fact(d, of, args[names:])
			if err != nil {
				return err
			}
			facts = append(facts, made)
		}
		for _, mind := range minds {
			mind(d, facts)
		}
		return d.write(facts...)
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "look for a nuc's name in this `YARD` first")
	return c
}

// ofNucs makes a command that writes a like fact for each of the nucs that its
// arguments name; the last ones, so many, say what.
func (a *app) ofNucs(c *cobra.Command, say int, fact func(finder, book.NucID, []string) (book.Fact, error)) *cobra.Command {
	c = a.writing(c, func(d *desk, _ *cobra.Command, args []string) error {
		f, err := d.finder(d.viewThen())
		if err != nil {
			return err
		}
		names := len(args) - say
		nucs, err := f.nucs(args[:names]...)
		if err != nil {
			return err
		}
		var facts []book.Fact
		for _, id := range nucs {
			made, err := fact(f, id, args[names:])
			if err != nil {
				return err
			}
			facts = append(facts, made)
		}
		return d.write(facts...)
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "look for names in this `YARD` first")
	return c
}
