package view

import (
	"strings"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// menu draws the list that is open.
func (p *sheet) menu() {
	if p.s.Menu != state.YardMenu || p.s.Book == nil {
		return
	}
	type item struct {
		word, count string
		id          string
		on          bool
	}
	r := p.s.Reading()
	items := []item{{"all yards", thousands(len(r.Nucs)), "", p.s.Filled().IsZero()}}
	for y := range r.View.Yards() {
		items = append(items, item{y.Name, thousands(len(r.In(y.Yard))), y.Yard.String(), y.Yard == p.s.Filled()})
	}
	w := 0.0
	for _, it := range items {
		w = max(w, p.width(it.word, ink(14).semi())+90)
	}
	const h = 32.0
	a := scene.Area{X: p.l.Window.W - 96 - w, Y: state.RoomsHeight - 2, W: w, H: h*float64(len(items)) + 12}
	a.X = max(a.X, 8)
	p.add(scene.Rect{Area: a, Radius: 5, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1)})
	for i, it := range items {
		row := scene.Area{X: a.X + 6, Y: a.Y + 6 + float64(i)*h, W: a.W - 12, H: h}
		ref := scene.Ref{Kind: state.YardRef, ID: it.id}
		f := ink(14)
		fill := scene.None
		if it.on {
			f = f.semi()
		}
		if p.s.Hover.Ref == ref {
			fill = scene.Sunk
		}
		p.add(scene.Rect{Area: row, Radius: 4, Fill: fill, Tag: scene.Tag{Ref: ref}})
		end := p.right(row.Right()-10, row.Y+21, it.count, ink2(13))
		p.fit(row.X+10, row.Y+21, it.word, f, end-8)
	}
}

// tip draws what the pointer is over beside it, where no line below a map says
// it.
func (p *sheet) tip() {
	reason := strings.Replace(p.s.Hover.Reason, "  ", ": ", 1)
	held := p.s.Drag.Kind != state.NoDrag && p.s.Drag.Kind != state.Held
	if reason == "" || held || p.s.Keys || p.saidBelow() {
		return
	}
	f := ink(13)
	w := min(p.width(reason, f), 420)
	o := p.s.Pointer.Add(at(14, 20))
	box := scene.Area{X: min(o.X, p.l.Window.W-w-24), Y: o.Y, W: w + 16, H: 26}
	if box.Bottom() > p.l.Window.H {
		box.Y = p.s.Pointer.Y - 36
	}
	p.add(scene.Rect{Area: box, Radius: 4, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1)})
	p.fit(box.X+8, box.Y+17.5, reason, f, box.X+8+w+1)
}

// saidBelow tells whether the line below the map says what the pointer is
// over.
func (p *sheet) saidBelow() bool {
	return !p.l.Map.Empty() && (p.l.Map.Contains(p.s.Pointer) || p.l.Main.Contains(p.s.Pointer)) &&
		p.s.Hover.Ref.Kind != state.CommandRef
}

// keys draws the sheet of keys over the window.
func (p *sheet) keys() {
	var rows []state.Command
	for _, c := range state.Commands() {
		if c.Keys != "" && c.Does != "" {
			rows = append(rows, c)
		}
	}
	const h, keysWidth, columnWidth = 22.0, 110.0, 370.0
	columns := max(1, min(2, int((p.l.Window.W-80)/columnWidth)))
	perColumn := (len(rows) + columns - 1) / columns
	w := min(p.l.Window.W-40, float64(columns)*columnWidth+40)
	high := float64(perColumn)*h + 118
	a := scene.Area{X: (p.l.Window.W - w) / 2, Y: (p.l.Window.H - high) / 2, W: w, H: high}
	p.add(scene.Rect{Area: p.l.Window, Fill: scene.Ground, Clear: 0.3, Tag: scene.Tag{Ref: state.CommandOf("keys")}},
		scene.Rect{Area: a, Radius: 5, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1), Tag: scene.Tag{Ref: state.CommandOf("keys")}})
	p.text(a.X+20, a.Y+32, "The keys", ink(17).semi())
	p.wrap(a.X+20, a.Bottom()-36, mouse, ink2(13), w-40, 3)
	column := (w - 40) / float64(columns)
	for i, c := range rows {
		x := a.X + 20 + float64(i/perColumn)*column
		y := a.Y + 62 + float64(i%perColumn)*h
		end := p.fit(x, y, firstKey(c.Keys), ink(13).semi(), x+keysWidth-8)
		p.fit(max(x+keysWidth, end+8), y, c.Does, ink2(13), x+column-12)
	}
}

const mouse = "Wheel: zoom the map, move the days, scroll. Drag: a rubber band on empty ground; with Shift it moves the map. Ctrl-click adds. Type a nuc’s name and you are there."
