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
	foot cardFoot

	below float64 // how much below what has the focus is to be seen with it
}

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
		offset := c.offset(all)
		if offset > 0 {
			c, _ = p.drawnCard(offset)
		}
		p.add(scene.Pane{Clip: body, Marks: c.withStops(body)})
		p.scrollBar(body, offset, all)
		c.sheet = p
		c.drawButtons()
	})
	p.rule(a.X, a.Y, a.X, a.Bottom(), scene.Rule)
}

// CardMost is how far the card can be scrolled, dp.
func CardMost(s state.State, m scene.Measurer) float64 {
	p := newSheet(s, m)
	if s.Book != nil && s.Room == state.About && s.Fill == state.NoFill {
		_, most := p.pageScroll()
		return most
	}
	if s.Book == nil || p.l.Card.Empty() {
		return 0
	}
	if p.s.Fill == state.LateFill && p.s.Form == nil {
		_, most := p.triageScroll()
		return most
	}
	c, all := p.drawnCard(0)
	return max(0, all-c.body().H)
}

// CardAt is how far the card is scrolled as it is drawn, dp: where the keys go is
// brought into sight.
func CardAt(s state.State, m scene.Measurer) float64 {
	p := newSheet(s, m)
	if s.Book != nil && s.Room == state.About && s.Fill == state.NoFill {
		offset, _ := p.pageScroll()
		return offset
	}
	if s.Book == nil || p.l.Card.Empty() {
		return 0
	}
	if p.s.Fill == state.LateFill && p.s.Form == nil {
		offset, _ := p.triageScroll()
		return offset
	}
	c, all := p.drawnCard(0)
	return c.offset(all)
}

// offset is how far a card that was drawn from its top is to be scrolled.
func (c *cardDraw) offset(all float64) float64 {
	const air = 48.0
	body := c.body()
	most := max(0, all-body.H)
	offset := min(c.s.Scroll[state.CardPlace], most)
	if !c.s.Follow {
		return offset
	}
	a, ok := scene.Scene{Marks: c.marks}.Where(c.s.Focus)
	if !ok {
		return offset
	}
	top, bottom := a.Y-body.Y-air, a.Bottom()-body.Y+air+c.below
	offset = min(max(offset, bottom-body.H), most)
	return max(0, min(offset, top))
}

// withStops are the marks of the card and, for what takes keys and is scrolled
// out of the body, a place without size at its edge: Tab goes there as well, and
// what has the focus is brought into sight.
func (c *cardDraw) withStops(body scene.Area) []scene.Mark {
	var above, below []scene.Mark
	for _, m := range c.marks {
		r, ok := m.(scene.Rect)
		if !ok || r.Ref == (scene.Ref{}) {
			continue
		}
		edge := scene.Rect{Area: scene.Area{X: body.X + body.W/2, Y: body.Y + body.H/2}, Tag: scene.Tag{Ref: r.Ref}}
		switch {
		case r.Bottom() <= body.Y:
			above = append(above, edge)
		case r.Y >= body.Bottom():
			below = append(below, edge)
		}
	}
	return slices.Concat(above, c.marks, below)
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
	a.H = max(0, a.H-c.foot.height())
	return a
}

func (c *cardDraw) draw() {
	sel := c.s.Selection
	switch {
	case c.s.Room == state.Numbers:
		c.besideNumbers()
	case c.s.Form != nil:
		c.form()
	case c.s.More:
		c.everything()
	default:
		c.wayBack()
		c.of(sel)
	}
	c.inRows()
}

// of draws the card of a selection.
func (c *cardDraw) of(sel state.Selection) {
	last, v := sel.Last(), c.r.View
	c.records()
	switch {
	case sel.Len() > 1:
		c.several()
	case last.Kind == book.KindNuc:
		if id, ok := last.Nuc(); ok && c.r.Nuc(id) != nil {
			c.nuc(c.r.Nuc(id))
		}
	case last.Kind == book.KindBatch:
		c.batch(v.Batch(book.BatchID(last.UUID)))
	case last.Kind == book.KindColony:
		c.colony(v.Colony(book.ColonyID(last.UUID)))
	case last.Kind == book.KindQueen:
		c.queen(v.Queen(book.QueenID(last.UUID)))
	case last.Kind == book.KindOrder:
		c.order(v.Order(book.OrderID(last.UUID)))
	case last.Kind == book.KindPerson:
		c.person(v.Person(book.PersonID(last.UUID)))
	case last.Kind == book.KindYard:
		c.yard(v.Yard(book.YardID(last.UUID)))
	default:
		c.nothing()
	}
}

// wayBack writes what the card showed before a link was followed.
func (c *cardDraw) wayBack() {
	n := len(c.s.Trail)
	if n == 0 {
		return
	}
	was := c.s.Trail[n-1]
	name := c.yardName()
	switch {
	case was.Len() > 1:
		name = plural(was.Len(), "thing", "things")
	case was.Len() == 1:
		name = nameOf(c.r.View, was.Last())
	}
	c.link(c.x, c.y+2, "← "+name, ink(13).as(scene.Pen), "card back", false)
	c.y += 26
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
func (c *cardDraw) title(text, how string, lines ...linked) {
	x := c.x + c.picture() + 20
	w := c.x + c.w + 4 - x
	if longer := text + ", " + how; how != "" && c.width(longer, ink(17).semi()) <= w {
		text, how = longer, ""
	}
	c.fit(x, c.y+16, text, c.fitting(text, ink(17).semi(), w), x+w)
	y := c.y + 38
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
	x, to := c.x+58, c.x+c.w-strikeWide
	f := ink(14)
	if l.Struck {
		f = ink3(14)
	}
	words := line.WordsOn(l.Fact, names, s)
	if code := line.Codes(l.Fact, names); code != "" && c.width(code+words, f)+codeGap < to-x {
		end := c.text(x, y, code, f.medium())
		if l.Struck {
			c.rule(x, y-5, end, y-5, scene.Ink3)
		}
		x = end + codeGap
	}
	for _, part := range scene.Wrap(c.measure, c.say(words), f.size, f.weight, to-x) {
		end := c.text(x, c.y, part, f)
		if l.Struck {
			c.rule(x, c.y-5, end, c.y-5, scene.Ink3)
		}
		c.y += scene.LineHeight(f.size)
	}
	c.strike(l, scene.Area{X: to + 4, Y: y - 17, W: strikeWide, H: 24})
	c.y += 2
}

// codeGap parts a line as it is typed from its words, dp.
const codeGap = 12.0

// strikeWide is the width kept for the sign that strikes a line, dp.
const strikeWide = 28.0

// strike draws the sign behind a line that strikes it, or puts it back.
func (c *cardDraw) strike(l book.Line, a scene.Area) {
	ref := state.StrikeOf(l.ID)
	sign, reason := "×", "strike this line: it counts as never written, and stays to be read"
	if l.Struck {
		sign, reason = "undo", "put this line back: it counts again"
	}
	if why := c.s.CannotStrike(l); why != "" {
		reason = "cannot be struck: " + why
	}
	f := ink3(14)
	if c.hovers(ref) || c.s.Focus == ref {
		f = ink(13).medium().as(scene.Act)
	}
	c.right(a.Right()-6, a.Y+17, sign, f)
	c.hit(a, ref, reason)
}

// wordsOn says a fact on the card of a subject.
func wordsOn(r *state.Reading, f book.Fact, s book.Subject) string {
	return line.WordsOn(f, line.In(r.View), s)
}

// codes are a fact as it is typed.
func codes(r *state.Reading, f book.Fact) string { return line.Codes(f, line.In(r.View)) }
