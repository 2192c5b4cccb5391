package view

import (
	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/line"
	"lidmark/ui/scene"
)

// colony draws the card of a full-size colony.
func (c *cardDraw) colony(k *book.Colony) {
	o := at(c.x+c.picture()/2+2, c.y+42)
	c.add(scene.Rect{Area: scene.Around(o, 50), Radius: 4, Fill: scene.Panel, Stroke: stroke(scene.Ink, 2)},
		scene.Rect{Area: scene.Around(o, 28), Radius: 2, Stroke: stroke(scene.Ink, 1.4)})
	c.title(k.Name, "", linked{text: roles(k)}, linked{text: k.Line}, c.to(k.Yard.Subject()))
	c.fieldTo("Queen", c.to(k.Queen.Subject()), "")
	if k.Thousands > 0 {
		c.field("Bees", figure(k.Thousands)+" thousand", ink(14), 1)
	}
	c.colonyCare(k)
	for _, f := range c.r.About(k.Colony.Subject()) {
		c.finding(f)
		c.standsOn(f)
	}
	if n := len(k.Banked); n > 0 {
		c.links(sentence(course.Count(n, "queen")+" in cages"), c.caged(k.Banked))
	}
	c.transfers("Got", k.Got, func(t book.Transfer) book.Subject { return t.From })
	c.transfers("Gave", k.Gave, func(t book.Transfer) book.Subject { return t.To })
	c.book(k.Colony.Subject())
}

// colonyCare writes suspicion, treatment, feed and open brood.
func (c *cardDraw) colonyCare(k *book.Colony) {
	zone := c.r.View.Zone()
	if s := c.r.View.Yard(k.Yard).Standstill; s != nil && s.Of == k.Colony.Subject() {
		c.field("Suspected", s.What+" since "+s.Since.Day(zone).Short(), ink(14).semi().as(scene.Act), whole)
	}
	if n := len(k.OpenBrood); n > 0 {
		b := k.OpenBrood[n-1]
		said := "open brood put in " + b.At.Day(zone).Short()
		if b.Searched.IsZero() {
			said += ", not searched for wild cells"
		}
		c.field("Brood", said, ink(14), whole)
	}
	c.treatment(k.Treated)
	if !k.FedAt.IsZero() {
		c.field("Fed", k.FedAt.Day(zone).Short(), ink(14), 1)
	}
}

// treatment writes the last treatment and until when its label asks to wait.
func (c *cardDraw) treatment(t book.Treatment) {
	if t.At.IsZero() {
		return
	}
	zone := c.r.View.Zone()
	said := t.With + " " + t.At.Day(zone).Short()
	if t.Waits(c.r.Day, zone) {
		said += ", wait until " + t.Until(zone).Short()
	}
	c.field("Treated", said, ink(14), whole)
}

// mostTransfers is how many movements of bees a card shows.
const mostTransfers = 6

// transfers writes the latest movements of bees and brood, with the other end.
func (c *cardDraw) transfers(title string, all []book.Transfer, other func(book.Transfer) book.Subject) {
	if len(all) == 0 {
		return
	}
	c.heading(title)
	left := max(0, len(all)-mostTransfers)
	for i := len(all) - 1; i >= left; i-- {
		t := all[i]
		what := "bees"
		switch {
		case t.Cups > 0:
			what = course.Count(int(t.Cups+0.5), "cup")
		case t.Combs > 0:
			what = course.Count(int(t.Combs+0.5), "comb")
		}
		c.row(c.to(other(t)), what+", "+shortDay(t.At.Day(c.r.View.Zone())))
	}
	c.y -= 6
	c.more(left)
}

// yard draws the card of a yard that is selected.
func (c *cardDraw) yard(y *book.Yard) {
	nucs := c.r.In(y.Yard)
	c.titled(y.Name)
	c.fit(c.x, c.y, plural(len(nucs), "nuc", "nucs")+", "+c.drive(y), ink2(14), c.x+c.w)
	c.y += 24
	c.yardCare(y)
	for _, f := range c.r.About(y.Yard.Subject()) {
		c.finding(f)
		c.standsOn(f)
	}
	c.conditions(nucs)
	c.wants(nucs)
	c.weather(y.Yard)
	c.papers(y)
	c.reached(y.Yard)
	c.book(y.Yard.Subject())
	c.buttons(button{"Show it", "show yard", true})
}

func (c *cardDraw) drive(y *book.Yard) string {
	if y.Home {
		return "the home yard"
	}
	return figure(y.Drive) + " min from home"
}

// yardCare writes standstill, inspection and treatment.
func (c *cardDraw) yardCare(y *book.Yard) {
	zone := c.r.View.Zone()
	if s := y.Standstill; s != nil {
		c.field("Standstill", "since "+s.Since.Day(zone).Short()+": "+s.What+" suspected in "+line.In(c.r.View).Of(s.Of), ink(14).semi().as(scene.Act), whole)
	}
	if !y.LastChecked.IsZero() {
		c.field("Inspected", y.LastChecked.Day(zone).Short(), ink(14), 1)
	}
	c.treatment(y.Treated)
}

// papers writes the certificates and permits, each until when it is good.
func (c *cardDraw) papers(y *book.Yard) {
	if len(y.Papers) == 0 {
		return
	}
	c.heading("Papers")
	for _, p := range y.Papers {
		f, said := ink(14), "until "+p.Expires.Short()
		if p.Expires < c.r.Day && !c.r.Ahead {
			f, said = f.semi().as(scene.Act), "ran out "+p.Expires.Short()
		}
		c.count(p.Name, said, f)
	}
	c.y -= 8
}

// reached are the things of a yard, or of all for the zero one, that no pane
// shows: as links.
func (c *cardDraw) reached(yard book.YardID) {
	v := c.r.View
	var yards, colonies, orders, served, people, queens []linked
	for y := range v.Yards() {
		if y.Yard == yard || yard.IsZero() {
			yards = append(yards, c.to(y.Yard.Subject()))
		}
	}
	for k := range v.Colonies() {
		if k.Yard == yard || yard.IsZero() {
			colonies = append(colonies, c.to(k.Colony.Subject()))
		}
	}
	for o := range v.Orders() {
		if o.Open() > 0 {
			orders = append(orders, linked{"order " + o.Number + ", " + plural(o.Open(), "queen", "queens") + " by " + o.By.Short(), o.Order.Subject()})
		} else {
			served = append(served, c.to(o.Order.Subject()))
		}
	}
	for p := range v.People() {
		people = append(people, c.to(p.Person.Subject()))
	}
	for q := range v.Queens() {
		if q.InHand() && (q.Caged() || q.Name != "") {
			queens = append(queens, c.to(q.Queen.Subject()))
		}
	}
	if c.s.Selection.Len() == 0 {
		c.links("Yards", yards)
	}
	for _, of := range []struct {
		what string
		all  []linked
	}{{"Colonies", colonies}, {"Orders", orders}, {"Orders served", served}, {"Queens in cages", queens}, {"People", people}} {
		c.links(of.what+": "+thousands(len(of.all)), of.all)
	}
}
