package main

import (
	"cmp"
	"fmt"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// graft is a graft told by flags, without any book.
type graft struct {
	at      string
	age     time.Duration
	cells   int
	zone    string
	celsius float64
}

func (g *graft) flags(c *cobra.Command) {
	f := c.Flags()
	f.StringVar(&g.at, "graft", "", "when the larvae were grafted, as \"`DAY TIME`\": \"2027-05-05 18:00\"")
	age(c, &g.age)
	amount(c, &g.cells, "cells", 1, "how many cells are together")
	f.StringVar(&g.zone, "zone", "", "time `ZONE`, like Europe/Berlin (else this machine's)")
	amount(c, &g.celsius, "celsius", 0, "warmth of the incubator in °C (else that of a brood nest)")
}

// batch is the graft as its clock sees it.
func (g *graft) batch(a *app) (bee.Batch, *time.Location, error) {
	if g.at == "" {
		return bee.Batch{}, nil, &usageError{err: fmt.Errorf("say when the larvae were grafted, like --graft \"2027-05-05 18:00\"")}
	}
	zone, err := a.zoneOr(g.zone)
	if err != nil {
		return bee.Batch{}, nil, err
	}
	w, err := line.ParseWhen(g.at, calendar.DayOf(a.now, zone), zone)
	if err != nil {
		return bee.Batch{}, nil, fmt.Errorf("--graft: %w", err)
	}
	if w.At.IsZero() {
		return bee.Batch{}, nil, fmt.Errorf("--graft %q: say the hour as well, the clock runs by the hour", g.at)
	}
	if g.cells < 1 {
		return bee.Batch{}, nil, fmt.Errorf("--cells %d: at least 1 cell", g.cells)
	}
	if err := rules.Plausible(book.Grafted{Number: 1, Larvae: g.cells, LarvaAge: g.age.Hours()}); err != nil {
		return bee.Batch{}, nil, err
	}
	if err := rules.Plausible(book.IncubatorRead{Celsius: g.celsius}); err != nil {
		return bee.Batch{}, nil, err
	}
	b := bee.Batch{Graft: w.At, LarvaAge: g.age, Cells: g.cells}
	if g.celsius != 0 {
		b.Log = []bee.Reading{{At: w.At, Celsius: g.celsius}}
	}
	return b, zone, nil
}

func clockCommand(a *app) *cobra.Command {
	var g graft
	c := &cobra.Command{
		Use:     "clock [\"DAY TIME\"]",
		Short:   "The clock of a graft, without any book",
		Long:    "Tells the days and hours of a batch from the hour of the graft: when to count,\nwhen to leave alone, when the cells must be out, when the first virgin walks.",
		Example: "  lidbook clock \"2027-05-05 18:00\"\n  lidbook clock --graft \"2027-05-05 18:00\" --age 18h --cells 24 --zone Europe/Berlin",
		Args:    cobra.MaximumNArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			g.at = cmp.Or(g.at, strings.Join(args, ""))
			b, zone, err := g.batch(a)
			if err != nil {
				return err
			}
			var n practice.Numbers
			return a.show(clockOf(timetableOf(b.Clock(n), zone)), func() {
				a.line("grafted %s, %s%s", hour(b.Graft, zone), plural(b.Cells, "cell"), ageWords(b, n))
				a.printClock(timetableOf(b.Clock(n), zone))
			})
		},
	}
	g.flags(c)
	c.Flags().BoolVar(&a.flags.json, "json", false, "print JSON")
	return c
}

// ageWords tells the larvae's age, and what is wrong with it.
func ageWords(b bee.Batch, n practice.Numbers) string {
	if b.LarvaAge == 0 {
		return ""
	}
	words := fmt.Sprintf(", larvae %g h old", b.LarvaAge.Hours())
	switch bee.LarvaAge(b.LarvaAge, n) {
	case bee.AgeOld:
		return words + ": old, they make lesser queens"
	case bee.AgeTooOld:
		return words + ": too old for a good queen"
	default:
		return words
	}
}
