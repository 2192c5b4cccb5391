package view

import (
	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// cardDraw is the card being drawn, from the top down to the buttons at its
// foot. What has no room any more is left out.
type cardDraw struct {
	*sheet
	r      *state.Reading
	x, w   float64 // of the text
	y      float64 // where the next thing begins
	bottom float64 // where the buttons begin
}

// cardFoot is the height kept for the buttons, dp.
const cardFoot = 56.0

// card draws what is selected: one thing, several nucs, or the yard shown.
func (p *sheet) card() {
	a := p.l.Card
	if a.Empty() {
		return
	}
	p.clipped(a, scene.Tag{Ref: scene.Ref{Kind: "card"}}, func() {
		p.rect(a, scene.Panel)
		c := &cardDraw{sheet: p, r: p.s.Reading(), x: a.X + 20, w: a.W - 40, y: a.Y + 20, bottom: a.Bottom() - cardFoot}
		c.draw()
	})
	p.rule(a.X, a.Y, a.X, a.Bottom(), scene.Rule)
}

func (c *cardDraw) draw() {
	sel := c.s.Selection
	last := sel.Last()
	switch {
	case sel.Len() > 1:
		c.several()
	case last.Kind == book.KindNuc:
		if id, ok := last.Nuc(); ok && c.r.Nuc(id) != nil {
			c.nuc(c.r.Nuc(id))
		}
	case last.Kind == book.KindBatch:
		if id, ok := last.Batch(); ok {
			c.batch(c.r.View.Batch(id))
		}
	case last.Kind == book.KindColony:
		if id, ok := last.Colony(); ok {
			c.colony(c.r.View.Colony(id))
		}
	default:
		c.nothing()
	}
}

// nothing draws the card when nothing is selected: on Today the batch whose
// hard deadline is past, else the yard shown.
func (c *cardDraw) nothing() {
	if c.s.Room == state.Today {
		for _, f := range c.r.Plan().Hard {
			if id, ok := f.Of.Batch(); ok {
				c.batch(c.r.View.Batch(id))
				return
			}
		}
	}
	c.yardShown()
}

// room tells whether so much more fits above the buttons.
func (c *cardDraw) room(h float64) bool { return c.y+h <= c.bottom }

// hair parts two sections.
func (c *cardDraw) hair() {
	c.rule(c.x, c.y, c.x+c.w, c.y, scene.Hair)
	c.y += 24
}

// heading begins a section if it and a first line have room.
func (c *cardDraw) heading(text string) bool {
	if !c.room(66) {
		return false
	}
	c.hair()
	c.fit(c.x, c.y, text, ink(14).semi(), c.x+c.w)
	c.y += 22
	return true
}

// field writes a name and what it is, over at most so many lines.
func (c *cardDraw) field(name, text string, f font, most int) {
	if text == "" || !c.room(20) {
		return
	}
	const names = 84.0
	c.text(c.x, c.y, name, ink2(13))
	c.y = c.wrap(c.x+names, c.y, text, f, c.w-names, most) + 4
}

// para writes lines as wide as the card.
func (c *cardDraw) para(text string, f font, most int) {
	if text != "" && c.room(20) {
		c.y = c.wrap(c.x, c.y, text, f, c.w, most) + 3
	}
}

// count writes a name with a figure at the right.
func (c *cardDraw) count(name, figure string, f font) {
	if c.room(20) {
		from := c.right(c.x+c.w, c.y, figure, f)
		c.fit(c.x, c.y, name, ink(14), from-10)
		c.y += 22
	}
}

// picture is how large the lid of the card's title is, dp.
func (c *cardDraw) picture() float64 {
	if c.l.Narrow {
		return 60
	}
	return 76
}

// title writes the heading of a card beside its picture and three lines below.
func (c *cardDraw) title(text string, lines ...string) {
	x := c.x + c.picture() + 20
	end := c.x + c.w + 4
	c.fit(x, c.y+16, text, c.fitting(text, ink(17).semi(), end-x), end)
	y := c.y + 38
	for _, l := range lines {
		if l != "" {
			c.fit(x, y, l, c.fitting(l, ink2(14), end-x), end)
			y += 20
		}
	}
	c.y += 108
}

// fitting is a font, or one a size smaller if the text fits only then.
func (c *cardDraw) fitting(text string, f font, room float64) font {
	if c.width(text, f) > room {
		f.size = max(13, f.size-2)
	}
	return f
}

// book writes the lines of the book about a subject, the latest first.
func (c *cardDraw) book(s book.Subject) {
	var lines []book.Line
	for l := range c.r.View.History(s) {
		lines = append(lines, l)
	}
	if len(lines) == 0 || !c.heading("The book") {
		return
	}
	names := line.In(c.r.View)
	for i := len(lines) - 1; i >= 0; i-- {
		if !c.room(16) {
			return
		}
		c.bookLine(lines[i], s, names)
	}
}

func (c *cardDraw) bookLine(l book.Line, s book.Subject, names line.Names) {
	y := c.y
	c.text(c.x, y, shortDay(l.At.Day(c.r.View.Zone())), ink2(13))
	x := c.x + 58
	f := ink(14)
	if l.Struck {
		f = ink3(14)
	}
	words := line.WordsOn(l.Fact, names, s)
	if code := line.Codes(l.Fact, names); code != "" && c.width(code+words, f)+10 < c.x+c.w-x {
		c.text(x+c.width(code, f)+10, y, words, f)
		words = code
	}
	c.y = c.wrap(x, y, words, f, c.x+c.w-x, 2)
	if l.Struck {
		c.rule(x, y-5, min(x+c.width(words, f), c.x+c.w), y-5, scene.Ink3)
	}
}

// codes are a fact as it is typed.
func codes(r *state.Reading, f book.Fact) string { return line.Codes(f, line.In(r.View)) }

// buttons draws the card's buttons at its foot, as many as fit.
func (c *cardDraw) buttons(all ...[2]string) {
	if len(all) == 0 {
		return
	}
	c.rule(c.x, c.bottom, c.x+c.w, c.bottom, scene.Hair)
	x := c.x
	for i, b := range all {
		if x+c.width(b[0], ink(14).medium())+28 > c.x+c.w+1 {
			return
		}
		x = c.button(x, c.bottom+12, b[0], b[1], i == 0) + 8
	}
}

// wordsOn says a fact on the card of a subject.
func wordsOn(r *state.Reading, f book.Fact, s book.Subject) string {
	return line.WordsOn(f, line.In(r.View), s)
}
