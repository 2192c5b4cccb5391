package main

import (
	"cmp"
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
)

// handOverFlags are what is said of queens who were handed over.
type handOverFlags struct {
	book.QueenHandedOver
	order string
}

func handOverCommand(a *app) *cobra.Command {
	var h handOverFlags
	c := a.reading(&cobra.Command{
		Use:   "handover [QUEEN...]",
		Short: "Who gets which queen and what is missing; with names, write down that they were handed over",
		Long: "Deals the caged queens, and those who have proven themselves in nucs, out to the\nopen orders, by priority and day: who gets whom, when they are sent or fetched and\n" +
			"caught, what is missing since when, which batch gives fewer than planned for it, and\nby when it is to be expected. With the names of queens, of the cages they are in or\nthe nucs they were caught from, it writes down that they were handed over.",
		Example: "  lidbook handover\n  lidbook handover 7 8 --order 12 --attendants\n  lidbook handover A1-A9 --order 12\n  lidbook handover \"Rook 3\" --to \"a neighbour\"",
		Args:    cobra.ArbitraryArgs,
	}, func(_ *cobra.Command, v *book.View, _ []string) error {
		s := shapeOfSheet(plan.New(course.New(v)))
		return a.show(s, func() { a.printSheet(v, s) })
	})
	shows := c.RunE
	c.RunE = func(c *cobra.Command, args []string) error {
		if len(args) == 0 {
			return shows(c, args)
		}
		return a.handOver(h, args)
	}
	c.Flags().StringVar(&a.flags.by, "by", "", "`WRITER` (else $LIDMARK_WRITER, else the only person of the book)")
	c.Flags().StringVar(&h.order, "order", "", "for the order of this `NUMBER`")
	c.Flags().StringVar(&h.To, "to", "", "to `WHOM`")
	c.Flags().BoolVar(&h.With, "attendants", false, "with attendants")
	return a.completes(c, queenNames)
}

// handOver writes down that queens were handed over.
func (a *app) handOver(h handOverFlags, names []string) error {
	d, err := a.open()
	if err != nil {
		return err
	}
	return cmp.Or(d.handOver(h, names), d.close())
}

func (d *desk) handOver(h handOverFlags, names []string) error {
	f := finder{View: d.viewThen()}
	if h.order != "" {
		o, err := finder{View: d.view()}.order(h.order)
		if err != nil {
			return err
		}
		h.Order = o.Order
	}
	var facts []book.Fact
	var went []book.QueenID
	for _, name := range f.oneByOne(names) {
		q, err := f.queen(name, went...)
		if err == nil && !q.InHand() && strings.EqualFold(plainQueen(name), caughtFrom(f.View, q)) {
			err = fmt.Errorf("%s: %s is no longer in hand, and no other from there sits in a cage; see lidbook handover", name, rules.Name(f.View, q.Queen.Subject()))
		}
		if _, no := f.nuc(name); err != nil && no == nil {
			err = fmt.Errorf("%w; %s is a nuc: write first into which cage its queen was caught, for cage 7 lidbook write %q, then hand over the one in that cage", err, name, name+" k7")
		}
		if err != nil {
			return err
		}
		h.Queen, went = q.Queen, append(went, q.Queen)
		facts = append(facts, h.QueenHandedOver)
	}
	d.minds(d.plansOf(facts)...)
	return d.write(facts...)
}

// oneByOne are names of queens, those of nucs in a row, A1-A9, each by itself.
func (f finder) oneByOne(names []string) (all []string) {
	for _, name := range names {
		_, err := f.queen(name)
		nucs, no := f.nucs(name)
		if err == nil || no != nil {
			all = append(all, name)
			continue
		}
		for _, id := range nucs {
			all = append(all, f.Nuc(id).Name)
		}
	}
	return all
}
