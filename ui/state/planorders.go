package state

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/domain/season"
)

// PlanPage is a page of the room Plan. The zero PlanPage is the wish.
type PlanPage uint8

// The pages of the room Plan.
const (
	WishPage PlanPage = iota
	OrdersPage
	SeasonPage
)

// OrderSheet is who gets which queen, as far as is known now, and who was handed over.
type OrderSheet struct {
	*handover.Sheet
	Since  map[book.OrderID]calendar.Day // since when an order is short; nil while that is reckoned
	Gone   []handover.Gone               // all who were handed over, the last ones first
	Claims handover.Claims
	Waits  []season.Entrusted // the orders that wait for planned batches

	of *Reading
}

// ordered is what is known of the orders.
type ordered struct {
	sheet *OrderSheet // the last one
	asked *Reading    // that of the one on its way, or there
}

// ReckonOrders asks who gets which queen, or of a sheet since when orders are short.
// Both take a moment in a large book; what [ReckonOrders.Reckon] gives comes back.
type ReckonOrders struct {
	of    *Reading
	sheet *OrderSheet // of which it is asked since when; nil: who gets which
}

func (ReckonOrders) effect() {}

// OrdersReckoned brings a sheet of the orders.
type OrdersReckoned struct{ sheet *OrderSheet }

func (OrdersReckoned) msg() {}

// Reckon deals the queens out. It may run beside the window.
func (e ReckonOrders) Reckon() OrdersReckoned {
	v := e.of.View
	if e.sheet != nil {
		next := *e.sheet
		next.Since = handover.ShortSince(v, next.Sheet)
		return OrdersReckoned{&next}
	}
	return OrdersReckoned{&OrderSheet{
		Sheet: handover.New(e.of.planner()), Gone: handover.HandedOver(v, ""), Claims: handover.ClaimsOf(v), of: e.of,
	}}.waiting()
}

// waiting is what was reckoned with how sure the planned batches are.
func (o OrdersReckoned) waiting() OrdersReckoned {
	o.sheet.Waits = season.EntrustedTo(o.sheet.of.planner(), o.sheet.Sheet)
	return o
}

// ordering is the window with the sheet asked for that the page of the orders or the
// card of one needs.
func (s State) ordering() (State, []Effect) {
	if s.Book == nil || !s.OnOrders() && s.Selection.Last().Kind != book.KindOrder {
		return s, nil
	}
	of := s.Present()
	if s.ordered.asked == of {
		return s, nil
	}
	s.ordered.asked = of
	return s, []Effect{ReckonOrders{of: of}}
}

// ordersTaken is the window with a sheet that came back, of the reading that was asked
// for last. Since when orders are short is asked once for a book and a day.
func (s State) ordersTaken(m OrdersReckoned) (State, []Effect) {
	if m.sheet == nil || m.sheet.of != s.ordered.asked {
		return s, nil
	}
	was := s.ordered.sheet
	s.ordered.sheet = m.sheet
	switch {
	case m.sheet.Since != nil:
		return s, nil
	case was != nil && was.Since != nil && was.of.Day == m.sheet.of.Day && was.of.View.Season() == m.sheet.of.View.Season():
		next := *m.sheet
		next.Since, s.ordered.sheet = was.Since, &next
		return s, nil
	}
	return s, []Effect{ReckonOrders{m.sheet.of, m.sheet}}
}

// OnOrders tells whether the page of the orders is shown.
func (s State) OnOrders() bool {
	return s.Book != nil && s.Room == Plan && s.Planning.Page == OrdersPage && s.Fill == NoFill
}

// OrderSheet is who gets which queen now; nil while there is no sheet of this book.
func (s State) OrderSheet() *OrderSheet {
	sheet := s.ordered.sheet
	if s.Book == nil || sheet == nil || sheet.of.View.Season() != s.Present().View.Season() {
		return nil
	}
	return sheet
}

// Served is what an order gets; false while that is not known.
func (s State) Served(id book.OrderID) (handover.Served, bool) {
	if sheet := s.OrderSheet(); sheet != nil {
		for _, o := range sheet.Orders {
			if o.Order.Order == id {
				return o, true
			}
		}
	}
	return handover.Served{}, false
}
