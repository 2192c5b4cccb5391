package view

import (
	"strconv"
	"strings"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

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
	c.para("Another book with the work of somebody else, entries as JSON Lines, a list of your own (CSV, XLSX), or the ground of a yard (GeoJSON, GPX). Taken in twice changes nothing. Or drag the file onto the window", ink2(14), 6)
	c.y += 4
	c.bookButtons("take in", "take in weather", "take in ground")
	c.y += 20
	c.text(c.x, c.y, "Take out", ink(16).semi())
	c.y += 20
	c.para("A table is a workbook where you let its name end in .xlsx, else it is CSV", ink2(14), 3)
	for _, name := range []string{"take out entries", "take out nucs", "take out batches", "take out looks", "take out calendar", "take out ground"} {
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
