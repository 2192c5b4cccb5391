package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/plan"
)

// planShape is a planned batch in JSON.
type planShape struct {
	ID      string      `json:"id"`
	Day     string      `json:"graftOn"`
	Time    string      `json:"time,omitempty"`
	Line    string      `json:"line,omitempty"`
	Breeder string      `json:"breeder,omitempty"`
	Larvae  int         `json:"larvae"`
	Nucs    int         `json:"nucs,omitempty"`
	Yard    string      `json:"yard,omitempty"`
	Virgins bool        `json:"asVirgins,omitempty"`
	Queens  int         `json:"queens,omitempty"`
	By      string      `json:"by,omitempty"`
	Laying  bool        `json:"layingBy,omitempty"`
	Sure    float64     `json:"sureWished,omitempty"`
	Chance  *float64    `json:"sureReckoned,omitempty"`
	Orders  []string    `json:"orders"`
	Why     string      `json:"why,omitempty"`
	Planned string      `json:"planned"`
	NotMade bool        `json:"notMade,omitempty"` // nobody grafted it while it could be
	Needs   []needShape `json:"needs"`
}

func planCommand(a *app) *cobra.Command {
	var needs bool
	c := a.reading(&cobra.Command{
		Use:   "plan",
		Short: "Grafts that are planned; plan one, move it, give it to orders, drop it",
		Long:  "Lists the grafts that are planned. One is called by its day, by its line too\nwhere two are planned for a day, and by its larvae where two are of one line.\nWhat each takes is listed with --needs.",
		Example: "  lidbook plan --needs\n  lidbook plan batch --on 2027-04-19 --larvae 96 --nucs 64 --line \"Rook 12\"\n" +
			"  lidbook plan move 2027-04-19 2027-04-21\n  lidbook plan for \"2027-04-21 Rook 12\" --order 12\n  lidbook plan drop \"2027-04-21 Rook 12\"",
		Args: cobra.NoArgs,
	}, func(_ *cobra.Command, v *book.View, _ []string) error {
		list := []planShape{}
		var rows [][]string
		planner := plan.New(course.New(v))
		for p := range v.Plans() {
			s := shapeOfPlan(v, p)
			w, told := planner.Wished(p)
			sure := ""
			if told {
				sure, s.Chance = w.Short(), new(round(w.Chance))
			}
			if v.NotGrafted(p) {
				sure, s.NotMade, s.Needs = "not made: move it or drop it", true, []needShape{}
			} else {
				s.Needs = shapeOfNeeds(planner.Needs(planner.LadderOf(p), planner.SizeOf(p)))
			}
			list, rows = append(list, s), append(rows, planRow(v, p, s, sure))
		}
		return a.show(list, func() { a.printPlans(v, list, rows, needs) })
	})
	c.Flags().BoolVar(&needs, "needs", false, "with what each of them takes, and what there is of it")
	c.AddCommand(planBatchCommand(a), planMoveCommand(a), planForCommand(a), planDropCommand(a))
	return c
}

// printPlans prints the planned grafts in rows, with what each takes where that is asked.
func (a *app) printPlans(v *book.View, list []planShape, rows [][]string, needs bool) {
	switch {
	case len(rows) == 0:
		a.line("no graft is planned")
	case !needs:
		a.table(rows)
	default:
		for i, row := range rows {
			a.table([][]string{row})
			a.printNeeds(v, "it takes", list[i].Needs)
		}
	}
}

func shapeOfPlan(v *book.View, p book.BatchPlan) planShape {
	s := planShape{
		ID: p.Batch.String(), Day: p.Day.String(), Line: p.Line, Breeder: v.Colony(p.Breeder).Name, Larvae: p.Larvae, Nucs: p.Nucs, Yard: v.Yard(p.Yard).Name,
		Virgins: p.Virgins, Queens: p.Queens, By: p.By.String(), Laying: p.Laying, Sure: p.Sure, Orders: []string{}, Why: p.Why, Planned: stamp(p.At.Instant, v.Zone()),
	}
	if p.Minute > 0 {
		s.Time = fmt.Sprintf("%02d:%02d", p.Minute/60, p.Minute%60)
	}
	for _, id := range p.Orders {
		s.Orders = append(s.Orders, v.Order(id).Number)
	}
	return s
}

func planRow(v *book.View, p book.BatchPlan, s planShape, sure string) []string {
	ready := " ready by "
	if p.Laying {
		ready = " laying by "
	}
	wish, nucs := "", ""
	if p.Queens > 0 {
		wish = plural(p.Queens, "queen") + prefixed(ready, p.By.ShortFrom(v.Today()))
	}
	if p.Nucs > 0 {
		nucs = plural(p.Nucs, "nuc") + prefixed(" in ", s.Yard)
	}
	return []string{
		strings.TrimSpace(p.Day.ShortFrom(v.Today()) + " " + s.Time), s.Line, fmt.Sprintf("%d larvae", p.Larvae) + prefixed(" from ", s.Breeder),
		nucs, wish, sure, prefixed("for order ", list(s.Orders)), p.Why,
	}
}
