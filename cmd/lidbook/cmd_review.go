package main

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/line"
	"lidmark/domain/review"
	"lidmark/domain/rules"
)

// reviewShape is a review in JSON. Chances are shares, worth is in queens.
type reviewShape struct {
	Day   string           `json:"day"`
	By    string           `json:"by"`
	Hand  []wareShape      `json:"hand"`
	Nucs  []reviewNucShape `json:"nucs"`
	Best  useShape         `json:"best"`
	Order useShape         `json:"inStandOrder"`
	None  useShape         `json:"none"`
	Exact bool             `json:"proven"`
}

// wareShape is like things in hand, in JSON.
type wareShape struct {
	What string  `json:"what"`
	Many int     `json:"many"`
	More float64 `json:"oneMoreIsWorth"`
}

// reviewNucShape is a nuc under review in JSON.
type reviewNucShape struct {
	Nuc    thing          `json:"nuc"`
	Yard   string         `json:"yard"`
	Decide bool           `json:"decide"`
	Sure   bool           `json:"sure"`
	Why    string         `json:"why,omitempty"`
	Loses  float64        `json:"loses"`
	Holds  course.Chances `json:"chances"`
	Best   int            `json:"best"`
	Chosen int            `json:"chosen"`
	Ways   []optionShape  `json:"ways"`
}

// optionShape is a way with a nuc in JSON.
type optionShape struct {
	Do      string       `json:"do"`
	Gives   string       `json:"gives,omitempty"`
	If      string       `json:"if,omitempty"`
	Given   float64      `json:"given"`
	Lays    float64      `json:"laying"`
	Ready   float64      `json:"ready"`
	Minutes float64      `json:"minutes"`
	Worth   float64      `json:"worth"`
	Sums    []review.Sum `json:"sums"`
	Warned  []string     `json:"warnings,omitempty"`
}

// useShape is a use of what is in hand, in JSON.
type useShape struct {
	Nucs     int     `json:"nucs"`
	Expected float64 `json:"expected"`
	Low      float64 `json:"low"`
	High     float64 `json:"high"`
	Worth    float64 `json:"worth"`
	Minutes  float64 `json:"minutes"`
}

// reviewFlags are what is asked of a review.
type reviewFlags struct {
	by                      string
	cells, virgins, minutes int
	accept                  []string
	all                     bool
}

func reviewCommand(a *app) *cobra.Command {
	var f reviewFlags
	c := a.reading(&cobra.Command{
		Use:     "review [NUC]",
		Short:   "Which nucs need a decision, what each way is worth, the best use of what is in hand",
		Long:    "Lists the nucs that need a decision, the worst first: what each most probably\nholds, the best way and the next, and how many of a hundred such nucs would have\na laying queen by the day. Below it stands the best use of the cells and virgins\nin hand over all nucs. With a name, all ways with that nuc, and what each is\nmade of. With --accept the best use is written down as decided for the nucs\nnamed: it is work of its day from then on.",
		Example: "  lidbook review\n  lidbook review --by 8.6 --cells 7 --virgins 3 --minutes 60\n  lidbook review E3                every way with one nuc, and why\n  lidbook review --accept E3,C1    decide as shown",
		Args:    cobra.MaximumNArgs(1),
	}, func(c *cobra.Command, v *book.View, args []string) error {
		r, err := a.review(c, v, f)
		if err != nil {
			return err
		}
		return a.showReview(v, r, args, f.all)
	})
	shows := c.RunE
	c.RunE = func(c *cobra.Command, args []string) error {
		if len(f.accept) == 0 {
			return shows(c, args)
		}
		return a.acceptReview(c, f)
	}
	a.completes(c, nucNames)
	c.Flags().StringSliceVar(&f.accept, "accept", nil, "decide for these `NUCS` as the best use has it; \"all\" for all that need a decision")
	c.Flags().StringVar(&f.by, "by", "", "the `DAY` by which queens are wanted (else as in your numbers)")
	amount(c, &f.cells, "cells", 0, "so many ripe cells in hand (else as in the book)")
	amount(c, &f.virgins, "virgins", 0, "so many virgins in hand (else as in the book)")
	amount(c, &f.minutes, "minutes", 0, "so many minutes for it all (else without limit)")
	c.Flags().BoolVar(&f.all, "all", false, "also nucs that need no decision")
	c.Flags().StringVar(&a.flags.yard, "yard", "", "only this `YARD`; what is in hand is shared out over all")
	return c
}

