package state

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/handover"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

var ofOrder = []book.Kind{book.KindOrder}

// orderRecords are what can be written down of an order for queens.
var orderRecords = []Record{
	{Name: "serve order", Word: "Hand queens over", Of: ofOrder, For: []rules.Act{rules.ActHandOver}, Main: true, Fits: orderOpen, Asks: askServe, Facts: orderServed},
	{
		Name: "claim", Word: "Queens claimed", Of: ofOrder,
		Asks: askClaim, Facts: claimed,
	},
	{
		Name: "close order", Word: "Close it", Of: ofOrder, Fits: orderNotClosed, Asks: asks(askWords("why", "Why", "", "all handed over, called off …")),
		Facts: func(_ State, a *Answers) []book.Fact {
			return fact(book.OrderClosed{Order: a.order().Order, Why: a.Text("why")})
		},
	},
	{Name: "change order", Word: "Change it", Of: ofOrder, Asks: askOrder, Facts: orderTaken(true)},
	{Name: "new order", Word: "New order", Of: fromYard, Asks: askOrder, Facts: orderTaken(false)},
}

// order is the order that the form is about.
func (a *Answers) order() *book.Order { return a.View.Order(book.OrderID(a.Of.Last().UUID)) }

// orderOn is the order selected, as it stands now.
func (s State) orderOn() *book.Order {
	return s.Present().View.Order(book.OrderID(s.Selection.Last().UUID))
}

func orderOpen(s State) bool      { return s.orderOn().Open() > 0 }
func orderNotClosed(s State) bool { return !s.orderOn().Closed }

// theirCages asks for queens by their cages; one without a number is that of a nuc.
const theirCages = "Their cages, or nucs they are from"

func askServe(s State) []Ask {
	dealt, others := s.cagesFor(s.orderOn())
	var said []string
	if len(dealt) > 0 {
		said = append(said, "dealt to it are "+strings.Join(dealt, ", "))
	}
	if len(others) > 0 {
		said = append(said, "others that will do are in "+strings.Join(others, ", "))
	}
	note := cmp.Or(strings.Join(said, "; "), "no mated queen that will do sits in a cage")
	return []Ask{askWords("cages", theirCages, strings.Join(dealt, ","), note), askYes("with", "With attendants")}
}

// cagesFor are the cages whose queens are dealt to an order, and those of others who will
// do for it.
func (s State) cagesFor(o *book.Order) (dealt, others []string) {
	of := s.Present()
	given := map[book.QueenID]bool{}
	for _, served := range of.Judged().Dealt().Orders {
		for _, q := range served.Queens {
			if served.Order.Order == o.Order && q.Nuc.IsZero() {
				dealt, given[q.ID] = append(dealt, of.View.CageOf(of.View.Queen(q.ID))), true
			}
		}
	}
	for q := range of.View.Queens() {
		if q.Caged() && !q.Virgin && !given[q.Queen] && o.TakesSure(q.Line, q.Descent != book.DescentDoubtful) {
			others = append(others, of.View.CageOf(q))
		}
	}
	return dealt, others
}

func orderServed(_ State, a *Answers) (all []book.Fact) {
	o := a.order()
	a.Needed("cages")
	var went []book.QueenID
	for _, cage := range a.cagesOrNucs("cages", (*book.Queen).Caged) {
		q := a.caged("cages", cage, went...)
		went = append(went, q)
		all = append(all, book.QueenHandedOver{Queen: q, Order: o.Order, With: a.Yes("with")})
	}
	if len(all) > o.Open() {
		a.Mind("%s: order %s wants %d more", counted(len(all), "queen"), o.Number, o.Open())
	}
	return all
}

// cagesOrNucs are the cages of queens, by their numbers, the nucs they came out of or what else
// they are called; a text that is one name of one who may be meant stays whole.
func (a *Answers) cagesOrNucs(name string, may func(*book.Queen) bool) (all []string) {
	if text := a.Text(name); len(line.QueensCalled(a.View, text, true, may)) == 1 {
		return []string{text}
	}
	for part := range strings.SplitSeq(a.Text(name), ",") {
		part = strings.TrimSpace(strings.TrimPrefix(strings.TrimSpace(part), "from "))
		labels, noCages := line.Cages(part)
		nucs, noNucs := line.Nucs(part, line.Context{View: a.View})
		switch {
		case noCages == nil:
			all = append(all, labels...)
		case noNucs == nil:
			for _, id := range nucs {
				all = append(all, a.View.Nuc(id).Name)
			}
		case part != "":
			all = append(all, part)
		}
	}
	return all
}

func askClaim(State) []Ask {
	return []Ask{
		askFigure("queens", "How many queens", "", 1),
		askOne("how", "What is wrong with them", "", vocabulary(book.DeadOnArrival, book.NotAccepted, book.SoonSuperseded)),
		askWords("cages", "Cages they went in, or nucs they are from", "", "left blank: nobody knows which"),
		askWords("why", "What is said of it", "", "needed where none of these is wrong"),
	}
}

