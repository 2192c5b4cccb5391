package view

import (
	"slices"

	"lidmark/ui/state"
)

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
	if c.s.Book.ReadOnly != "" {
		return // one reason holds for all of them: the foot of the window says it
	}
	if c.foot.kept = 1; c.tall() {
		c.foot.kept = 2
	}
	if c.foot.shut = c.s.Shut(); c.foot.shut != "" {
		c.shutRecords()
		return
	}
	main := c.s.Main()
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

// shutRecords puts the records at the foot, all of them dashed: on the day looked at
// none can be written, and the card keeps its height from day to day.
func (c *cardDraw) shutRecords() {
	for _, rec := range c.s.Offered() {
		c.foot.can = append(c.foot.can, button{rec.Word, rec.Name, false})
	}
}

// inRows puts the buttons into rows; where not all of them fit, the last one opens
// the rest.
func (c *cardDraw) inRows() {
	const gap = 8.0
	most := 1
	if c.tall() && c.foot.refused == nil && !c.foot.saysWhy() {
		most = 2
	}
	f, x := &c.foot, 0.0
	if f.saysWhy() && f.kept == most {
		c.oneRefused()
	}
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
	if len(f.rows) == 0 || f.shut != "" || shown == len(f.can) && !f.hidden {
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

// oneRefused leaves of the buttons that cannot be used, where there is one row, the
// likeliest with the reason beside it, unless others can be used: then those.
func (c *cardDraw) oneRefused() {
	refused := func(b button) bool {
		command, _ := state.CommandNamed(b.command)
		return command.Reason(c.s) != ""
	}
	i := slices.IndexFunc(c.foot.can, func(b button) bool { return b.command == c.s.Main() })
	if all := c.foot.can; !slices.ContainsFunc(all, func(b button) bool { return !refused(b) }) && len(all) > 0 {
		c.foot.refused = &all[max(0, i)]
	}
	c.foot.can = slices.DeleteFunc(slices.Clone(c.foot.can), refused)
}

func (c *cardDraw) buttonWidth(b button) float64 { return c.width(b.word, ink(14).medium()) + 28 }
