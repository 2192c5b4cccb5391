package view

import (
	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// linked is a text that leads to a thing of the book; without one it is only a
// text.
type linked struct {
	text string
	to   book.Subject
}

// nameOf is what a thing is called in a list.
func nameOf(v *book.View, s book.Subject) string {
	name := line.In(v).Of(s)
	switch s.Kind {
	case book.KindBatch, book.KindOrder:
		return s.Kind.String() + " " + name
	case book.KindQueen:
		if q := v.Queen(book.QueenID(s.UUID)); q.Name == "" || q.Virgin {
			return queenCalled(v, q)
		}
	}
	if name == "" {
		return "a " + s.Kind.String() + " without a name"
	}
	return name
}

// to is the link to a thing by its name; nothing for none.
func (c *cardDraw) to(s book.Subject) linked {
	if s.IsZero() {
		return linked{}
	}
	return linked{nameOf(c.r.View, s), s}
}

// linkTo writes a link from x on, no further than to, and gives where it ends.
func (c *cardDraw) linkTo(x, y float64, l linked, f font, to float64) float64 {
	if l.to.IsZero() {
		return c.fit(x, y, l.text, f, to)
	}
	ref := state.LinkTo(l.to)
	end := c.fit(x, y, l.text, f.as(scene.Pen), to)
	if c.hovers(ref) {
		c.rule(x, y+4, end, y+4, scene.Pen)
	}
	c.hit(target(scene.Area{X: x - 4, Y: y - 15, W: end - x + 8, H: 22}), ref, "")
	return end
}

// fieldTo writes a name and the link to what it is, with more behind it.
func (c *cardDraw) fieldTo(name string, l linked, more string) {
	if l.to.IsZero() {
		c.field(name, more, ink(14), whole)
		return
	}
	c.text(c.x, c.y, name, ink2(13))
	end := c.linkTo(c.x+fieldNames, c.y, l, ink(14), c.x+c.w)
	if more != "" && c.width(more, ink(14))+8 < c.x+c.w-end {
		c.text(end, c.y, ", "+more, ink(14))
		more = ""
	}
	c.y += scene.LineHeight(14) + 4
	if more != "" {
		c.y -= 4
		c.field("", more, ink(14), whole)
	}
}

// flow writes links one behind the other, in as many lines as they need.
func (c *cardDraw) flow(all []linked) {
	const gap, row = 16.0, 28.0
	x := c.x
	for _, l := range all {
		w := min(c.width(l.text, ink(14)), c.w)
		if x > c.x && x+w > c.x+c.w {
			x, c.y = c.x, c.y+row
		}
		x = c.linkTo(x, c.y, l, ink(14), c.x+c.w) + gap
	}
	if len(all) > 0 {
		c.y += row - 4
	}
}

// links writes a heading and links below it; nothing where there are none.
func (c *cardDraw) links(title string, all []linked) {
	if len(all) == 0 {
		return
	}
	c.heading(title)
	c.y += 2
	c.flow(all[:min(len(all), mostLinks)])
	c.more(len(all) - mostLinks)
}

// mostLinks is how many things a card lists under one heading.
const mostLinks = 60

// row writes a link with what is said of it at the right, or below where both have no room beside
// each other.
func (c *cardDraw) row(l linked, says string) {
	name, said := ink(14), ink2(13)
	if c.width(l.text, name)+10+c.width(says, said) > c.w {
		c.linkTo(c.x, c.y, l, name, c.x+c.w)
		c.y += scene.LineHeight(name.size)
		c.para(says, said, whole)
		c.y += 5
		return
	}
	from := c.right(c.x+c.w, c.y, says, said)
	c.linkTo(c.x, c.y, l, name, from-10)
	c.y += 28
}
