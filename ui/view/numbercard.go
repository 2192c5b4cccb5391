package view

import (
	"lidmark/domain/practice"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// besideNumbers draws what is beside the list of numbers: the one chosen, or what is
// kept for this machine.
func (c *cardDraw) besideNumbers() {
	c.y += 10
	if c.s.Number == 0 {
		c.settings()
		return
	}
	c.number(practice.Of(c.s.Number))
	c.numberButtons()
}

// numberButtons put at the foot what can be done with the number chosen, and why
// what is typed cannot be used.
func (c *cardDraw) numberButtons() {
	use, back := button{"Use it from now on", "set number", true}, button{"Back to the default", "number back", false}
	switch set, _ := state.CommandNamed(use.command); {
	case set.Reason(c.s) == "":
		c.foot.can = append(c.foot.can, use)
	default:
		c.foot.refused = &use
	}
	if c.s.Own(c.s.Number) {
		c.foot.can = append(c.foot.can, back)
	}
}

// number draws the number chosen: its value, what another one moves, how sure it
// is and where it comes from.
func (c *cardDraw) number(n practice.Number) {
	c.y = c.wrap(c.x, c.y, n.Title, ink(17).semi(), c.w, 2) + 2
	wrong := c.s.NumberWrong()
	box := scene.Area{X: c.x, Y: c.y, W: 110, H: 38}
	c.input(box, state.NumberField, fieldLook{size: 19, weight: scene.Bold, wrong: wrong != "", reason: "type another value: Enter uses it from now on"})
	in := c.s.NumberUnit(n.Key)
	c.fit(box.Right()+12, c.y+17, in, ink(15), c.x+c.w)
	c.fit(box.Right()+12, c.y+35, "default "+c.s.NumberSaid(n.Key, n.Default), ink2(13), c.x+c.w)
	c.y += 58
	if wrong != "" {
		c.para(sentence(wrong), ink(13).semi().as(scene.Act), whole)
	} else {
		c.para("Allowed "+c.s.NumberRange(n), ink2(13), whole)
	}
	c.y += 4
	now := c.s.Present().Numbers().Get(n.Key)
	switch moves := c.s.NumberMoves(); {
	case len(moves) > 0:
		c.heading("From " + c.s.NumberSaid(n.Key, now) + " to " + c.s.Typed(state.NumberField) + " changes")
		c.moves(moves)
	case c.s.NumberTried():
		c.heading("From " + c.s.NumberSaid(n.Key, now) + " to " + c.s.Typed(state.NumberField))
		c.para("No date of the 60 days ahead moves, and nothing needs you that did not", ink(14), whole)
	}
	c.heading("What depends on it")
	c.para(sentence(n.Used), ink(14), whole)
	c.heading("How sure the default is")
	c.para(sentence(n.Confidence.String()), ink(14), whole)
	if n.Confidence != practice.CommonPractice {
		c.asWritten(func(p *sheet) { c.y = p.wrap(c.x, c.y, sentence(n.Source), ink2(13), c.w, whole) })
	}
}

// moves writes what another value moves.
func (c *cardDraw) moves(all []state.NumberMoves) {
	const most = 8
	for i, m := range all {
		if i == most {
			c.more(len(all) - i)
			return
		}
		said := m.From + " → " + m.To
		if c.width(said, ink(13).semi())+c.width(m.What, ink(14)) > c.w-12 {
			c.fit(c.x, c.y, m.What, ink(14), c.x+c.w)
			c.y += 18
			c.right(c.x+c.w, c.y, said, ink(13).semi())
		} else {
			c.right(c.x+c.w, c.y, said, ink(13).semi())
			c.fit(c.x, c.y, m.What, ink(14), c.x+c.w)
		}
		c.y += 8
		c.rule(c.x, c.y, c.x+c.w, c.y, scene.Hair)
		c.y += 16
	}
}

// settings draws what is kept for this machine, whatever book is open.
func (c *cardDraw) settings() {
	c.text(c.x, c.y, "On this machine", ink(17).semi())
	c.y += 22
	c.para("kept here, whatever book is open", ink2(14), 1)
	c.y += 2
	for _, s := range c.s.Settings() {
		c.text(c.x, c.y+8, s.Label, ink2(13))
		c.y = c.chips(c.x, c.y+16, c.w, state.SettingField+s.Name, s.Options, s.Value) + 3
	}
}
