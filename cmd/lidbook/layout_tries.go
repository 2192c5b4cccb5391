package main

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/line"
	"lidmark/domain/rules"
	"lidmark/domain/siting"
	"lidmark/domain/yard"
)

// tryShape is a try-out of a layout, in JSON.
type tryShape struct {
	ID     string `json:"id"`
	Name   string `json:"name"`
	Kept   string `json:"kept"`
	Stands int    `json:"standsOtherwise"`
	Fronts int    `json:"frontsOtherwise"`
	From   string `json:"plannedFrom,omitempty"`
}

// triesOf are the try-outs of a yard.
func triesOf(v *book.View, y *book.Yard) []tryShape {
	all := []tryShape{}
	for _, l := range v.Layouts(y.Yard) {
		s := tryShape{ID: l.Layout.String(), Name: l.Name, Kept: stamp(l.At.Instant, v.Zone()), Stands: len(l.Stands), Fronts: len(l.Fronts)}
		if l.Planned() {
			s.From = l.From.String()
		}
		all = append(all, s)
	}
	return all
}

// tryOut is the try-out of a name; without one the plan of the yard, else the only one.
func (f finder) tryOut(y *book.Yard, name string) (book.Layout, error) {
	all := f.Layouts(y.Yard)
	switch {
	case len(all) == 0:
		return book.Layout{}, fmt.Errorf("no try-out is kept of %s: begin one with lidbook layout try NAME", y.Name)
	case name != "":
		return one("try-out", name, slices.Values(all), func(l book.Layout) string { return l.Name })
	case len(all) == 1:
		return all[0], nil
	}
	if l, ok := f.PlannedLayout(y.Yard); ok {
		return l, nil
	}
	var names []string
	for _, l := range all {
		names = append(names, l.Name)
	}
	return book.Layout{}, fmt.Errorf("%d try-outs are kept of %s: name one of %s", len(all), y.Name, shortList(names))
}

