package view

import (
	"slices"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// cardFoot is what stands at the foot of a card whatever of it is scrolled: the
// line that can be typed, and buttons in rows.
type cardFoot struct {
	typed   bool       // a line can be typed
	said    int        // lines of text kept for what it reads back
	words   []footWord // what stands above the buttons
	high    float64    // of these words
	rows    [][]button // of buttons
	refused *button    // one that cannot run, with its reason beside it
	can     []button   // what the rows are made of
	hidden  bool       // there is more that cannot run
}

// button is a word and the command it runs.
type button struct {
	word, command string
	main          bool
}

// Heights at the foot of a card, dp.
const (
	footRow  = 42.0
	footLine = 40.0
	footSaid = 19.0
	footAir  = 22.0 // above the first and below the last row
	tallCard = 430.0

	footWordAir = 3.0
)

// height is how high the foot is; 0 without anything in it.
func (f cardFoot) height() float64 {
	h := footRow * float64(len(f.rows))
	if f.refused != nil {
		h += footRow
	}
	if f.typed {
		h += footLine + footSaid*float64(f.said)
	}
	if h += f.high; h == 0 {
		return 0
	}
	return h + footAir - 8
}

// footWord is a text at the foot of a card.
type footWord struct {
	text string
	f    font
	most int // lines
}

// footWord puts a text at the foot, over at most so many lines.
func (c *cardDraw) footWord(text string, f font, most int) {
	lines := len(scene.Wrap(c.measure, c.say(text), f.size, f.weight, c.w))
	c.foot.words = append(c.foot.words, footWord{text, f, most})
	c.foot.high += float64(min(lines, most))*scene.LineHeight(f.size) + footWordAir
}

// buttons puts buttons at the foot, before those that are there.
func (c *cardDraw) buttons(all ...button) {
	isMain := func(b button) bool { return b.main }
	main := slices.ContainsFunc(all, isMain)
	for _, b := range c.foot.can {
		b.main = b.main && !main
		all = append(all, b)
	}
	if at := slices.IndexFunc(all, isMain); at > 0 {
		b := all[at]
		all = slices.Insert(slices.Delete(all, at, at+1), 0, b)
	}
	c.foot.can = all
}

// pairs puts buttons at the foot, words with their commands, the main one first.
func (c *cardDraw) pairs(all [][2]string) {
	for i, b := range all {
		c.foot.can = append(c.foot.can, button{b[0], b[1], i == 0})
	}
}

// tall tells whether a card has room for several rows of buttons.
func (c *cardDraw) tall() bool { return c.l.Card.H >= tallCard }

// records puts the records of what is selected at the foot: the main one, those
// that can be written, a likely one that cannot with its reason, and "more" for
// the rest.
func (c *cardDraw) records() {
	main := c.s.Main()
	if c.s.Book.ReadOnly != "" || c.s.Ahead() {
		return // one reason holds for all of them: the foot of the window says it
	}
	for _, rec := range c.s.Offered() {
		command, _ := state.CommandNamed(rec.Name)
		b := button{rec.Word, rec.Name, rec.Name == main}
		switch {
		case command.Reason(c.s) != "" && c.foot.refused == nil && c.tall() && c.s.Likely(rec):
			c.foot.refused = &b
		case command.Reason(c.s) != "":
			c.foot.hidden = true
		case b.main:
			c.foot.can = append([]button{b}, c.foot.can...)
		default:
			c.foot.can = append(c.foot.can, b)
		}
	}
}

// inRows puts the buttons into rows; where not all of them fit, the last one opens
// the rest.
func (c *cardDraw) inRows() {
	const gap = 8.0
	most := 1
	if c.tall() && c.foot.refused == nil {
		most = 2
	}
	f, x := &c.foot, 0.0
	shown := 0
	for _, b := range f.can {
		w := c.buttonWidth(b)
		if len(f.rows) == 0 || x > 0 && x+w > c.w {
			if len(f.rows) == most {
				break
			}
			f.rows, x = append(f.rows, nil), 0
		}
		last := &f.rows[len(f.rows)-1]
		*last = append(*last, b)
		x += w + gap
		shown++
	}
	if len(f.rows) == 0 || shown == len(f.can) && !f.hidden {
		return
	}
	more := button{word: "More …", command: "more"}
	last := &f.rows[len(f.rows)-1]
	for len(*last) > 1 && x+c.buttonWidth(more) > c.w {
		x -= c.buttonWidth((*last)[len(*last)-1]) + gap
		*last = (*last)[:len(*last)-1]
	}
	*last = append(*last, more)
}

func (c *cardDraw) buttonWidth(b button) float64 { return c.width(b.word, ink(14).medium()) + 28 }

// drawButtons draws the foot.
func (c *cardDraw) drawButtons() {
	if c.foot.height() == 0 {
		return
	}
	y := c.body().Bottom()
	c.rule(c.x, y, c.x+c.w, y, scene.Hair)
	y += 12
	if c.foot.typed {
		c.typedLine(y)
		y += footLine + footSaid*float64(c.foot.said)
	}
	for _, word := range c.foot.words {
		c.wrap(c.x, y+word.f.size, word.text, word.f, c.w, word.most)
		lines := len(scene.Wrap(c.measure, c.say(word.text), word.f.size, word.f.weight, c.w))
		y += float64(min(lines, word.most))*scene.LineHeight(word.f.size) + footWordAir
	}
	for _, row := range c.foot.rows {
		x := c.x
		for _, b := range row {
			x = c.button(x, y, b.word, b.command, b.main) + 8
		}
		y += footRow
	}
	if b := c.foot.refused; b != nil {
		x := c.button(c.x, y, b.word, b.command, false) + 10
		command, _ := state.CommandNamed(b.command)
		c.wrap(x, y+13, command.Reason(c.s), ink2(13), c.x+c.w-x, 2)
	}
}

// typedLine draws the line of the nuc, and what it reads back.
func (c *cardDraw) typedLine(y float64) {
	t := c.s.CardLine()
	name := c.s.CardField()
	typed := c.s.Typed(name)
	c.input(scene.Area{X: c.x, Y: y, W: c.w, H: fieldHeight}, name, fieldLook{
		size: 15, weight: scene.Medium, wrong: typed != "" && t.Wrong() != "", empty: "type it here: v s5",
		reason: "the nuc's line in letters, as on the sheet: Enter writes it and goes on",
	})
	if c.foot.said == 0 {
		return
	}
	said, f := "", ink(13)
	for _, s := range t.Sections {
		said += s.Back + "; "
	}
	if wrong := t.Wrong(); wrong != "" {
		said, f = sentence(wrong), ink(13).as(scene.Act)
	}
	c.wrap(c.x, y+fieldHeight+15, trimmed(said), f, c.w, c.foot.said)
}

func trimmed(said string) string {
	for len(said) > 2 && said[len(said)-2:] == "; " {
		said = said[:len(said)-2]
	}
	return said
}

// everything lists all that can be written of what is selected, in the place of
// the card.
func (c *cardDraw) everything() {
	c.y = c.wrap(c.x, c.y+12, "What to write down", ink(18).semi(), c.w, 2)
	c.y = c.wrap(c.x, c.y+2, c.formOf(c.s.Selection), ink2(14), c.w, 2) + 4
	main := c.s.Main()
	var cannot []button
	x := c.x
	for _, rec := range c.s.Offered() {
		b := button{rec.Word, rec.Name, rec.Name == main}
		if command, _ := state.CommandNamed(rec.Name); command.Reason(c.s) != "" {
			cannot = append(cannot, b)
			continue
		}
		if w := c.buttonWidth(b); x > c.x && x+w > c.x+c.w {
			x, c.y = c.x, c.y+footRow
		}
		x = c.button(x, c.y, b.word, b.command, b.main) + 8
	}
	c.y += footRow + 8
	if len(cannot) > 0 {
		c.heading("Not now")
		c.y -= 8
	}
	for _, b := range cannot {
		c.button(c.x, c.y, b.word, b.command, false)
		command, _ := state.CommandNamed(b.command)
		c.y = c.wrap(c.x, c.y+footRow+11, command.Reason(c.s), ink2(13), c.w, 3) + 4
	}
	c.buttons(button{"Back to the card", "more", false})
}
