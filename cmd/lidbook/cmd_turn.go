package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// turnShape is what a nuc gives in a season by the age at which its queens are caught, in
// JSON.
type turnShape struct {
	Yard  string `json:"yard"`
	First string `json:"first"` // cell
	Last  string `json:"last"`  // day on which a queen is wanted
	Gap   int    `json:"gapDays"`
	Drive int    `json:"visitEveryDays"`
	// PerCell is the chance that a cell gives a good queen, whenever: what a wish counts with.
	PerCell float64      `json:"goodQueensPerCell"`
	Ends    string       `json:"seasonEnds,omitempty"` // why with that day, where nobody said one
	Ages    []yieldShape `json:"ages"`

	by practice.Key // see [plan.Planner.After]
}

// yieldShape is what one nuc gives as a mean over many, in JSON.
type yieldShape struct {
	Catch     int     `json:"caughtAtDays"`
	Cells     float64 `json:"cells"`
	Queens    float64 `json:"queens"`
	Living    float64 `json:"aliveAfter15Weeks"`
	Share     float64 `json:"shareAlive"`
	Published bool    `json:"sharePublished"` // else it is the keeper's number alone
}

func turnCommand(a *app) *cobra.Command {
	var t plan.Turn
	var from, until string
	c := a.reading(&cobra.Command{
		Use:   "turn",
		Short: "The turn of a nuc: what one gives in a season, by the age at which its queens are caught",
		Long: "A nuc is given a cell, its queen is caught once she is old enough and has laid, and the\nnext cell follows after a gap. Caught early a nuc gives more queens, and fewer of them\nlive: this tells both, per nuc, by the keeper's own rates. Without --from and --until\n" +
			"it is the season that the usual weather leaves, from tomorrow on.",
		Example: "  lidbook turn\n  lidbook turn --gap 2 --visit 7\n  lidbook turn --from 2027-05-01 --until 2027-08-31 --json",
		Args:    cobra.NoArgs,
	}, func(_ *cobra.Command, v *book.View, _ []string) (err error) {
		p := plan.New(course.New(v))
		y := v.Yard(p.YardOfMostNucs())
		if a.flags.yard != "" {
			if y, err = (finder{View: v}).yard(a.flags.yard); err != nil {
				return err
			}
		}
		if t.First, err = wishedDay(v, "from", from); err != nil {
			return err
		}
		if t.Last, err = wishedDay(v, "until", until); err != nil {
			return err
		}
		found := t.Last == 0
		if t, err = p.Season(y.Yard, t); err != nil {
			return fmt.Errorf("%w: --until DAY, --from DAY, lidbook weather normal MONTH", err)
		}
		s := turnShape{Yard: y.Name, First: t.First.String(), Last: t.Last.String(), Gap: t.Gap, Drive: max(1, t.Drive), Ages: []yieldShape{}}
		if last, ok := p.LastGraft(y.Yard, v.Today()+1); ok && found {
			why, by := p.After(y.Yard, last)
			s.Ends, s.by = "last graft that makes sense: "+last.ShortFrom(v.Today())+", "+why, by
		}
		rates := plan.RatesOf(v)
		yields := rates.Yields(t, v.Numbers())
		s.PerCell = thousandth(rates.PerCell())
		for _, one := range yields {
			s.Ages = append(s.Ages, yieldShape{one.Catch, round(one.Cells), round(one.Queens), round(one.Living), thousandth(one.Share), one.Known})
		}
		return a.show(s, func() { a.printTurn(s, yields, v.Numbers()) })
	})
	f := c.Flags()
	amount(c, &t.Gap, "gap", 0, "so many `DAYS` from a catch to the next cell")
	t.Drive = 1
	some(c, &t.Drive, "visit", "1 or more", "you come every so many `DAYS`")
	f.StringVar(&from, "from", "", "the first cells are given on this `DAY` (else as soon as a graft makes sense)")
	f.StringVar(&until, "until", "", "the last queens are wanted by this `DAY` (else when those of the season's last graft are ready)")
	f.StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else where most nucs stand)")
	return c
}

func (a *app) printTurn(s turnShape, yields []plan.Yield, n practice.Numbers) {
	where := ""
	if a.flags.yard == "" {
		where = ", where most nucs stand"
	}
	a.line("A nuc of %s%s, cells from %s, queens until %s, the next cell %s, a visit %s", s.Yard, where, shortDay(s.First), shortDay(s.Last), gapWords(s.Gap), everyWords(s.Drive))
	if s.Ends != "" {
		a.line("  %s%s", s.Ends, setDrones(s.by))
	}
	rows := [][]string{{"  caught at", "cells", "queens", "alive after 15 weeks", "", ""}}
	for _, y := range yields { // rounded once
		rows = append(rows, []string{fmt.Sprintf("  %d d", y.Catch), fmt.Sprintf("%.1f", y.Cells), fmt.Sprintf("%.1f", y.Queens), fmt.Sprintf("%.1f", y.Living), fmt.Sprintf("%.0f of 100", 100*y.Share), y.Basis(n)})
	}
	a.table(rows)
	most, living := plan.BestTurns(yields)
	a.line("  most queens: %s; most that live: %s", plan.CaughtAt(most), plan.CaughtAt(living))
	a.line("  of 100 cells %.0f give a good queen, as a wish counts where the graft works; of those above fewer, as the last are caught too late or not at all", 100*s.PerCell)
	a.line("  means per nuc by your rates; survival: lidbook numbers lives_caught_at_%d", living[0].Catch)
}

func gapWords(days int) string {
	if days == 0 {
		return "at the catch"
	}
	return plural(days, "day") + " after the catch"
}

func everyWords(days int) string {
	return strings.Replace("every "+plural(days, "day"), "every 1 day", "every day", 1)
}
