package view

import "lidmark/ui/scene"

// wholeLines draws into an area that scrolls. It shows whole lines of text only: one
// that an edge would cut is left out with all of its row.
func (p *sheet) wholeLines(a scene.Area, draw func()) {
	p.clipped(a, scene.Tag{}, draw)
	last := len(p.marks) - 1
	pane := p.marks[last].(scene.Pane)
	pane.Clip = wholeWithin(pane.Marks, a)
	p.marks[last] = pane
}

// wholeWithin is what is left of an area without the lines that its edges cut.
func wholeWithin(marks []scene.Mark, a scene.Area) scene.Area {
	const above, below = 0.95, 0.3 // of the size of a letter, from its baseline
	top, bottom := a.Y, a.Bottom()
	for _, m := range marks {
		t, ok := m.(scene.Text)
		if !ok || t.At.X < a.X || t.At.X > a.Right() {
			continue
		}
		from, to := t.At.Y-above*t.Size, t.At.Y+below*t.Size
		if t.Middle {
			from, to = t.At.Y-0.6*t.Size, t.At.Y+0.6*t.Size
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
