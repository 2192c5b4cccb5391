package state

import (
	"cmp"
	"fmt"
	"slices"

	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// Late says by how many days an order is past the one by which its queens were wanted;
// "" while it is not.
func (p *OrderSheet) Late(o handover.Served) string {
	by, today := o.Order.By, p.of.View.Today()
	if by == 0 || today <= by {
		return ""
	}
	return counted(today.Sub(by), "day") + " late"
}

// LateRing is [OrderSheet.Late] with whom to ring, unless [OrderSheet.Ring] says that already.
func (p *OrderSheet) LateRing(o handover.Served) string {
	late := p.Late(o)
	if late == "" || o.Stand().Rings() {
		return late
	}
	return late + ": ring " + cmp.Or(o.Order.Customer, "the customer")
}

// stands says whether an order is late, and whether all its queens are there, or how sure it
// is that they will be; sure tells whether that is as much as is wished.
func (p *OrderSheet) stands(o handover.Served) (says string, sure bool) {
	says, sure = p.sureOf(o)
	if late := p.Late(o); late != "" {
		return late + ", " + says, false
	}
	return says, sure
}

// sureOf is how sure an order is: short it is where queens are neither to be expected in time
// nor planned.
func (p *OrderSheet) sureOf(o handover.Served) (says string, sure bool) {
	switch i := slices.IndexFunc(p.Waits, func(e season.Entrusted) bool { return e.Order == o.Order.Order }); {
	case o.Short == 0:
		return "all there", true
	case InVain(o) || o.Missing() > 0:
		return p.Short(o), false
	case i >= 0:
		return plan.OfHundred(p.Waits[i].Chance), !p.Waits[i].Unsure()
	case o.Next.Day != 0 && o.Next.Day <= o.On:
		return plan.OfHundred(o.Next.Chance), true
	}
	return fmt.Sprintf("%d to come", o.Short), true
}
