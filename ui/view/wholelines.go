package view

import (
	"slices"

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

// wholeTexts draws into an area that scrolls, without the lines of text that an edge of it
// would cut: what lies beside them goes on to the edge.
func (p *sheet) wholeTexts(a scene.Area, tag scene.Tag, draw func()) {
	p.clipped(a, tag, draw)
	last := len(p.marks) - 1
	pane := p.marks[last].(scene.Pane)
	pane.Marks = slices.DeleteFunc(slices.Clone(pane.Marks), func(m scene.Mark) bool {
		text, ok := m.(scene.Text)
		from, to, upright := upright(text, a)
		return ok && upright && (from < a.Y && to > a.Y || from < a.Bottom() && to > a.Bottom())
	})
	p.marks[last] = pane
}

// wholeRef is the kind of a ref of what is shown whole or not at all.
const wholeRef = "whole"

// whole marks an area that is shown whole or not at all where it scrolls.
func (p *sheet) whole(a scene.Area) { p.hit(a, scene.Ref{Kind: wholeRef}, "") }

// wholeWithin is what is left of an area without the lines, fields and buttons that
// its edges cut. What lies beside one that was left out may be cut by the new edge, so
// it is done again until nothing is.
func wholeWithin(marks []scene.Mark, a scene.Area) scene.Area {
	in := a
	for {
		less := uncut(marks, in)
		switch {
		case less.H <= 0:
			return a // a single line is better cut than gone
		case less == in:
			return in
		}
		in = less
	}
}

// uncut is an area without what its edges cut.
func uncut(marks []scene.Mark, a scene.Area) scene.Area {
	top, bottom := a.Y, a.Bottom()
	for _, m := range marks {
		from, to, ok := upright(m, a)
		if ok && from < a.Y && to > a.Y {
			top = max(top, to)
		}
		if ok && from < a.Bottom() && to > a.Bottom() {
			bottom = min(bottom, from)
		}
	}
	return scene.Area{X: a.X, Y: top, W: a.W, H: bottom - top}
}

// upright is from where to where a mark reaches that must not be cut: a line of text,
// a lid, a button, a field, an answer.
func upright(m scene.Mark, a scene.Area) (from, to float64, ok bool) {
	const above, below = 0.95, 0.3 // of the size of a letter, from its baseline
	switch m := m.(type) {
	case scene.Lid:
		return m.At.Y - m.Size/2, m.At.Y + m.Size/2, true
	case scene.Text:
		if m.Text == "" || m.At.X < a.X || m.At.X > a.Right() {
			return 0, 0, false
		}
		if m.Middle {
			return m.At.Y - 0.6*m.Size, m.At.Y + 0.6*m.Size, true
		}
		return m.At.Y - above*m.Size, m.At.Y + below*m.Size, true
	case scene.Rect:
		button := m.Radius == buttonRadius && m.Ref.Kind == state.CommandRef
		asks := m.Radius > 0 && (m.Ref.Kind == state.FieldRef || m.Ref.Kind == state.ChoiceRef)
		return m.Area.Y - 1, m.Area.Bottom() + 1, button || asks || m.Ref.Kind == wholeRef
	}
	return 0, 0, false
}

// hittable are marks without those that stand for something and of which less than
// half is in sight: nobody can hit a sliver.
func hittable(marks []scene.Mark, in scene.Area) []scene.Mark {
	return slices.DeleteFunc(slices.Clone(marks), func(m scene.Mark) bool {
		r, ok := m.(scene.Rect)
		return ok && r.Ref.Kind == state.StepRef && r.Area.Intersect(in).H < r.Area.H/2
	})
}
