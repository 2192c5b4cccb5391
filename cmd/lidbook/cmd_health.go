package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// aboutAnything makes a command that writes a like fact about each of the things
// that its arguments name; the last ones, so many, say what.
func (a *app) aboutAnything(c *cobra.Command, say int, fact func(*desk, book.Subject, []string) (book.Fact, error)) *cobra.Command {
	c = a.writing(c, func(d *desk, _ *cobra.Command, args []string) error {
		f, err := d.finder(d.viewThen())
		if err != nil {
			return err
		}
		names := len(args) - say
		all, err := f.things(args[:names])
		if err != nil {
			return err
		}
		var facts []book.Fact
		for _, of := range all {
			made, err := fact(d, of, args[names:])
			if err != nil {
				return err
			}
			facts = append(facts, made)
		}
		return d.write(facts...)
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "look for a nuc's name in this `YARD` first")
	return c
}

func suspectCommand(a *app) *cobra.Command {
	return a.aboutAnything(&cobra.Command{
		Use:     "suspect NAME... DISEASE",
		Short:   "Write down a suspected disease: the yard is on standstill",
		Long:    "Puts the yard of a colony or nuc, or a whole yard, on standstill until lidbook\nclear. What is to be reported, and to whom, the local authority says.",
		Example: "  lidbook suspect S2 \"foul brood\"\n  lidbook trace S2 --since 2027-04-20",
		Args:    cobra.MinimumNArgs(2),
	}, 1, func(_ *desk, of book.Subject, args []string) (book.Fact, error) {
		return book.DiseaseSuspected{Of: of, What: args[0]}, nil
	})
}

func clearCommand(a *app) *cobra.Command {
	var why string
	c := a.aboutAnything(&cobra.Command{
		Use:     "clear NAME...",
		Short:   "Write down that a suspicion has ended",
		Example: "  lidbook clear S2 --why \"sample clean\"",
		Args:    cobra.MinimumNArgs(1),
	}, 0, func(_ *desk, of book.Subject, _ []string) (book.Fact, error) {
		return book.SuspicionEnded{Of: of, Why: why}, nil
	})
	c.Flags().StringVar(&why, "why", "", "the `REASON`")
	return c
}

func treatCommand(a *app) *cobra.Command {
	var wait int
	c := a.aboutAnything(&cobra.Command{
		Use:     "treat NAME... WITH",
		Short:   "Write down a treatment, and how long the label asks to wait",
		Long:    "What may be used, and how, the label says, and a veterinarian where the law asks\nfor one.",
		Example: "  lidbook treat S2 \"oxalic acid\" --wait 0\n  lidbook treat A1-A6 \"oxalic acid\"",
		Args:    cobra.MinimumNArgs(2),
	}, 1, func(_ *desk, of book.Subject, args []string) (book.Fact, error) {
		return book.Treated{Of: of, With: args[0], Wait: wait}, nil
	})
	amount(c, &wait, "wait", 0, "`DAYS` to wait, as the label asks")
	return c
}

// yardOnly is the yard of a subject that must be one.
func yardOnly(of book.Subject) (book.YardID, error) {
	y, ok := of.Yard()
	if !ok {
		return y, fmt.Errorf("name a yard")
	}
	return y, nil
}

func inspectedCommand(a *app) *cobra.Command {
	return a.aboutAnything(&cobra.Command{
		Use:     "inspected YARD RESULT",
		Short:   "Write down that an inspector saw a yard",
		Example: "  lidbook inspected \"Home Hill\" \"nothing found\"",
		Args:    cobra.MinimumNArgs(2),
	}, 1, func(_ *desk, of book.Subject, args []string) (book.Fact, error) {
		y, err := yardOnly(of)
		return book.Inspected{Yard: y, Result: args[0]}, err
	})
}

func paperCommand(a *app) *cobra.Command {
	return a.aboutAnything(&cobra.Command{
		Use:     "paper YARD NAME UNTIL",
		Short:   "Write down a certificate or permit, good until a day",
		Example: "  lidbook paper \"Home Hill\" \"health certificate\" 2027-07-31",
		Args:    cobra.MinimumNArgs(3),
	}, 2, func(d *desk, of book.Subject, args []string) (book.Fact, error) {
		y, err := yardOnly(of)
		if err != nil {
			return nil, err
		}
		until, err := parseDay(args[1], calendar.DayOf(d.now, d.zone))
		return book.PaperHeld{Yard: y, Name: args[0], Expires: until}, err
	})
}

func offCommand(a *app) *cobra.Command {
	return a.writing(&cobra.Command{
		Use:     "off PERSON FROM [TO]",
		Short:   "Write down that somebody is away, both days included",
		Example: "  lidbook off Ida 2027-05-20 2027-05-23\n  lidbook off Jon tomorrow",
		Args:    cobra.RangeArgs(2, 3),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		p, err := finder{View: d.view()}.person(args[0])
		if err != nil {
			return err
		}
		today := calendar.DayOf(d.now, d.zone)
		from, err := parseDay(args[1], today)
		to, err2 := parseDay(args[len(args)-1], today)
		switch {
		case err != nil:
			return err
		case err2 != nil:
			return err2
		case to < from:
			return fmt.Errorf("%s is before %s", to, from)
		}
		return d.write(book.DaysOff{Person: p.Person, From: from, To: to})
	})
}

func putOffCommand(a *app) *cobra.Command {
	var why string
	c := a.aboutAnything(&cobra.Command{
		Use:     "putoff NAME... RULE UNTIL",
		Short:   "Put off what a rule asks of a thing, until a day",
		Long:    "The rule is named as lidbook needs --json does:\n  " + strings.Join(ruleNames(), ", "),
		Example: "  lidbook putoff A3 \"look for eggs\" +3 --why \"rain\"",
		Args:    cobra.MinimumNArgs(3),
	}, 2, func(d *desk, of book.Subject, args []string) (book.Fact, error) {
		until, err := parseDay(args[1], calendar.DayOf(d.now, d.zone))
		if err != nil {
			return nil, err
		}
		for _, r := range ruleNames() {
			if r == args[0] {
				return book.PutOff{Rule: r, Of: of, Until: until, Why: why}, nil
			}
		}
		return nil, fmt.Errorf("no rule %q: there is %s", args[0], strings.Join(ruleNames(), ", "))
	})
	c.Flags().StringVar(&why, "why", "", "the `REASON`")
	return c
}

func ruleNames() []string {
	var all []string
	for _, r := range rules.All() {
		all = append(all, string(r.Rule))
	}
	return all
}

func noteCommand(a *app) *cobra.Command {
	return a.aboutAnything(&cobra.Command{
		Use:     "note NAME... TEXT",
		Short:   "Write a note about anything",
		Example: "  lidbook note S2 \"gave way at the gate\"\n  lidbook note \"batch 4\" \"bar 2 was dry\"",
		Args:    cobra.MinimumNArgs(2),
	}, 1, func(_ *desk, of book.Subject, args []string) (book.Fact, error) {
		return book.Noted{Of: of, Text: args[0]}, nil
	})
}
