package main

import (
	"cmp"
	"fmt"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/founding"
)

func addYard(a *app) *cobra.Command {
	var y book.YardDescribed
	c := a.adding(&cobra.Command{
		Use:     "yard NAME",
		Short:   "Add a yard",
		Example: "  lidbook add yard \"Far Hill\" --drive 25",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, f finder, args []string) error {
		if _, err := f.yard(args[0]); err == nil {
			return fmt.Errorf("yard %s is there already: write another name", args[0])
		}
		y.Yard, y.Name = book.YardID(d.ids.Next()), args[0]
		y.Zone = cmp.Or(y.Zone, d.zone.String())
		if _, err := founding.Zone(y.Zone, time.LoadLocation); err != nil {
			return err
		}
		y.Home = f.HomeYard() == nil
		return d.write(y)
	})
	c.Flags().StringVar(&y.Zone, "zone", "", "its time `ZONE` (else that of the home yard)")
	amount(c, &y.Drive, "drive", 0, "`MINUTES` from home")
	signed(c, &y.Lat, "lat", "latitude in degrees, north positive")
	signed(c, &y.Lon, "lon", "longitude in degrees, east positive")
	return c
}