func (a *app) review(c *cobra.Command, v *book.View, f reviewFlags) (*review.Review, error) {
	by := review.Usual(v)
	if f.by != "" {
		d, err := line.ParseComing(f.by, v.Today())
		if err != nil {
			return nil, fmt.Errorf("--by: %w", err)
		}
		by = d
	}
	if by <= v.Today() {
		return nil, fmt.Errorf("--by %s is not ahead of %s: name a later day", by.Short(), v.Today().Short())
	}
	j := rules.Judge(v)
	hand := review.InHand(j.Course())
	if c.Flags().Changed("cells") {
		hand = hand.Of(false, f.cells)
	}
	if c.Flags().Changed("virgins") {
		hand = hand.Of(true, f.virgins)
	}
	hand.Minutes = float64(f.minutes)
	return review.Of(j, hand, by), nil
}

// acceptReview writes down what the best use decides for nucs.
func (a *app) acceptReview(c *cobra.Command, f reviewFlags) error {
	d, err := a.open()
	if err != nil {
		return err
	}
	return cmp.Or(d.accept(c, f), d.close())
}

func (d *desk) accept(c *cobra.Command, f reviewFlags) error {
	v := d.viewThen()
	r, err := d.review(c, v, f)
	if err != nil {
		return err
	}
	var only []book.NucID
	if f.accept[0] != "all" {
		if only, err = (finder{View: v}).nucs(f.accept...); err != nil {
			return err
		}
	}
	ways := map[int]int{}
	for i, n := range r.Nucs {
		if f.accept[0] == "all" && n.Decide || slices.Contains(only, n.NucNamed.Nuc) {
			ways[i] = r.This.Chosen[i]
		}
	}
	var facts []book.Fact
	for _, p := range r.Accept(ways) {
		facts = append(facts, p)
	}
	if len(facts) == 0 {
		d.line("nothing to decide: they are best left, and no look is worth while yet")
		return nil
	}
	return d.write(facts...)
}

func (a *app) showReview(v *book.View, r *review.Review, args []string, all bool) error {
	f, err := a.finder(v)
	if err != nil {
		return err
	}
	only := book.NucID{}
	if len(args) == 1 {
		n, err := f.nuc(args[0])
		if err != nil {
			return err
		}
		only = n.NucNamed.Nuc
	}
	var places []int
	for i, n := range r.Nucs {
		inYard := a.flags.yard == "" || v.Yard(n.Yard).Name == a.flags.yard
		if n.NucNamed.Nuc == only || only.IsZero() && inYard && (all || n.Decide) {
			places = append(places, i)
		}
	}
	return a.show(shapeOfReview(v, r, places), func() {
		if !only.IsZero() {
			a.printWays(r, places)
			return
		}
		a.printReview(v, r, places)
	})
}

func shapeOfReview(v *book.View, r *review.Review, places []int) reviewShape {
	s := reviewShape{
		Day: r.Day.String(), By: r.By.String(), Hand: []wareShape{}, Nucs: []reviewNucShape{},
		Best: shapeOfUse(r.This), Order: shapeOfUse(r.Order), None: shapeOfUse(r.None), Exact: r.This.Exact,
	}
	for i, w := range r.Hand.Wares {
		s.Hand = append(s.Hand, wareShape{w.Name, w.Many, round(r.More(i))})
	}
	for _, i := range places {
		n := r.Nucs[i]
		row := reviewNucShape{
			Nuc: thingOf(v, n.NucNamed.Nuc.Subject()), Yard: v.Yard(n.Yard).Name, Decide: n.Decide, Sure: n.Sure, Why: n.Why,
			Loses: round(n.Loses), Holds: n.Chances, Best: n.Best, Chosen: r.This.Chosen[i], Ways: []optionShape{},
		}
		for _, w := range n.Ways {
			row.Ways = append(row.Ways, shapeOfWay(r, w))
		}
		s.Nucs = append(s.Nucs, row)
	}
	return s
}

