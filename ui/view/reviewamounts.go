package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// amounts draws what is in hand, each with what makes it less and more.
func (c *cardDraw) amounts() {
	c.y = c.wrap(c.x, c.y, "What is in hand", ink(16).semi(), c.w, 1) + 1
	c.para("The answer moves at once. Nothing is written by it.", ink2(13), 2)
	for _, a := range c.s.Amounts() {
		c.amount(a)
	}
	c.y += 22
	c.para("Figures are typed, or − and + pressed; Enter shows the best use", ink2(13), 2)
	sheet, now := c.s.ReviewSheet()
	if !now {
		c.para("reckoning …", ink(13), 1)
	}
	c.sums(sheet)
	c.oneMore(sheet)
	c.foot.can = append(c.foot.can, button{"Best use", "review hand", true}, button{"As in the book", "as in book", false})
}

// amount draws one of them in a row.
func (c *cardDraw) amount(a state.Amount) {
	const row, value, step = 38.0, 86.0, 30.0
	area := scene.Area{X: c.x - 8, Y: c.y, W: c.w + 16, H: row}
	box := scene.Rect{Area: area.Inset(1), Radius: 5, Tag: scene.Tag{Ref: state.AmountOf(a.Name), Reason: a.Note}}
	if c.s.Focus == box.Ref {
		box.Fill, box.Stroke = scene.PenTint, stroke(scene.Pen, 1.5)
	} else {
		c.rule(c.x, area.Bottom(), c.x+c.w, area.Bottom(), scene.Hair)
	}
	c.add(box)
	y := area.Y + row/2 + 5
	says, f := a.Says, ink(14).semi()
	if says == "" {
		says = thousands(a.Value)
	}
	if a.Own {
		f = f.as(scene.Pen)
	}
	end := c.x + c.w
	c.step(state.ChangeRef, a.Name, "more", "+", scene.Area{X: end - step, Y: area.Y + 4, W: step, H: step})
	c.centre(end-step-value/2, y, says, f)
	c.step(state.ChangeRef, a.Name, "less", "−", scene.Area{X: end - 2*step - value, Y: area.Y + 4, W: step, H: step})
	to := end - 2*step - value - 8
	if c.width(a.Label, ink(14)) > to-c.x {
		c.wrap(c.x, y-9, a.Label, ink(13), to-c.x, 2)
	} else {
		c.text(c.x, y, a.Label, ink(14))
	}
	c.y += row
}

// step draws a button that makes an amount less or more.
func (c *cardDraw) step(kind, id, part, word string, a scene.Area) {
	ref := scene.Ref{Kind: kind, ID: id, Part: part}
	c.hoverRing(a, ref)
	c.add(scene.Rect{Area: a, Radius: 5, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1), Tag: scene.Tag{Ref: ref, Reason: part + " of it"}})
	c.centre(a.X+a.W/2, a.Y+a.H/2+5, word, ink(15).medium())
}
