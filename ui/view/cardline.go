package view

import "lidmark/ui/scene"

// typedLine draws the line of the nuc, and what it reads back.
func (c *cardDraw) typedLine(y float64) {
	if c.foot.shut != "" {
		c.wrap(c.x, y+13, sentence(c.foot.shut), ink2(13), c.w, 2)
		return
	}
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
