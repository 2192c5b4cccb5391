package view

import (
	"cmp"
	"fmt"

	"lidmark/domain/practice"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// numberColumns say where the columns of the list of numbers lie; a column that
// has no room is 0.
type numberColumns struct {
	title, unit, value, own, allowed, source, uses, end float64
}

// numbersPane lays the columns into a pane: in a narrow one what depends on a
// number goes first, then its range, then its source.
func numbersPane(a scene.Area) numberColumns {
	c := numberColumns{title: a.X + state.Edge + 12, end: a.Right() - state.Edge}
	w := a.W
	c.unit = a.X + min(360, w*0.42)
	c.value, c.own = c.unit+64, c.unit+128
	const wide, middle, narrow = 900, 760, 620
	switch {
	case w >= wide:
		c.allowed, c.source = c.own+100, c.own+120
		c.uses = c.source + (c.end-c.source)*0.6
	case w >= middle:
		c.allowed, c.source = c.own+100, c.own+120
	case w >= narrow:
		c.source = c.own + 20
	}
	return c
}

// numbers draws the room My numbers: the list, and beside it the number chosen or
// what is kept for this machine.
func (p *sheet) numbers() {
	a, c := p.l.Main, numbersPane(p.l.Main)
	p.rect(a, scene.Panel)
	p.numbersHead(a, c)
	body := scene.Area{X: a.X, Y: a.Y + state.NumberHead, W: a.W, H: max(0, a.H-state.NumberHead-state.NumberFoot)}
	lines, offset := p.s.NumberLines(), p.s.NumberOffset(p.l)
	p.clipped(body, scene.Tag{}, func() {
		for i, n := range lines {
			row := scene.Area{X: a.X, Y: body.Y + float64(i)*state.NumberRow - offset, W: a.W, H: state.NumberRow}
			if row.Bottom() > body.Y && row.Y < body.Bottom() {
				p.numberLine(n, row, c)
			}
		}
	})
	p.scrollBar(body, offset, state.NumberRow*float64(len(lines)))
	p.groups(scene.Area{X: a.X, Y: body.Bottom(), W: a.W, H: state.NumberFoot})
	if !p.l.Card.Empty() {
		p.clipped(p.l.Card, scene.Tag{Ref: scene.Ref{Kind: "card"}}, p.numberCard)
		p.rule(p.l.Card.X, p.l.Card.Y, p.l.Card.X, p.l.Card.Bottom(), scene.Rule)
	}
}

// numbersHead names the list and its columns.
func (p *sheet) numbersHead(a scene.Area, c numberColumns) {
	title := "The 25 that matter"
	if p.s.Group != 0 {
		title = p.s.Group.String()
	}
	own := 0
	for range p.s.Present().Numbers().Changed() {
		own++
	}
	from := p.right(c.end, a.Y+28, plural(own, "is yours", "are yours"), ink(13).semi())
	x := p.text(a.X+state.Edge, a.Y+28, title, ink(16).semi())
	p.fit(x+12, a.Y+28, "a change moves dates at once; the old value stays in the book", ink2(13), from-16)
	y := a.Y + 58
	p.right(c.unit, y, "unit", ink2(13))
	p.right(c.value, y, "default", ink2(13))
	p.right(c.own, y, "yours", ink2(13))
	if c.allowed > 0 {
		p.right(c.allowed, y, "allowed", ink2(13))
	}
	if c.source > 0 {
		p.text(c.source, y, "how sure", ink2(13))
	}
	if c.uses > 0 {
		p.text(c.uses, y, "what depends on it", ink2(13))
	}
	p.rule(a.X+state.Edge, a.Y+70, c.end, a.Y+70, scene.Ink)
}

// numberLine draws a row: the head of a group, or a number.
func (p *sheet) numberLine(n state.NumberLine, row scene.Area, c numberColumns) {
	y := row.Y + row.H/2 + 5
	if n.Head != 0 {
		p.text(row.X+state.Edge, y, n.Head.String(), ink(14).semi())
		p.rule(row.X+state.Edge, row.Bottom(), c.end, row.Bottom(), scene.Rule)
		return
	}
	chosen, own := p.s.Number == n.Key, p.s.Own(n.Key)
	f := ink(14)
	switch {
	case chosen:
		p.add(scene.Rect{Area: scene.Area{X: row.X + 8, Y: row.Y, W: row.W - 16, H: row.H}, Radius: 5, Fill: scene.PenTint, Stroke: stroke(scene.Pen, 1.5)})
		f = f.semi()
	default:
		p.rule(row.X+state.Edge, row.Bottom(), c.end, row.Bottom(), scene.Hair)
	}
	in := p.s.NumberUnit(n.Key)
	p.fit(c.title, y, n.Title, f, c.unit-p.width(in, ink2(13))-10)
	p.right(c.unit, y, in, ink2(13))
	standard := ink(14).semi()
	if own {
		standard = ink2(14)
		p.right(c.own, y, p.s.NumberSaid(n.Key, p.s.Present().Numbers().Get(n.Key)), ink(14).bold().as(scene.Pen))
	} else {
		p.rule(c.own-28, y+2, c.own, y+2, scene.Rule)
	}
	p.right(c.value, y, p.s.NumberSaid(n.Key, n.Default), standard)
	if c.allowed > 0 {
		p.right(c.allowed, y, p.s.NumberSaid(n.Key, n.Min)+"–"+p.s.NumberSaid(n.Key, n.Max), ink2(13))
	}
	if c.source > 0 {
		p.fit(c.source, y, p.howSure(n.Number), ink2(13), cmp.Or(c.uses, c.end)-12)
	}
	if c.uses > 0 {
		p.fit(c.uses, y, n.Used, ink2(13), c.end)
	}
	p.hit(row, scene.Ref{Kind: state.NumberRef, ID: n.Name}, n.Title+": "+n.Source)
}

// howSure says how sure a number is: the keeper's own, or where the default comes
// from.
func (p *sheet) howSure(n practice.Number) string {
	if p.s.Own(n.Key) {
		return "yours"
	}
	return n.Confidence.String()
}

// groups draws the words that lead to the numbers one level down, and to what is
// kept for this machine.
func (p *sheet) groups(a scene.Area) {
	y := a.Y + 27
	p.rule(a.X+state.Edge, a.Y, a.Right()-state.Edge, a.Y, scene.Hair)
	x := a.X + state.Edge
	if p.s.Group != 0 {
		x = p.groupWord(x, y, "The 25 that matter", "", a.Right())
	} else {
		x = p.text(x, y, "One level down:", ink2(13)) + 14
	}
	for _, g := range practice.Groups() {
		n := 0
		for row := range practice.All() {
			if row.Group == g {
				n++
			}
		}
		x = p.groupWord(x, y, fmt.Sprintf("%s %d", g, n), g.String(), a.Right())
	}
	if word := "Units, weeks, text, paper"; x+p.width(word, ink(13)) < a.Right()-state.Edge {
		p.link(a.Right()-state.Edge-p.width(word, ink(13).medium()), y, word, ink(13).medium().as(scene.Pen), "settings", p.s.Number == 0)
	}
}

// groupWord draws a word that shows other numbers, if it has room before to, and
// gives where the next begins.
func (p *sheet) groupWord(x, y float64, word, group string, to float64) float64 {
	f := ink(13).semi().as(scene.Pen)
	w := p.width(word, f)
	if x+w > to-10 {
		return x
	}
	p.text(x, y, word, f)
	ref := scene.Ref{Kind: state.GroupRef, ID: group}
	if p.hovers(ref) {
		p.rule(x, y+5, x+w, y+5, scene.Pen)
	}
	p.hit(target(scene.Area{X: x - 5, Y: y - 14, W: w + 10, H: 20}), ref, "")
	return x + w + 18
}
