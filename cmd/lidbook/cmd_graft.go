package main

import (
	"cmp"
	"fmt"
	"strconv"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

func graftCommand(a *app) *cobra.Command {
	var g book.Grafted
	var old time.Duration
	var breeder, starter, grafter string
	c := a.writing(&cobra.Command{
		Use:   "graft --larvae N",
		Short: "Write down a graft: a batch begins, and its clock",
		Example: "  lidbook graft --larvae 24 --on \"yesterday 18:00\" --age 18h --line Rook\n" +
			"  lidbook graft --larvae 30 --breeder S1 --starter S3",
		Args: cobra.NoArgs,
	}, func(d *desk, _ *cobra.Command, _ []string) error {
		f, err := d.finder(d.viewThen())
		if err != nil {
			return err
		}
		if d.at.Part == calendar.WholeDay {
			return fmt.Errorf("--on %s: say the hour as well, the clock runs by the hour", d.flags.on)
		}
		g.LarvaAge = old.Hours()
		if err := fillGraft(&g, f, breeder, starter, grafter); err != nil {
			return err
		}
		g.Batch = book.BatchID(d.ids.next())
		if err := d.write(g); err != nil {
			return err
		}
		return d.clockOf(g)
	})
	fl := c.Flags()
	amount(c, &g.Number, "batch", 0, "`NUMBER` of the batch (else the next)")
	amount(c, &g.Larvae, "larvae", 0, "how many larvae")
	age(c, &old)
	fl.StringVar(&g.Line, "line", "", "mother `LINE` (else the breeder's)")
	fl.StringVar(&breeder, "breeder", "", "the breeder `COLONY`")
	fl.StringVar(&starter, "starter", "", "the starter `COLONY`")
	fl.StringVar(&grafter, "grafter", "", "`PERSON` who grafted")
	amount(c, &g.Bars, "bars", 0, "how many bars")
	return c
}

// fillGraft finds the colonies and the person, and the batch's number.
func fillGraft(g *book.Grafted, f finder, breeder, starter, grafter string) error {
	if g.Larvae < 1 {
		return fmt.Errorf("say with --larvae how many larvae were grafted, at least 1 larva")
	}
	last := 0
	for b := range f.Batches() {
		last = max(last, b.Number)
	}
	g.Number = cmp.Or(g.Number, last+1)
	if breeder != "" {
		c, err := f.colony(breeder)
		if err != nil {
			return err
		}
		g.Breeder, g.Mother, g.Line = c.Colony, c.Queen, cmp.Or(g.Line, c.Line)
	}
	if starter != "" {
		c, err := f.colony(starter)
		if err != nil {
			return err
		}
		g.Starter = c.Colony
	}
	if grafter != "" {
		p, err := f.person(grafter)
		if err != nil {
			return err
		}
		g.Grafter = p.Person
	}
	return nil
}

// clockOf prints the clock of a batch just grafted.
func (d *desk) clockOf(g book.Grafted) error {
	v := d.view()
	b := v.Batch(g.Batch).Bee(g.Larvae)
	d.minds(rules.Graft{LarvaAge: g.LarvaAge})
	d.printClock(b, v.Numbers(), d.zone)
	return nil
}

func countCommand(a *app) *cobra.Command {
	var take, capped, ripe, culled, out, dead int
	var why string
	c := a.writing(&cobra.Command{
		Use:     "count BATCH",
		Short:   "Count a batch: take, capped, ripe, culled, emerged",
		Example: "  lidbook count 4 --take 20\n  lidbook count 4 --capped 18 --culled 1\n  lidbook count 4 --emerged 3 --dead 1",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, c *cobra.Command, args []string) error {
		b, err := finder{View: d.viewThen()}.batch(args[0])
		if err != nil {
			return err
		}
		var facts []book.Fact
		add := func(flag string, n int, f book.Fact) {
			if c.Flags().Changed(flag) {
				facts = append(facts, f)
			}
			if n < 0 || n > b.Larvae {
				err = fmt.Errorf("--%s %d: batch %d had %s", flag, n, b.Number, plural(b.Larvae, "larva"))
			}
		}
		add("take", take, book.TakeCounted{Batch: b.Batch, Accepted: take})
		add("capped", capped, book.CappedCounted{Batch: b.Batch, Capped: capped})
		add("ripe", ripe, book.RipeCounted{Batch: b.Batch, Ripe: ripe})
		add("culled", culled, book.CellsCulled{Batch: b.Batch, Cells: culled, Why: why})
		add("emerged", out, book.EmergedCounted{Batch: b.Batch, Out: out, Dead: dead})
		switch {
		case err != nil:
			return err
		case len(facts) == 0:
			return fmt.Errorf("nothing is counted: say --take, --capped, --ripe, --culled or --emerged")
		}
		return d.write(facts...)
	})
	fl := c.Flags()
	amount(c, &take, "take", 0, "grafts accepted by the builder")
	amount(c, &capped, "capped", 0, "capped cells")
	amount(c, &ripe, "ripe", 0, "ripe cells that are together now")
	amount(c, &culled, "culled", 0, "cells taken out for good")
	fl.StringVar(&why, "why", "", "why they were culled")
	amount(c, &out, "emerged", 0, "virgins out of cells that were not given")
	amount(c, &dead, "dead", 0, "with --emerged: cells found dead")
	return c
}

func signCommand(a *app) *cobra.Command {
	return a.writing(&cobra.Command{
		Use:       "sign BATCH capped|\"tip bare\"|\"first virgin out\"",
		Short:     "Write down what cells show of their clock",
		Example:   "  lidbook sign 4 \"first virgin out\"",
		Args:      cobra.ExactArgs(2),
		ValidArgs: []string{"capped", "tip bare", "first virgin out"},
	}, func(d *desk, _ *cobra.Command, args []string) error {
		b, err := finder{View: d.viewThen()}.batch(args[0])
		if err != nil {
			return err
		}
		f := book.ClockSeen{Batch: b.Batch}
		if err := f.Sign.UnmarshalText([]byte(args[1])); err != nil {
			return err
		}
		return d.write(f)
	})
}

func moveCommand(a *app) *cobra.Command {
	var celsius float64
	c := a.writing(&cobra.Command{
		Use:     "move BATCH COLONY|incubator",
		Short:   "Move a batch's cells to a finisher or bank, or into the incubator",
		Example: "  lidbook move 4 S3\n  lidbook move 4 incubator --celsius 34.5",
		Args:    cobra.ExactArgs(2),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f := finder{View: d.viewThen()}
		b, err := f.batch(args[0])
		if err != nil {
			return err
		}
		moved := book.CellsMoved{Batch: b.Batch}
		if args[1] != "incubator" {
			c, err := f.colony(args[1])
			if err != nil {
				return err
			}
			moved.To = c.Colony
		}
		facts := []book.Fact{moved}
		if moved.To.IsZero() && b.Incubate {
			facts = nil // it is there already, this is only a reading
		}
		if celsius != 0 {
			facts = append(facts, book.IncubatorRead{Batch: b.Batch, Celsius: celsius})
		}
		if len(facts) == 0 {
			return fmt.Errorf("batch %d is in the incubator already: to write down its warmth, say --celsius", b.Number)
		}
		return d.write(facts...)
	})
	amount(c, &celsius, "celsius", 0, "warmth of the incubator in °C, from now on")
	return c
}

func cageCommand(a *app) *cobra.Command {
	var bank string
	var cells bool
	c := a.writing(&cobra.Command{
		Use:     "cage BATCH CAGES",
		Short:   "Cage virgins of a batch, each under the number of her cage",
		Example: "  lidbook cage 4 1-5 --bank S4\n  lidbook cage 4 6-12 --cells     cells about to emerge",
		Args:    cobra.ExactArgs(2),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f := finder{View: d.viewThen()}
		b, err := f.batch(args[0])
		if err != nil {
			return err
		}
		labels, err := cages(args[1])
		if err != nil {
			return err
		}
		var to book.ColonyID
		if bank != "" {
			c, err := f.colony(bank)
			if err != nil {
				return err
			}
			to = c.Colony
		}
		var facts []book.Fact
		for _, label := range labels {
			facts = append(facts, book.VirginCaged{Queen: book.QueenID(d.ids.next()), Batch: b.Batch, Label: label, Bank: to, Cell: cells})
		}
		return d.write(facts...)
	})
	c.Flags().StringVar(&bank, "bank", "", "into this bank `COLONY`")
	c.Flags().BoolVar(&cells, "cells", false, "they are cells about to emerge")
	return c
}

// cages reads the numbers of cages: "3", "1-5", "1-3,7".
func cages(text string) (labels []string, err error) {
	for part := range strings.SplitSeq(text, ",") {
		first, last, span := strings.Cut(strings.TrimSpace(part), "-")
		if !span {
			last = first
		}
		from, err1 := strconv.Atoi(first)
		to, err2 := strconv.Atoi(last)
		const most = 1000 // cages at one time; more is a slip of the finger
		if err1 != nil || err2 != nil || from < 1 || to < from || to-from >= most {
			return nil, fmt.Errorf("cages %q: write their numbers, like 3 or 1-5", text)
		}
		for n := from; n <= to; n++ {
			labels = append(labels, strconv.Itoa(n))
		}
	}
	return labels, nil
}
