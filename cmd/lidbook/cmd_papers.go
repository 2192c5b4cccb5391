package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// yardOnly is the yard of a subject that must be one.
func yardOnly(v *book.View, of book.Subject) (book.YardID, error) {
	y, ok := of.Yard()
	if ok {
		return y, nil
	}
	var there []string
	for yard := range v.Yards() {
		there = append(there, yard.Name)
	}
	return y, fmt.Errorf("%s is no yard: name one, the book has %s", rules.Name(v, of), shortList(there))
}

func inspectedCommand(a *app) *cobra.Command {
	return a.aboutAnything(&cobra.Command{
		Use:     "inspected YARD RESULT",
		Short:   "Write down that an inspector saw a yard",
		Example: "  lidbook inspected \"Home Yard\" \"nothing found\"",
		Args:    cobra.MinimumNArgs(2),
	}, 1, func(d *desk, of book.Subject, args []string) (book.Fact, error) {
		y, err := yardOnly(d.viewThen(), of)
		return book.Inspected{Yard: y, Result: args[0]}, err
	})
}

func paperCommand(a *app) *cobra.Command {
	return a.aboutAnything(&cobra.Command{
		Use:     "paper YARD NAME UNTIL",
		Short:   "Write down a certificate or permit, good until a day",
		Example: "  lidbook paper \"Home Yard\" \"health certificate\" 2027-07-31",
		Args:    cobra.MinimumNArgs(3),
	}, 2, func(d *desk, of book.Subject, args []string) (book.Fact, error) {
		y, err := yardOnly(d.viewThen(), of)
		if err != nil {
			return nil, err
		}
		until, err := line.ParseDay(args[1], calendar.DayOf(d.now, d.zone))
		return book.PaperHeld{Yard: y, Name: args[0], Expires: until}, err
	})
}
