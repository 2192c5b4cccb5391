package view

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// cardDraw is the card being drawn, from the top down. What has no room is
// reached by scrolling; the buttons stay at its foot.
type cardDraw struct {
	*sheet
	r    *state.Reading
	x, w float64 // of the text
	y    float64 // where the next thing begins
	foot [][2]string
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
		c, all := p.drawnCard(0)
		body := c.body()
		offset := min(p.s.Scroll[state.CardPlace], max(0, all-body.H))
		if offset > 0 {
			c, _ = p.drawnCard(offset)
		}
		p.add(scene.Pane{Clip: body, Marks: c.marks})
		p.scrollBar(body, offset, all)
		c.sheet = p
		c.drawButtons()
	})
	p.rule(a.X, a.Y, a.X, a.Bottom(), scene.Rule)
}

// CardMost is how far the card can be scrolled, dp.
func CardMost(s state.State, m scene.Measurer) float64 {
	p := &sheet{measure: m, s: s, l: s.Layout()}
	if s.Book == nil || p.l.Card.Empty() {
		return 0
	}
	c, all := p.drawnCard(0)
	return max(0, all-c.body().H)
}

// drawnCard draws the card by itself, scrolled by offset, and tells how high all
// of it is.
func (p *sheet) drawnCard(offset float64) (c *cardDraw, all float64) {
	a, alone := p.l.Card, *p
	alone.marks = nil
	c = &cardDraw{sheet: &alone, r: p.s.Reading(), x: a.X + 20, w: a.W - 40, y: a.Y + 20 - offset}
	c.draw()
	return c, c.y + offset - a.Y
}

// body is the part of the card above its buttons.
func (c *cardDraw) body() scene.Area {
	a := c.l.Card
	if len(c.foot) > 0 {
		a.H = max(0, a.H-cardFoot)
	}
	return a
}

func (c *cardDraw) draw() {
	sel := c.s.Selection
	last := sel.Last()
	switch {
	case c.s.Form != nil:
		c.form()
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

// hair parts two sections.
func (c *cardDraw) hair() {
	c.rule(c.x, c.y, c.x+c.w, c.y, scene.Hair)
	c.y += 24
}

// heading begins a section.
func (c *cardDraw) heading(text string) {
	c.hair()
	c.fit(c.x, c.y, text, ink(14).semi(), c.x+c.w)
	c.y += 22
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
func (c *cardDraw) count(name, figure string, f font) {
	from := c.right(c.x+c.w, c.y, figure, f)
	c.fit(c.x, c.y, name, ink(14), from-10)
	c.y += 22
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
func (c *cardDraw) title(text, how string, lines ...string) {
	x := c.x + c.picture() + 20
	w := c.x + c.w + 4 - x
	if longer := text + ", " + how; how != "" && c.width(longer, ink(17).semi()) <= w {
		text, how = longer, ""
	}
	c.fit(x, c.y+16, text, c.fitting(text, ink(17).semi(), w), x+w)
	y := c.y + 38
	for _, l := range append([]string{how}, lines...) {
		y = c.wrap(x, y, l, c.fitting(l, ink2(14), w), w, 2)
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

// mostLines is how many lines of the book a card shows.
const mostLines = 60

// book writes the lines of the book about a subject, the latest first.
func (c *cardDraw) book(s book.Subject) {
	lines := slices.Collect(c.r.View.History(s))
	if len(lines) == 0 {
		return
	}
	c.heading("The book")
	names, left := line.In(c.r.View), max(0, len(lines)-mostLines)
	for _, l := range slices.Backward(lines[left:]) {
		c.bookLine(l, s, names)
	}
	c.more(left)
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

// buttons are the card's buttons, the main one first: a word and its command.
func (c *cardDraw) buttons(all ...[2]string) { c.foot = all }

// drawButtons draws the buttons at the card's foot, as many as fit.
func (c *cardDraw) drawButtons() {
	if len(c.foot) == 0 {
		return
	}
	y := c.body().Bottom()
	c.rule(c.x, y, c.x+c.w, y, scene.Hair)
	x := c.x
	// What can be done comes first; one button that cannot says why beside it.
	can, cannot := c.parted(c.foot)
	for i, b := range append(can, cannot...) {
		if x+c.width(b[0], ink(14).medium())+28 > c.x+c.w+1 {
			return
		}
		x = c.button(x, y+12, b[0], b[1], i == 0) + 8
		if i >= len(can) {
			c.refusal(x+4, y+12, b[1], c.x+c.w)
			return
		}
	}
}

// parted parts the buttons that can run from those that cannot.
func (c *cardDraw) parted(all [][2]string) (can, cannot [][2]string) {
	for _, b := range all {
		if command, _ := state.CommandNamed(b[1]); command.Reason(c.s) == "" {
			can = append(can, b)
		} else {
			cannot = append(cannot, b)
		}
	}
	return can, cannot
}

// wordsOn says a fact on the card of a subject.
func wordsOn(r *state.Reading, f book.Fact, s book.Subject) string {
	return line.WordsOn(f, line.In(r.View), s)
}
