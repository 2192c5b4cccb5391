package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
)

func offCommand(a *app) *cobra.Command {
	return a.writing(&cobra.Command{
		Use:     "off PERSON FROM [TO]",
		Short:   "Write down that somebody is away, both days included",
		Example: "  lidbook off Ida 2027-05-20 2027-05-23\n  lidbook off Jon tomorrow",
		Args:    cobra.RangeArgs(2, 3),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		p, err := finder{View: d.view()}.person(args[0])
		if err != nil {
			return err
		}
		today := calendar.DayOf(d.now, d.zone)
		from, err := line.ParseDay(args[1], today)
		to, err2 := line.ParseDay(args[len(args)-1], today)
		switch {
		case err != nil:
			return err
		case err2 != nil:
			return err2
		case to < from:
			return fmt.Errorf("off from %s to %s: the last day is before the first, write the first one first", from, to)
		}
		return d.write(book.DaysOff{Person: p.Person, From: from, To: to})
	})
}
