package view

import (
	"slices"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// CardMost is how far the card can be scrolled, dp.
func CardMost(s state.State, m scene.Measurer) float64 {
	p := newSheet(s, m)
	if s.Book != nil && s.Room == state.About && s.Fill == state.NoFill {
		_, most := p.pageScroll()
		return most
	}
	if s.Book == nil || p.l.Card.Empty() {
		return 0
	}
	if p.s.Walk != nil && p.s.Form == nil {
		return p.lettersIn(p.l.Card).most()
	}
	if p.s.OnLayout() && p.s.Form == nil {
		_, most := p.layoutScroll()
		return most
	}
	if p.s.Fill == state.LateFill && p.s.Form == nil {
		_, most := p.triageScroll()
		return most
	}
	c, all := p.drawnCard(0)
	return max(0, all-c.body().H)
}

// CardAt is how far the card is scrolled as it is drawn, dp: where the keys go is
// brought into sight.
func CardAt(s state.State, m scene.Measurer) float64 {
	p := newSheet(s, m)
	if s.Book != nil && s.Room == state.About && s.Fill == state.NoFill {
		offset, _ := p.pageScroll()
		return offset
	}
	if s.Book == nil || p.l.Card.Empty() {
		return 0
	}
	if p.s.Walk != nil && p.s.Form == nil {
		return p.lettersIn(p.l.Card).offset()
	}
	if p.s.OnLayout() && p.s.Form == nil {
		offset, _ := p.layoutScroll()
		return offset
	}
	if p.s.Fill == state.LateFill && p.s.Form == nil {
		offset, _ := p.triageScroll()
		return offset
	}
	c, all := p.drawnCard(0)
	return c.offset(all)
}

// offset is how far a card that was drawn from its top is to be scrolled.
func (c *cardDraw) offset(all float64) float64 {
	const air = 48.0
	body := c.body()
	most := max(0, all-body.H)
	offset := min(c.s.Scroll[state.CardPlace], most)
	if !c.s.Follow {
		return offset
	}
	a, ok := scene.Scene{Marks: c.marks}.Where(c.s.Focus)
	if !ok {
		return offset
	}
	top, bottom := a.Y-body.Y-air, a.Bottom()-body.Y+air+c.below
	offset = min(max(offset, bottom-body.H), most)
	return max(0, min(offset, top))
}

// withStops are the marks of the card and, for what takes keys and is scrolled
// out of the body, a place without size at its edge: Tab goes there as well, and
// what has the focus is brought into sight.
func (c *cardDraw) withStops(body scene.Area) []scene.Mark {
	var above, below []scene.Mark
	for _, m := range c.marks {
		r, ok := m.(scene.Rect)
		if !ok || r.Ref == (scene.Ref{}) || r.Ref.Kind == wholeRef {
			continue
		}
		edge := scene.Rect{Area: scene.Area{X: body.X + body.W/2, Y: body.Y + body.H/2}, Tag: scene.Tag{Ref: r.Ref}}
		switch {
		case r.Bottom() <= body.Y:
			above = append(above, edge)
		case r.Y >= body.Bottom():
			below = append(below, edge)
		}
	}
	return slices.Concat(above, c.marks, below)
}

// drawnCard draws the card by itself, scrolled by offset, and tells how high all
// of it is.
func (p *sheet) drawnCard(offset float64) (c *cardDraw, all float64) {
	a, alone := p.l.Card, *p
	alone.marks = nil
	c = &cardDraw{sheet: &alone, r: p.s.Reading(), x: a.X + 20, w: a.W - 40, y: a.Y + 20 - offset}
	c.draw()
	return c, c.y + offset - a.Y
}

// body is the part of the card above its buttons.
func (c *cardDraw) body() scene.Area {
	a := c.l.Card
	a.H = max(0, a.H-c.foot.height())
	return a
}
