package view

import (
	"strings"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// about draws the room Book: what the open book holds, and beside it its file,
// how to read a lid, or the program with its licences.
func (p *sheet) about() {
	body := scene.Area{Y: state.RoomsHeight, W: p.l.Window.W, H: p.l.Foot.Y - state.RoomsHeight}
	rest := body
	if !p.l.Over {
		left := body
		left.W = max(280, min(body.W*0.34, 480))
		p.clipped(left, scene.Tag{}, func() {
			p.rect(left, scene.Panel)
			p.bookFacts(left)
		})
		p.rule(left.Right(), left.Y, left.Right(), left.Bottom(), scene.Rule)
		rest.X, rest.W = left.Right(), body.W-left.W
	}
	p.pages(scene.Area{X: rest.X, Y: rest.Y, W: rest.W, H: state.HeadHeight + 10})
	page := scene.Area{X: rest.X, Y: rest.Y + state.HeadHeight + 10, W: rest.W, H: rest.H - state.HeadHeight - 10}
	p.clipped(page, scene.Tag{}, func() {
		switch {
		case p.s.BookPage == state.LidPage && page.W > 520:
			p.howToRead(page)
		case p.s.BookPage == state.LidPage:
			p.compact(page)
		case p.s.BookPage == state.LicencePage:
			p.licences(page)
		default:
			p.filePage(page)
		}
	})
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

// bookFacts says what the open book holds.
func (p *sheet) bookFacts(a scene.Area) {
	b, r := p.s.Book, p.s.Present()
	c := &cardDraw{sheet: p, r: r, x: a.X + 30, w: a.W - 60, y: a.Y + 54}
	name := ink(26).semi()
	if c.width(b.Name, name) > c.w {
		name.size = 18
	}
	c.fit(c.x, c.y, b.Name, name, c.x+c.w)
	c.y += 26
	c.para(b.Path, ink2(13), 3)
	c.y += 12
	c.hair()
	for _, f := range p.s.Holdings() {
		c.count(f.Word, f.Figure, ink(14).semi())
	}
	if b.ReadOnly != "" {
		c.heading("Reading only")
		c.para(sentence(b.ReadOnly), ink(14), 5)
	} else {
		c.heading("Who writes here")
		c.button(c.x, c.y-4, sentence(p.writtenBy()), "writer", false)
		c.y += 46
	}
	c.button(c.x, c.y+2, "Another book", "other book", false)
	c.y += 56
	if c.y+120 < a.Bottom() {
		c.heading("Cautions")
		c.para("Stings can kill. Who works bees knows the signs of a severe reaction and has a plan and a telephone within reach.", ink(14), 4)
		c.para("What is by the calendar is reckoned from stated numbers, not promised. Moving, selling, treating and feeding follow the local authority and the label.", ink2(13), 5)
	}
}

// filePage draws the copies of the book, what can come in and what can leave.
func (p *sheet) filePage(a scene.Area) {
	c := &cardDraw{sheet: p, r: p.s.Present(), x: a.X + 30, w: min(a.W-60, 640), y: a.Y + 34 - p.s.Scroll[state.BookPlace]}
	c.text(c.x, c.y, "Copies", ink(16).semi())
	c.y += 20
	c.para("Made once a day while you work, and read through. The book itself is never written over.", ink2(14), 2)
	c.y += 4
	p.bookButtons(c, "copy now", "copy to", "check book")
	c.copies()
	c.y += 26
	c.text(c.x, c.y, "Take in", ink(16).semi())
	c.y += 20
	c.para("Another book with the work of somebody else, entries as JSON Lines, or a list of your own (CSV, XLSX). Taken in twice changes nothing. Or drag the file onto the window.", ink2(14), 3)
	c.y += 4
	p.bookButtons(c, "take in")
	c.y += 20
	c.text(c.x, c.y, "Take out", ink(16).semi())
	c.y += 8
	for _, name := range []string{"take out entries", "take out nucs", "take out batches", "take out looks", "take out calendar"} {
		c.takeOut(name)
	}
}

// bookButtons draws commands as buttons in a row, with the reason of the first
// that cannot run.
func (p *sheet) bookButtons(c *cardDraw, names ...string) {
	x, why := c.x, ""
	for _, name := range names {
		command, _ := state.CommandNamed(name)
		if r := command.Reason(p.s); why == "" {
			why = r
		}
		x = p.button(x, c.y-6, command.Word, name, false) + 8
	}
	if why != "" {
		p.fit(x+4, c.y+16, why, ink2(13), c.x+c.w)
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
		x := c.fit(c.x, y, k.Made.In(c.r.View.Zone()).Format("Mon 2 Jan 2006 15:04"), ink(14), c.x+c.w)
		c.fit(x+14, y, plural(k.Entries, "entry", "entries"), ink2(13), c.x+c.w-120)
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

// licences draws the program and the licences of all in it.
func (p *sheet) licences(a scene.Area) {
	c := &cardDraw{sheet: p, r: p.s.Present(), x: a.X + 30, w: min(a.W-60, 640), y: a.Y + 34 - p.s.Scroll[state.BookPlace]}
	c.text(c.x, c.y, "Lidmark", ink(20).bold())
	c.y += 24
	c.para("Keeps the clock, the map and the memory of mating nucs. It sends nothing anywhere: there is no account and no server. Predictions are chances from stated numbers, not promises.", ink(14), 4)
	c.y += 10
	for _, l := range p.s.Licences {
		c.fit(c.x, c.y+15, l.Of, ink(14), c.x+c.w-150)
		c.right(c.x+c.w, c.y+15, l.Terms, ink2(13))
		c.y += 24
		c.rule(c.x, c.y, c.x+c.w, c.y, scene.Hair)
	}
	c.y += 24
	for _, l := range p.s.Licences[:min(1, len(p.s.Licences))] {
		for part := range strings.SplitSeq(strings.TrimSpace(l.Text), "\n\n") {
			c.para(strings.ReplaceAll(part, "\n", " "), ink2(13), 40)
			c.y += 8
		}
	}
	c.y += 10
	c.para("The texts of all licences stand in the folder assets/licences of the source.", ink2(13), 2)
}
