package main

import (
	"cmp"
	"fmt"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// plannedBatch is what the flags of a planned batch say.
type plannedBatch struct {
	book.BatchPlanned
	on, by, breeder, mother string
	orders                  []string
	percent                 float64
}

func planBatchCommand(a *app) *cobra.Command {
	var p plannedBatch
	c := a.deciding(&cobra.Command{
		Use:   "batch --on DAY --larvae N",
		Short: "Plan a graft",
		Example: "  lidbook plan batch --on 2027-04-19 --larvae 96 --nucs 64 --line \"Rook 12\"\n" +
			"  lidbook plan batch --on \"2027-04-19 15:00\" --larvae 96 --nucs 64 --queens 40 --until 2027-05-31 --laying --sure 90 --order 12",
		Args: cobra.NoArgs,
	}, func(d *desk, _ *cobra.Command, _ []string) error {
		f, err := d.finder(d.view())
		if err == nil {
			err = p.fill(d, f)
		}
		if err != nil {
			return err
		}
		p.Batch = book.BatchID(d.ids.Next())
		return d.plans(p.BatchPlanned)
	})
	fl := c.Flags()
	fl.StringVar(&p.on, "on", "", "the graft's `DAY` or \"DAY TIME\", such as 2027-04-19, +14, \"mon 15:00\"")
	amount(c, &p.Larvae, "larvae", 0, "how many larvae")
	amount(c, &p.Nucs, "nucs", 0, "for how many nucs")
	fl.StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	fl.BoolVar(&p.Virgins, "virgins", false, "the nucs are given virgins, not cells")
	fl.StringVar(&p.Line, "line", "", "mother `LINE` (else the breeder's)")
	fl.StringVar(&p.breeder, "breeder", "", "the breeder `COLONY`")
	fl.StringVar(&p.mother, "mother", "", "the mother `QUEEN` (else the breeder's)")
	some(c, &p.Queens, "queens", "1 or more", "how many queens are wanted of it")
	fl.StringVar(&p.by, "until", "", "they are wanted by this `DAY`")
	fl.BoolVar(&p.Laying, "laying", false, "they only have to lay by then, not to be ready")
	some(c, &p.percent, "sure", percent, "how sure you want to be, in per cent")
	fl.StringSliceVar(&p.orders, "order", nil, "for the orders of these `NUMBERS`")
	fl.StringVar(&p.Why, "why", "", "`WHY`")
	return c
}

// plans writes a planned batch, and what speaks against it.
func (d *desk) plans(b book.BatchPlanned) error {
	if err := d.write(b); err != nil {
		return err
	}
	d.minds(rules.PlanOf(d.view(), b))
	return nil
}

// fill finds the days and things that the flags name.
func (p *plannedBatch) fill(d *desk, f finder) (err error) {
	switch {
	case p.on == "":
		return fmt.Errorf("say with --on for which day the graft is planned")
	case p.Larvae < 1:
		return fmt.Errorf("say with --larvae how many larvae are to be grafted, at least 1 larva")
	case p.percent >= 100:
		return fmt.Errorf("--sure %g: write per cent under 100, nothing is certain", p.percent)
	}
	p.Sure = p.percent / 100
	if p.Day, p.Minute, err = d.coming(p.on); err != nil {
		return fmt.Errorf("--on: %w", err)
	}
	if p.by != "" {
		if p.By, err = line.ParseComing(p.by, f.Today()); err != nil {
			return fmt.Errorf("--until: %w", err)
		}
	}
	if p.Nucs > 0 || f.in != (book.YardID{}) {
		y, err := f.homeOr(d.flags.yard)
		if err != nil {
			return err
		}
		p.Yard = y.Yard
	}
	return p.find(f)
}

// find finds the colony, the queen and the orders.
func (p *plannedBatch) find(f finder) (err error) {
	if p.breeder != "" {
		c, err := f.colony(p.breeder)
		if err != nil {
			return err
		}
		p.Breeder, p.Mother, p.Line = c.Colony, c.Queen, cmp.Or(p.Line, c.Line)
	}
	if p.mother != "" {
		q, err := f.queen(p.mother)
		if err != nil {
			return err
		}
		p.Mother, p.Line = q.Queen, cmp.Or(p.Line, q.Line)
	}
	if p.breeder == "" && p.mother == "" && p.Line != "" {
		if p.Line, err = f.graftedLine(p.Line); err != nil {
			return err
		}
	}
	p.Orders, err = f.ordersNumbered(p.orders)
	return err
}
