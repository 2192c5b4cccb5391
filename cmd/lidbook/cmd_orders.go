package main

import (
	"fmt"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
)

// orderShape is an order in JSON.
type orderShape struct {
	Number   string   `json:"number"`
	Customer string   `json:"customer"`
	Queens   int      `json:"queens"`
	Line     string   `json:"line,omitempty"`
	From     string   `json:"from,omitempty"`
	By       string   `json:"by"`
	Handed   int      `json:"handedOver"`
	Claimed  int      `json:"claimed"`
	Open     int      `json:"open"`
	Others   []string `json:"substitutes"`
	Marked   bool     `json:"marked,omitempty"`
	Disc     bool     `json:"disc,omitempty"`
	Clipped  bool     `json:"clipped,omitempty"`
	Sent     bool     `json:"sent,omitempty"`
	Journey  int      `json:"journeyDays,omitempty"`
	Priority int      `json:"priority,omitempty"`
}

// orderCard is an order with its queens in JSON: those handed over, those
// caged who will do, and nucs from which one can be caught by its day.
type orderCard struct {
	orderShape
	Went    []orderedShape `json:"queensHandedOver"`
	Caged   []orderedShape `json:"caged"`
	Long    []orderedShape `json:"cagedTooLong"`
	Catch   []catchShape   `json:"canBeCaught"`
	History []lineShape    `json:"history"`
}

// orderedShape is a queen as an order lists her, in JSON.
type orderedShape struct {
	Name   string `json:"name"`
	Cage   string `json:"cage,omitempty"`
	Mark   string `json:"mark,omitempty"`
	Line   string `json:"line,omitempty"`
	Nuc    string `json:"nuc,omitempty"`
	Caught string `json:"caught,omitempty"`
	Handed string `json:"handedOver,omitempty"`
}

// catchShape is a nuc whose queen will do for an order, in JSON.
type catchShape struct {
	Nuc   string `json:"nuc"`
	Yard  string `json:"yard"`
	Line  string `json:"line,omitempty"`
	Ready string `json:"readyFrom"`
	Still bool   `json:"standstill,omitempty"`
	Stays string `json:"stays,omitempty"` // why she may not be caught by then
}

func ordersCommand(a *app) *cobra.Command {
	var closed bool
	cmd := a.reading(&cobra.Command{
		Use:     "orders [NUMBER|CUSTOMER]",
		Short:   "Orders: how many queens are owed, and by when; or one with its queens",
		Long:    "Lists the open orders, with --all those closed too. With a number, or a customer's\nname, each queen handed over for it, the caged ones who will do, and the nucs from\nwhich one can be caught in time.",
		Example: "  lidbook orders\n  lidbook orders 12\n  lidbook orders Club",
		Args:    cobra.MaximumNArgs(1),
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		if len(args) == 1 {
			return a.orderCards(v, args[0])
		}
		list := []orderShape{}
		var open, ended [][]string
		for o := range v.Orders() {
			list = append(list, shapeOfOrder(o))
			row := []string{"order " + o.Number, o.Customer, fmt.Sprintf("%d of %d open", o.Open(), o.Queens), lineWords(o.Line, o.Substitute), windowWords(v, o), wantedWords(o), priorityWords(o)}
			if o.Open() > 0 {
				open = append(open, row)
			} else {
				ended = append(ended, row)
			}
		}
		return a.show(list, func() { a.printOrders(open, ended, closed) })
	})
	cmd.Flags().BoolVar(&closed, "all", false, "those of which no queen is open too")
	return cmd
}

// printOrders lists the open orders, and those closed where they are asked for.
func (a *app) printOrders(open, ended [][]string, all bool) {
	a.table(open)
	switch {
	case len(ended) == 0:
	case all:
		a.table(ended)
	default:
		a.line("%s closed, see lidbook orders --all", plural(len(ended), "order"))
	}
}

func shapeOfOrder(o *book.Order) orderShape {
	return orderShape{
		o.Number, o.Customer, o.Queens, o.Line, o.From.String(), o.By.String(), len(o.Handed), o.Claimed, o.Open(), append([]string{}, o.Substitute...),
		o.Marked, o.Disc, o.Clipped, o.Sent, o.Journey, o.Priority,
	}
}

func (a *app) orderCards(v *book.View, name string) error {
	f := finder{View: v}
	orders := f.customer(name)
	if len(orders) == 0 {
		o, err := f.order(name)
		if err != nil {
			return err
		}
		orders = []*book.Order{o}
	}
	cards := []orderCard{}
	for _, o := range orders {
		cards = append(cards, cardOfOrder(v, o))
	}
	return a.show(cards, func() {
		for i, o := range orders {
			a.printOrder(v, o, cards[i])
		}
	})
}

