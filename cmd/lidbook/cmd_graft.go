package main

import (
	"cmp"
	"fmt"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

func graftCommand(a *app) *cobra.Command {
	var g book.Grafted
	var old time.Duration
	var breeder, starter, grafter, plan string
	c := a.writing(&cobra.Command{
		Use:   "graft --larvae N",
		Short: "Write down a graft: a batch begins, and its clock",
		Example: "  lidbook graft --larvae 24 --on \"yesterday 18:00\" --age 18h --line Rook\n" +
			"  lidbook graft --larvae 30 --breeder S1 --starter S3\n  lidbook graft --plan 2027-04-19 --on \"2027-04-19 15:20\"",
		Args: cobra.NoArgs,
	}, func(d *desk, _ *cobra.Command, _ []string) error {
		f, err := d.finder(d.viewThen())
		if err != nil {
			return err
		}
		if d.at.Part == calendar.WholeDay {
			return fmt.Errorf("--on %s: say the hour as well, the clock runs by the hour", d.flags.on)
		}
		g.LarvaAge, g.Batch = old.Hours(), book.BatchID(d.ids.Next())
		if plan != "" {
			// The plan as it stands now, whatever the day of the graft.
			p, err := finder{View: d.view()}.plan(plan)
			if err != nil {
				return err
			}
			planned(&g, p, breeder)
		}
		if err := fillGraft(&g, f, breeder, starter, grafter); err != nil {
			return err
		}
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
	fl.StringVar(&plan, "plan", "", "it was planned: its `DAY` or line; what is not said is as planned")
	amount(c, &g.Bars, "bars", 0, "how many bars")
	return c
}

// planned makes a graft that of a plan; what was not said is as it was planned.
func planned(g *book.Grafted, p book.BatchPlan, breeder string) {
	g.Batch, g.Larvae = p.Batch, cmp.Or(g.Larvae, p.Larvae)
	if breeder == "" {
		g.Breeder, g.Mother, g.Line = p.Breeder, p.Mother, cmp.Or(g.Line, p.Line)
	}
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
	d.minds(rules.PlanOf(v, g))
	d.asPlanned(v, g)
	d.printClock(timetableIn(v, v.Batch(g.Batch)))
	return nil
}

// asPlanned says how a graft is written down that was meant to be the one planned for its day.
func (d *desk) asPlanned(v *book.View, g book.Grafted) {
	on := v.Batch(g.Batch).At.Day(d.zone)
	for p := range v.Plans() {
		if p.Day == on && p.Batch != g.Batch {
			d.line("  if it is the planned one: lidbook strike last, then the same with --plan %s", argument(finder{View: v}.called(p)))
			return
		}
	}
}
