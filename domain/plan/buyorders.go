package plan

import (
	"cmp"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// buyForOrders puts in what open orders take besides queens: discs or pen in the colour of the
// year, less what queens in hand wear already, and candy for the cages that are sent. What is worn
// goes to the orders that are served first.
func (p *Planner) buyForOrders(c *cart) {
	has := p.worn()
	for o := range p.view.Orders() {
		colour := p.colourFor(o)
		switch {
		case o.Disc:
			p.buyFor(c, o, NumberDiscs, colour, has.off(worn{NumberDiscs, colour.String()}, o.Open()))
		case o.Marked:
			p.buyFor(c, o, MarkingPen, colour, has.off(worn{MarkingPen, colour.String()}, o.Open()))
		}
		if o.Sent {
			p.buyFor(c, o, CandyForCages, 0, o.Open())
		}
	}
}

// buyFor puts in what an order takes of a good, from the first day on which its queens may go.
func (p *Planner) buyFor(c *cart, o *book.Order, g Good, colour bee.Colour, amount int) {
	from := cmp.Or(o.From, o.By)
	c.put(colour, BuyFor{Order: o, Need: Need{Good: g, Amount: float64(amount), From: from, To: o.By, OrderBy: from - p.days(practice.BuyAhead)}})
}

// colourFor is the colour of the year in which the queens of an order emerge: the last of them
// are at the least age on its day.
func (p *Planner) colourFor(o *book.Order) bee.Colour {
	year, _, _ := (o.By - p.days(practice.LeastAgeAtHandOver)).Date()
	return bee.MarkColour(year)
}

// marks are how many queens in hand wear what.
type marks map[worn]int

// worn is a disc or paint, and its colour.
type worn struct {
	good   Good
	colour string
}

// worn are the marks of the mated queens in hand, in cages and nucs. A disc of which nobody told
// the colour has that of its queen's year.
func (p *Planner) worn() marks {
	m := marks{}
	for q := range p.view.Queens() {
		if _, inNuc := q.Where.Nuc(); q.Virgin || !q.Caged() && !(inNuc && q.InHand()) {
			continue
		}
		switch colour := q.Mark.Colour; {
		case q.Mark.Disc != "":
			m[worn{NumberDiscs, cmp.Or(colour, bee.MarkColour(q.Emerged.Year()).String())}]++
		case colour != "":
			m[worn{MarkingPen, colour}]++
		}
	}
	return m
}

// off is what is left to buy of so many once what is worn is taken off; that is used up.
func (m marks) off(w worn, wanted int) int {
	has := min(m[w], wanted)
	m[w] -= has
	return wanted - has
}
