package view

import (
	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// cardDraw is the card being drawn, from the top down. What has no room is
// reached by scrolling; the buttons stay at its foot.
type cardDraw struct {
	*sheet
	r    *state.Reading
	x, w float64 // of the text
	y    float64 // where the next thing begins
	foot cardFoot

	below float64 // how much below what has the focus is to be seen with it
}

// card draws what is selected: one thing, several nucs, or the yard shown.
func (p *sheet) card() {
	a := p.l.Card
	if a.Empty() {
		return
	}
	p.clipped(a, scene.Tag{Ref: scene.Ref{Kind: "card"}}, func() {
		p.rect(a, scene.Panel)
		c, all := p.drawnCard(0)
		body := c.body()
		offset := c.offset(all)
		if offset > 0 {
			c, _ = p.drawnCard(offset)
		}
		p.add(scene.Pane{Clip: wholeWithin(c.marks, body), Marks: c.withStops(body)})
		p.scrollBar(body, offset, all)
		c.sheet = p
		c.drawButtons()
	})
	p.rule(a.X, a.Y, a.X, a.Bottom(), scene.Rule)
}

func (c *cardDraw) draw() {
	sel := c.s.Selection
	switch {
	case c.s.Room == state.Numbers:
		c.besideNumbers()
	case c.s.Form != nil:
		c.form()
	case c.s.Room == state.Review:
		c.besideReview()
	case c.s.More:
		c.everything()
	default:
		c.wayBack()
		c.of(sel)
	}
	c.inRows()
}

// of draws the card of a selection.
func (c *cardDraw) of(sel state.Selection) {
	last, v := sel.Last(), c.r.View
	c.records()
	switch {
	case sel.Len() > 1:
		c.several()
	case last.Kind == book.KindNuc:
		if id, ok := last.Nuc(); ok && c.r.Nuc(id) != nil {
			c.nuc(c.r.Nuc(id))
		}
	case last.Kind == book.KindBatch:
		if planned, ok := c.s.Present().View.BatchPlan(book.BatchID(last.UUID)); ok {
			c.planned(planned)
		} else {
			c.batch(v.Batch(book.BatchID(last.UUID)))
		}
	case last.Kind == book.KindColony:
		c.colony(v.Colony(book.ColonyID(last.UUID)))
	case last.Kind == book.KindQueen:
		c.queen(v.Queen(book.QueenID(last.UUID)))
	case last.Kind == book.KindOrder:
		c.order(v.Order(book.OrderID(last.UUID)))
	case last.Kind == book.KindPerson:
		c.person(v.Person(book.PersonID(last.UUID)))
	case last.Kind == book.KindYard:
		c.yard(v.Yard(book.YardID(last.UUID)))
	default:
		c.nothing()
	}
}

// wayBack writes what the card showed before a link was followed.
func (c *cardDraw) wayBack() {
	n := len(c.s.Trail)
	if n == 0 {
		return
	}
	was := c.s.Trail[n-1]
	name := c.yardName()
	switch {
	case was.Len() > 1:
		name = plural(was.Len(), "thing", "things")
	case was.Len() == 1:
		name = nameOf(c.r.View, was.Last())
	}
	c.link(c.x, c.y+2, "← "+name, ink(13).as(scene.Pen), "card back", false)
	c.y += 26
}

// nothing draws the card when nothing is selected: on Today the batch whose
// hard deadline is past, else the yard shown.
func (c *cardDraw) nothing() {
	if c.s.OnOrders() {
		c.noOrder()
		c.buttons(button{"New order", "new order", true})
		return
	}
	if id := c.s.CardBatch(); !id.IsZero() {
		c.batch(c.r.View.Batch(id))
		return
	}
	c.yardShown()
}
