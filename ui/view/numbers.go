package view

import (
	"cmp"

	"lidmark/domain/practice"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// numberColumns say where the columns of the list of numbers lie; a column that
// has no room is 0.
type numberColumns struct {
	title, unit, value, own, allowed, sure, uses, end float64
}

// numbersPane lays the columns into a pane: in a narrower one the range of a number
// goes first, in a narrow one how sure it is and what depends on it, and the range
// has room again. The card says all of it.
func numbersPane(a scene.Area) numberColumns {
	c := numberColumns{title: a.X + state.Edge + 12, end: a.Right() - state.Edge}
	w := a.W
	c.unit = a.X + min(360, w*0.37)
	const wide, middle, narrow = 1040, 800, 480
	switch {
	case w < narrow:
		c.unit = c.end - 114
	case w < middle:
		c.unit = c.end - 210
	}
	c.value, c.own = c.unit+60, c.unit+114
	switch {
	case w >= wide:
		c.allowed, c.sure = c.own+96, c.own+114
		c.uses = c.sure + 118
	case w >= middle:
		c.sure = c.own + 18
		c.uses = c.sure + 118
	case w >= narrow:
		c.allowed = c.end
	}
	return c
}

// numbers draws the room My numbers: the list, and beside it the number chosen or
// what is kept for this machine.
func (p *sheet) numbers() {
	a, c := p.l.Main, numbersPane(p.l.Main)
	p.rect(a, scene.Panel)
	p.numbersHead(a, c)
	body := p.s.NumberRows(p.l)
	lines, offset := p.s.NumberLines(), p.s.NumberOffset(p.l)
	p.clipped(body, scene.Tag{}, func() {
		for i, n := range lines {
			row := scene.Area{X: a.X, Y: body.Y + float64(i)*state.NumberRow - offset, W: a.W, H: state.NumberRow}
			alone := n.Head != "" && row.Bottom()+row.H > body.Bottom()+1 // its first number is not in sight
			if row.Bottom() > body.Y && row.Y < body.Bottom() && !alone {
				p.numberLine(n, row, c)
			}
		}
	})
	p.scrollBar(body, offset, p.s.NumbersHigh(p.l))
	if p.l.NumbersLow() {
		p.clipped(body, scene.Tag{}, p.numberWords)
	} else {
		p.numberWords()
	}
	p.card()
}

// numbersHead names the list and its columns.
func (p *sheet) numbersHead(a scene.Area, c numberColumns) {
	y := p.s.NumberRows(p.l).Y - 12
	if !p.l.NumbersLow() {
		p.numbersTitle(a, c)
	}
	p.right(c.unit, y, "unit", ink2(13))
	p.right(c.value, y, "default", ink2(13))
	p.right(c.own, y, "yours", ink2(13))
	if c.allowed > 0 {
		p.right(c.allowed, y, "allowed", ink2(13))
	}
	if c.sure > 0 {
		p.text(c.sure, y, "how sure", ink2(13))
	}
	if c.uses > 0 {
		p.text(c.uses, y, "what depends on it", ink2(13))
	}
	p.rule(a.X+state.Edge, y+12, c.end, y+12, scene.Ink)
}

// numbersTitle says which numbers are shown, and how many are the keeper's own.
func (p *sheet) numbersTitle(a scene.Area, c numberColumns) {
	title := "The 25 that matter"
	if p.s.Group != 0 {
		title = p.s.Group.String()
	}
	own := 0
	for range p.s.Present().Numbers().Changed() {
		own++
	}
	from := p.right(c.end, a.Y+28, plural(own, "is yours", "are yours"), ink(13).semi())
	x := p.text(a.X+state.Edge, a.Y+28, title, ink(16).semi()) + 12
	for _, said := range []string{"a change moves dates at once; the old value stays in the book", "a change moves dates at once"} {
		if p.width(said, ink2(13)) <= from-16-x {
			p.text(x, a.Y+28, said, ink2(13))
			break
		}
	}
}

// numberLine draws a row: the head of a group, or a number.
func (p *sheet) numberLine(n state.NumberLine, row scene.Area, c numberColumns) {
	y := row.Y + row.H/2 + 5
	if n.Head != "" {
		p.text(row.X+state.Edge, y, n.Head, ink(14).semi())
		p.rule(row.X+state.Edge, row.Bottom(), c.end, row.Bottom(), scene.Rule)
		return
	}
	chosen, own := p.s.Number == n.Key, p.s.Own(n.Key)
	f := ink(14)
	switch {
	case chosen:
		p.add(scene.Rect{Area: scene.Area{X: row.X + 8, Y: row.Y, W: c.end + 9 - row.X - 8, H: row.H}, Radius: 5, Fill: scene.PenTint, Stroke: stroke(scene.Pen, 1.5)})
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
		dash := "–"
		if n.Min < 0 {
			dash = " to "
		}
		p.right(c.allowed, y, p.s.NumberSaid(n.Key, n.Min)+dash+p.s.NumberSaid(n.Key, n.Max), ink2(13))
	}
	if c.sure > 0 {
		p.howSure(c.sure, y, n.Number, cmp.Or(c.uses, c.end)-8)
	}
	if c.uses > 0 {
		p.fit(c.uses, y, n.Used, ink2(13), c.end)
	}
	p.hit(row, scene.Ref{Kind: state.NumberRef, ID: n.Name}, n.Title+": "+p.s.Sure(n.Number)+"; "+n.Used)
}

// howSure says how sure a number is, or that it is the keeper's own. What it
// rests on is said whole beside the list, once the number is chosen.
func (p *sheet) howSure(x, y float64, n practice.Number, to float64) {
	switch {
	case p.s.Own(n.Key):
		p.fit(x, y, "yours", ink(13).semi().as(scene.Pen), to)
	case n.Confidence == practice.CommonPractice:
		p.fit(x, y, n.Confidence.String(), ink2(13), to)
	default:
		p.fit(x, y, n.Confidence.String(), ink(13), to)
	}
}

// asWritten draws what the literature says: its figures stay as they were
// written, whatever units the keeper has.
func (p *sheet) asWritten(draw func(*sheet)) {
	metric := *p
	metric.s.Units, metric.marks = 0, nil
	draw(&metric)
	p.add(metric.marks...)
}

// numberWords draws the words that lead to the numbers one level down, and to what
// is kept for this machine.
func (p *sheet) numberWords() {
	words := p.s.NumberWords(p.l)
	top := words[0].Y
	p.rule(p.l.Main.X+state.Edge, top-8, p.l.Main.Right()-state.Edge, top-8, scene.Hair)
	for _, w := range words {
		y := w.Y + w.H/2 + 5
		if w.Ref == (scene.Ref{}) {
			p.text(w.X, y, w.Word, ink2(13))
			continue
		}
		f := ink(13).semi().as(scene.Pen)
		if w.On {
			f = f.as(scene.Ink)
		}
		end := p.text(w.X, y, w.Word, f)
		switch {
		case w.On:
			p.rect(scene.Area{X: w.X, Y: y + 4, W: end - w.X, H: 2.5}, scene.Ink)
		case p.hovers(w.Ref):
			p.rule(w.X, y+5, end, y+5, scene.Pen)
		}
		reason := ""
		if w.Ref.Kind == state.CommandRef {
			reason = p.says(w.Ref.ID)
		}
		p.hit(scene.Area{X: w.X - 5, Y: w.Y, W: end - w.X + 10, H: w.H}, w.Ref, reason)
	}
}
