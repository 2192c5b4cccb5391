package view

import (
	"cmp"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// about draws the room Book: what the open book holds, and beside it its file,
// how to read a lid, or the program with its licences.
func (p *sheet) about() {
	body, page := p.bookAreas()
	if !p.l.Over {
		left := body
		left.W = page.X
		p.clipped(left, scene.Tag{}, func() {
			p.rect(left, scene.Panel)
			c := p.factsIn(left)
			c.bookFacts()
			c.y += 50
			if p.cautionsBeside() {
				c.cautions()
			}
		})
		p.rule(left.Right(), left.Y, left.Right(), left.Bottom(), scene.Rule)
	}
	p.pages(scene.Area{X: page.X, Y: body.Y, W: page.W, H: state.BookHead})
	c, all := p.drawnPage(page, 0)
	offset := c.pageOffset(page, all)
	if offset > 0 {
		c, _ = p.drawnPage(page, offset)
	}
	p.add(scene.Pane{Clip: wholeWithin(c.marks, page), Marks: c.withStops(page)})
	p.scrollBar(page, offset, all)
}

// factsIn is where the facts of the book are drawn in the pane beside its page.
func (p *sheet) factsIn(left scene.Area) *cardDraw {
	return &cardDraw{sheet: p, r: p.s.Present(), x: left.X + 30, w: left.W - 60, y: left.Y + 44}
}

// cautionsBeside tells whether the cautions have room below the facts; where they have
// none they stand first on the page, for they never give way.
func (p *sheet) cautionsBeside() bool {
	body, page := p.bookAreas()
	alone := *p
	alone.marks = nil
	c := alone.factsIn(scene.Area{X: body.X, Y: body.Y, W: page.X, H: body.H})
	c.bookFacts()
	c.y += 50
	c.cautions()
	return !p.l.Over && c.y-14 <= body.Bottom()
}

// bookAreas are the room Book and its page.
func (p *sheet) bookAreas() (body, page scene.Area) {
	body = scene.Area{Y: state.RoomsHeight, W: p.l.Window.W, H: p.l.Foot.Y - state.RoomsHeight}
	page = body
	if !p.l.Over {
		page.X = max(280, min(body.W*0.34, 480))
		page.W -= page.X
	}
	page.Y, page.H = body.Y+state.BookHead, body.H-state.BookHead
	return body, page
}

// drawnPage draws the page by itself, scrolled by offset, and tells how high all
// of it is.
func (p *sheet) drawnPage(page scene.Area, offset float64) (c *cardDraw, all float64) {
	alone := *p
	alone.marks = nil
	margin := min(30, page.W*0.05)
	c = &cardDraw{sheet: &alone, r: p.s.Present(), x: page.X + margin, w: min(page.W-2*margin, 640), y: page.Y + 34 - offset}
	if !p.cautionsBeside() {
		c.cautionsFirst()
	}
	switch p.s.BookPage {
	case state.LidPage:
		top := c.y - 34
		high := max(page.H, alone.howToHigh(page.W))
		alone.howToRead(scene.Area{X: page.X, Y: top, W: page.W, H: high})
		return c, high + top + offset - page.Y
	case state.LicencePage:
		c.licences()
	default:
		if p.l.Over {
			c.bookFacts()
			c.y += 66
		}
		c.filePage()
	}
	return c, c.y + offset - page.Y
}

// pageOffset is how far a page that was drawn from its top is to be scrolled: what
// the keys go to is brought into sight.
func (c *cardDraw) pageOffset(page scene.Area, all float64) float64 {
	const air = 24.0
	most := max(0, all-page.H)
	offset := min(c.s.Scroll[state.BookPlace], most)
	a, ok := scene.Scene{Marks: c.marks}.Where(c.s.Focus)
	if !c.s.Follow || !ok {
		return offset
	}
	offset = min(max(offset, a.Bottom()+air-page.Y-page.H), most)
	return max(0, min(offset, a.Y-air-page.Y))
}

// pageScroll is how far the page is scrolled as it is drawn, and how far it can
// be.
func (p *sheet) pageScroll() (offset, most float64) {
	_, page := p.bookAreas()
	c, all := p.drawnPage(page, 0)
	return c.pageOffset(page, all), max(0, all-page.H)
}

// pages draws the words that lead to what stands beside the facts.
func (p *sheet) pages(a scene.Area) {
	x := a.X + 30
	for _, page := range []struct {
		command string
		page    state.BookPage
	}{{"file page", state.FilePage}, {"lid page", state.LidPage}, {"licence page", state.LicencePage}} {
		c, _ := state.CommandNamed(page.command)
		x = p.link(x, a.Y+28, c.Word, ink2(15), page.command, p.s.BookPage == page.page) + 24
	}
	p.rule(a.X, a.Bottom()-1, a.Right(), a.Bottom()-1, scene.Hair)
}

// bookFacts says what the open book holds, and in one that has just begun what to do
// next.
func (c *cardDraw) bookFacts() {
	b := c.s.Book
	name := ink(26).semi()
	if c.width(b.Name, name) > c.w {
		name.size = 18
	}
	c.fit(c.x, c.y, b.Name, name, c.x+c.w)
	c.y += 24
	c.para(cmp.Or(b.Path, "kept in no file: what you write is gone with the window"), ink2(13), 2)
	c.y += 8
	c.hair()
	for _, f := range c.s.Holdings() {
		c.count(f.Word, f.Figure, ink(14).semi())
	}
	if next := c.s.Next(); next.Words != "" {
		c.heading("What to do next")
		c.para(next.Words, ink(14), whole)
		for i, name := range next.Commands {
			command, _ := state.CommandNamed(name)
			c.button(c.x, c.y+2, command.Word, name, i == 0)
			c.y += 42
		}
		c.y += 10
	}
	if b.ReadOnly != "" {
		c.heading("Reading only")
		c.para(sentence(b.ReadOnly), ink(14), 5)
		c.button(c.x, c.y+2, "Another book", "other book", false)
	} else {
		c.heading("Who writes here")
		who := scene.Shorten(c.measure, sentence(c.writtenBy()), 14, scene.Medium, c.w-28)
		x := c.button(c.x, c.y-4, who, "writer", false) + 8
		if x+c.width("Another book", ink(14).medium())+28 > c.x+c.w {
			x, c.y = c.x, c.y+42
		}
		c.button(x, c.y-4, "Another book", "other book", false)
	}
}

// What the program warns of, wherever a book is open.
const (
	cautionStings  = "Stings can kill. Anyone who works bees should know the signs of a severe reaction and have a plan and a telephone within reach."
	cautionChances = "What is by the calendar is reckoned from stated numbers, not promised. Moving, selling, treating and feeding follow the local authority and the label."
)

// cautions draws the cautions below the facts.
func (c *cardDraw) cautions() {
	c.heading("Cautions")
	c.para(cautionStings, ink(14), whole)
	c.para(cautionChances, ink2(13), whole)
}

// cautionsFirst draws them at the top of a page.
func (c *cardDraw) cautionsFirst() {
	c.para(cautionStings, ink(14), whole)
	c.para(cautionChances, ink2(13), whole)
	c.y += 4
	c.rule(c.x, c.y-8, c.x+c.w, c.y-8, scene.Hair)
	c.y += 24
}
