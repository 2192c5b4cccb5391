package view

import (
	"fmt"
	"slices"
	"strconv"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// batch draws the card of a batch: its counts, its clock, its nucs.
func (c *cardDraw) batch(b *book.Batch) {
	c.fit(c.x, c.y+16, fmt.Sprintf("Batch %d · %s", b.Number, b.Line), ink(17).semi(), c.x+c.w)
	c.fit(c.x, c.y+38, "grafted "+b.At.In(c.r.View.Zone()), ink2(14), c.x+c.w)
	c.y += 54
	c.counts(b)
	c.clock(b)
	late := c.late(b)
	for _, f := range c.r.About(b.Batch.Subject()) {
		if f.NeedsYou() && c.room(70) && !late {
			c.para(sentence(f.What)+". "+f.Do+".", ink(14).semi().as(scene.Act), 3)
			c.para(f.Why, ink2(13), 3)
		}
	}
	c.lids(c.nucsOf(b), "In nucs")
	c.book(b.Batch.Subject())
	c.buttons()
}

func (c *cardDraw) counts(b *book.Batch) {
	c.hair()
	figures := ink(14).semi()
	c.count("grafted", strconv.Itoa(b.Larvae), figures)
	if b.Taken.Counted() {
		c.count("taken", strconv.Itoa(b.Taken.N), figures)
	}
	if b.Capped.Counted() {
		c.count("capped", strconv.Itoa(b.Capped.N), figures)
	}
	for _, k := range []struct {
		name string
		n    int
	}{{"given to nucs", len(b.Given)}, {"caged", len(b.Caged)}, {"culled", b.Culled}, {"found dead", b.Dead}, {"dropped", b.Lost}, {"still together", b.Left()}} {
		if k.n > 0 {
			c.count(k.name, strconv.Itoa(k.n), figures)
		}
	}
	c.y -= 8
}

// clock writes the hours of the batch's emergence while cells are together.
func (c *cardDraw) clock(b *book.Batch) {
	zone := c.r.View.Zone()
	emerges := c.r.Course.Emerges(b.Batch)
	if b.Left() == 0 || !c.heading("The clock") {
		return
	}
	clock := c.r.Course.Clock(b.Batch)
	rows := []struct {
		name string
		at   time.Time
	}{{"best out by", clock.Best()}, {"hard, by", clock.Hard()}, {"half emerged by", emerges}}
	for _, row := range rows {
		f := ink(14)
		if row.name == "hard, by" && !c.r.Ahead {
			f = f.semi().as(scene.Act)
		}
		c.count(row.name, hour(row.at, zone), f)
	}
	c.y -= 8
}

// lateFrom is how long before the hard hour the ways out are reckoned.
const lateFrom = 48 * time.Hour

// late writes what waiting costs and the ways out, best first, when the hard
// hour is near or past, and tells whether it did.
func (c *cardDraw) late(b *book.Batch) bool {
	now := c.r.View.On()
	if b.Left() == 0 || now.Add(lateFrom).Before(c.r.Course.Clock(b.Batch).Hard()) {
		return false
	}
	card, ok := rules.LateDay(c.r.View, b.Batch, time.Time{})
	if !ok || !c.heading(fmt.Sprintf("Of %d cells, lost if they wait", card.Cells)) {
		return false
	}
	slices.SortFunc(card.Losses, func(a, b rules.Loss) int { return a.By.Compare(b.By) })
	for _, l := range card.Losses {
		if l.By.After(now) {
			c.count("till "+hour(l.By, c.r.View.Zone()), figure(l.Lost), ink(14).semi())
		}
	}
	c.y -= 8
	if !c.heading("Ways out, the best first") {
		return true
	}
	c.right(c.x+c.w, c.y-22, "taken in", ink2(13))
	for i, w := range card.Ways {
		f := ink(14)
		if i == 0 {
			f = f.semi()
		}
		c.count(sentence(w.Way.String()), fmt.Sprintf("%.0f", w.Accepted), f)
	}
	c.y -= 8
	return true
}

// nucsOf are the nucs that hold a queen of the batch.
func (c *cardDraw) nucsOf(b *book.Batch) (all []*state.Nuc) {
	for _, n := range c.r.Nucs {
		if n.Holds.Batch == b.Batch {
			all = append(all, n)
		}
	}
	return all
}

// lids draws nucs as small lids with their names, as many as three rows hold.
func (c *cardDraw) lids(nucs []*state.Nuc, title string) {
	if len(nucs) == 0 || !c.heading(fmt.Sprintf("%s: %d", title, len(nucs))) {
		return
	}
	const pitch, size, rows = 36.0, 28.0, 3
	perRow := int(c.w / pitch)
	c.y -= 6
	for i, n := range nucs {
		if i >= perRow*rows || !c.room(48) {
			break
		}
		o := at(c.x+pitch/2+float64(i%perRow)*pitch, c.y+size/2)
		l := c.lidOf(n, o, size)
		l.Selected = false
		c.add(l)
		c.centre(o.X, o.Y+size/2+11, n.Name, ink2(12))
		if i%perRow == perRow-1 || i == len(nucs)-1 {
			c.y += 46
		}
	}
	c.y += 8
}

// colony draws the card of a full-size colony.
func (c *cardDraw) colony(k *book.Colony) {
	o := at(c.x+c.picture()/2+2, c.y+42)
	c.add(scene.Rect{Area: scene.Around(o, 50), Radius: 4, Fill: scene.Panel, Stroke: stroke(scene.Ink, 2)},
		scene.Rect{Area: scene.Around(o, 28), Radius: 2, Stroke: stroke(scene.Ink, 1.4)})
	c.title(k.Name, roles(k), k.Line, c.r.View.Yard(k.Yard).Name)
	if k.Thousands > 0 {
		c.field("Bees", figure(k.Thousands)+" thousand", ink(14), 1)
	}
	if n := len(k.Banked); n > 0 {
		c.field("Bank", course.Count(n, "queen")+" in cages", ink(14), 1)
	}
	if n := len(k.OpenBrood); n > 0 {
		b := k.OpenBrood[n-1]
		said := "open brood put in " + b.At.Day(c.r.View.Zone()).Short()
		if b.Searched.IsZero() {
			said += ", not searched for wild cells"
		}
		c.field("Brood", said, ink(14), 2)
	}
	for _, f := range c.r.About(k.Colony.Subject()) {
		if c.room(60) {
			c.para(sentence(f.What), ink(14).semi(), 2)
			c.para(f.Do+". "+f.Why, ink2(13), 3)
		}
	}
	c.book(k.Colony.Subject())
	c.buttons()
}
