package main

import (
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// traceShape is where bees and brood of a unit went, in JSON.
type traceShape struct {
	Of        thing           `json:"of"`
	Since     string          `json:"since,omitempty"`
	Receivers []thing         `json:"receivers"`
	Yards     []standShape    `json:"yards"`
	Sold      []soldShape     `json:"soldWithAttendants"`
	Transfers []transferShape `json:"transfers"`
}

// standShape is a yard that was touched, in JSON.
type standShape struct {
	Yard       string `json:"yard"`
	Standstill bool   `json:"standstill"`
}

// soldShape is a queen who left with bees, in JSON.
type soldShape struct {
	Queen string `json:"queen"`
	On    string `json:"on"`
	To    string `json:"to,omitempty"`
}

// transferShape is bees or brood that moved, in JSON.
type transferShape struct {
	At    string  `json:"at"`
	From  string  `json:"from"`
	To    string  `json:"to"`
	Cups  float64 `json:"cupsOfBees,omitempty"`
	Combs float64 `json:"combs,omitempty"`
}

func traceCommand(a *app) *cobra.Command {
	var since string
	c := a.completes(a.reading(&cobra.Command{
		Use:     "trace NAME",
		Short:   "Where bees and brood of a colony or nuc went, hand to hand",
		Long:    "Follows combs and bees from a unit to all that got some, directly or from others,\nas an inspector asks for: units, yards, and queens sold with attendants.",
		Example: "  lidbook trace S2 --since 2027-04-20",
		Args:    cobra.ExactArgs(1),
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		of, err := finder{View: v}.unit(args[0])
		if err != nil {
			return err
		}
		var from time.Time
		if since != "" {
			w, err := line.ParseWhen(since, v.Today(), v.Zone())
			if err != nil {
				return err
			}
			from = w.Day.Start(v.Zone())
		}
		s := shapeOfTrace(v, v.Trace(of, from))
		return a.show(s, func() { a.printTrace(v, s) })
	}), colonyNames)
	c.Flags().StringVar(&since, "since", "", "from this `DAY` on (else all)")
	return c
}

func shapeOfTrace(v *book.View, t book.Trace) traceShape {
	zone := v.Zone()
	s := traceShape{
		Of: thingOf(v, t.Of), Since: stamp(t.Since, zone), Receivers: things(v, t.Receivers),
		Yards: []standShape{}, Sold: []soldShape{}, Transfers: []transferShape{},
	}
	for _, id := range t.Yards {
		s.Yards = append(s.Yards, standShape{v.Yard(id).Name, v.Yard(id).Standstill != nil})
	}
	for _, id := range t.Sold {
		q := v.Queen(id)
		s.Sold = append(s.Sold, soldShape{rules.Name(v, id.Subject()), stamp(q.Handed.Instant, zone), handedTo(v, q)})
	}
	for _, m := range t.Transfers {
		s.Transfers = append(s.Transfers, transferShape{stamp(m.At.Instant, zone), rules.Name(v, m.From), rules.Name(v, m.To), m.Cups, m.Combs})
	}
	return s
}

func (a *app) printTrace(v *book.View, s traceShape) {
	nucs, colonies := receivers(s, "nuc"), receivers(s, "colony")
	reached := plural(len(nucs), "nuc")
	if len(colonies) > 0 {
		reached += " and " + plural(len(colonies), "colony")
	}
	a.line("%s reached %s", s.Of.Name, reached)
	a.facts("nucs", list(nucs), "colonies", list(colonies))
	for _, y := range s.Yards {
		still := ""
		if y.Standstill {
			still = ", on standstill"
		}
		a.line("  yard: %s%s", y.Yard, still)
	}
	for _, q := range s.Sold {
		a.line("  sold with attendants: %s, %s%s", q.Queen, stampedDay(v, q.On), prefixed(" to ", q.To))
	}
	var rows [][]string
	for _, m := range s.Transfers {
		rows = append(rows, []string{"    " + stampedDay(v, m.At), m.From + " → " + m.To, amountWords(m)})
	}
	if len(rows) > 0 {
		a.line("  hand to hand:")
		a.table(rows)
	}
}

func receivers(s traceShape, kind string) (names []string) {
	for _, r := range s.Receivers {
		if r.Kind == kind {
			names = append(names, r.Name)
		}
	}
	return names
}

func amountWords(m transferShape) string {
	switch {
	case m.Cups > 0:
		return plural(int(m.Cups+0.5), "cup") + " of bees"
	case m.Combs > 0:
		return plural(int(m.Combs+0.5), "comb") + " of brood"
	default:
		return ""
	}
}
