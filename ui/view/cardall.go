package view

import "lidmark/ui/state"

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
