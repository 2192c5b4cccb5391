package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// cardFoot is what stands at the foot of a card whatever of it is scrolled: the
// line that can be typed, and buttons in rows.
type cardFoot struct {
	typed   bool       // a line can be typed
	shut    string     // why nothing can be written on the day looked at; "" when it can
	kept    int        // rows of buttons that have room, whatever can be done on the day
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
	rows := len(f.rows)
	if f.refused != nil {
		rows++
	}
	h := footRow * float64(max(rows, f.kept))
	if f.typed {
		h += footLine + footSaid*float64(f.said)
	}
	if h += f.high; h == 0 {
		return 0
	}
	return h + footAir - 8
}

// saysWhy tells whether a line below the buttons says why they are shut: the typed
// line says so in its place where there is one.
func (f cardFoot) saysWhy() bool { return f.shut != "" && !f.typed }

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
	if c.foot.refused == nil && c.foot.kept > len(c.foot.rows) && c.foot.saysWhy() {
		c.wrap(c.x, y+13, sentence(c.foot.shut), ink2(13), c.w, 2)
	}
	if b := c.foot.refused; b != nil {
		x := c.button(c.x, y, b.word, b.command, false) + 10
		command, _ := state.CommandNamed(b.command)
		why := command.Reason(c.s)
		if len(scene.Wrap(c.measure, c.say(why), 13, scene.Regular, c.x+c.w-x)) > 2 {
			why = clause(why)
		}
		c.wrap(x, y+13, sentence(why), ink2(13), c.x+c.w-x, 2)
	}
}
