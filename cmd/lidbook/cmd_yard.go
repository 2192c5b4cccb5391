package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func yardCommand(a *app) *cobra.Command {
	c := &cobra.Command{
		Use:   "yard",
		Short: "Write down where a yard lies on Earth",
		Args:  cobra.NoArgs,
		RunE:  func(c *cobra.Command, _ []string) error { return c.Help() },
	}
	c.AddCommand(yardPlace(a))
	return c
}

func yardPlace(a *app) *cobra.Command {
	c := a.writing(&cobra.Command{
		Use:     "place LAT LON",
		Short:   "Write down the latitude and longitude of a yard's origin",
		Long:    "Degrees (WGS 84), north and east positive. The sun, shadows and the ground in GeoJSON and GPX\nare reckoned from them.",
		Example: "  lidbook yard place 54.6 15.0\n  lidbook yard place -45.2 -130.5 --yard \"Far Hill\"",
		Args:    cobra.ExactArgs(2),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		y, err := finder{View: d.view()}.homeOr(d.flags.yard)
		if err != nil {
			return err
		}
		f := y.YardDescribed
		for i, to := range []*float64{&f.Lat, &f.Lon} {
			n := number[float64]{to: to, signed: true}
			if err := n.Set(args[i]); err != nil {
				return fmt.Errorf("%s: write degrees, latitude first, like 54.6 15.0", args[i])
			}
		}
		if err := onEarth(f); err != nil {
			return err
		}
		return d.write(f)
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "of this `YARD` (else the home yard)")
	return c
}

// onEarth tells whether a yard is placed on Earth.
func onEarth(y book.YardDescribed) error {
	if y.Lat < -90 || y.Lat > 90 || y.Lon < -180 || y.Lon > 180 {
		return fmt.Errorf("latitude %g, longitude %g is no place: they go from -90 to 90 and from -180 to 180", y.Lat, y.Lon)
	}
	return nil
}
