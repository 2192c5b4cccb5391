package view

import (
	"slices"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// menuItem is a row of a menu: its word, how many there are, what a click on it
// means, and whether it is chosen.
type menuItem struct {
	word, count string
	ref         scene.Ref
	on          bool
}

// menu draws the list that is open.
func (p *sheet) menu() {
	switch {
	case p.s.Book == nil:
	case p.s.Menu == state.YardMenu:
		p.list(at(p.l.Window.W-96, state.RoomsHeight-2), p.yardItems())
	case p.s.Menu == state.WriterMenu:
		p.writerMenu(p.writerItems())
	case p.s.Menu == state.HeadsMenu && !p.l.Main.Empty():
		p.list(at(p.l.Main.X+230, p.l.Main.Y+state.HeadHeight), p.headsItems())
	case p.s.Menu == state.LayerMenu && !p.l.Map.Empty():
		p.list(at(p.layersEnd(p.l.Map)+6, p.l.Map.Y+state.HeadHeight), p.layerItems())
	}
}

// writerMenu draws the people below the button that opened their list, or above
// the foot.
func (p *sheet) writerMenu(items []menuItem) {
	h := menuRow*float64(len(items)) + 12
	a, ok := p.inPane(state.CommandOf("writer"))
	if !ok {
		a, ok = scene.Scene{Marks: p.marks}.Where(state.CommandOf("writer"))
	}
	y := a.Bottom() + 4
	if !ok || y+h > p.l.Foot.Y {
		y = max(4, min(a.Y, p.l.Foot.Y)-h-4)
	}
	p.list(at(a.X+p.menuWidth(items), y), items)
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

// yardItems are the yards with their nucs, all of them first.
func (p *sheet) yardItems() []menuItem {
	r, filled := p.s.Reading(), p.s.Filled()
	items := []menuItem{{"all yards", thousands(len(r.Nucs)), scene.Ref{Kind: state.YardRef}, filled.IsZero()}}
	for y := range r.View.Yards() {
		items = append(items, menuItem{y.Name, thousands(len(r.In(y.Yard))), scene.Ref{Kind: state.YardRef, ID: y.Yard.String()}, y.Yard == filled})
	}
	return items
}

// writerItems are the people of the book, of whom one writes.
func (p *sheet) writerItems() (items []menuItem) {
	for person := range p.s.Present().View.People() {
		items = append(items, menuItem{person.Name, "", scene.Ref{Kind: state.WriterRef, ID: person.Name}, person.Name == p.s.Pen.Writer})
	}
	return append(items, menuItem{"nobody named", "", scene.Ref{Kind: state.WriterRef}, p.s.Pen.Writer == ""})
}

// layerItems are the layers of the map.
func (p *sheet) layerItems() (items []menuItem) {
	for _, l := range slices.Backward(mapLayers) {
		items = append(items, menuItem{l.word, "", state.CommandOf(l.command), l.layer == p.s.Layer})
	}
	return items
}

// list draws a menu whose upper right corner is at o.
func (p *sheet) list(o scene.Point, items []menuItem) {
	const h = menuRow
	w := p.menuWidth(items)
	a := scene.Area{X: max(o.X-w, 8), Y: o.Y, W: w, H: h*float64(len(items)) + 12}
	p.add(scene.Rect{Area: a, Radius: 5, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1)})
	for i, it := range items {
		row := scene.Rect{Area: scene.Area{X: a.X + 6, Y: a.Y + 6 + float64(i)*h, W: a.W - 12, H: h}, Radius: 4, Tag: scene.Tag{Ref: it.ref}}
		f := ink(14)
		if it.on {
			f = f.semi()
		}
		if p.s.Hover.Ref == it.ref {
			row.Fill = scene.Sunk
		}
		p.add(row)
		end := p.right(row.Right()-10, row.Y+21, it.count, ink2(13))
		p.fit(row.X+10, row.Y+21, it.word, f, end-8)
	}
}

// menuRow is the height of a row of a menu, dp.
const menuRow = 32.0

// menuWidth is how wide a menu of some rows is.
func (p *sheet) menuWidth(items []menuItem) (w float64) {
	for _, it := range items {
		w = max(w, p.width(it.word, ink(14).semi())+p.width(it.count, ink2(13))+60)
	}
	return w
}
