package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

func addQueen(a *app) *cobra.Command {
	var q book.QueenDescribed
	var mother, batch, born, descent string
	c := a.adding(&cobra.Command{
		Use:     "queen NAME",
		Short:   "Add a queen, such as a breeder",
		Example: "  lidbook add queen \"Rook 1\" --line Rook --born 2025-06-10",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, f finder, args []string) (err error) {
		q.Queen, q.Name = book.QueenID(d.ids.Next()), args[0]
		if there, err := f.queen(args[0]); err == nil {
			q.Queen = there.Queen
		}
		if mother != "" {
			m, err := f.queen(mother)
			if err != nil {
				return err
			}
			q.Mother = m.Queen
		}
		if batch != "" {
			b, err := f.batch(batch)
			if err != nil {
				return err
			}
			q.Batch = b.Batch
		}
		if born != "" {
			day, err := calendar.ParseDay(born)
			if err != nil {
				return err
			}
			q.Born = day.At(12, 0, d.zone).UTC() // noon is that day in every zone near
		}
		if err := q.Descent.UnmarshalText([]byte(descent)); err != nil {
			return err
		}
		return d.write(q)
	})
	c.Flags().StringVar(&q.Line, "line", "", "her `LINE`")
	c.Flags().StringVar(&mother, "mother", "", "her mother's `NAME`")
	c.Flags().StringVar(&batch, "batch", "", "the `NUMBER` of her batch")
	c.Flags().StringVar(&born, "born", "", "the `DAY` she was born")
	c.Flags().StringVar(&q.DroneLine, "drone-line", "", "`LINE` of the drones")
	c.Flags().StringVar(&descent, "descent", "", "her `DESCENT`, sure or doubtful")
	return c
}
