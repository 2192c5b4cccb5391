package rules

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
)

// promise is the order that a nuc's queen goes to, and how she is caught for it. Zero: to
// none.
type promise struct {
	handover.Catching
	order string       // its number
	on    calendar.Day // when she leaves the keeper's hands
}

// shareQueens tells the nucs whose queens go to open orders how each is caught for hers,
// as the sheet of the orders deals them out: what is due today and what is promised
// are one thing.
func (p *pass) shareQueens() {
	if !p.owed() {
		return
	}
	of := map[book.NucID]promise{}
	p.sheet = handover.Reckoned(p.ladders())
	for _, o := range p.sheet.Orders {
		for _, q := range o.Queens {
			of[q.Nuc] = promise{q.Catching, o.Order.Number, o.On}
		}
	}
	for i := range p.nucs {
		p.nucs[i].order = of[p.nucs[i].Nuc.Nuc]
	}
}

// owed tells whether an order is open.
func (p *pass) owed() bool {
	for o := range p.view.Orders() {
		if o.Open() > 0 {
			return true
		}
	}
	return false
}

// promised tells whether an order takes her.
func (n *nucCase) promised() bool { return n.order.By != 0 }
