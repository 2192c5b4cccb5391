package main

import (
	"cmp"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
)

func planMoveCommand(a *app) *cobra.Command {
	var why string
	c := a.completes(a.deciding(&cobra.Command{
		Use:     "move BATCH DAY",
		Short:   "Move a planned graft to another day",
		Example: "  lidbook plan move 2027-04-19 2027-04-21\n  lidbook plan move \"Rook 12\" \"wed 15:00\"",
		Args:    cobra.ExactArgs(2),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		p, err := finder{View: d.view()}.plan(args[0])
		if err != nil {
			return err
		}
		day, minute, err := d.coming(args[1])
		if err != nil {
			return err
		}
		f := p.BatchPlanned
		f.Day, f.Minute, f.Why = day, cmp.Or(minute, f.Minute), cmp.Or(why, f.Why)
		return d.plans(f)
	}), planNames)
	c.Flags().StringVar(&why, "why", "", "`WHY`")
	return c
}

func planDropCommand(a *app) *cobra.Command {
	var why string
	c := a.completes(a.deciding(&cobra.Command{
		Use:     "drop BATCH",
		Short:   "Take a planned graft off the plan",
		Example: "  lidbook plan drop 2027-04-19 --why \"no drones yet\"",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		p, err := finder{View: d.view()}.plan(args[0])
		if err != nil {
			return err
		}
		return d.write(book.BatchDropped{Batch: p.Batch, Why: why})
	}), planNames)
	c.Flags().StringVar(&why, "why", "", "`WHY`")
	return c
}

// coming reads a day to come, or a time on it in minutes after midnight.
func (d *desk) coming(text string) (day calendar.Day, minute int, err error) {
	if day, err = line.ParseComing(text, calendar.DayOf(d.now, d.zone)); err == nil {
		return day, 0, nil
	}
	at, wrong := line.ParseNext(text, d.now, d.zone)
	if wrong != nil {
		return 0, 0, err
	}
	at = at.In(d.zone)
	return calendar.DayOf(at, d.zone), at.Hour()*60 + at.Minute(), nil
}
