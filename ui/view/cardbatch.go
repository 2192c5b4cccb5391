package view

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// batch draws the card of a batch: what to do when it is late, its counts, its
// clock, its nucs.
func (c *cardDraw) batch(b *book.Batch) {
	c.titled(batchWord(b))
	c.fit(c.x, c.y, "grafted "+b.At.In(c.r.View.Zone()), ink2(14), c.x+c.w)
	c.y += 18
	late := c.late(b)
	c.clock(b)
	c.counts(b)
	if !late {
		c.whyAll(c.r.About(b.Batch.Subject()), nil)
	}
	c.origin(b)
	c.lids(c.nucsOf(b), "In nucs")
	c.links("Caged", c.caged(b.Caged))
	c.book(b.Batch.Subject())
	first := []button{{"The whole batch", "batch room", false}}
	if late {
		first = append([]button{{"The ways out", "late day", true}}, first...)
	}
	c.buttons(first...)
}

// whyAll writes the findings that need the keeper, and the one of the work that
// comes first: why, with the numbers that were used, and what waiting costs.
func (c *cardDraw) whyAll(findings []rules.Finding, due *rules.Finding) {
	for _, f := range findings {
		first := due != nil && f.Rule == due.Rule
		if !f.NeedsYou() && !first {
			continue
		}
		c.finding(f)
		c.standsOn(f)
		if first {
			c.waiting(f)
		}
	}
}

// finding writes one finding: what is the matter, what to do, why.
func (c *cardDraw) finding(f rules.Finding) {
	c.y += 2
	c.hair()
	font := ink(14).semi()
	if f.NeedsYou() && !c.r.Ahead {
		font = font.as(scene.Act)
	}
	c.para(sentence(f.What), font, whole)
	if !strings.EqualFold(f.Do, f.What) {
		c.para(f.Do, ink(14), whole)
	}
	c.para(sentence(f.Why), ink2(13), whole)
}

func (c *cardDraw) counts(b *book.Batch) {
	c.hair()
	figures := ink(14).semi()
	c.count("grafted", thousands(b.Larvae), figures)
	if b.Taken.Counted() {
		c.count("taken", thousands(b.Taken.N), figures)
	}
	if b.Capped.Counted() {
		c.count("capped", thousands(b.Capped.N), figures)
	}
	for _, k := range []struct {
		name string
		n    int
	}{{"given to nucs", len(b.Given)}, {"caged", len(b.Caged)}, {"culled", b.Culled}, {"found dead", b.Dead}, {"dropped", b.Lost}, {"on the way", b.OnTheWay()}, {"still together", b.Left()}} {
		if k.n > 0 {
			c.count(k.name, thousands(k.n), figures)
		}
	}
	c.y -= 8
}

// clock writes the hours of the batch's emergence while cells are not placed.
func (c *cardDraw) clock(b *book.Batch) {
	zone := c.r.View.Zone()
	emerges := c.r.Course.Emerges(b.Batch)
	if b.Unplaced() == 0 {
		return
	}
	c.heading("The clock")
	clock := c.r.Course.Clock(b.Batch)
	rows := []struct {
		name string
		at   time.Time
	}{{"best by", c.r.BestOut(b)}, {"hard by", clock.Hard()}, {"half out by", emerges}}
	for _, row := range rows {
		f := ink(14)
		if row.name == "hard by" && !c.r.Ahead {
			f = f.semi().as(scene.Act)
		}
		c.count(row.name, hour(row.at, zone), f)
	}
	c.y -= 8
}

// late writes the ways out, best first, and what waiting costs when the hard
// hour is near or past, and tells whether it did.
func (c *cardDraw) late(b *book.Batch) bool {
	now := c.r.View.On()
	card, ok := c.r.Late(b.Batch)
	if !ok {
		return false
	}
	const title, said = "Ways out, the best first", "accepted, 10–90 %"
	c.heading(title)
	if c.width(title, ink(14).semi())+c.width(said, ink2(13))+10 <= c.w {
		c.right(c.x+c.w, c.y-22, said, ink2(13))
	}
	for i, w := range card.Ways {
		f := ink(14)
		if i == 0 {
			f = f.semi()
		}
		c.count(sentence(w.Way.String()), card.Taken[i].String(), f)
	}
	c.y -= 8
	c.heading(lossHead(card.Cells))
	if already := card.AlreadySays(); already != "" {
		c.count("already, unless none is out", already, ink(14).semi())
	}
	losses := slices.SortedFunc(slices.Values(card.Losses), func(a, b rules.Loss) int { return a.By.Compare(b.By) })
	for _, l := range losses {
		if l.By.After(now) {
			c.count("until "+hour(l.By, c.r.View.Zone()), card.Lost(l.By).String(), ink(14).semi())
		}
	}
	c.y -= 8
	return true
}

// lossHead is the head of what waiting costs.
func lossHead(cells int) string {
	if cells == 1 {
		return "Of 1 cell, lost if it waits"
	}
	return "Of " + thousands(cells) + " cells, lost if they wait"
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
	if len(nucs) == 0 {
		return
	}
	c.heading(fmt.Sprintf("%s: %s", title, thousands(len(nucs))))
	const pitch, size, row, rows = 36.0, 28.0, 50.0, 3
	perRow := int(c.w / pitch)
	c.y -= 6
	some := nucs[:min(len(nucs), perRow*rows)]
	for i, n := range some {
		o := at(c.x+pitch/2+float64(i%perRow)*pitch, c.y+size/2+float64(i/perRow)*row)
		l := c.lidOf(n, o, size)
		l.Selected, l.Hover = false, l.Hover && c.s.Hover.Ref == l.Ref
		c.add(l)
		name := scene.Shorten(c.measure, n.Name, 12, scene.Regular, pitch-2)
		c.centre(o.X, o.Y+size/2+14, name, ink2(12))
	}
	c.y += row*float64((len(some)+perRow-1)/perRow) + 8
	c.more(len(nucs) - len(some))
}

// origin writes where a batch comes from: breeder, her queen, starter, grafter.
func (c *cardDraw) origin(b *book.Batch) {
	c.y += 2
	c.hair()
	c.fieldTo("Breeder", c.to(b.Breeder.Subject()), "")
	c.fieldTo("Mother", c.to(b.Mother.Subject()), "")
	c.fieldTo("Starter", c.to(b.Starter.Subject()), "")
	c.fieldTo("Grafter", c.to(b.Grafter.Subject()), "")
	where := c.to(b.Finisher.Subject())
	if b.Incubate && b.Left() > 0 {
		where = linked{text: "the incubator"}
		if n := len(b.Log); n > 0 {
			where.text += fmt.Sprintf(", %s °C", figure(b.Log[n-1].Celsius))
		}
	}
	if where.to.IsZero() {
		c.field("Cells in", where.text, ink(14), whole)
	} else {
		c.fieldTo("Cells in", where, "")
	}
	c.y += 4
}
