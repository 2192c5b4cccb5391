package view

import (
	"lidmark/domain/practice"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// numberCard draws what is beside the list of numbers: the one chosen, or what is
// kept for this machine.
func (p *sheet) numberCard() {
	a := p.l.Card
	p.rect(a, scene.Panel)
	c := &cardDraw{sheet: p, r: p.s.Present(), x: a.X + 20, w: a.W - 40, y: a.Y + 30}
	if p.s.Number == 0 {
		c.settings()
		return
	}
	c.number(practice.Of(p.s.Number))
}

// number draws the number chosen: its value, what another one moves, how sure it
// is and where it comes from.
func (c *cardDraw) number(n practice.Number) {
	a := c.l.Card
	c.y = c.wrap(c.x, c.y, n.Title, ink(17).semi(), c.w, 2) + 2
	wrong := c.s.NumberWrong()
	box := scene.Area{X: c.x, Y: c.y, W: 110, H: 38}
	c.input(box, state.NumberField, fieldLook{size: 19, weight: scene.Bold, wrong: wrong != ""})
	in := c.s.NumberUnit(n.Key)
	c.fit(box.Right()+12, c.y+17, in, ink(15), c.x+c.w)
	c.fit(box.Right()+12, c.y+35, "default "+c.s.NumberSaid(n.Key, n.Default), ink2(13), c.x+c.w)
	c.y += 58
	if wrong != "" {
		c.para(sentence(wrong), ink(13).as(scene.Act), 2)
	}
	c.para("Allowed "+c.s.NumberSaid(n.Key, n.Min)+" to "+c.s.NumberSaid(n.Key, n.Max)+" "+in, ink2(13), 1)
	bottom := a.Bottom() - 106
	if moves := c.s.NumberMoves(); len(moves) > 0 {
		c.heading("From " + c.s.NumberSaid(n.Key, c.r.Numbers().Get(n.Key)) + " to " + c.s.Typed(state.NumberField) + " changes")
		c.moves(moves, bottom-150)
	}
	c.heading("What depends on it")
	c.para(sentence(n.Used), ink(14), 3)
	c.heading("How sure")
	c.para(sentence(n.Confidence.String()), ink(14), 1)
	if most := int((bottom - c.y) / scene.LineHeight(13)); most > 0 {
		c.source(n, most)
	}
	c.rule(c.x, bottom, c.x+c.w, bottom, scene.Hair)
	c.button(c.x, bottom+12, "Use it from now on", "set number", true)
	c.button(c.x, bottom+56, "Back to the default", "number back", false)
}

// source writes where a default comes from, as it was written: its figures are
// those of the literature, whatever units the keeper has.
func (c *cardDraw) source(n practice.Number, most int) {
	metric := *c.sheet
	metric.s.Units = 0
	metric.marks = nil
	metric.wrap(c.x, c.y, sentence(n.Source), ink2(13), c.w, most)
	c.add(metric.marks...)
}

// moves writes what another value moves, as far as there is room.
func (c *cardDraw) moves(all []state.NumberMoves, to float64) {
	for i, m := range all {
		if c.y+44 > to && i < len(all)-1 {
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
	c.y += 8
	for _, s := range c.s.Settings() {
		c.text(c.x, c.y+8, s.Label, ink2(13))
		c.y = c.chips(c.x, c.y+16, c.w, state.SettingField+s.Name, s.Options, s.Value) + 6
	}
}
