package view

import "lidmark/ui/scene"

// whole is more lines than any text of a card has: what is said there is never cut,
// the card scrolls.
const whole = 1 << 10

// hair parts two sections.
func (c *cardDraw) hair() {
	c.rule(c.x, c.y, c.x+c.w, c.y, scene.Hair)
	c.y += 24
}

// heading begins a section.
func (c *cardDraw) heading(text string) {
	top := c.y
	c.hair()
	c.y = c.wrap(c.x, c.y, text, ink(14).semi(), c.w, 2) - scene.LineHeight(14) + 22
	c.whole(scene.Area{X: c.x, Y: top, W: c.w, H: c.y + 4 - top}) // with the line below it
}

// field writes a name and what it is, over at most so many lines.
func (c *cardDraw) field(name, text string, f font, most int) {
	if text == "" {
		return
	}
	c.text(c.x, c.y, name, ink2(13))
	c.y = c.wrap(c.x+fieldNames, c.y, text, f, c.w-fieldNames, most) + 4
}

// fieldNames is how wide the names of fields are, dp.
const fieldNames = 84.0

// para writes lines as wide as the card.
func (c *cardDraw) para(text string, f font, most int) {
	if text != "" {
		c.y = c.wrap(c.x, c.y, text, f, c.w, most) + 3
	}
}

// count writes a name with a figure at the right.
func (c *cardDraw) count(name, figure string, f font) { c.beside(name, ink(14), figure, f, 22) }

// beside writes a name, in as many lines as it needs, with a figure at the right of
// the first; the next row begins so far below the last.
func (c *cardDraw) beside(name string, f font, figure string, of font, row float64) {
	from := c.right(c.x+c.w, c.y, figure, of)
	c.y = c.wrap(c.x, c.y, name, f, from-10-c.x, whole) - scene.LineHeight(f.size) + row
}

// titled writes the heading of a card that has no picture, in as many lines as it
// needs, and leaves room for a line below it.
func (c *cardDraw) titled(text string) {
	f := ink(17).semi()
	c.y = c.wrap(c.x, c.y+12, text, f, c.w, 3) - scene.LineHeight(f.size) + 24
}

// more says how many are left out.
func (c *cardDraw) more(n int) {
	if n > 0 {
		c.para("and "+thousands(n)+" more", ink2(13), 1)
	}
}

// picture is how large the lid of the card's title is, dp.
func (c *cardDraw) picture() float64 {
	if c.l.Narrow {
		return 60
	}
	return 76
}

// title writes the heading of a card beside its picture and lines below; how
// that is known stands behind it where there is room.
func (c *cardDraw) title(text, how string, lines ...linked) {
	x := c.x + c.picture() + 20
	w := c.x + c.w + 4 - x
	if longer := text + ", " + how; how != "" && c.width(longer, ink(17).semi()) <= w {
		text, how = longer, ""
	}
	f, y := c.fitting(text, ink(17).semi(), w), c.y+38
	if c.width(text, f) <= w {
		c.text(x, c.y+16, text, f)
	} else {
		y = c.wrap(x, c.y+16, text, f, w, 3)
	}
	for _, l := range append([]linked{{text: how}}, lines...) {
		if l.text == "" {
			continue
		}
		if !l.to.IsZero() {
			c.linkTo(x, y, l, ink(14), x+w)
			y += scene.LineHeight(14)
			continue
		}
		y = c.wrap(x, y, l.text, c.fitting(l.text, ink2(14), w), w, 2)
	}
	c.y = max(c.y+108, y+14)
}

// fitting is a font, or one a size smaller if the text fits only then.
func (c *cardDraw) fitting(text string, f font, room float64) font {
	if c.width(text, f) > room {
		f.size = max(13, f.size-2)
	}
	return f
}
