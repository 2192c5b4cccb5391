package main

import (
	"cmp"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/storage"
)

func demoCommand(a *app) *cobra.Command {
	var zoneName string
	c := &cobra.Command{
		Use:     "demo FILE",
		Short:   "Make a book of the demo season, to try things out in",
		Long:    "Makes a book of an invented season, as it stands today. Commands that only read\ntake --demo instead and need no file.",
		Example: "  lidbook demo try.lidmark",
		Args:    cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			path := args[0]
			if !strings.HasSuffix(path, storage.Extension) {
				path += storage.Extension
			}
			zone, err := a.zoneOr(zoneName)
			if err != nil {
				return err
			}
			return a.demoBook(path, zone)
		},
	}
	c.Flags().StringVar(&zoneName, "zone", "", "time `ZONE`, like Europe/Berlin (else this machine's)")
	return c
}

func (a *app) demoBook(path string, zone *time.Location) error {
	b, err := storage.Create(path)
	if err != nil {
		return err
	}
	entries := demo.Season(calendar.DayOf(a.now, zone), zone)
	if err := b.Append(entries...); err != nil {
		return cmp.Or(err, b.Close())
	}
	a.line("%s: the demo season, %s", path, plural(len(entries), "entry"))
	a.line("next: lidbook today --book %s", path)
	return b.Close()
}
