package view

import (
	"cmp"
	"math"
	"strconv"
	"strings"

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
			c := &cardDraw{sheet: p, r: p.s.Present(), x: left.X + 30, w: left.W - 60, y: left.Y + 44}
			c.bookFacts(left.Bottom())
		})
		p.rule(left.Right(), left.Y, left.Right(), left.Bottom(), scene.Rule)
	}
	p.pages(scene.Area{X: page.X, Y: body.Y, W: page.W, H: state.BookHead})
	c, all := p.drawnPage(page, 0)
	offset := c.pageOffset(page, all)
	if offset > 0 {
		c, _ = p.drawnPage(page, offset)
	}
	p.add(scene.Pane{Clip: page, Marks: c.withStops(page)})
	p.scrollBar(page, offset, all)
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
	switch p.s.BookPage {
	case state.LidPage:
		high := max(page.H, alone.lettersHigh(page.W)+220)
		alone.howToRead(scene.Area{X: page.X, Y: page.Y - offset, W: page.W, H: high})
		return c, high
	case state.LicencePage:
		c.licences()
	default:
		if p.l.Over {
			c.bookFacts(math.Inf(1))
			c.y += 16
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

// bookFacts says what the open book holds; the cautions where there is room for
// them above bottom.
func (c *cardDraw) bookFacts(bottom float64) {
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
	if b.ReadOnly != "" {
		c.heading("Reading only")
		c.para(sentence(b.ReadOnly), ink(14), 5)
		c.button(c.x, c.y+2, "Another book", "other book", false)
	} else {
		c.heading("Who writes here")
		x := c.button(c.x, c.y-4, sentence(c.writtenBy()), "writer", false) + 8
		if x+c.width("Another book", ink(14).medium())+28 > c.x+c.w {
			x, c.y = c.x, c.y+42
		}
		c.button(x, c.y-4, "Another book", "other book", false)
	}
	c.y += 50
	if c.y+150 < bottom {
		c.heading("Cautions")
		c.para("Stings can kill. Who works bees knows the signs of a severe reaction and has a plan and a telephone within reach.", ink(14), 4)
		c.para("What is by the calendar is reckoned from stated numbers, not promised. Moving, selling, treating and feeding follow the local authority and the label.", ink2(13), 5)
	}
}

// filePage draws the copies of the book, what can come in and what can leave.
func (c *cardDraw) filePage() {
	c.text(c.x, c.y, "Copies", ink(16).semi())
	c.y += 20
	c.para("Made once a day while you work, and read through. The book itself is never written over", ink2(14), 4)
	c.y += 4
	c.bookButtons("copy now", "copy to", "check book")
	c.copies()
	c.y += 34
	c.text(c.x, c.y, "Take in", ink(16).semi())
	c.y += 20
	c.para("Another book with the work of somebody else, entries as JSON Lines, or a list of your own (CSV, XLSX). Taken in twice changes nothing. Or drag the file onto the window", ink2(14), 6)
	c.y += 4
	c.bookButtons("take in")
	c.y += 20
	c.text(c.x, c.y, "Take out", ink(16).semi())
	c.y += 8
	for _, name := range []string{"take out entries", "take out nucs", "take out batches", "take out looks", "take out calendar"} {
		c.takeOut(name)
	}
}

// bookButtons draws commands as buttons in rows, with the reason of the first
// that cannot run beside or below them.
func (c *cardDraw) bookButtons(names ...string) {
	x, why := c.x, ""
	for _, name := range names {
		command, _ := state.CommandNamed(name)
		if r := command.Reason(c.s); why == "" {
			why = r
		}
		if x > c.x && x+c.buttonWidth(button{word: command.Word}) > c.x+c.w {
			x, c.y = c.x, c.y+42
		}
		x = c.button(x, c.y-6, command.Word, name, false) + 8
	}
	switch {
	case why == "":
	case x+4+c.width(why, ink2(13)) <= c.x+c.w:
		c.text(x+4, c.y+16, why, ink2(13))
	default:
		c.y = c.wrap(c.x, c.y+46, why, ink2(13), c.w, 3) - 38
	}
	c.y += 44
}

// copies draws the copies of the book, the latest first, each with what leads
// back to it.
func (c *cardDraw) copies() {
	const most, row = 8, 30.0
	for i, k := range c.s.Copies {
		if i == most {
			c.more(len(c.s.Copies) - most)
			return
		}
		y := c.y + row/2 + 5
		x := c.fit(c.x, y, k.Made.In(c.r.View.Zone()).Format("Mon 2 Jan 2006 15:04"), ink(14), c.x+c.w-96)
		c.fit(x+14, y, plural(k.Entries, "entry", "entries"), ink2(13), c.x+c.w-96)
		ref := scene.Ref{Kind: state.CopyRef, ID: k.Path}
		word := "restore …"
		from := c.right(c.x+c.w, y, word, ink(14).medium().as(scene.Pen))
		if c.hovers(ref) {
			c.rule(from, y+5, c.x+c.w, y+5, scene.Pen)
		}
		c.hit(scene.Area{X: from - 8, Y: c.y, W: c.x + c.w - from + 16, H: row}, ref, "make a new book of this copy and open it; the copy stays")
		c.y += row
		c.rule(c.x, c.y, c.x+c.w, c.y, scene.Hair)
	}
}

// takeOut draws one open form with its button.
func (c *cardDraw) takeOut(name string) {
	const row = 42.0
	command, _ := state.CommandNamed(name)
	w := c.width(command.Word, ink(14).medium()) + 28
	c.fit(c.x, c.y+row/2+5, sentence(command.Does), ink(14), c.x+c.w-w-12)
	c.button(c.x+c.w-w, c.y+4, command.Word, name, false)
	c.y += row
	c.rule(c.x, c.y, c.x+c.w, c.y, scene.Hair)
}

// licences draws the program and the licences of all in it; the text of one that
// was chosen stands below it.
func (c *cardDraw) licences() {
	const row = 30.0
	end := c.text(c.x, c.y, "Lidmark", ink(20).bold())
	c.fit(end+10, c.y, c.s.Version, ink2(14), c.x+c.w)
	c.y += 24
	c.para("Keeps the clock, the map and the memory of mating nucs. It sends nothing anywhere: there is no account and no server. Predictions are chances from stated numbers, not promises.", ink(14), 5)
	c.heading("Licences of all that is in it")
	for i, l := range c.s.Licences {
		y := c.y + row/2 + 5
		ref := scene.Ref{Kind: state.LicenceRef, ID: strconv.Itoa(i + 1)}
		f := ink(14)
		if c.s.Licence == i+1 {
			f = f.semi()
		}
		from := c.right(c.x+c.w, y, l.Terms, ink2(13))
		to := c.fit(c.x, y, l.Of, f, from-12)
		if c.hovers(ref) {
			c.rule(c.x, y+5, to, y+5, scene.Ink2)
		}
		c.hit(scene.Area{X: c.x - 8, Y: c.y, W: c.w + 16, H: row}, ref, "read its text")
		c.y += row
		c.rule(c.x, c.y, c.x+c.w, c.y, scene.Hair)
		if c.s.Licence == i+1 {
			c.licenceText(l)
		}
	}
	c.y += 16
}

// licenceText writes the whole text of a licence, paragraph by paragraph.
func (c *cardDraw) licenceText(l state.Licence) {
	c.y += 22
	c.asWritten(func(p *sheet) {
		for part := range strings.SplitSeq(strings.TrimSpace(strings.ReplaceAll(l.Text, "\r", "")), "\n\n") {
			words := strings.Join(strings.Fields(part), " ")
			if words == "" {
				continue
			}
			const all = 1 << 10
			c.y = p.wrap(c.x+14, c.y, words, ink2(13), c.w-28, all) + 8
		}
	})
	c.rule(c.x, c.y, c.x+c.w, c.y, scene.Hair)
}
