package view

import (
	"strings"

	"lidmark/domain/handover"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// ordersDraw is the page of the orders being drawn.
type ordersDraw struct {
	*sheet
	state.OrderPane
}

// orders draws the page of the orders: who gets which queen, what is missing and left
// over, and what was claimed; with something looked for who was handed over.
func (p *sheet) orders() {
	d := ordersDraw{p, p.s.OrderPane(p.l)}
	p.rect(p.l.Main, scene.Panel)
	d.head()
	if p.s.OrderSheet() == nil {
		d.text(d.Body.X+state.Edge, d.Body.Y+30, "dealing out the queens …", ink(15))
	} else {
		p.clipped(d.Body, scene.Tag{Ref: scene.Ref{Kind: state.PaneRef, ID: "orders"}}, func() {
			d.wholeLines(d.Body, d.lines)
			d.scrollBar(d.Body, d.Offset, d.Tall)
		})
	}
	p.card()
	p.days()
}

// head draws the words that turn the pages, the labels of cages, and the field in which a queen who was
// handed over is looked for.
func (d ordersDraw) head() {
	a := d.Head
	d.rule(a.X, a.Bottom()-1, a.Right(), a.Bottom()-1, scene.Rule)
	x := d.planPages(a.X+state.Edge, a.Y+30) + 28
	x = d.link(x, a.Y+30, "Cage labels", ink(13.5).as(scene.Pen), "print cages", false) + 28
	const least, most = 120.0, 430.0
	w := min(most, a.Right()-state.Edge-x)
	if w < least {
		return
	}
	hint := d.firstFitting((w-20)*13/14, "whom did I hand over? customer, disc, line, year", "whom? customer, disc, line, year", "whom did I hand over?", "whom?")
	d.input(scene.Area{X: a.Right() - state.Edge - w, Y: a.Y + 8, W: w, H: 32}, state.SearchField, fieldLook{
		size: 14, empty: hint, reason: "just type; Down goes to what is found",
	})
}

// planPages writes the words that turn the pages of the room Plan, and gives where
// they end.
func (p *sheet) planPages(x, y float64) float64 {
	x = p.link(x, y, "Wish", ink(15), "wish", false) + 18
	x = p.link(x, y, "Season", ink(15), "season", p.s.OnSeason()) + 18
	return p.link(x, y, "Orders", ink(15), "orders", p.s.OnOrders())
}

// lines draws the lines that are in sight.
func (d ordersDraw) lines() {
	for _, l := range d.Lines {
		row := scene.Area{X: d.Body.X + state.Edge, Y: d.Body.Y + l.Y - d.Offset, W: d.Body.W - 2*state.Edge, H: l.H}
		if row.Bottom() > d.Body.Y && row.Y < d.Body.Bottom() {
			d.line(l, row)
		}
	}
}

func (d ordersDraw) line(l state.OrderLine, row scene.Area) {
	d.chosen(l, row)
	y := row.Bottom() - 8
	switch l.OrderLook {
	case state.OrderSaid:
		f := ink(14)
		if l.Alarm {
			f = f.as(scene.Act)
		}
		d.wrap(row.X, row.Y+18, l.Cells[0], f, row.W, 4)
	case state.OrderTitle:
		d.fit(row.X, row.Bottom()-12, l.Cells[0], ink(15).semi(), row.Right())
		d.rule(row.X, row.Bottom()-4, row.Right(), row.Bottom()-4, scene.Rule)
	case state.OrderHead:
		d.orderHead(l, row)
	case state.OrderHeads:
		d.cells(l, row, y, ink2(12.5))
	case state.OrderLeft:
		d.fit(row.X+indent, y, l.Cells[0], ink(14), row.X+indent+150)
		d.right(row.X+indent+190, y, l.Cells[1], ink(14).semi())
		d.fit(row.X+indent+206, y, l.Cells[2], ink2(13.5), row.Right())
		d.rule(row.X+indent, row.Bottom()-0.5, row.Right(), row.Bottom()-0.5, scene.Hair)
	default:
		d.cells(l, row, y, ink(14))
		d.rule(row.X+indent, row.Bottom()-0.5, row.Right(), row.Bottom()-0.5, scene.Hair)
	}
}

// indent is how far what belongs to an order stands in, dp.
const indent = 14.0

// chosen draws the ground of a line that leads somewhere.
func (d ordersDraw) chosen(l state.OrderLine, row scene.Area) {
	ref := l.Ref()
	if ref == (scene.Ref{}) {
		return
	}
	a := scene.Area{X: row.X - 6, Y: row.Bottom() - min(row.H, 32), W: row.W + 12, H: min(row.H, 32)}
	r := scene.Rect{Area: a, Radius: 4, Tag: scene.Tag{Ref: ref, Reason: "its card beside"}}
	switch {
	case d.takes(l):
		r.Fill, r.Stroke, r.Radius = scene.PenTint, stroke(scene.Pen, 1.5), 5
	case d.hovers(ref):
		r.Fill = scene.Sunk
	}
	d.add(r)
}

// takes tells whether a line is the one that is taken.
func (d ordersDraw) takes(l state.OrderLine) bool {
	ref := l.Ref()
	return ref != (scene.Ref{}) && (d.s.Selection.Len() == 1 && d.s.Selection.Last() == l.To || ref == d.s.Focus)
}

// orderHead draws the head of an order: whose it is, what is owed and when, and whether
// all are there.
func (d ordersDraw) orderHead(l state.OrderLine, row scene.Area) {
	y := row.Bottom() - 12
	f := ink(14).semi()
	switch {
	case l.Alarm:
		f = f.as(scene.Act)
	case l.Sure:
		f = ink2(14)
	}
	to := d.right(row.Right(), y, l.Cells[2], f) - 14
	x := d.fit(row.X, y, l.Cells[0], ink(15).semi(), to)
	d.fit(x+12, y, l.Cells[1], ink2(13.5), to)
	if !d.takes(l) {
		d.rule(row.X, row.Bottom()-4, row.Right(), row.Bottom()-4, scene.Rule)
	}
}

// orderColumns are where the columns of lines begin, as shares of their width.
var orderColumns = map[state.OrderLook][]float64{
	state.OrderQueen:  {0, 0.14, 0.32, 0.45},
	state.OrderGone:   {0, 0.14, 0.34, 0.49, 0.74, 0.8, 0.89},
	state.OrderClaims: {0, 0.22, 0.36, 0.46, 0.6, 0.76, 0.88},
}

// cells draws the columns of a line. Heads stand over the columns that as many cells
// have, in two lines where these are slender.
func (d ordersDraw) cells(l state.OrderLine, row scene.Area, y float64, f font) {
	at := orderColumns[l.OrderLook]
	if l.OrderLook == state.OrderHeads {
		at = orderColumns[state.OrderGone]
		if l.Cells[1] != "queen" {
			at = orderColumns[state.OrderClaims]
		}
	}
	x, w := row.X+indent, row.W-indent
	for i, cell := range l.Cells {
		to := row.Right()
		if i+1 < len(at) {
			to = x + at[i+1]*w - 8
		}
		g := f
		switch {
		case l.OrderLook == state.OrderHeads:
		case i == 0 && l.OrderLook == state.OrderQueen, i == 1 && l.OrderLook == state.OrderGone:
			g = f.as(scene.Pen)
		case i == len(l.Cells)-1 && l.Alarm:
			g = f.as(scene.Act)
		case i > 0 && l.OrderLook != state.OrderClaims:
			g = font{13.5, f.weight, scene.Ink2}
		}
		above, below, two := strings.Cut(cell, " ")
		if two = two && l.OrderLook == state.OrderHeads && d.width(cell, g) > to-x-at[i]*w; two {
			d.fit(x+at[i]*w, y-scene.LineHeight(g.size), above, g, to)
			cell = below
		}
		d.fit(x+at[i]*w, y, cell, g, to)
	}
}

// served writes on the card of an order who goes to it and what is missing, as far as
// that is known.
func (c *cardDraw) served(o handover.Served) {
	c.field("When", o.LeavesSaid(c.r.Day), ink(14), whole)
	if sheet := c.s.OrderSheet(); sheet != nil {
		c.para(sentence(sheet.LateRing(o)), ink(14).semi().as(scene.Act), whole)
	}
	c.para(sentence(o.Warning), ink(14).as(scene.Act), whole)
	if sheet := c.s.OrderSheet(); o.Short > 0 && sheet != nil {
		f := ink(14)
		if state.InVain(o) {
			f = f.as(scene.Act)
		}
		c.para(sheet.Short(o), f.semi(), whole)
		c.para(state.Fell(o), f, whole)
		c.para(sheet.Ring(o), f, whole)
		fit, _ := rules.CagedFor(c.r.View, o.Order)
		c.buttons(button{"Plan a graft for it", "graft for order", len(fit) == 0 && o.Missing() > 0})
	}
	c.y += 4
}

// saysShort tells whether [cardDraw.served] says that an order is short, and what is to be done: then what is
// found of it is not said once more.
func (c *cardDraw) saysShort(o handover.Served) bool {
	return o.Missing() > 0 && c.s.OrderSheet() != nil && c.r == c.s.Present()
}

// gets writes the queens who go to an order as links, with what is to be done with
// each.
func (c *cardDraw) gets(o handover.Served) {
	all := c.s.Present().ServedQueens(o)
	if len(all) == 0 {
		return
	}
	c.heading("Who goes to it")
	c.y += 2
	for _, q := range all[:min(len(all), mostLinks)] {
		c.row(linked{q.Where, q.To}, q.Line+", "+q.When)
	}
	c.more(len(all) - mostLinks)
}

// toOrders writes behind the wish the words that turn to the season and the orders, as
// long as there is room for.
func (w *wishLine) toOrders(line float64) {
	f := ink(13.5).as(scene.Pen)
	for _, words := range [][2]string{{"season: all batches", "orders: who gets which queen"}, {"season", "orders"}} {
		wide := w.d.width(words[0], f) + w.d.width(words[1], f) + 24
		if w.x+wide <= w.to || words[1] == "orders" {
			w.room(wide, line)
			w.x = w.d.link(w.x+8, w.y+line*0.66, words[0], f, "season", false) + 16
			w.x = w.d.link(w.x, w.y+line*0.66, words[1], f, "orders", false)
			return
		}
	}
}

// noOrder is the head of the card beside the orders while none is selected.
func (c *cardDraw) noOrder() {
	title, says := "No order is open", "Here stands who gets which queen, once somebody waits for some."
	if len(c.s.OpenOrders()) > 0 {
		title, says = "No order is selected", "Choose one in the list: who goes to it stands here."
	}
	c.titled(title)
	c.para(says, ink2(14), whole)
}
