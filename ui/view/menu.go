package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// menu draws the list that is open.
func (p *sheet) menu() {
	items := p.s.MenuItems()
	switch {
	case len(items) == 0:
	case p.s.Menu == state.YardMenu:
		p.list(at(p.l.Window.W-96, state.RoomsHeight-2), items)
	case p.s.Menu == state.WriterMenu:
		p.writerMenu(items)
	case p.s.Menu == state.HeadsMenu && !p.l.Main.Empty():
		o := at(p.l.Main.X+230, p.l.Main.Y+state.HeadHeight)
		if a, ok := p.stands(state.CommandOf("heads")); ok {
			o = at(max(a.Right(), p.menuWidth(items)), a.Bottom()+4)
		}
		p.list(o, items)
	case p.s.Menu == state.LayerMenu && !p.l.Map.Empty():
		p.list(at(p.layersEnd(p.l.Map)+6, p.l.Map.Y+state.HeadHeight), items)
	}
}

// writerMenu draws the people below the button that opened their list, or above
// the foot; above them, where something waits for it, that it is asked who writes.
func (p *sheet) writerMenu(items []state.MenuItem) {
	h := menuRow*float64(len(items)) + menuAir
	a, ok := p.stands(state.CommandOf("writer"))
	if !ok {
		a = scene.Area{X: state.Edge, Y: p.l.Foot.Y}
	}
	y := a.Bottom() + 4
	if !ok || p.s.WaitsForWriter() || y+h > p.l.Foot.Y {
		y = max(4, min(a.Y, p.l.Foot.Y)-h-4)
	}
	w := p.menuWidth(items)
	if p.s.WaitsForWriter() {
		w = max(w, p.width(whoWrites, ink(14).bold())+40)
		head := scene.Area{X: a.X, Y: y - menuRow, W: w, H: menuRow + menuAir}
		p.add(scene.Rect{Area: head, Radius: 5, Fill: scene.ActTint, Stroke: stroke(scene.Act, 1.5)})
		p.text(head.X+16, head.Y+21, whoWrites, ink(14).bold().as(scene.Act))
	}
	p.listIn(scene.Area{X: a.X, Y: y, W: w, H: h}, items)
}

// whoWrites is asked once, before the first thing is written.
const whoWrites = "Who writes? Asked once"

// stands is where something stands for ref, in a pane of the room or on the sheet.
func (p *sheet) stands(ref scene.Ref) (scene.Area, bool) {
	if a, ok := p.inPane(ref); ok {
		return a, true
	}
	return scene.Scene{Marks: p.marks}.Where(ref)
}

// inPane is where something stands for ref in a pane of the room.
func (p *sheet) inPane(ref scene.Ref) (scene.Area, bool) {
	for _, m := range p.marks {
		if pane, ok := m.(scene.Pane); ok {
			if a, found := (scene.Scene{Marks: []scene.Mark{pane}}).Where(ref); found && !a.Empty() {
				return a, true
			}
		}
	}
	return scene.Area{}, false
}

// list draws a menu whose upper right corner is at o.
func (p *sheet) list(o scene.Point, items []state.MenuItem) {
	w := p.menuWidth(items)
	p.listIn(scene.Area{X: max(o.X-w, 8), Y: o.Y, W: w, H: menuRow*float64(len(items)) + menuAir}, items)
}

// listIn draws the rows of a menu in an area; the keys stand on the one with the
// pen's line.
func (p *sheet) listIn(a scene.Area, items []state.MenuItem) {
	p.add(scene.Rect{Area: a, Radius: 5, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1)})
	for i, it := range items {
		row := scene.Rect{Area: scene.Area{X: a.X + 6, Y: a.Y + menuAir/2 + float64(i)*menuRow, W: a.W - 12, H: menuRow}, Radius: 4, Tag: scene.Tag{Ref: it.Ref}}
		f := ink(14)
		if it.On {
			f = f.semi()
		}
		switch {
		case i == p.s.MenuRow:
			row.Fill, row.Stroke = scene.PenTint, stroke(scene.Pen, 1.5)
		case p.s.Hover.Ref == it.Ref:
			row.Fill = scene.Sunk
		}
		p.add(row)
		end := p.right(row.Right()-10, row.Y+21, it.Count, ink2(13))
		p.fit(row.X+10, row.Y+21, it.Word, f, end-8)
	}
}

// Measures of a menu, dp.
const (
	menuRow = 32.0 // height of a row
	menuAir = 12.0 // above and below the rows, together
)

// menuWidth is how wide a menu of some rows is.
func (p *sheet) menuWidth(items []state.MenuItem) (w float64) {
	for _, it := range items {
		w = max(w, p.width(it.Word, ink(14).semi())+p.width(it.Count, ink2(13))+60)
	}
	return w
}
