package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func moveCommand(a *app) *cobra.Command {
	var celsius float64
	c := a.writing(&cobra.Command{
		Use:     "move BATCH COLONY|incubator",
		Short:   "Move a batch's cells to a finisher or bank, or into the incubator",
		Example: "  lidbook move 4 S3\n  lidbook move 4 incubator --celsius 34.5",
		Args:    cobra.ExactArgs(2),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f := finder{View: d.viewThen()}
		b, err := f.batch(args[0])
		if err != nil {
			return err
		}
		moved := book.CellsMoved{Batch: b.Batch}
		if args[1] != "incubator" {
			c, err := f.colony(args[1])
			if err != nil {
				return err
			}
			moved.To = c.Colony
		}
		facts := []book.Fact{moved}
		if moved.To.IsZero() && b.Incubate {
			facts = nil // it is there already, this is only a reading
		}
		if celsius != 0 {
			facts = append(facts, book.IncubatorRead{Batch: b.Batch, Celsius: celsius})
		}
		if len(facts) == 0 {
			return fmt.Errorf("batch %d is in the incubator already: to write down its warmth, say --celsius", b.Number)
		}
		return d.write(facts...)
	})
	amount(c, &celsius, "celsius", 0, "warmth of the incubator in °C, from now on")
	return c
}
