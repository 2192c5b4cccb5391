package state

import (
	"cmp"
	"slices"
	"strconv"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// orderCommands are the commands of the page of the orders.
var orderCommands = []Command{
	{Name: "orders", Does: "orders: who gets which queen", Keys: "Alt+S", Word: "Orders", Why: noBook, Do: pure(State.toOrders)},
	{Name: "find handed over", Does: "a queen who was handed over", Why: notOnOrders, Do: pure(func(s State) State { return s.focused(FieldNamed(SearchField)) })},
	{Name: "graft for order", Does: "plan a graft for what this order misses", Word: "Plan a graft for it", Why: noShortOrder, Do: pure(State.graftForOrder)},
}

// toOrders is the window on the page of the orders.
func (s State) toOrders() State {
	s = s.entered(Plan)
	s.Planning.Page = OrdersPage
	return s.orderBeside()
}

// orderBeside is the window with an order selected, whose card stands beside: the one
// that was, else the first that is open. Without any, nothing is.
func (s State) orderBeside() State {
	if s.Selection.Last().Kind == book.KindOrder {
		return s
	}
	s.Selection, s.Trail = Selection{}, nil
	if open := s.OpenOrders(); len(open) > 0 {
		s.Selection = Select(open[0].Order.Subject())
	}
	return s
}

func notOnOrders(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if !s.OnOrders() {
		return "go to the orders first with Alt+S"
	}
	return ""
}

// shortOrder is the order selected where it misses queens.
func (s State) shortOrder() (o *book.Order, short int) {
	id, _ := s.Selection.Last().Order()
	served, ok := s.Served(book.OrderID(id))
	if !ok || served.Short == 0 {
		return nil, 0
	}
	return served.Order, served.Short
}

func noShortOrder(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if o, _ := s.shortOrder(); o == nil {
		return "select an order that misses queens"
	}
	return ""
}

// graftForOrder is the window with a wish for what an order misses.
func (s State) graftForOrder() State {
	o, short := s.shortOrder()
	s = s.entered(Plan)
	s.Planning = Planning{Tries: s.Planning.Tries}
	line, _ := s.lineFor(o)
	by := cmp.Or(s.nearestFor(o, short), max(o.By, s.Today()+1))
	return s.withoutFields("plan.").toWish(WishQueens, strconv.Itoa(short)).toWish(WishDay, s.dayTyped(by)).toWish(WishLine, line).
		toField(WishQueens)
}

// OrderPane says where the page of the orders lies.
type OrderPane struct {
	Head   scene.Area // pages and what is looked for
	Body   scene.Area // the lines; they scroll
	Lines  []OrderLine
	Tall   float64 // of all lines
	Offset float64
}

// Measures of the page of the orders, dp.
const (
	PlanHead   = 48.0
	ordersFoot = 24.0
)

// OrderPane is how the page is divided.
func (s State) OrderPane(l Layout) (p OrderPane) {
	p.Head, p.Body = cutTop(l.Main, PlanHead)
	p.Lines = s.OrderLines(p.Body.W - 2*Edge)
	if n := len(p.Lines); n > 0 {
		p.Tall = p.Lines[n-1].Y + p.Lines[n-1].H + ordersFoot
	}
	p.Offset = min(s.Scroll[OrdersPlace], p.most())
	return p
}

func (p OrderPane) most() float64 { return max(0, p.Tall-p.Body.H) }

// keyOrders gives a key to the page of the orders, and tells whether that took it:
// the arrows go from line to line, whose card stands beside.
func (s State) keyOrders(m Keyed) (State, bool) {
	if !s.OnOrders() || m.Mods != 0 || s.Form != nil {
		return s, false
	}
	p := s.OrderPane(s.Layout())
	page := max(1, int(p.Body.H/orderLine)-1)
	by, moves := map[string]int{"Up": -1, "Down": 1, "PageUp": -page, "PageDown": page}[m.Key]
	switch {
	case moves:
		return s.orderStepped(p, by), true
	case m.Key == "Escape" && s.InField() == SearchField && s.Typed(SearchField) != "":
		return s.WithField(SearchField, FieldOf("")).scrolled(OrdersPlace, -s.Scroll[OrdersPlace]), true
	case m.Key == "Enter" && s.InField() == SearchField:
		return s.orderStepped(p, 1), true
	}
	return s, false
}

// orderStepped is the window with the line so many on that leads somewhere, its card
// beside. From the field it goes to the first line of the page.
func (s State) orderStepped(p OrderPane, by int) State {
	var stops []OrderLine
	for _, l := range p.Lines {
		if l.Ref() != (scene.Ref{}) {
			stops = append(stops, l)
		}
	}
	at := slices.IndexFunc(stops, func(l OrderLine) bool { return l.Ref() == s.Focus })
	if len(stops) == 0 || at == 0 && by < 0 {
		return s.focused(FieldNamed(SearchField))
	}
	if at < 0 {
		by = max(by, -1*len(stops)) // from nowhere down is the first one
		by = min(by, 1)
		if by < 0 {
			return s
		}
	}
	l := stops[min(max(at+by, 0), len(stops)-1)]
	s.Focus, s.Trail = l.Ref(), nil
	s.Selection = Select(s.orderLineOf(l)...)
	return s.within(OrdersPlace, p.Offset, l.Y, l.H, p.Body.H)
}

// orderLineOf is what a line is about.
func (s State) orderLineOf(l OrderLine) []book.Subject {
	if l.Left == 0 {
		return []book.Subject{l.To}
	}
	if sheet := s.OrderSheet(); sheet != nil {
		if all := sheet.leftOver(); l.Left <= len(all) {
			return all[l.Left-1].of()
		}
	}
	return nil
}

// leftClicked selects what is left over of a line.
func (s State) leftClicked(r scene.Ref) State {
	n, err := strconv.Atoi(r.ID)
	if of := s.orderLineOf(OrderLine{Left: n}); err == nil && n > 0 && len(of) > 0 {
		s.Selection, s.Trail, s.Focus = Select(of...), nil, r
	}
	return s
}

// searchBegun begins to look for a queen who was handed over with what is typed.
func (s State) searchBegun(r rune) State {
	s = s.focused(FieldNamed(SearchField)).wroteField(string(r))
	return s.scrolled(OrdersPlace, -s.Scroll[OrdersPlace])
}
