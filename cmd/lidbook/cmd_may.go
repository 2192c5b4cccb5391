package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// verdictShape is what the rules say of a plan, in JSON.
type verdictShape struct {
	Plan    string        `json:"plan"`
	OK      bool          `json:"ok"`
	Refused []reasonShape `json:"refused"`
	Warned  []reasonShape `json:"warned"`
}

// reasonShape is a reason and the way out, in JSON.
type reasonShape struct {
	Why string `json:"why"`
	Do  string `json:"do"`
}

func mayCommand(a *app) *cobra.Command {
	c := a.reading(&cobra.Command{
		Use:   "may LINE...",
		Short: "Whether the rules let a plan pass, typed as one would write it up",
		Long: "Judges what you mean to do, and writes nothing: refused with the reason and the\nway out, warned, or neither. What has happened is never refused: write it up with\n" +
			"lidbook write.",
		Example: "  lidbook may \"B4 c4\"",
		Args:    cobra.MinimumNArgs(1),
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		f, err := a.finder(v)
		if err != nil {
			return err
		}
		verdicts := []verdictShape{}
		refused, judged := 0, rules.Judge(v)
		for _, text := range args {
			l, err := line.Parse(text, line.Context{View: v, Now: v.On(), Yard: f.in, Planned: line.Sheet(judged.Day(v.Today()))})
			if err != nil {
				return err
			}
			for _, fact := range l.Facts() {
				s := verdictOf(v, judged, fact)
				refused += len(s.Refused)
				verdicts = append(verdicts, s)
			}
		}
		if err := a.show(verdicts, func() { a.printVerdicts(verdicts) }); err != nil {
			return err
		}
		if refused > 0 {
			return refuse("%s not to be done", plural(refused, "thing"))
		}
		return nil
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "look for names in this `YARD` first")
	return c
}

func verdictOf(v *book.View, judged *rules.Judged, fact book.Fact) verdictShape {
	s := verdictShape{Plan: line.Words(fact, line.In(v)), OK: true, Refused: []reasonShape{}, Warned: []reasonShape{}}
	plan := rules.PlanOf(v, fact)
	if plan == nil {
		return s
	}
	verdict := judged.May(plan)
	s.OK = verdict.OK()
	for _, r := range verdict.Refused {
		s.Refused = append(s.Refused, reasonShape{r.Why, r.Do})
	}
	for _, r := range verdict.Warned {
		s.Warned = append(s.Warned, reasonShape{r.Why, r.Do})
	}
	return s
}

func (a *app) printVerdicts(all []verdictShape) {
	for _, s := range all {
		word := "yes"
		if !s.OK {
			word = "no"
		}
		a.line("%s: %s", s.Plan, word)
		for _, r := range s.Refused {
			a.line("  %s. %s", r.Why, r.Do)
		}
		for _, r := range s.Warned {
			a.line("  mind: %s. %s", r.Why, r.Do)
		}
	}
}