func cardOfOrder(v *book.View, o *book.Order) orderCard {
	card := orderCard{
		orderShape: shapeOfOrder(o), Went: []orderedShape{}, Caged: []orderedShape{}, Long: []orderedShape{}, Catch: []catchShape{},
		History: history(v, o.Order.Subject()),
	}
	for _, id := range o.Handed {
		card.Went = append(card.Went, shapeOfOrdered(v, v.Queen(id)))
	}
	if o.Open() == 0 {
		return card
	}
	fit, long := rules.CagedFor(v, o)
	for _, q := range fit {
		card.Caged = append(card.Caged, shapeOfOrdered(v, q))
	}
	for _, q := range long {
		card.Long = append(card.Long, shapeOfOrdered(v, q))
	}
	card.Catch = catches(v, o)
	return card
}

func shapeOfOrdered(v *book.View, q *book.Queen) orderedShape {
	zone := v.Zone()
	return orderedShape{
		rules.Name(v, q.Queen.Subject()), q.Label, markWords(q), q.Line, v.Nuc(q.From).Name, stamp(q.Caught.Instant, zone), stamp(q.Handed.Instant, zone),
	}
}

// catches are the nucs whose proven queen is of a line that will do and ready
// by the order's day.
func catches(v *book.View, o *book.Order) []catchShape {
	all := []catchShape{}
	for _, q := range handover.Catchable(course.New(v), o) {
		n := v.Nuc(q.Nuc)
		all = append(all, catchShape{n.Name, v.Yard(n.Yard).Name, q.Line, stamp(q.Ready.Start(v.Zone()), v.Zone()), v.Yard(n.Yard).Standstill != nil, q.Closed})
	}
	return all
}

func (a *app) printOrder(v *book.View, o *book.Order, c orderCard) {
	a.line("order %s  %s, %s, %d open, by %s", o.Number, o.Customer, plural(o.Queens, "queen"), o.Open(), dayOf(v, o.By.Start(v.Zone())))
	a.facts("line", lineWords(o.Line, o.Substitute), "wanted", wantedWords(o), "not before", dayWords(v, o.From), "served", priorityWords(o))
	a.orderedRows(v, "handed over:", c.Went)
	a.orderedRows(v, "caged, will do:", c.Caged)
	a.orderedRows(v, "caged too long by then:", c.Long)
	if len(c.Catch) > 0 {
		a.line("  can be caught:")
	}
	var rows [][]string
	for _, n := range c.Catch {
		rows = append(rows, []string{"    " + n.Nuc, n.Yard, n.Line, readyWords(v, n.Ready), n.Stays})
	}
	a.table(rows)
	if c.Open > 0 {
		a.printDealt(v, o)
	}
	a.printHistory(v, o.Order.Subject())
}

// printDealt says how many queens the sheet of all orders deals to one, and what it is
// short of.
func (a *app) printDealt(v *book.View, o *book.Order) {
	for _, dealt := range shapeOfSheet(plan.New(course.New(v))).Orders {
		if dealt.Order == o.Number {
			a.line("  %d of %d are there for it, see lidbook handover", len(dealt.Gets), o.Open())
			a.printShort(v, dealt)
		}
	}
}

// windowWords are the days between which the queens of an order are wanted.
func windowWords(v *book.View, o *book.Order) string {
	if o.From.IsZero() {
		return "by " + o.By.ShortFrom(v.Today())
	}
	return o.From.ShortFrom(v.Today()) + " to " + o.By.ShortFrom(v.Today())
}

func dayWords(v *book.View, d calendar.Day) string {
	if d.IsZero() {
		return ""
	}
	return dayOf(v, d.Start(v.Zone()))
}

// priorityWords are the turn in which an order is served, where one was said.
func priorityWords(o *book.Order) string {
	if o.Priority == 0 {
		return ""
	}
	return fmt.Sprintf("with priority %d", o.Priority)
}

// wantedWords are how the queens of an order are wanted.
func wantedWords(o *book.Order) string {
	var words []string
	for _, w := range []struct {
		said bool
		word string
	}{
		{o.Marked, "marked"},
		{o.Disc, "with disc"},
		{o.Clipped, "clipped"},
		{o.Sent, "sent"},
		{o.Journey > 0, plural(o.Journey, "day") + " on the way"},
	} {
		if w.said {
			words = append(words, w.word)
		}
	}
	return strings.Join(words, ", ")
}

func readyWords(v *book.View, ready string) string {
	if t, err := time.Parse(time.RFC3339, ready); err == nil && !t.After(v.On()) {
		return "ready"
	}
	return "ready from " + stampedDay(v, ready)
}

func (a *app) orderedRows(v *book.View, head string, all []orderedShape) {
	if len(all) == 0 {
		return
	}
	a.line("  %s", head)
	var rows [][]string
	for _, q := range all {
		cage := prefixed("cage ", q.Cage)
		if strings.HasSuffix(q.Name, cage) {
			cage = "" // she is called by it
		}
		rows = append(rows, []string{
			"    " + q.Name, cage, q.Mark, q.Line, prefixed("from ", q.Nuc),
			prefixed("caught ", stampedDay(v, q.Caught)), prefixed("handed over ", stampedDay(v, q.Handed)),
		})
	}
	a.table(rows)
}

// lineWords is the line that is wanted, and those that will do as well.
func lineWords(wanted string, instead []string) string {
	return strings.Join(append([]string{wanted}, instead...), " or ")
}
