package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

// groundShape is the ground of a yard and how its boxes stand on it, in JSON.
type groundShape struct {
	Yard     string         `json:"yard"`
	Features []featureShape `json:"features"`
	WindFrom *float64       `json:"windFromDeg,omitempty"`
	Nucs     int            `json:"nucs"`
	Alike    int            `json:"entrancesAlike"`
	Sunny    int            `json:"entrancesInMorningSun"`
	Findings []faultShape   `json:"findings"`
}

type featureShape struct {
	Kind   string  `json:"kind"`
	Label  string  `json:"label,omitempty"`
	Points int     `json:"points"`
	Height float64 `json:"heightM,omitzero"`
	Width  float64 `json:"widthM,omitzero"`
}

type faultShape struct {
	Fault  string  `json:"fault"`
	Name   string  `json:"name"`
	Other  string  `json:"other,omitempty"`
	Figure float64 `json:"figure"`
	Limit  float64 `json:"limit"`
	Advice bool    `json:"advice"`
	Words  string  `json:"words"`
	Source string  `json:"source,omitempty"`
}

func groundCommand(a *app) *cobra.Command {
	c := a.reading(&cobra.Command{
		Use:     "ground",
		Short:   "What is drawn of a yard, and what is wrong with how its boxes stand on it",
		Example: "  lidbook ground --yard \"Far Hill\"\n  lidbook ground draw hedge 0,20 30,20 --height 2.5\n  lidbook ground in walk.gpx --lines boundary\n  lidbook ground out hill.geojson --coarse",
		Args:    cobra.NoArgs,
	}, func(_ *cobra.Command, v *book.View, _ []string) error {
		y, err := finder{View: v}.homeOr(a.flags.yard)
		if err == nil && len(y.Features) == 0 {
			y, err = finder{View: v}.laidOr(a.flags.yard)
		}
		if err != nil {
			return err
		}
		a.sayYard(v, y)
		found := yard.Findings(yard.Of(v, y.Yard), yard.GroundOf(y), v.Today(), v.Numbers())
		g := groundOf(v, y, found)
		return a.show(g, func() { a.printGround(g, namesDrawn(y.Features), found, v.Numbers()) })
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard, or the first with stands)")
	c.AddCommand(groundIn(a), groundOut(a))
	c.AddCommand(groundDrawing(a)...)
	return c
}

func groundOf(v *book.View, y *book.Yard, found []yard.Finding) groundShape {
	l, g, n := yard.Of(v, y.Yard), yard.GroundOf(y), v.Numbers()
	s := groundShape{
		Yard: y.Name, Features: []featureShape{}, Findings: []faultShape{},
		Nucs: l.Nucs(), Alike: yard.Alike(l, n), Sunny: yard.SunnyFronts(l, g, v.Today(), n),
	}
	for _, f := range y.Features {
		s.Features = append(s.Features, featureShape{f.What.String(), f.Label, len(f.Points), f.Height, f.Width})
	}
	if y.Wind.Said() {
		s.WindFrom = &y.Wind.Value
	}
	for _, f := range found {
		s.Findings = append(s.Findings, faultShape{f.Fault.String(), f.Name, f.Other, f.Figure, f.Limit, f.Advice(), f.Words(), f.Source()})
	}
	return s
}

func (a *app) printGround(g groundShape, names []string, found []yard.Finding, n practice.Numbers) {
	if len(g.Features) == 0 {
		a.line("nothing is drawn in %s: draw it in the window or with lidbook ground draw, or take it in with lidbook ground in", g.Yard)
	}
	var table [][]string
	for i, f := range g.Features {
		kind, label, size := f.Kind, f.Label, ""
		if label == "" {
			kind = names[i] // with its number among those that are called alike
		} else {
			label = names[i]
		}
		if f.Height > 0 {
			size = fmt.Sprintf("%g m high", f.Height)
		}
		table = append(table, []string{kind, label, plural(f.Points, "point"), size})
	}
	a.table(table)
	if g.Nucs > 0 {
		a.line("%d of %s alike within %g m, %d in the sun by %g:00", g.Alike, plural(g.Nucs, "entrance"), n.Get(practice.AlikeApart), g.Sunny, n.Get(practice.SunOnFrontBy))
	}
	for _, all := range yard.Gathered(found) {
		a.line("%s", all.Words())
	}
}