func shapeOfWay(r *review.Review, w review.Way) optionShape {
	s := optionShape{
		Do: r.Title(w), If: w.If(), Given: round(w.Given), Lays: round(w.Lays), Ready: round(w.Ready), Minutes: w.Minutes, Worth: round(w.Worth),
		Sums: r.Why(w),
	}
	if w.Gives() {
		s.Gives = r.Hand.Wares[w.Ware-1].Name
	}
	for _, reason := range w.Warned {
		s.Warned = append(s.Warned, reason.Why)
	}
	return s
}

func shapeOfUse(u review.Use) useShape {
	return useShape{u.Over, round(u.Expected), u.Low, u.High, round(u.Worth), u.Minutes}
}

func (a *app) printReview(v *book.View, r *review.Review, places []int) {
	if len(places) == 0 {
		a.line("No nuc needs a decision on %s.", v.Today().Short())
	}
	rows := [][]string{{"nuc", "most probably", "best", "laying", "if left", "loses"}}
	for _, i := range places {
		n := r.Nucs[i]
		best := n.Ways[n.Best]
		rows = append(rows, []string{n.Name, chanceWords(n.Chances), r.Title(best), hundred(best.Lays), hundred(n.Ways[0].Lays), fmt.Sprintf("%.2f", n.Loses)})
	}
	if len(places) > 0 {
		a.table(rows)
		a.line("laying of 100 by %s; what leaving it loses, in queens", r.By.Short())
	}
	a.printUse(r)
}

func (a *app) printUse(r *review.Review) {
	if r.Hand.Cells()+r.Hand.Virgins() == 0 {
		a.line("")
		a.line("No cell and no virgin in hand.")
		return
	}
	a.line("")
	for i, w := range r.Hand.Wares {
		a.line("in hand: %d × %s; one more would be worth %.2f queens", w.Many, w.Name, r.More(i))
	}
	var rows [][]string
	for i, n := range r.Nucs {
		if j := r.This.Chosen[i]; j > 0 && n.Ways[j].Gives() {
			rows = append(rows, []string{"  " + n.Name, r.Title(n.Ways[j]), hundred(n.Ways[j].Lays), "if left " + hundred(n.Ways[0].Lays)})
		}
	}
	a.table(rows)
	a.line("laying queens of %s by %s, four times of five:", plural(r.This.Over, "nuc"), r.By.Short())
	for _, u := range []struct {
		name string
		use  review.Use
	}{{"this use", r.This}, {"in stand order", r.Order}, {"none of them", r.None}} {
		a.line("  %-15s %g to %g, %.1f on average", u.name, u.use.Low, u.use.High, u.use.Expected)
	}
}

func (a *app) printWays(r *review.Review, places []int) {
	for _, i := range places {
		n := r.Nucs[i]
		a.line("%s  %s", n.Name, chanceWords(n.Chances))
		for j, w := range n.Ways {
			mark := ""
			if j == n.Best {
				mark = ", the best"
			}
			a.line("  %s: %s of 100 laying by %s, worth %.2f queens%s", r.Title(w), hundred(w.Lays), r.By.Short(), w.Worth, mark)
			for _, s := range r.Why(w) {
				if round(s.Queens) != 0 {
					a.line("    %+.2f  %s", s.Queens, s.Words)
				}
			}
			for _, reason := range w.Warned {
				a.line("    but: %s", reason.Why)
			}
		}
	}
}

func hundred(p float64) string { return fmt.Sprintf("%.0f", 100*p) }

// chanceWords are the chances of a nuc that are not small, the greatest first.
func chanceWords(c course.Chances) string {
	var said []string
	for _, k := range c.Told() {
		said = append(said, fmt.Sprintf("%s %.0f %%", k.Name, 100*k.Chance))
	}
	return strings.Join(said, ", ")
}
