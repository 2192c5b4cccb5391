package state

import (
	"strconv"
	"strings"

	"lidmark/domain/book"
)

var ofOrder = []book.Kind{book.KindOrder}

// orderRecords are what can be written down of an order for queens.
var orderRecords = []Record{
	{Name: "serve order", Word: "Hand queens over", Of: ofOrder, Main: true, Fits: orderOpen, Asks: askServe, Facts: orderServed},
	{
		Name: "claim", Word: "Queens claimed", Of: ofOrder,
		Asks: asks(askFigure("queens", "How many queens", "", 1), askWords("why", "Why", "", "dead on arrival, not accepted …")),
		Facts: func(_ State, a *Answers) []book.Fact {
			o := a.order()
			f := book.Claimed{Order: o.Order, Queens: a.NeededCount("queens"), Why: a.Needed("why")}
			if f.Queens > o.Queens {
				a.Wrong("queens", "order %s is for %s: write no more", o.Number, counted(o.Queens, "queen"))
			}
			return fact(f)
		},
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

func askServe(s State) []Ask {
	var cages []string
	v, o := s.Present().View, s.orderOn()
	for q := range v.Queens() {
		if q.Caged() && !q.Virgin && q.Label != "" && o.Takes(q.Line) {
			cages = append(cages, q.Label)
		}
	}
	note := "no mated queen that will do sits in a cage"
	if len(cages) > 0 {
		note = "mated queens that will do are in " + strings.Join(cages, ", ")
	}
	if len(cages) > o.Open() {
		cages = cages[:o.Open()]
	}
	return []Ask{askWords("cages", "Numbers of their cages", strings.Join(cages, ","), note), askYes("with", "With attendants")}
}

func orderServed(_ State, a *Answers) (all []book.Fact) {
	o := a.order()
	a.Needed("cages")
	for _, label := range a.Cages("cages", 0) {
		q := a.caged("cages", label)
		if queen := a.View.Queen(q); !q.IsZero() && !o.Takes(queen.Line) {
			a.Mind("cage %s holds a queen of line %s; order %s is for %s", label, queen.Line, o.Number, o.Line)
		}
		all = append(all, book.QueenHandedOver{Queen: q, Order: o.Order, With: a.Yes("with")})
	}
	if len(all) > o.Open() {
		a.Mind("%s: order %s wants %d more", counted(len(all), "queen"), o.Number, o.Open())
	}
	return all
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
	from, by := "", ""
	if !o.From.IsZero() {
		from = o.From.String()
	}
	if !o.By.IsZero() {
		by = o.By.String()
	}
	queen := ""
	if o.Marked {
		queen = "marked"
	}
	if o.Clipped {
		queen += ",clipped"
	}
	return []Ask{
		askWords("number", "Number", o.Number, ""), askWords("customer", "For whom", o.Customer, ""),
		askFigure("queens", "Queens", "", float64(o.Queens)), askWords("line", "Line", o.Line, "left blank: any"),
		askWords("or", "Other lines that will do", strings.Join(o.Substitute, ", "), "parted by commas"),
		day("by", "By", by), day("from", "Not before", from),
		askSome("queen", "They are to be", queen, []Option{{"marked", "marked"}, {"clipped", "clipped"}}),
		{Name: "first", Label: "Served before others", Kind: Figure, First: strconv.Itoa(o.Priority), Note: "a smaller number is served first"},
	}
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
		for _, be := range a.All("queen") {
			f.Marked, f.Clipped = f.Marked || be == "marked", f.Clipped || be == "clipped"
		}
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
