package rules

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
)

// wanted warns of a planned batch whose queens will not do for an order that it is planned
// for: they are of another line, or come after its day; of one for no order where one waits; and of a
// breeder of another line.
func (c *checker) wanted(b book.BatchPlanned) {
	if bred := c.view.Colony(b.Breeder); bred.Line != "" && b.Line != "" && bred.Line != b.Line {
		c.warn(fmt.Sprintf("%s is of the line %s, and this graft is told as %s", bred.Name, bred.Line, b.Line), "Take a breeder of "+b.Line+", or tell the line of "+bred.Name)
	}
	for _, id := range b.Orders {
		o := c.view.Order(id)
		c.wantedLine(o, b)
		c.wantedDay(o, b)
	}
	if len(b.Orders) == 0 {
		c.unordered(b)
	}
}

// unordered warns of a planned batch for no order, where one waits for just such queens.
func (c *checker) unordered(b book.BatchPlanned) {
	for _, o := range handover.OrdersFor(plan.New(c.course), b.Queens, b.Line, b.By) {
		c.warn(fmt.Sprintf("planned for no order, so its queens are nobody's, and order %s wants %d by %s", o.Number, o.Open(), o.By.ShortFrom(c.view.Today())),
			"Drop it, and plan it for order "+o.Number)
	}
}

func (c *checker) wantedLine(o *book.Order, b book.BatchPlanned) {
	takes := o.Lines()
	switch {
	case o.Takes(b.Line):
	case b.Line == "":
		c.warn(fmt.Sprintf("order %s takes %s, and nobody told the line of this graft", o.Number, takes), "Tell its line")
	default:
		c.warn(fmt.Sprintf("order %s takes %s, and this graft is %s: it does not count for the order", o.Number, takes, b.Line),
			fmt.Sprintf("Graft %s for it, or write down that it takes %s too", takes, b.Line))
	}
}

func (c *checker) wantedDay(o *book.Order, b book.BatchPlanned) {
	if o.By.IsZero() {
		return
	}
	by, today := o.LeavesBy(c.numbers), c.view.Today()
	wants := fmt.Sprintf("order %s wants its queens by %s", o.Number, by.ShortFrom(today))
	switch last := by - handover.FromGraft(c.numbers); {
	case b.Day > last:
		c.warn(fmt.Sprintf("%s, and the last graft in time for that is on %s", wants, last.ShortFrom(today)), graftSooner(last, today))
	case b.By > by:
		c.warn(fmt.Sprintf("%s, and of this graft they are wished by %s", wants, b.By.ShortFrom(today)),
			fmt.Sprintf("Wish them by %s, or give the order a later day", by.ShortFrom(today)))
	}
}

// graftSooner is the way out of a graft that is too late for an order: one by the last day in
// time, where that is still to come.
func graftSooner(last, today calendar.Day) string {
	if last < today {
		return "Give the order a later day"
	}
	return "Graft by " + last.ShortFrom(today) + ", or give the order a later day"
}
