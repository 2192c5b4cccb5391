package main

import (
	"cmp"
	"context"
	"fmt"
	"math"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// seasonFlags are what is asked of a season.
type seasonFlags struct {
	search, keep bool
	minutes      int
	percent      float64 // how sure; 0: the keeper's number
}

func seasonCommand(a *app) *cobra.Command {
	var f seasonFlags
	c := a.reading(&cobra.Command{
		Use:   "season",
		Short: "What the batches of the season want at once, with ways out; which batches keep all orders",
		Long: "Tells where batches, planned and grafted, want the same nucs, starters, finishers,\nbees, drones or hours, and the cheapest ways out. With --search it looks for the\n" +
			"batches that keep all open orders, those served first before others, with the fewest\nclashes and the least work, beside those that are planned; with --keep it puts them on the plan.\n\n" +
			"A queen is short who is not there by the day of her order as surely as is wished. What is tried:\n" + season.Space,
		Example: "  lidbook season\n  lidbook season --search --minutes 300\n  lidbook season --search --keep",
		Args:    cobra.NoArgs,
	}, func(c *cobra.Command, v *book.View, _ []string) error {
		p := plan.New(course.New(v))
		s := seasonShape{Clashes: shapesOfClashes(v, season.Clashes(p))}
		if f.search {
			_, found := a.search(c.Context(), p, f)
			s.Search = &found
		}
		return a.show(s, func() { a.printSeason(s) })
	})
	shows := c.RunE
	c.RunE = func(c *cobra.Command, args []string) error {
		if f.percent >= 100 {
			return fmt.Errorf("--sure %g: write per cent under 100, nothing is certain", f.percent)
		}
		if !f.keep {
			return shows(c, args)
		}
		d, err := a.open()
		if err != nil {
			return err
		}
		return cmp.Or(d.keepSeason(c.Context(), f), d.close())
	}
	fl := c.Flags()
	fl.BoolVar(&f.search, "search", false, "look for the batches that keep all open orders")
	fl.BoolVar(&f.keep, "keep", false, "put the batches that are found on the plan")
	some(c, &f.percent, "sure", percent, "how sure the orders are to be kept, in per cent (else as in your numbers)")
	amount(c, &f.minutes, "minutes", 0, "not more than so many `MINUTES` of work on one day, by the batches (else without limit)")
	return c
}

// keepSeason puts what is found on the plan, as one deed.
func (d *desk) keepSeason(ctx context.Context, f seasonFlags) error {
	found, shape := d.search(ctx, plan.New(course.New(d.view())), f)
	var facts []book.Fact
	for i := range found.Batches {
		facts = append(facts, found.Plan(i, book.BatchID(d.ids.Next())))
	}
	d.printSearch(shape)
	if len(facts) == 0 {
		return nil
	}
	return d.write(facts...)
}

// promiseWords is what a way out makes of a promise, in percent.
func promiseWords(before, after float64) string {
	if math.Round(before) == math.Round(after) {
		return fmt.Sprintf("promise %.0f %% as before", after)
	}
	return fmt.Sprintf("promise %.0f %% instead of %.0f %%", after, before)
}

func (a *app) printSeason(s seasonShape) {
	if len(s.Clashes) == 0 {
		a.line("no two batches want the same")
	}
	for _, c := range s.Clashes {
		a.line("%s", c.Why)
		var rows [][]string
		for _, w := range c.Ways {
			chance, left := "", ""
			if w.Before != nil {
				chance = promiseWords(100**w.Before, 100**w.After)
			}
			if w.Left > 0 {
				left = "the others still clash"
			}
			rows = append(rows, []string{"  " + w.What, chance, left})
		}
		a.table(rows)
	}
	if s.Search != nil {
		a.printSearch(*s.Search)
	}
}

func (a *app) printSearch(s searchShape) {
	for _, p := range s.Planned {
		a.line("%s", p.Said)
	}
	if len(s.Promises) == 0 && len(s.Planned) > 0 {
		a.line("no other order needs a graft")
		return
	}
	if len(s.Promises) == 0 {
		a.line("no order needs a graft: what is ready, to be expected or planned is enough")
		return
	}
	var rows [][]string
	for _, b := range s.Batches {
		rows = append(rows, []string{"graft " + shortDay(b.Graft), strings.TrimSpace(b.Line + prefixed(" from ", b.Breeder)), plural(b.Larvae, "larva"), plural(b.Nucs, "nuc") + prefixed(" in ", b.Yard), fmt.Sprintf("%.0f min", b.Minutes), prefixed("for ", list(b.For)) + prefixed(": ", b.adds)})
	}
	a.table(rows)
	rows = nil
	var whys []string
	for _, p := range s.Promises {
		if p.Why != "" {
			whys = append(whys, p.Why)
			continue
		}
		rows = append(rows, []string{p.Name, plural(p.Queens, "queen") + " by " + shortDay(p.By), cmp.Or(p.Nearly, fmt.Sprintf("%.0f %% sure", 100*p.Chance))})
	}
	a.table(rows)
	a.line("%s, %.0f min of work; %.0f of 100 sure wished; %s", plural(len(s.Batches), "graft"), s.Minutes, 100*s.Sure, s.best())
	for _, why := range whys {
		a.line("%s", why)
	}
	for _, d := range s.Without {
		a.line("%s; see lidbook plan drop", plan.Sentence(d.Said))
	}
	a.printClashesThen(s)
}

// printClashesThen says what the grafts that are found clash with, once they are planned.
func (a *app) printClashesThen(s searchShape) {
	if len(s.Batches) == 0 {
		return
	}
	a.line("%s", season.ClashesThen(len(s.Clashes)))
	for _, c := range s.Clashes {
		a.line("  %s", c.Why)
	}
}

// best is how much better another answer could be.
func (s searchShape) best() string {
	switch {
	case s.Exact && s.Short > 0:
		return fmt.Sprintf("%s short, and no plan that is tried is short of fewer", plural(s.Short, "queen"))
	case s.Exact:
		return "no plan that is tried takes less"
	case s.Least > 0:
		return fmt.Sprintf("%s short, %d at least in every plan that is tried", plural(s.Short, "queen"), s.Least)
	case s.Short > 0:
		return plural(s.Short, "queen") + " short"
	default:
		return fmt.Sprintf("to keep all takes %.0f min at least in every plan that is tried", s.Bound)
	}
}
