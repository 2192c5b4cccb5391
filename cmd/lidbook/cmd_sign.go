package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func signCommand(a *app) *cobra.Command {
	return a.writing(&cobra.Command{
		Use:       "sign BATCH capped|\"tip bare\"|\"first virgin out\"",
		Short:     "Write down what cells show of their clock",
		Example:   "  lidbook sign 4 \"first virgin out\"",
		Args:      cobra.ExactArgs(2),
		ValidArgs: []string{"capped", "tip bare", "first virgin out"},
	}, func(d *desk, _ *cobra.Command, args []string) error {
		b, err := finder{View: d.viewThen()}.batch(args[0])
		if err != nil {
			return err
		}
		f := book.ClockSeen{Batch: b.Batch}
		if err := f.Sign.UnmarshalText([]byte(args[1])); err != nil {
			return err
		}
		return d.write(f)
	})
}
