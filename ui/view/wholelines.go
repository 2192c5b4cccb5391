package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// wholeLines draws into an area that scrolls. It shows whole lines of text and whole
// buttons only: one that an edge would cut is left out with all of its row.
func (p *sheet) wholeLines(a scene.Area, draw func()) {
	p.clipped(a, scene.Tag{}, draw)
	last := len(p.marks) - 1
	pane := p.marks[last].(scene.Pane)
	pane.Clip = wholeWithin(pane.Marks, a)
	p.marks[last] = pane
}

// wholeWithin is what is left of an area without the lines and the buttons that its
// edges cut.
func wholeWithin(marks []scene.Mark, a scene.Area) scene.Area {
	const above, below = 0.95, 0.3 // of the size of a letter, from its baseline
	top, bottom := a.Y, a.Bottom()
	for _, m := range marks {
		var from, to float64
		switch m := m.(type) {
		case scene.Text:
			if m.At.X < a.X || m.At.X > a.Right() {
				continue
			}
			from, to = m.At.Y-above*m.Size, m.At.Y+below*m.Size
			if m.Middle {
				from, to = m.At.Y-0.6*m.Size, m.At.Y+0.6*m.Size
			}
		case scene.Rect:
			if m.Radius != buttonRadius || m.Ref.Kind != state.CommandRef {
				continue
			}
			from, to = m.Area.Y-1, m.Area.Bottom()+1
		default:
			continue
		}
		if from < a.Y && to > a.Y {
			top = max(top, to)
		}
		if from < a.Bottom() && to > a.Bottom() {
			bottom = min(bottom, from)
		}
	}
	if bottom <= top {
		return a // a single line is better cut than gone
	}
	return scene.Area{X: a.X, Y: top, W: a.W, H: bottom - top}
}
