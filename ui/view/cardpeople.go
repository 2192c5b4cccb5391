package view

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
)

// order draws the card of an order for queens.
func (c *cardDraw) order(o *book.Order) {
	c.titled(dotted("Order "+o.Number, o.Customer))
	c.para(c.orderDue(o), c.dueFont(o), whole)
	c.y += 8
	line := o.Line
	if line == "" {
		line = "any"
	}
	for _, other := range o.Substitute {
		line += ", or " + other
	}
	c.field("Line", line, ink(14), whole)
	c.field("They are", orderWords(o), ink(14), whole)
	if o.Priority != 0 {
		c.field("Priority", strconv.Itoa(o.Priority), ink(14), 1)
	}
	if !o.Taken.IsZero() {
		c.field("Taken", o.Taken.Day(c.r.View.Zone()).ShortFrom(c.r.Day), ink(14), 1)
	}
	served, known := c.s.Served(o.Order)
	if known {
		c.served(served)
	}
	c.hair()
	c.count("queens ordered", strconv.Itoa(o.Queens), ink(14).semi())
	if o.Claimed > 0 {
		c.count("claimed", strconv.Itoa(o.Claimed), ink(14).semi())
	}
	c.count("handed over", strconv.Itoa(len(o.Handed)), ink(14).semi())
	c.count("still owed", strconv.Itoa(o.Open()), ink(14).semi())
	fit, long := rules.CagedFor(c.r.View, o)
	if o.Open() > 0 {
		c.count("in cages that will do", strconv.Itoa(len(fit)), ink(14).semi())
		if len(long) > 0 {
			c.count("caged too long by then", strconv.Itoa(len(long)), ink2(14))
		}
	}
	c.y -= 8
	if known {
		c.gets(served)
	}
	c.links("Queens handed over", c.caged(o.Handed))
	if o.Open() > 0 {
		if !known {
			c.links("Queens that will do", c.queens(fit))
		}
		c.links("Caged too long by then", c.queens(long))
	}
	for _, f := range c.r.About(o.Order.Subject()) {
		if f.Rule != rules.OrderShort || !known || !c.saysShort(served) {
			c.finding(f)
		}
	}
	c.book(o.Order.Subject())
}

func trimmedComma(a, b string) string {
	if a == "" {
		return b
	}
	return a + ", " + b
}

// orderDue says by when the queens are wanted, and how long that is.
func (c *cardDraw) orderDue(o *book.Order) string {
	switch {
	case o.Closed:
		return "closed"
	case o.Open() == 0:
		return "all handed over"
	case o.By.IsZero():
		return "by no day"
	}
	said := "by " + o.By.ShortFrom(c.r.Day) + ", " + daysAway(o.By.Sub(c.r.Day))
	if !o.From.IsZero() {
		said = "from " + o.From.ShortFrom(c.r.Day) + ", " + said
	}
	if !o.Reopened.IsZero() {
		said = "to be replaced " + said + "; claimed " + o.Reopened.Day(c.r.View.Zone()).ShortFrom(c.r.Day)
	}
	return said
}

func (c *cardDraw) dueFont(o *book.Order) font {
	if o.Open() > 0 && !o.By.IsZero() && o.By < c.r.Day && !c.r.Ahead {
		return ink(14).semi().as(scene.Act)
	}
	return ink2(14)
}

// queens are queens as links.
func (c *cardDraw) queens(all []*book.Queen) (links []linked) {
	for _, q := range all {
		links = append(links, c.to(q.Queen.Subject()))
	}
	return links
}

// person draws the card of somebody who works bees.
func (c *cardDraw) person(p *book.Person) {
	c.titled(p.Name)
	c.text(c.x, c.y, "works bees", ink2(14))
	c.y += 24
	c.field("Telephone", p.Phone, ink(14), 1)
	c.heading("Free hours")
	if !p.Told() {
		c.para("nobody said when", ink2(14), 1)
	}
	for i := range 7 {
		d := time.Weekday((i + 1) % 7)
		if f := p.Free[d]; f.Minutes() > 0 {
			c.count(d.String(), hoursWords(f), ink(14))
		}
	}
	c.hoursOn(p)
	c.y -= 8
	c.awayDays(p)
	c.book(p.Person.Subject())
}

// orderWords are how the queens of an order are wanted, and how they go.
func orderWords(o *book.Order) (words string) {
	for _, w := range []struct {
		said bool
		word string
	}{
		{o.Marked, "marked"},
		{o.Disc, "with disc"},
		{o.Clipped, "a wing clipped"},
		{o.Sent, "sent"},
		{o.Journey > 0, plural(o.Journey, "day", "days") + " on the way"},
	} {
		if w.said {
			words = trimmedComma(words, w.word)
		}
	}
	return words
}

// hoursOn writes the hours of single days that have not gone by, as last told.
func (c *cardDraw) hoursOn(p *book.Person) {
	told := map[calendar.Day]bool{}
	for _, on := range p.On {
		told[on.Day] = on.Day >= c.r.Day
	}
	for _, day := range slices.Sorted(maps.Keys(told)) {
		if told[day] {
			c.count(day.Short(), hoursWords(p.FreeOn(day)), ink(14))
		}
	}
}

// hoursWords are the free hours of a day.
func hoursWords(f book.FreeHours) string {
	if f.Minutes() == 0 {
		return "none"
	}
	return fmt.Sprintf("%02d:%02d to %02d:%02d", f.From/60, f.From%60, f.Until/60, f.Until%60)
}

// awayDays writes the days off that have not gone by.
func (c *cardDraw) awayDays(p *book.Person) {
	var off []book.DaysOff
	for _, o := range p.Off {
		if o.To >= c.r.Day {
			off = append(off, o)
		}
	}
	if len(off) == 0 {
		return
	}
	c.heading("Away")
	for _, o := range off {
		c.para(spanWords(o.From, o.To), ink(14), 1)
	}
}

// spanWords are days from one to another.
func spanWords(from, to calendar.Day) string {
	if from == to {
		return from.Short()
	}
	return from.Short() + " to " + to.Short()
}
