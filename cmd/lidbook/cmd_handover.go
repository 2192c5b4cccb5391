package main

import (
	"cmp"
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
)

// handOverFlags are what is said of queens who were handed over.
type handOverFlags struct {
	book.QueenHandedOver
	order string
	asIs  bool // without what the order wants
}

func handOverCommand(a *app) *cobra.Command {
	var h handOverFlags
	c := a.reading(&cobra.Command{
		Use:   "handover [QUEEN...]",
		Short: "Who gets which queen and what is missing; with names, write down that they were handed over",
		Long: "Deals the caged queens, and those who have proven themselves in nucs, out to the\nopen orders, by priority and day: who gets whom, when they are sent or fetched and\n" +
			"caught, what is missing since when, which batch gives fewer than planned for it, and\nby when it is to be expected. With the names of queens, of the cages they are in or\nthe nucs they were caught from, it writes down that they were handed over. Who lacks a\nmark, disc or clipped wing that her order wants, or is a virgin, is told first, and not written.",
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
	c.Flags().BoolVar(&h.asIs, "as-is", false, "also a virgin, and without the mark, disc or clipped wing that the order wants")
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
	all := f.oneByOne(names)
	for _, name := range all {
		q, err := f.goes(name, went)
		if err != nil {
			return err
		}
		h.Queen, went = q.Queen, append(went, q.Queen)
		facts = append(facts, h.QueenHandedOver)
	}
	if err := d.asOrdered(h, went, all); err != nil {
		return err
	}
	v, minds := d.viewThen(), newMinding(d)
	for _, f := range facts {
		minds.of(v, rules.PlanOf(v, f))
	}
	return d.write(facts...)
}

// goes is the queen of a name who is to be handed over behind those who go before her.
func (f finder) goes(name string, went []book.QueenID) (*book.Queen, error) {
	q, err := f.queen(name, went...)
	if err == nil && q.InHand() {
		return q, nil
	}
	if err == nil {
		err = fmt.Errorf("%s: %s is no longer in hand, and no other is called so; see lidbook handover", name, rules.Name(f.View, q.Queen.Subject()))
	}
	if n, no := f.nuc(name); no == nil && f.View.Nuc(n.NucNamed.Nuc).Condition().Queenright() {
		err = fmt.Errorf("%w; %s is a nuc: write first into which cage its queen was caught, for cage 7 lidbook write %q, then hand over the one in that cage", err, name, name+" k7")
	}
	return nil, err
}

// asOrdered refuses virgins, and queens who lack what their order wants, with what writes it down, unless
// they are meant to go as they are; and minds more queens than are owed.
func (d *desk) asOrdered(h handOverFlags, went []book.QueenID, names []string) error {
	v := d.viewThen()
	o := v.Order(h.Order)
	if h.Order.IsZero() {
		return nil
	}
	if open := o.Open(); len(went) > open && open > 0 {
		d.line("  mind: %s for order %s, of which %d open. Look for whom the others are meant", plural(len(went), "queen"), o.Number, open)
	}
	if h.asIs {
		return nil
	}
	if err := noVirgins(v, o, went, names); err != nil {
		return err
	}
	var all handover.Lacks
	var lines []string
	for i, id := range went {
		lacks := handover.LacksOf(o, v.Queen(id).Mark)
		all = handover.Lacks{Mark: all.Mark || lacks.Mark, Disc: all.Disc || lacks.Disc, Clip: all.Clip || lacks.Clip}
		if lacks.Any() {
			lines = append(lines, markLine(v, names[i], lacks))
		}
	}
	if len(lines) == 0 {
		return nil
	}
	who := "she has"
	if len(lines) > 1 {
		who = plural(len(lines), "queen") + " have"
	}
	return fmt.Errorf("order %s wants %s, and by the book %s none: do it and write it down (%s), or hand over as it is with --as-is; nothing written",
		o.Number, all.Wanted(), who, strings.Join(lines, "; "))
}

// noVirgins refuses virgins for an order.
func noVirgins(v *book.View, o *book.Order, went []book.QueenID, names []string) error {
	var virgins []string
	for i, id := range went {
		if v.Queen(id).Virgin {
			virgins = append(virgins, names[i])
		}
	}
	if len(virgins) == 0 {
		return nil
	}
	return fmt.Errorf("by the book %s in hand for order %s (%s), and nobody saw them lay: take queens who do, see lidbook handover, or hand over as it is with --as-is; nothing written",
		plural(len(virgins), "virgin"), o.Number, strings.Join(virgins, ", "))
}

// markLine is the line that writes down what a queen lacks.
func markLine(v *book.View, name string, l handover.Lacks) string {
	if _, err := (finder{View: v}).nuc(name); err == nil {
		name = "from " + name
	}
	if strings.ContainsAny(name, " ,") {
		name = strconv.Quote(name)
	}
	words := "lidbook mark " + name
	if l.Disc {
		words += " --disc NUMBER"
	}
	if l.Clip {
		words += " --clipped"
	}
	return words
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
