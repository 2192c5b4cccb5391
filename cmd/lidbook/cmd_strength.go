package main

import (
	"fmt"
	"math"
	"slices"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/strength"
)

// strengthShape is what a nuc has and when it will want something, in JSON. The
// days are left out where they do not come within those reckoned ahead.
type strengthShape struct {
	Nuc       thing    `json:"nuc"`
	Bees      *float64 `json:"bees,omitempty"`
	BeesError *float64 `json:"beesErrorShare,omitempty"`
	BeesFrom  string   `json:"beesReckonedFrom,omitempty"`
	Need      float64  `json:"needOfTheNight"`
	Brood     float64  `json:"broodCells"`
	FoodG     *float64 `json:"foodG,omitempty"`
	FoodDays  *float64 `json:"foodDays,omitempty"`
	WeakFrom  string   `json:"weakFrom,omitempty"`
	LightFrom string   `json:"lightFrom,omitempty"`
	FullFrom  string   `json:"fullFrom,omitempty"`
	Robbers   string   `json:"robbers"`
	Risk      float64  `json:"risk"`
	Reason    string   `json:"reason,omitempty"`
	Remedy    string   `json:"remedy,omitempty"`
	After     float64  `json:"riskOnceDone"`
}

func strengthCommand(a *app) *cobra.Command {
	c := a.reading(&cobra.Command{
		Use:     "strength [NUCS...]",
		Short:   "Bees, food and brood of nucs by reckoning, when they will be weak, light or full, and the risk of robbers",
		Long:    "Reckons bees, brood and food from what was put in and last seen, with the weather's\nhours and nights, and on from there. Nothing is told of a nuc that nobody looked at\nfor too long, and a day is told only within those reckoned ahead. The risk of robbers is by our numbers: nobody has published any.",
		Example: "  lidbook strength\n  lidbook strength A1-A12 --on +7",
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		f, err := a.finder(v)
		if err != nil {
			return err
		}
		nucs := slices.Collect(v.Nucs())
		if len(args) > 0 {
			ids, err := f.nucs(args...)
			if err != nil {
				return err
			}
			nucs = nil
			for _, id := range ids {
				nucs = append(nucs, v.Nuc(id))
			}
		}
		list := strengths(v, nucs)
		return a.show(list, func() { a.printStrengths(list) })
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "look for names in this `YARD` first")
	return c
}

// strengths are nucs as reckoned, without the empty ones.
func strengths(v *book.View, nucs []*book.Nuc) []strengthShape {
	yards, list := map[book.YardID]*strength.Yard{}, []strengthShape{}
	for _, n := range nucs {
		if n.Holds.Condition == book.Empty {
			continue
		}
		y := yards[n.Yard]
		if y == nil {
			y = strength.NewYard(v, n.Yard, v.Zone())
			yards[n.Yard] = y
		}
		list = append(list, shapeOfStrength(v, n, y))
	}
	return list
}

func shapeOfStrength(v *book.View, n *book.Nuc, y *strength.Yard) strengthShape {
	s := y.Of(n)
	e := y.Exposure(n, s)
	shape := strengthShape{
		Nuc: thingOf(v, n.NucNamed.Nuc.Subject()), Need: round(s.Need), Brood: math.Round(s.Brood),
		WeakFrom: dayIf(s.Ahead.Weak), LightFrom: dayIf(s.Ahead.Light), FullFrom: dayIf(s.Ahead.Full),
		Robbers: e.Level.String(), Risk: round(e.Risk), Reason: e.Reason, After: round(e.After),
	}
	if e.Remedy != strength.NoRemedy {
		shape.Remedy = e.Remedy.String()
	}
	if s.BeesKnown {
		shape.Bees, shape.BeesError, shape.BeesFrom = new(math.Round(s.Bees)), new(round(s.Error)), s.BeesFrom.Day(v.Zone()).String()
	}
	if s.FoodKnown {
		shape.FoodG, shape.FoodDays = new(math.Round(s.Food)), new(round(s.FoodDays))
	}
	return shape
}

// dayIf is a day of JSON, empty for none.
func dayIf(d calendar.Day) string {
	if d == 0 {
		return ""
	}
	return d.String()
}

func (a *app) printStrengths(list []strengthShape) {
	if len(list) == 0 {
		a.line("No nuc is made up.")
		return
	}
	rows := [][]string{{"nuc", "bees", "need", "weak", "food", "light", "full", "robbers, by our numbers"}}
	for _, s := range list {
		bees, food := "not known", "not known"
		if s.Bees != nil {
			bees = fmt.Sprintf("%.0f ± %.0f %%", math.Round(*s.Bees/50)*50, 100**s.BeesError)
		}
		if s.FoodDays != nil {
			food = fmt.Sprintf("%.0f days", *s.FoodDays)
		}
		rows = append(rows, []string{
			s.Nuc.Name, bees, fmt.Sprintf("%.0f", math.Round(s.Need/50)*50), fromDay(s.WeakFrom), food, fromDay(s.LightFrom), fromDay(s.FullFrom), robbersWords(s),
		})
	}
	a.table(rows)
}

func fromDay(text string) string {
	if text == "" {
		return "no"
	}
	return "from " + shortDay(text)
}

// robbersWords say the risk, and where it counts what draws robbers, what helps
// and how much.
func robbersWords(s strengthShape) string {
	if s.Robbers == strength.Quiet.String() {
		return fmt.Sprintf("quiet, %.0f %%", 100*s.Risk)
	}
	if s.Remedy == strength.Brief.String() {
		return fmt.Sprintf("%s, %.0f %%: %s; %s", s.Robbers, 100*s.Risk, s.Reason, s.Remedy)
	}
	return fmt.Sprintf("%s, %.0f %%: %s; %s: %.0f %%", s.Robbers, 100*s.Risk, s.Reason, s.Remedy, 100*s.After)
}
