package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/founding"
	"lidmark/domain/line"
)

func hoursCommand(a *app) *cobra.Command {
	return a.deciding(&cobra.Command{
		Use:     "hours PERSON DAY FROM-UNTIL|none",
		Short:   "Write down when somebody is free on one day, in place of the week's hours",
		Example: "  lidbook hours Ida tomorrow 14:00-18:00\n  lidbook hours Jon 2027-05-20 none",
		Args:    cobra.ExactArgs(3),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		p, err := finder{View: d.view()}.person(args[0])
		if err != nil {
			return err
		}
		f := book.HoursOn{Person: p.Person}
		if f.Day, err = line.ParseComing(args[1], calendar.DayOf(d.now, d.zone)); err != nil {
			return err
		}
		if args[2] != "none" {
			if f.FreeHours, err = founding.Hours(args[2]); err != nil {
				return fmt.Errorf("free hours %q: write them like 18:30-20:30, or none", args[2])
			}
		}
		return d.write(f)
	})
}