func layoutTry(a *app) *cobra.Command {
	var f layoutFlags
	c := a.deciding(&cobra.Command{
		Use:   "try NAME",
		Short: "Keep a try-out: as the yard stands, or improved, or with more boxes",
		Long:  "Keeps how the boxes of a yard might stand beside how they do. Nothing is carried: it is worked\nat with lidbook layout set or in the window, and made the plan with lidbook layout plan.",
		Example: "  lidbook layout try \"by the hedge\"\n  lidbook layout try turned --improve turn --mark \"8 blue disc\"\n" +
			"  lidbook layout try more --add 4",
		Args: cobra.ExactArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error { return d.layoutTry(f, args[0]) })
	f.search(c)
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	return c
}

func (d *desk) layoutTry(f layoutFlags, name string) error {
	v := d.view()
	y, err := finder{View: v}.homeOr(d.flags.yard)
	if err != nil {
		return err
	}
	if name == "" {
		return errors.New("a try-out needs a name, like \"by the hedge\"")
	}
	for _, l := range v.Layouts(y.Yard) {
		if strings.EqualFold(l.Name, name) {
			return fmt.Errorf("try-out %s is there already: take another name, work at it with lidbook layout set, or throw it away with lidbook layout drop %[1]q", l.Name)
		}
	}
	_, now := shapeOfLayout(v, y)
	try := now
	task, err := f.task(v, y, now, d.newStands(now))
	if err != nil {
		return err
	}
	if task != nil {
		found, err := f.found(*task, v)
		if err != nil {
			return err
		}
		try = found.Layout
	}
	t := try.TriedAs(book.LayoutID(d.ids.Next()), name, now)
	if task != nil && t.Nothing() {
		return fmt.Errorf("nothing was found that pays: no try-out is kept; look longer with --tries, or say with --mark which marks are to hand")
	}
	if err := d.write(t); err != nil {
		return err
	}
	d.sayChanges(yard.Of(d.view(), y.Yard), t)
	return nil
}

// newStands gives stands that are new in a try-out an id and a letter that is free.
func (d *desk) newStands(l yard.Layout) func() (book.StandID, string) {
	number := 0
	return func() (book.StandID, string) {
		for {
			number++
			letter := fmt.Sprintf("S%d", number)
			if !slices.ContainsFunc(l.Stands, func(s yard.Stand) bool { return strings.EqualFold(s.Letter, letter) }) {
				return book.StandID(d.ids.Next()), letter
			}
		}
	}
}

// sayChanges says what a try-out changes, a line a stand.
func (d *desk) sayChanges(now yard.Layout, t book.LayoutTried) {
	const few = 20
	changes := yard.ChangesOf(now, now.Try(t), nil, nil)
	for i, c := range changes {
		if i == few {
			d.line("and %s more", plural(len(changes)-few, "stand"))
			return
		}
		words := c.Words()
		if c.Was == nil {
			words += fmt.Sprintf(" at %g,%g", round(c.Is.At.X), round(c.Is.At.Y))
		}
		if faced := c.Faced(); c.Was != nil && len(faced) > 0 {
			words += ": " + c.Is.FacesWords(faced)
		}
		d.line("  %s", words)
	}
}

func layoutPlan(a *app) *cobra.Command {
	var from string
	c := a.deciding(&cobra.Command{
		Use:     "plan NAME",
		Short:   "Make a try-out the plan of its yard, to be carried out from a day on",
		Long:    "Its stands and fronts become tasks: carrying and turning after dusk, those from which virgins\nfly held back until they lay. Another plan of the yard gives way.",
		Example: "  lidbook layout plan \"by the hedge\" --from sat",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error { return d.layoutPlan(args[0], from) })
	c.Flags().StringVar(&from, "from", "", "from this `DAY` on (else as soon as no virgin flies from what is carried)")
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	return c
}

func (d *desk) layoutPlan(name, from string) error {
	f := finder{View: d.view()}
	y, err := f.homeOr(d.flags.yard)
	if err != nil {
		return err
	}
	l, err := f.tryOut(y, name)
	if err != nil {
		return err
	}
	now := yard.Of(f.View, y.Yard)
	safe, held := safeFrom(f.View, yard.ChangesOf(now, now.Try(l.LayoutTried), nil, nil))
	day := safe
	if from != "" {
		if day, err = line.ParseComing(from, f.Today()); err != nil {
			return fmt.Errorf("--from: %w", err)
		}
	}
	if f.Left(l).Nothing() {
		return fmt.Errorf("try-out %s is the yard as it stands: change something first with lidbook layout set", l.Name)
	}
	if err := d.write(book.LayoutPlanned{Layout: l.Layout, Yard: y.Yard, From: day}); err != nil {
		return err
	}
	if len(held) > 0 {
		d.line("virgins fly from %s: what they stand on waits until they lay, all of it safe from %s", shortList(held), safe.Short())
	}
	return nil
}

// safeFrom is the day from which no virgin flies from a stand that is carried, and the
// nucs from which one flies now.
func safeFrom(v *book.View, changes []yard.Change) (day calendar.Day, held []string) {
	day = v.Today()
	c := course.New(v)
	for _, change := range changes {
		if change.Was == nil || !change.Carried() {
			continue
		}
		for _, n := range change.Is.Nucs {
			if until, flies := rules.FliesUntil(c, v.Nuc(n.ID)); flies {
				day, held = max(day, until), append(held, n.Name)
			}
		}
	}
	return day, held
}

func layoutDrop(a *app) *cobra.Command {
	c := a.deciding(&cobra.Command{
		Use:     "drop NAME",
		Short:   "Throw a try-out away, whether it is the plan or not",
		Example: "  lidbook layout drop \"by the hedge\"",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f := finder{View: d.view()}
		y, err := f.homeOr(d.flags.yard)
		if err != nil {
			return err
		}
		l, err := f.tryOut(y, args[0])
		if err != nil {
			return err
		}
		return d.write(book.LayoutDropped{Layout: l.Layout, Yard: y.Yard})
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	return c
}

// found is the best layout that a search finds.
func (f layoutFlags) found(task siting.Task, v *book.View) (siting.Found, error) {
	if f.tries > 0 {
		task.Tries = f.tries
	}
	task.Seed = uint64(f.seed)
	s, err := siting.New(task, v.Numbers())
	if err != nil {
		return siting.Found{}, err
	}
	const atOnce = 10_000
	for s.Step(atOnce) {
		continue
	}
	return s.Best(), nil
}

// search gives a command the flags of a search.
func (f *layoutFlags) search(c *cobra.Command) {
	c.Flags().StringVar(&f.improve, "improve", "", "look for a better layout: turn (stands are turned, fronts marked) or move (and carried) `HOW`")
	c.Flags().StringArrayVar(&f.marks, "mark", nil, "a front `MARK` to hand and for how many: \"8 blue disc\"; can be said again")
	amount(c, &f.add, "add", 0, "find places for so many single `BOXES` more")
	amount(c, &f.tries, "tries", 0, "try so many `LAYOUTS` (else 2000 a box)")
	amount(c, &f.seed, "seed", 0, "begin the search by another `NUMBER`")
}