func claimed(_ State, a *Answers) []book.Fact {
	o := a.order()
	f := book.Claimed{Order: o.Order, Queens: a.NeededCount("queens"), Why: a.Text("why")}
	a.Word("how", &f.How)
	if f.How == 0 && f.Why == "" {
		a.Wrong("how", "choose one, or write what is said of it")
	}
	for _, cage := range a.cagesOrNucs("cages", handover.WentWith(o, nil)) {
		switch all := line.QueensCalled(a.View, cage, true, handover.WentWith(o, f.Of)); len(all) {
		case 0:
			a.Wrong("cages", "no queen in cage %s went with order %s", cage, o.Number)
		case 1:
			f.Of = append(f.Of, all[0].Queen)
		default:
			_, err := line.Queen(a.View, cage, true, handover.WentWith(o, f.Of))
			a.Wrong("cages", "%v", err)
		}
	}
	if len(f.Of) > f.Queens {
		a.Wrong("cages", "%s for %s: write no more", counted(len(f.Of), "cage"), counted(f.Queens, "queen"))
	}
	if err := handover.CheckClaim(a.View, f); err != nil {
		a.Wrong("queens", "%v", err)
	}
	return fact(f)
}

func askOrder(s State) []Ask {
	var o book.Order
	if s.Selection.Last().Kind == book.KindOrder {
		o = *s.orderOn()
	} else {
		o.Number, o.Queens = s.nextOrder(), 1
	}
	day := func(name, label string, first string) Ask {
		return askWords(name, label, first, "2027-06-20, +14, sat")
	}
	journey := askFigure("journey", "Days on the way", "", float64(o.Journey))
	journey.Note = "if they are sent; left blank: as in your numbers"
	from, by := "", ""
	if !o.From.IsZero() {
		from = o.From.String()
	}
	if !o.By.IsZero() {
		by = o.By.String()
	}
	return []Ask{
		askWords("number", "Number", o.Number, ""), askWords("customer", "For whom", o.Customer, ""),
		askFigure("queens", "Queens", "", float64(o.Queens)), askWords("line", "Line", o.Line, "left blank: any"),
		askWords("or", "Other lines that will do", strings.Join(o.Substitute, ", "), "separated by commas"),
		day("by", "By", by), day("from", "Not before", from),
		askSome("queen", "They are to be", wanted(o), labels("marked", "with disc", "clipped", "sent")),
		journey,
		{Name: "first", Label: "Served before others", Kind: Figure, First: someOf(o.Priority), Note: "a smaller number is served first; left blank: by date, after those with one"},
	}
}

// wanted is how the queens of an order are to be, separated by commas.
func wanted(o book.Order) string {
	var words []string
	for _, w := range []struct {
		said bool
		word string
	}{{o.Marked, "marked"}, {o.Disc, "with disc"}, {o.Clipped, "clipped"}, {o.Sent, "sent"}} {
		if w.said {
			words = append(words, w.word)
		}
	}
	return strings.Join(words, ",")
}

// nextOrder is the number after the highest of an order.
func (s State) nextOrder() string {
	most := 0
	for o := range s.Present().View.Orders() {
		if n, err := strconv.Atoi(o.Number); err == nil {
			most = max(most, n)
		}
	}
	return strconv.Itoa(most + 1)
}

// orderTaken is a new order, or with anew the one selected.
func orderTaken(anew bool) func(State, *Answers) []book.Fact {
	return func(_ State, a *Answers) []book.Fact {
		f := book.OrderTaken{
			Number: a.Needed("number"), Customer: a.Needed("customer"), Queens: a.NeededCount("queens"), Line: a.Text("line"),
			By: a.NeededDay("by"), From: a.Day("from"), Priority: int(a.Figure("first")),
		}
		for word := range strings.SplitSeq(a.Text("or"), ",") {
			if word = strings.TrimSpace(word); word != "" {
				f.Substitute = append(f.Substitute, word)
			}
		}
		be := a.All("queen")
		f.Marked, f.Disc, f.Clipped = slices.Contains(be, "marked"), slices.Contains(be, "with disc"), slices.Contains(be, "clipped")
		f.Journey = a.Count("journey")
		f.Sent = slices.Contains(be, "sent") || f.Journey > 0
		if f.Order = a.order().Order; !anew {
			f.Order = book.OrderID(a.Mint())
		}
		if !f.From.IsZero() && f.By < f.From {
			a.Wrong("from", "%s is after %s: mend one of them", f.From.Short(), f.By.Short())
		}
		for o := range a.View.Orders() {
			if o.Number == f.Number && o.Order != f.Order {
				a.Wrong("number", "order %s is there already: take another number", f.Number)
			}
		}
		return fact(f)
	}
}
