package main

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

// groundDrawing are the commands that draw on a yard's ground.
func groundDrawing(a *app) []*cobra.Command {
	return []*cobra.Command{groundDraw(a), groundWipe(a), groundWind(a)}
}

func groundDraw(a *app) *cobra.Command {
	var f book.FeatureDrawn
	c := a.writing(&cobra.Command{
		Use:   "draw KIND X,Y ...",
		Short: "Draw something on a yard's ground: a boundary, hedge, wall, tree, water, track",
		Long:  "Points are metres east and north of the yard's origin, which is wherever you begin to measure.\nA boundary goes once round, a hedge from end to end, a tree or the vehicle stands at one point.",
		Example: "  lidbook ground draw boundary 0,0 30,0 30,20 0,20\n  lidbook ground draw hedge 0,20 30,20 --height 2.5\n" +
			"  lidbook ground draw tree 22,14 --height 7 --width 5 --label \"old plum\"\n  lidbook ground draw \"vehicle spot\" -2,-3",
		Args: cobra.MinimumNArgs(2),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		y, err := finder{View: d.view()}.homeOr(d.flags.yard)
		if err != nil {
			return err
		}
		if err := f.What.UnmarshalText([]byte(strings.ToLower(args[0]))); err != nil {
			return err
		}
		for _, text := range args[1:] {
			p, err := pointOf(text)
			if err != nil {
				return err
			}
			f.Points = append(f.Points, p)
		}
		if err := enoughPoints(f); err != nil {
			return err
		}
		f.Yard, f.Feature = y.Yard, book.FeatureID(d.ids.Next())
		return d.write(f)
	})
	amount(c, &f.Height, "height", 0, "how high it is, in metres")
	amount(c, &f.Width, "width", 0, "how wide it is, in metres; of a tree its crown")
	c.Flags().StringVar(&f.Label, "label", "", "its `NAME`")
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	return c
}

// enoughPoints tells whether a feature has as many points as it takes.
func enoughPoints(f book.FeatureDrawn) error {
	least := map[book.FeatureKind]int{book.Boundary: 3, book.Dwelling: 3, book.ColdHollow: 3, book.Hedge: 2, book.Wall: 2, book.Track: 2}[f.What]
	if len(f.Points) < least {
		return fmt.Errorf("%s: it takes at least %d points, not %d", f.What, least, len(f.Points))
	}
	return nil
}

func groundWipe(a *app) *cobra.Command {
	c := a.writing(&cobra.Command{
		Use:     "wipe NAME",
		Short:   "Wipe something off a yard's ground, by its label or kind",
		Example: "  lidbook ground wipe \"old plum\"\n  lidbook ground wipe hedge\n  lidbook ground wipe \"hedge 2\"",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		y, err := finder{View: d.view()}.homeOr(d.flags.yard)
		if err != nil {
			return err
		}
		f, err := featureOf(y, args[0])
		if err != nil {
			return err
		}
		f.Points = nil
		return d.write(f)
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	return c
}

// featureOf is what is drawn of a yard under a label, or the only one of a kind; of several
// that are called alike the one of a number, "hedge 2", counted as they were drawn.
func featureOf(y *book.Yard, name string) (book.FeatureDrawn, error) {
	for i, called := range namesDrawn(y.Features) {
		if strings.EqualFold(called, name) {
			return y.Features[i], nil
		}
	}
	for _, labelled := range []bool{true, false} {
		of := func(f book.FeatureDrawn) bool {
			return labelled && strings.EqualFold(f.Label, name) || !labelled && strings.EqualFold(f.What.String(), name)
		}
		switch i := slices.IndexFunc(y.Features, of); {
		case i < 0:
		case slices.ContainsFunc(y.Features[i+1:], of):
			return book.FeatureDrawn{}, fmt.Errorf("%q: several are drawn in %s: say which by its number, as lidbook ground lists them, like \"%s 2\"", name, y.Name, name)
		default:
			return y.Features[i], nil
		}
	}
	if len(y.Features) == 0 {
		return book.FeatureDrawn{}, fmt.Errorf("nothing is drawn in %s: draw it with lidbook ground draw", y.Name)
	}
	return book.FeatureDrawn{}, fmt.Errorf("no %q is drawn in %s: there is %s", name, y.Name, shortList(namesDrawn(y.Features)))
}

// namesDrawn are what features are called, by label or kind; those that are called alike
// are numbered.
func namesDrawn(all []book.FeatureDrawn) []string {
	names, times := make([]string, len(all)), map[string]int{}
	for i, f := range all {
		if names[i] = f.Label; f.Label == "" {
			names[i] = f.What.String()
		}
		times[strings.ToLower(names[i])]++
	}
	seen := map[string]int{}
	for i, name := range names {
		if key := strings.ToLower(name); times[key] > 1 {
			seen[key]++
			names[i] = fmt.Sprintf("%s %d", name, seen[key])
		}
	}
	return names
}

func groundWind(a *app) *cobra.Command {
	c := a.writing(&cobra.Command{
		Use:     "wind DEGREES",
		Short:   "Write down from where the wind mostly blows",
		Long:    "Degrees clockwise from north: 90 is from the east, 240 from the south-west.",
		Example: "  lidbook ground wind 240",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		y, err := finder{View: d.view()}.homeOr(d.flags.yard)
		if err != nil {
			return err
		}
		from := 0.0
		n := number[float64]{to: &from}
		if err := n.Set(args[0]); err != nil || from >= 360 {
			return errors.New("wind: write degrees clockwise from north from 0 up to 360, like 240")
		}
		return d.write(book.WindSaid{Yard: y.Yard, From: from})
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	return c
}
