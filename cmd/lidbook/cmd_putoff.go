package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/crew"
	"lidmark/domain/line"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
)

func putOffCommand(a *app) *cobra.Command {
	var why string
	c := a.aboutAnything(&cobra.Command{
		Use:     "putoff NAME... RULE UNTIL",
		Short:   "Put off what a rule asks of a thing, until a day",
		Long:    "The rule is named as lidbook needs --json does:\n\n" + strings.Join(ruleNames(), ", "),
		Example: "  lidbook putoff A3 \"look for eggs\" +3 --why \"rain\"",
		Args:    cobra.MinimumNArgs(3),
	}, 2, func(d *desk, of book.Subject, args []string) (book.Fact, error) {
		until, err := line.ParseDay(args[1], calendar.DayOf(d.now, d.zone))
		if err != nil {
			return nil, err
		}
		id, _ := of.Batch()
		if p, planned := d.view().BatchPlan(id); planned {
			return nil, fmt.Errorf("the steps of %s move with its graft: lidbook plan move %s DAY", rules.Name(d.view(), of), argument(finder{View: d.view()}.called(p)))
		}
		for _, r := range ruleNames() {
			if r == args[0] {
				return book.PutOff{Rule: r, Of: of, Until: until, Why: why}, nil
			}
		}
		return nil, fmt.Errorf("no rule %q: there is %s", args[0], strings.Join(ruleNames(), ", "))
	}, (*desk).mindsWaiting)
	c.Flags().StringVar(&why, "why", "", "the `REASON`")
	return c
}

// mindsWaiting says what it is expected to cost that all of it is put off.
func (d *desk) mindsWaiting(facts []book.Fact) {
	var all []book.PutOff
	for _, f := range facts {
		if f, is := f.(book.PutOff); is {
			all = append(all, f)
		}
	}
	if len(all) == 0 {
		return
	}
	until := all[0].Until // one day is said for all
	if cost, ok := crew.PutOff(rules.Judge(d.viewThen()), until, all...); ok {
		d.line("  mind: %s", plan.Sentence(cost.Said(until, calendar.DayOf(d.now, d.zone))))
	}
}

func ruleNames() []string {
	var all []string
	for _, r := range rules.All() {
		all = append(all, string(r.Rule))
	}
	return all
}
