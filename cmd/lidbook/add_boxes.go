package main

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/founding"
	"lidmark/domain/yard"
)

func addBoxes(a *app) *cobra.Command {
	var row founding.Row
	var place string
	c := a.adding(&cobra.Command{
		Use:     "boxes NAMES...",
		Short:   "Add a row of boxes with their nucs and the stand they are on",
		Example: "  lidbook add boxes C1-C8 --kind mini --yard \"Far Hill\"\n  lidbook add boxes D1-D6 --sides 10 --comb 8 --at 0,-12 --facing S",
		Args:    cobra.MinimumNArgs(1),
	}, func(d *desk, f finder, args []string) error {
		y, err := f.homeOr(a.flags.yard)
		if err != nil {
			return err
		}
		if row.At, err = parsePoint(place); err != nil {
			return err
		}
		row.Names = strings.Join(args, ",")
		facts, err := row.Facts(&d.ids, y.Yard, f.View)
		if err != nil {
			return err
		}
		if err := d.append(d.entries(d.at, facts...)...); err != nil {
			return err
		}
		d.line("added: %s in %s", strings.Join(args, ", "), y.Name)
		for _, words := range yard.Misplaced(yard.OfFacts(facts), yard.GroundOf(y), f.View.Numbers()) {
			d.line("  mind: %s", words)
		}
		return nil
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	amount(c, &row.PerBox, "nucs-per-box", 1, "how many nucs share a box")
	c.Flags().StringVar(&place, "at", "", "the middle of their stand, `EAST,NORTH` of the yard's origin in m (else a row on from the others)")
	facingFlag(c, &row.Facing)
	combFlags(c, &row.Combs)
	return c
}

// parsePoint reads "4,-12" in metres; nothing for no text.
func parsePoint(text string) (*book.Point, error) {
	if text == "" {
		return nil, nil
	}
	east, north, _ := strings.Cut(text, ",")
	x, err := strconv.ParseFloat(strings.TrimSpace(east), 64)
	y, err2 := strconv.ParseFloat(strings.TrimSpace(north), 64)
	const most = 10000 // m; no yard is wider
	if err != nil || err2 != nil || !(max(x, -x, y, -y) <= most) {
		return nil, fmt.Errorf("--at %q: write metres to the east and to the north, like 4,-12", text)
	}
	return &book.Point{X: x, Y: y}, nil
}
