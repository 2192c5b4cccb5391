package main

import (
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/handover"
	"lidmark/domain/rules"
)

// goneShape is a queen who was handed over, in JSON.
type goneShape struct {
	Queen    string `json:"queen"`
	On       string `json:"handedOver"`
	Customer string `json:"customer,omitempty"`
	Order    string `json:"order,omitempty"`
	Line     string `json:"line,omitempty"`
	Mark     string `json:"mark,omitempty"`
	Batch    int    `json:"batch,omitempty"`
	Age      int    `json:"caughtAtDays,omitempty"`
	Claimed  string `json:"claimed,omitempty"`
}

func soldCommand(a *app) *cobra.Command {
	return a.reading(&cobra.Command{
		Use:   "sold [WORDS...]",
		Short: "Queens who were handed over, also those of years ago",
		Long: "Lists the queens handed over, the last ones first: those whose customer, order,\nname, line, cage, disc, colour, day or year holds all the words. Her card is\n" +
			"lidbook queen.",
		Example: "  lidbook sold\n  lidbook sold Club 2025\n  lidbook sold blue 14",
		Args:    cobra.ArbitraryArgs,
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		all := []goneShape{}
		var rows [][]string
		for _, g := range handover.HandedOver(v, strings.Join(args, " ")) {
			s := shapeOfGone(v, g)
			all, rows = append(all, s), append(rows, goneRow(v, g, s))
		}
		return a.show(all, func() {
			if len(rows) == 0 {
				a.line("no queen handed over is found by that")
			}
			a.table(rows)
		})
	})
}

func shapeOfGone(v *book.View, g handover.Gone) goneShape {
	return goneShape{
		Queen: rules.Name(v, g.Queen.Queen.Subject()), On: g.On.String(), Customer: g.Customer, Order: g.Number, Line: g.Line,
		Mark: markWords(g.Queen), Batch: g.Batch, Age: g.Age, Claimed: g.Claimed.String(),
	}
}

func goneRow(v *book.View, g handover.Gone, s goneShape) []string {
	batch, age := "", ""
	if s.Batch > 0 {
		batch = "batch " + strconv.Itoa(s.Batch)
	}
	if s.Age > 0 {
		age = "caught at " + strconv.Itoa(s.Age) + " d"
	}
	return []string{
		dayOf(v, g.On.Start(v.Zone())), s.Queen, s.Mark, s.Line, batch, age, s.Customer, prefixed("order ", s.Order), prefixed("claimed: ", s.Claimed),
	}
}
