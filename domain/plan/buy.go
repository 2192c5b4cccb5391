package plan

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Buy is a good that is bought or made ahead, with what each batch and order needs of
// it, in the order of the last days to order.
type Buy struct {
	Good
	Colour  bee.Colour   // of discs and pens; zero for all else
	Amount  float64      // of all together
	OrderBy calendar.Day // the first of the last days to order
	For     []BuyFor
}

// String is the good in the keeper's words, with its colour.
func (b Buy) String() string {
	if b.Colour == 0 {
		return b.Good.String()
	}
	return b.Good.String() + ", " + b.Colour.String()
}

// BuyFor is what one planned batch, grafted batch or order needs of a good: one of the three.
type BuyFor struct {
	Planned book.BatchPlan
	Grafted *book.Batch
	Order   *book.Order
	Need
}

// String says for which it is: "graft Mon 10 May, Rook", "batch 3, Rook", "order 31".
func (f BuyFor) String() string {
	said, line := "graft "+f.Planned.Day.Short(), f.Planned.Line
	switch {
	case f.Order != nil:
		return "order " + f.Order.Number
	case f.Grafted != nil:
		said, line = fmt.Sprintf("batch %d", f.Grafted.Number), f.Grafted.Line
	}
	if line == "" {
		return said
	}
	return said + ", " + line
}

// Buys are what is to be bought for all planned batches that can be grafted, see [book.View.ToGraft], for
// what grafted ones come to later, and for open orders; what has to be ordered first before the rest.
func (p *Planner) Buys() []Buy {
	var c cart
	for b := range p.view.ToGraft() {
		for _, n := range p.Needs(p.LadderOf(b), p.SizeOf(b)) {
			c.put(0, BuyFor{Planned: b, Need: n})
		}
	}
	for b := range p.view.Batches() {
		for _, n := range p.comesTo(b) {
			c.put(0, BuyFor{Grafted: b, Need: n})
		}
	}
	p.buyForOrders(&c)
	return c.sorted()
}

// comesTo is what a grafted batch takes up only after today: food where its nucs are not made up
// yet, and a cage for each queen who is to be expected and still to be caught.
func (p *Planner) comesTo(b *book.Batch) (all []Need) {
	l := p.Left(b)
	if l.Cells+len(l.Unseen)+len(l.Seen) == 0 {
		return nil
	}
	w := p.Grafted(b)
	for _, n := range p.Needs(w.Ladder, w.Size) {
		if n.Good == FoodForNucs && n.From > p.view.Today() {
			all = append(all, n)
		}
	}
	queens := p.Unlearnt(l, len(l.Unseen), true, 0, false).Mean()
	for _, n := range l.Seen {
		if k, ok := p.Prospect(n); ok {
			queens += k.Ever()
		}
	}
	from := max(p.view.Today(), w.Rung(Ready).Best)
	return append(all, Need{Good: Cages, Amount: math.Ceil(queens), From: from, To: from, OrderBy: from - p.days(practice.BuyAhead)})
}

// cart gathers goods by what they are and their colour.
type cart struct {
	all []Buy
	at  map[cartKey]int
}

type cartKey struct {
	good   Good
	colour bee.Colour
}

// put adds what one needs of a good, where that is bought and anything is needed.
func (c *cart) put(colour bee.Colour, f BuyFor) {
	if !f.Bought() || f.Amount <= 0 {
		return
	}
	key := cartKey{f.Good, colour}
	i, known := c.at[key]
	if !known {
		if c.at == nil {
			c.at = map[cartKey]int{}
		}
		i = len(c.all)
		c.at[key], c.all = i, append(c.all, Buy{Good: f.Good, Colour: colour})
	}
	c.all[i].Amount += f.Amount
	c.all[i].For = append(c.all[i].For, f)
}

// sorted are the goods by their last days to order, and so what each is for.
func (c *cart) sorted() []Buy {
	for i := range c.all {
		slices.SortStableFunc(c.all[i].For, func(a, b BuyFor) int { return cmp.Compare(a.OrderBy, b.OrderBy) })
		c.all[i].OrderBy = c.all[i].For[0].OrderBy
	}
	slices.SortStableFunc(c.all, func(a, b Buy) int {
		return cmp.Or(cmp.Compare(a.OrderBy, b.OrderBy), cmp.Compare(a.Good, b.Good), cmp.Compare(a.Colour, b.Colour))
	})
	return c.all
}
