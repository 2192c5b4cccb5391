package main

import (
	"github.com/spf13/cobra"
)

func addCommand(a *app) *cobra.Command {
	c := &cobra.Command{
		Use:   "add",
		Short: "Add a yard, boxes, a colony, a person or a queen to the book",
		Long:  "What is added counts from the book's first day, unless --on says otherwise.",
		Args:  cobra.NoArgs,
		RunE:  func(c *cobra.Command, _ []string) error { return c.Help() },
	}
	c.AddCommand(addYard(a), addBoxes(a), addCombs(a), addPerson(a), addColony(a), addQueen(a))
	return c
}

// adding is writing of what was there before: it counts from the book's first
// day unless --on was said.
func (a *app) adding(c *cobra.Command, do func(*desk, finder, []string) error) *cobra.Command {
	return a.writing(c, func(d *desk, _ *cobra.Command, args []string) error {
		if d.flags.on == "" {
			for e := range d.season.Entries() {
				d.at = e.At
				break
			}
		}
		f, err := d.finder(d.view())
		if err != nil {
			return err
		}
		return do(d, f, args)
	})
}
