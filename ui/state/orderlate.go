package state

import (
	"cmp"
	"strings"

	"lidmark/domain/handover"
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
	if late == "" || strings.HasPrefix(missing(o, ""), ringFirst) {
		return late
	}
	return late + ": ring " + cmp.Or(o.Order.Customer, "the customer")
}

// stands says whether an order is late, and whether all its queens are there.
func (p *OrderSheet) stands(o handover.Served) string {
	says := cmp.Or(p.Short(o), "all there")
	if late := p.Late(o); late != "" {
		return late + ", " + says
	}
	return says
}
