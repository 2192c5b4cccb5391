package view

import (
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// tipLines is how many lines what is said beside the pointer has at most, and
// tipWidth how wide they are, dp: a sentence that says what to do must be seen
// to its end.
const (
	tipLines = 7
	tipWidth = 420.0
)

// tip draws what the pointer is over beside it, where no line below a map says
// it.
func (p *sheet) tip() {
	reason := strings.Replace(p.s.Hover.Reason, "  ", ": ", 1)
	held := p.s.Drag.Kind != state.NoDrag && p.s.Drag.Kind != state.Held
	if reason == "" || held || p.s.Keys || p.s.Menu != state.NoMenu || p.saidElsewhere() {
		return
	}
	f := ink(13)
	w := min(p.width(p.say(reason), f), tipWidth)
	lines := min(len(scene.Wrap(p.measure, p.say(reason), f.size, f.weight, w+1)), tipLines)
	o := p.s.Pointer.Add(at(14, 20))
	right := p.l.Window.W
	if p.s.OnLayout() && p.l.Main.Contains(p.s.Pointer) && w+24 < p.l.Main.W {
		right = p.l.Main.Right() // the card says what the try-out changes
	}
	box := scene.Area{X: min(o.X, right-w-24), Y: o.Y, W: w + 16, H: 26 + float64(lines-1)*scene.LineHeight(f.size)}
	if box.Bottom() > p.l.Window.H {
		box.Y = p.s.Pointer.Y - 10 - box.H
	}
	p.add(scene.Rect{Area: box, Radius: 4, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1)})
	p.wrap(box.X+8, box.Y+17.5, reason, f, w+1, tipLines)
}

// saidElsewhere tells whether the line below the map says what the pointer is
// over, or the card does.
func (p *sheet) saidElsewhere() bool {
	ref := p.s.Hover.Ref
	if ref.Kind == book.KindBatch.String() && ref.Part == "" && p.s.Selection.Has(state.SubjectOf(ref)) {
		return true
	}
	return !p.l.Map.Empty() && ref.Kind != state.CommandRef &&
		(p.l.Map.Contains(p.s.Pointer) || p.l.Main.Contains(p.s.Pointer) || ref.Kind == state.DayRef)
}

// keys draws the sheet of keys over the window.
func (p *sheet) keys() {
	const wide = 112.0 // of the column of keys
	k := p.s.KeySheet()
	back := scene.Tag{Ref: state.CommandOf("keys")}
	p.add(scene.Rect{Area: p.l.Window, Fill: scene.Ground, Clear: 0.3, Tag: back},
		scene.Rect{Area: k.Area, Radius: 5, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1), Tag: back})
	p.clipped(k.Inset(1), back, func() {
		x, top := k.X+state.KeyEdge, k.Y-k.Offset
		p.text(x, top+32, "The keys", ink(17).semi())
		column := (k.W - 2*state.KeyEdge) / float64(k.Columns)
		for i, c := range k.Rows {
			x := x + float64(i/k.PerColumn())*column
			y := top + state.KeyHead + float64(i%k.PerColumn())*state.KeyRow
			if c.Keys == "" {
				p.fit(x, y, c.Does, ink(13).bold(), x+column-10)
				continue
			}
			p.fit(x, y, firstKey(c.Keys), ink(13).semi(), x+wide-8)
			p.fit(x+wide, y, c.Does, ink2(13), x+column-10)
		}
		y := top + state.KeyHead + float64(k.PerColumn())*state.KeyRow + 8
		p.wrap(x, y, state.MouseSays, ink2(13), k.W-2*state.KeyEdge, 12)
		p.scrollBar(k.Area, k.Offset, k.All)
	})
}
